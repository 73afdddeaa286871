/**
 * What a class types when it reads its thermometers, and the page behind a sheet that takes it over for the functions: clock times
 * as minutes, what the checks find, and the message under the grid.
 *
 * <p>{@link org.snugsheet.office.sheets.readings.Grid} says where the cells are, {@link org.snugsheet.office.sheets.readings.AsRead} builds that page
 * for several jars and {@link org.snugsheet.office.sheets.readings.OneJarRead} for one.
 */
@NullMarked
package org.snugsheet.office.sheets.readings;

import org.jspecify.annotations.NullMarked;
