/**
 * One jar, one curve: {@link org.snugsheet.office.sheets.onejar.OneJarOneCurve}.
 */
@NullMarked
package org.snugsheet.office.sheets.onejar;

import org.jspecify.annotations.NullMarked;
