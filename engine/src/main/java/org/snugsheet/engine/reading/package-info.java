/**
 * What a class wrote down: times, temperatures, the surroundings and the graduation of the thermometer, with checks.
 *
 * <p>A sheet’s cells come in as {@link org.snugsheet.engine.reading.Entry entries}: a gap, a number or a text. From two lists
 * of them {@link org.snugsheet.engine.reading.Readings} makes valid readings: finite, each later than the one before, gaps
 * left out in pairs, typed scales respected. A blank is never zero, and nothing is dropped silently: what cannot be read is
 * refused, with its row. Rows count from 1 within the cells given.
 *
 * <p>Internally times are in seconds; cells hold minutes. {@link org.snugsheet.engine.reading.ClockTimes} converts times read
 * from the clock on the wall into minutes.
 *
 * <p>This package uses {@link org.snugsheet.engine.quantity} only.
 */
package org.snugsheet.engine.reading;
