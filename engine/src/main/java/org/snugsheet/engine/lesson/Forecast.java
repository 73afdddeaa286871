package org.snugsheet.engine.lesson;

import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.quantity.Temperature;

/** How a jar is expected to cool, in surroundings that stay as they are ({@link Steady}) or in a tub that warms ({@link Warming}). */
public sealed interface Forecast permits Steady, Warming {

    /**
     * Where it begins.
     *
     * @return the temperature of the jar at time zero
     */
    Temperature start();

    /**
     * The share of the difference that it loses.
     *
     * @return its cooling constant
     */
    CoolingConstant constant();

    /**
     * Another jar that begins as warm, in the same surroundings.
     *
     * @param constant its cooling constant
     * @return how it will cool
     */
    Forecast with(CoolingConstant constant);

    /**
     * The jar after a while.
     *
     * @param seconds since the start
     * @return its temperature
     */
    Temperature after(double seconds);

    /**
     * What it stands in after a while.
     *
     * @param seconds since the start
     * @return the temperature of that
     */
    Temperature surroundingsAfter(double seconds);

    /**
     * By how much the jar would be warmer for a larger constant, in the same surroundings: ∂T/∂k.
     *
     * @param seconds since the start
     * @return K·s, less than zero for a jar that cools
     */
    double slope(double seconds);

    /**
     * How much warmer than its surroundings the jar is.
     *
     * @param seconds since the start
     * @return K, less than zero if it is colder
     */
    default double difference(double seconds) {
        return after(seconds).minus(surroundingsAfter(seconds)).kelvins();
    }
}
