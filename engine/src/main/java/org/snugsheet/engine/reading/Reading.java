package org.snugsheet.engine.reading;

import org.snugsheet.engine.quantity.Temperature;

/**
 * One look at the thermometer.
 *
 * @param row where it was written, counted from 1 within the cells given
 * @param seconds when, from the start of the clock
 * @param temperature what it read
 */
public record Reading(int row, double seconds, Temperature temperature) {}
