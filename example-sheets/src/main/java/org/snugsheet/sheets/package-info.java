/**
 * {@link org.snugsheet.sheets.BuildSheets}, the program that builds the worked sheets for teachers as files, in a real office. What is
 * on them is in the extension ({@link org.snugsheet.office.sheets}), whose menu opens the same sheets.
 */
@NullMarked
package org.snugsheet.sheets;

import org.jspecify.annotations.NullMarked;
