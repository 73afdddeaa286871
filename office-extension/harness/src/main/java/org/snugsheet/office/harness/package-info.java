/**
 * Drives a real, headless LibreOffice from a test or a program: starts it with or without the packed extension, types
 * formulas into cells, reads what the cells show, saves and opens files, and leaves nothing behind.
 *
 * <p>Start at {@link org.snugsheet.office.harness.Office}; a test class usually gets one by
 * {@link org.snugsheet.office.harness.SharedOffice}. Nothing in here knows a function of Snugsheet, so the package may
 * use the JDK, the UNO classes and JUnit, and no other package of this project.
 *
 * <p>Needed on the machine: LibreOffice with Calc, and for an extension written in Java also its Java part (on Debian
 * {@code libreoffice-calc}, or {@code libreoffice-calc-nogui} for all but windows, and {@code libreoffice-java-common}). The
 * office is looked for under the system
 * property {@code snugsheet.soffice}, then on the search path, then in the usual places.
 */
@NullMarked
package org.snugsheet.office.harness;

import org.jspecify.annotations.NullMarked;
