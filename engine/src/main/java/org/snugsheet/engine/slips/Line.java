package org.snugsheet.engine.slips;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * One row of a column under suspicion: what was typed, and what it is taken for so far.
 *
 * @param row where it stands, counted from 1
 * @param minute when it was read
 * @param clock the time that was typed, whatever it is taken for so far
 * @param typed the number typed for the temperature
 * @param scale the scale it is taken to be in
 * @param around the surroundings then in °C; NaN if nobody read them
 * @param part which part of the column it belongs to: a new one begins where the jar was stirred or moved, or the readings stuck
 * @param stuck whether it is taken for a reading that no longer follows the jar
 * @param mended whether a story about this reading alone was believed: then its number is no longer the one that was typed
 */
record Line(
        int row,
        double minute,
        double clock,
        double typed,
        Scale scale,
        double around,
        int part,
        boolean stuck,
        boolean mended) {

    double celsius() {
        // 5 and then 9, as Scale does; not through Temperature, which refuses what a slip may well be.
        return scale == Scale.FAHRENHEIT ? (typed - 32) * 5 / 9 : scale == Scale.KELVIN ? typed - 273.15 : typed;
    }

    /** What was read, on the scale of the sheet. */
    double in(Scale shown) {
        return shown == scale ? typed : new Temperature(Math.max(celsius(), -273.15)).in(shown);
    }

    Line withTyped(double number) {
        return new Line(row, minute, clock, number, scale, around, part, stuck, true);
    }

    Line withScale(Scale other) {
        return new Line(row, minute, clock, typed, other, around, part, stuck, mended);
    }

    /** This one reading on another scale than the rest of its column. */
    Line withOwnScale(Scale other) {
        return new Line(row, minute, clock, typed, other, around, part, stuck, true);
    }

    Line withMinute(double other) {
        return new Line(row, other, clock, typed, scale, around, part, stuck, mended);
    }

    Line withAround(double celsius) {
        return new Line(row, minute, clock, typed, scale, celsius, part, stuck, mended);
    }

    Line withPart(int other) {
        return new Line(row, minute, clock, typed, scale, around, other, stuck, mended);
    }

    Line withStuckPart(int other) {
        return new Line(row, minute, clock, typed, scale, around, other, true, mended);
    }
}
