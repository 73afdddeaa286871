package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * A temperature: a point on a scale.
 *
 * <pre>{@code
 * Temperature.of(68, Scale.FAHRENHEIT).in(Scale.CELSIUS); // 20.0
 * Temperature.of(-300, Scale.CELSIUS);                    // refused: colder than anything can be
 * }</pre>
 *
 * @param celsius degrees Celsius, finite, not below absolute zero
 */
public record Temperature(double celsius) implements Comparable<Temperature> {

    /** Absolute zero in degrees Celsius, exact by the definition of the scale. */
    public static final double ABSOLUTE_ZERO = -273.15;

    /**
     * A temperature in degrees Celsius.
     *
     * @throws InvalidInputException if it is not a finite number or colder than absolute zero
     */
    public Temperature {
        requirePossible(celsius, celsius, Scale.CELSIUS);
    }

    /**
     * A temperature as read on a scale.
     *
     * @param degrees the number read
     * @param scale the scale it was read on
     * @return the temperature
     * @throws InvalidInputException if it is not a finite number or colder than absolute zero
     */
    public static Temperature of(double degrees, Scale scale) {
        double celsius = scale.toCelsius(degrees);
        requirePossible(celsius, degrees, scale);
        return new Temperature(celsius);
    }

    /**
     * This temperature as a number on a scale.
     *
     * @param scale the scale
     * @return degrees on that scale
     */
    public double in(Scale scale) {
        return scale.fromCelsius(celsius);
    }

    /**
     * How much warmer this is than another temperature.
     *
     * @param other the other temperature
     * @return the difference, negative if this one is colder
     */
    public TemperatureDifference minus(Temperature other) {
        return new TemperatureDifference(celsius - other.celsius);
    }

    /**
     * The temperature that is warmer by a difference.
     *
     * @param difference how much
     * @return the warmer temperature
     * @throws InvalidInputException if that would be colder than absolute zero
     */
    public Temperature plus(TemperatureDifference difference) {
        return new Temperature(celsius + difference.kelvins());
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }

    private static void requirePossible(double celsius, double typed, Scale scale) {
        if (!Double.isFinite(celsius)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(typed));
        }
        // The scale with the smallest degrees; what hurts is told on it, too.
        if (!Double.isFinite(Scale.FAHRENHEIT.fromCelsius(celsius))) {
            throw InvalidInputException.of(Problem.ANSWER_TOO_LARGE);
        }
        if (celsius < ABSOLUTE_ZERO) {
            throw InvalidInputException.of(Problem.BELOW_ABSOLUTE_ZERO, typed, scale.symbol());
        }
    }
}
