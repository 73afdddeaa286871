/**
 * Draws cooling curves: the readings of a block as points, the fitted curve of each jar with its band, and below the chart what
 * the checks say.
 *
 * <p>{@link org.snugsheet.office.drawing.Curves} writes the numbers behind a chart, as formulas that follow the readings, and the
 * chart over them; {@link org.snugsheet.office.drawing.CurvesPage} does so for the selected block, on a sheet of its own.
 *
 * <p>This package uses the pages, the declared functions by their names, and the engine to read a block.
 */
@NullMarked
package org.snugsheet.office.drawing;

import org.jspecify.annotations.NullMarked;
