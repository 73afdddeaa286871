package org.snugsheet.engine.cooling;

import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;

/**
 * A model with one cooling constant k, of the form {@code T(t) = g(t; k) + A·φ(t; k)} and perhaps a free level, where t
 * starts at the first reading and {@code φ(0) = 1}. Then A is the difference to the surroundings at the first reading.
 */
public sealed interface OneRateModel extends CoolingModel
        permits ConstantSurroundings, FittedSurroundings, ChangingSurroundings, ClosedPair, FreeConvection {

    /**
     * Shape and offset at one time, with their slopes by k.
     *
     * @param shape φ
     * @param shapeSlope ∂φ/∂k
     * @param offset g in °C; zero where the level is free
     * @param offsetSlope ∂g/∂k
     */
    record At(double shape, double shapeSlope, double offset, double offsetSlope) {

        static At exponential(double seconds, double rate, double surroundings) {
            double left = Math.exp(-rate * seconds);
            return new At(left, -seconds * left, surroundings, 0);
        }
    }

    /**
     * Evaluates the law at one time.
     *
     * @param origin the time of the first reading, in seconds
     * @param seconds the time, in seconds after the origin
     * @param rate k in 1/s
     * @return shape and offset there
     */
    At at(double origin, double seconds, double rate);

    /**
     * The temperature of the surroundings at one time.
     *
     * @param time the time in seconds, by the clock of the readings
     * @return the temperature of the surroundings in °C; zero if it is to be fitted
     */
    double around(double time);

    /**
     * The standard uncertainty of given surroundings that were read on the jar’s thermometer. To first order they shift as a
     * whole.
     *
     * @param mark the mark of that thermometer
     * @return the standard uncertainty in kelvins; zero if they are known exactly, or fitted
     */
    double surroundingsUncertainty(Graduation mark);

    /**
     * Whether the temperature of the surroundings is to be fitted.
     *
     * @return true if it is
     */
    default boolean fitsSurroundings() {
        return false;
    }

    @Override
    default int parameters() {
        return fitsSurroundings() ? 3 : 2;
    }

    @Override
    default CoolingFit fit(Readings readings, Graduation mark) {
        return CoolingFit.of(readings, this, mark);
    }
}
