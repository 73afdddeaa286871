/**
 * Pages to print for pupils: {@link org.snugsheet.office.sheets.pupilpages.PupilPages}, with empty thermometers and a graph to draw.
 */
@NullMarked
package org.snugsheet.office.sheets.pupilpages;

import org.jspecify.annotations.NullMarked;
