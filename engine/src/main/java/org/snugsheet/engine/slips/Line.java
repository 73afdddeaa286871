package org.snugsheet.engine.slips;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * One row of a column under suspicion: what was typed, and what it is taken for so far.
 *
 * @param row where it stands, counted from 1
 * @param minute when it was read
 * @param typed the number typed for the temperature
 * @param scale the scale it is taken to be in
 * @param around the surroundings then in °C; NaN if nobody read them
 * @param part which part of the column it belongs to: a new one begins where the jar was stirred or moved, or the readings stuck
 * @param stuck whether it is taken for a reading that no longer follows the jar
 */
record Line(int row, double minute, double typed, Scale scale, double around, int part, boolean stuck) {

    double celsius() {
        // 5 and then 9, as Scale does; not through Temperature, which refuses what a slip may well be.
        return scale == Scale.FAHRENHEIT ? (typed - 32) * 5 / 9 : scale == Scale.KELVIN ? typed - 273.15 : typed;
    }

    /** What was read, on the scale of the sheet. */
    double in(Scale shown) {
        return shown == scale ? typed : new Temperature(Math.max(celsius(), -273.15)).in(shown);
    }

    Line withTyped(double number) {
        return new Line(row, minute, number, scale, around, part, stuck);
    }

    Line withScale(Scale other) {
        return new Line(row, minute, typed, other, around, part, stuck);
    }

    Line withMinute(double other) {
        return new Line(row, other, typed, scale, around, part, stuck);
    }

    Line withAround(double celsius) {
        return new Line(row, minute, typed, scale, celsius, part, stuck);
    }

    Line withPart(int other) {
        return new Line(row, minute, typed, scale, around, other, stuck);
    }

    Line withStuckPart(int other) {
        return new Line(row, minute, typed, scale, around, other, true);
    }
}
