package org.snugsheet.engine.reading;

import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;

/**
 * The smallest mark of a thermometer, to which a reading is rounded.
 *
 * @param graduation from one mark to the next, more than zero
 */
public record Mark(TemperatureDifference graduation) {

    /**
     * A mark.
     *
     * @throws Refusal if it is not more than zero
     */
    public Mark {
        if (!(graduation.kelvins() > 0)) {
            throw Refusal.of(Trouble.MARK_NOT_POSITIVE);
        }
    }

    /**
     * A mark counted on a scale.
     *
     * @param degrees how many degrees from mark to mark
     * @param scale the degrees of which scale
     * @return the mark
     * @throws Refusal if it is not more than zero
     */
    public static Mark of(double degrees, Scale scale) {
        return new Mark(TemperatureDifference.of(degrees, scale));
    }

    /**
     * The mark of a usual classroom thermometer: 1 °C, or 2 °F (common practice, no source).
     *
     * @param scale the scale printed on it
     * @return its mark
     */
    public static Mark usual(Scale scale) {
        return of(scale == Scale.FAHRENHEIT ? 2 : 1, scale);
    }

    /**
     * The standard uncertainty that rounding to this mark leaves in a reading, {@code a/√12}: any value within half a mark
     * is equally likely (JCGM 100:2008, GUM, 4.3.7 and F.2.2.1).
     *
     * @return kelvins
     */
    public double standardUncertainty() {
        return graduation.kelvins() / Math.sqrt(12);
    }
}
