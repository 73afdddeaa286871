/**
 * Four wrapped jars on a snowy windowsill: {@link org.snugsheet.sheets.windowsilljars.WindowsillJars}, the page that says how sure its
 * results are, and what its charts draw.
 */
@NullMarked
package org.snugsheet.sheets.windowsilljars;

import org.jspecify.annotations.NullMarked;
