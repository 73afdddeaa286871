/**
 * Design a wrap: {@link org.snugsheet.office.sheets.designawrap.DesignAWrap} with its layers, the curves to expect, what the class measured
 * beside them, and the lists to choose from.
 */
@NullMarked
package org.snugsheet.office.sheets.designawrap;

import org.jspecify.annotations.NullMarked;
