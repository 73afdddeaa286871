/**
 * Four wrapped jars on a snowy windowsill: {@link org.snugsheet.office.sheets.windowsilljars.WindowsillJars}, the page that says how sure its
 * results are, and what its charts draw.
 */
@NullMarked
package org.snugsheet.office.sheets.windowsilljars;

import org.jspecify.annotations.NullMarked;
