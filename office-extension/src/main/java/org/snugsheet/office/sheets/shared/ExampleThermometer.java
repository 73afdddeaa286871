package org.snugsheet.office.sheets.shared;

import java.util.Arrays;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * The thermometer of an example, whose lines are degrees of one scale: examples are thought out in degrees Celsius, and a class with
 * thermometers in degrees Fahrenheit sees them as it would have read them, in whole degrees and on lines of 2 °F.
 *
 * @param scale its scale
 * @param celsiusMark degrees from line to line, if the scale is that of Celsius
 */
public record ExampleThermometer(Scale scale, double celsiusMark) {

    private static final double FAHRENHEIT_MARK = 2;
    private static final double FINE = 0.01;

    /**
     * Its scale as somebody would type it.
     *
     * @return a letter
     */
    public String letter() {
        return isFahrenheit() ? "F" : "C";
    }

    /**
     * From line to line.
     *
     * @return the degrees of its scale
     */
    public double mark() {
        return isFahrenheit() ? FAHRENHEIT_MARK : celsiusMark;
    }

    /**
     * A temperature as somebody would type it.
     *
     * @param celsius in degrees Celsius
     * @return the number: a whole one on the scale of Fahrenheit
     */
    public double typed(double celsius) {
        return isFahrenheit() ? Math.rint(new Temperature(celsius).in(scale)) : celsius;
    }

    /**
     * Readings that nobody took, of a jar around which it is as cold as is typed.
     *
     * @param surroundings around the jars, in degrees Celsius
     * @param start of the water, in degrees Celsius
     * @param seed decides the errors
     * @return the readings, to be shown by {@link #shown}
     */
    public InventedReadings readings(double surroundings, double start, long seed) {
        return new InventedReadings(
                Temperature.of(typed(surroundings), scale),
                new Temperature(start),
                isFahrenheit() ? FINE : celsiusMark,
                seed);
    }

    /**
     * Readings as it shows them.
     *
     * @param celsius in degrees Celsius
     * @return in degrees of its scale, on its lines
     */
    public double[] shown(double[] celsius) {
        if (!isFahrenheit()) {
            return celsius;
        }
        return Arrays.stream(celsius)
                .map(each -> new Temperature(each).in(scale))
                .map(degrees -> FAHRENHEIT_MARK * Math.rint(degrees / FAHRENHEIT_MARK))
                .toArray();
    }

    private boolean isFahrenheit() {
        return scale == Scale.FAHRENHEIT;
    }
}
