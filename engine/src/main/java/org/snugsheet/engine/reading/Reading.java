package org.snugsheet.engine.reading;

import org.snugsheet.engine.quantity.Temperature;

/**
 * One reading of the thermometer.
 *
 * @param row its row, counted from 1 within the cells given
 * @param seconds when, from the start of the clock
 * @param temperature what it read
 */
public record Reading(int row, double seconds, Temperature temperature) {}
