/**
 * What a class wrote down: times, temperatures, the surroundings, the mark of the thermometer, and what is wrong with them.
 *
 * <p>A sheet’s cells come in as {@link org.snugsheet.engine.reading.Entry entries}: a gap, a number or a text. From two
 * lists of them {@link org.snugsheet.engine.reading.Readings} makes readings that are good: finite, each later than the one
 * before, gaps left out in pairs, typed scales respected. A blank is never zero and nothing is dropped in silence: what
 * cannot be read is refused, with its row. Rows count from 1 within the cells given.
 *
 * <p>Times are seconds inside; cells hold minutes. {@link org.snugsheet.engine.reading.ClockTimes} makes minutes from what a
 * class reads off the clock on the wall.
 *
 * <p>This package uses {@link org.snugsheet.engine.quantity} only.
 */
package org.snugsheet.engine.reading;
