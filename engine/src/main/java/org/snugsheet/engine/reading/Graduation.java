package org.snugsheet.engine.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;

/**
 * The graduation of a thermometer: the distance between its marks, to which readings are rounded.
 *
 * @param graduation the distance from one mark to the next, positive
 */
public record Graduation(TemperatureDifference graduation) {

    /** More digits than any thermometer shows, and fewer than a change of scale disturbs. */
    private static final MathContext DIGITS = new MathContext(12);

    /**
     * A mark.
     *
     * @throws InvalidInputException if it is not positive
     */
    public Graduation {
        if (!(graduation.kelvins() > 0)) {
            throw InvalidInputException.of(Problem.MARK_NOT_POSITIVE);
        }
    }

    /**
     * A mark counted on a scale.
     *
     * @param degrees how many degrees from mark to mark
     * @param scale the degrees of which scale
     * @return the mark
     * @throws InvalidInputException if it is not positive
     */
    public static Graduation of(double degrees, Scale scale) {
        return new Graduation(TemperatureDifference.of(degrees, scale));
    }

    /**
     * The mark of a usual classroom thermometer: 1 °C, or 2 °F (common practice, no source).
     *
     * @param scale the scale printed on it
     * @return its mark
     */
    public static Graduation usual(Scale scale) {
        return of(scale == Scale.FAHRENHEIT ? 2 : 1, scale);
    }

    /**
     * The mark nearest to a temperature; halfway between two marks, the one farther from zero.
     *
     * @param temperature the temperature
     * @param scale the scale on which the marks are printed, one of them at 0
     * @return degrees on that scale
     */
    public double nearest(Temperature temperature, Scale scale) {
        BigDecimal step = decimal(graduation.in(scale));
        BigDecimal marks = decimal(temperature.in(scale)).divide(step, 0, RoundingMode.HALF_UP);
        return marks.multiply(step).doubleValue();
    }

    // In decimals, so that 20.4 at a mark of 0.2 stays 20.4 and not 20.400000000000002.
    private static BigDecimal decimal(double degrees) {
        return new BigDecimal(degrees, DIGITS);
    }

    /**
     * The standard uncertainty of a reading that is rounded to this mark, {@code a/√12}: any value within half a mark is
     * equally likely (JCGM 100:2008, GUM, 4.3.7 and F.2.2.1).
     *
     * @return kelvins
     */
    public double standardUncertainty() {
        return graduation.kelvins() / Math.sqrt(12);
    }
}
