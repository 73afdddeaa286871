package org.snugsheet.engine.slips;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * One row of a {@link Column}: what was typed, and how it is interpreted so far.
 *
 * @param row its row, counted from 1
 * @param minute when it was read
 * @param clock the time as typed, however it is interpreted
 * @param typed the number typed for the temperature
 * @param scale the scale it is assumed to be in
 * @param around the surroundings then in °C; NaN if nobody read them
 * @param part which part of the column it belongs to: a new one begins where the jar was stirred or moved, or the readings stuck
 * @param stuck whether the reading is assumed not to follow the jar any more
 * @param corrected whether a hypothesis about this reading alone was accepted, so that its number is no longer the one that was
 *     typed
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
        boolean corrected) {

    double celsius() {
        // Times 5, then divided by 9, as Scale does. Not through Temperature, which rejects values that a slip may well
        // have.
        return scale == Scale.FAHRENHEIT
                ? (typed - 32) * 5 / 9
                : scale == Scale.KELVIN ? typed + Temperature.ABSOLUTE_ZERO : typed;
    }

    Line withTyped(double number) {
        return new Line(row, minute, clock, number, scale, around, part, stuck, true);
    }

    Line withScale(Scale other) {
        return new Line(row, minute, clock, typed, other, around, part, stuck, corrected);
    }

    /** This reading alone on a different scale from the rest of its column. */
    Line withOwnScale(Scale other) {
        return new Line(row, minute, clock, typed, other, around, part, stuck, true);
    }

    Line withMinute(double other) {
        return new Line(row, other, clock, typed, scale, around, part, stuck, corrected);
    }

    Line withAround(double celsius) {
        return new Line(row, minute, clock, typed, scale, celsius, part, stuck, corrected);
    }

    Line withPart(int other) {
        return new Line(row, minute, clock, typed, scale, around, other, stuck, corrected);
    }

    Line withStuckPart(int other) {
        return new Line(row, minute, clock, typed, scale, around, other, true, corrected);
    }
}
