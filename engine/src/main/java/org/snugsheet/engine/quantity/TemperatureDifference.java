package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;

/**
 * A distance between two temperatures. Conversion between scales only multiplies it by a factor: nothing is added or
 * subtracted.
 *
 * <pre>{@code
 * TemperatureDifference.of(9, Scale.FAHRENHEIT).in(Scale.CELSIUS); // 5.0
 * }</pre>
 *
 * @param kelvins the difference in kelvins (the same number in degrees Celsius), finite
 */
public record TemperatureDifference(double kelvins) implements Comparable<TemperatureDifference> {

    /**
     * A difference in kelvins.
     *
     * @throws InvalidInputException if it is not a finite number
     */
    public TemperatureDifference {
        Require.finite(kelvins);
    }

    /**
     * A difference in the degrees of a scale.
     *
     * @param degrees how many degrees
     * @param scale the degrees of which scale
     * @return the difference
     * @throws InvalidInputException if it is not a finite number
     */
    public static TemperatureDifference of(double degrees, Scale scale) {
        return new TemperatureDifference(scale.toKelvins(degrees));
    }

    /**
     * This difference in the degrees of a scale.
     *
     * @param scale the scale
     * @return how many of its degrees
     */
    public double in(Scale scale) {
        return scale.fromKelvins(kelvins);
    }

    @Override
    public int compareTo(TemperatureDifference other) {
        return Double.compare(kelvins, other.kelvins);
    }
}
