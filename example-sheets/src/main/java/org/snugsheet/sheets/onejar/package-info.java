/**
 * One jar, one curve: {@link org.snugsheet.sheets.onejar.OneJarOneCurve}.
 */
@NullMarked
package org.snugsheet.sheets.onejar;

import org.jspecify.annotations.NullMarked;
