package org.snugsheet.engine.fairness;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Volume;

/**
 * What differs between two jars besides what they are wrapped in, and by what factor that alone would change the first jar’s rate
 * over the second’s.
 *
 * <p>Still air takes heat in proportion to θ^1.25, so the cooling constant goes with θ^¼, where θ is the difference to the
 * surroundings ({@link org.snugsheet.engine.cooling.FreeConvection}). From that follow the factors of a warmer start, of other
 * surroundings and of a longer lesson, for bare jars; a wrap makes them smaller. Jars of one shape have a surface that grows with
 * {@code V^⅔}, so {@code k = h·A/C} goes with {@code V^−⅓} (Incropera and DeWitt, section 5.1).
 */
public final class FairTest {

    private static final double POWER = 0.25;

    private FairTest() {}

    /** What can differ. */
    public enum Kind {
        /** The temperature of the first reading. */
        START,
        /** The surroundings. */
        SURROUNDINGS,
        /** How long the jars were read, in minutes. */
        TIMES,
        /** The water, in millilitres. */
        VOLUME
    }

    /**
     * One difference.
     *
     * @param kind what differs
     * @param first the first jar’s value, in degrees of the scale, minutes or millilitres
     * @param second the second jar’s
     * @param factor by what it alone multiplies the ratio of the rates, first over second; 1 is fair
     * @param matters whether that is more than the standard error of the ratio
     */
    public record Difference(Kind kind, double first, double second, double factor, boolean matters) {

        /**
         * By how much the ratio is off.
         *
         * @return per cent, positive if the first jar seems to cool faster for it
         */
        public double percent() {
            return 100 * (factor - 1);
        }
    }

    /**
     * The differences of two jars’ readings.
     *
     * @param first the fit of the first jar
     * @param second the fit of the second jar
     * @param volumes their amounts of water, or an empty list if nobody measured them
     * @return start, surroundings and times, and the volume if it was given
     * @throws org.snugsheet.engine.Refusal if the jars cannot be compared at all
     */
    public static List<Difference> of(CoolingFit first, CoolingFit second, List<Volume> volumes) {
        Scale scale = first.readings().scale();
        Ratio ratio = new Ratio(first.cautiousEstimate(), second.cautiousEstimate());
        double error = ratio.standardError() / ratio.value();
        double one = first.at(first.readings().first().seconds()).celsius();
        double two = second.at(second.readings().first().seconds()).celsius();
        double roomOne = first.surroundings().celsius();
        double roomTwo = second.surroundings().celsius();
        double room = (roomOne + roomTwo) / 2;
        double start = (one + two) / 2;
        List<Difference> found = new ArrayList<>();
        found.add(difference(
                Kind.START,
                first.at(first.readings().first().seconds()).in(scale),
                second.at(second.readings().first().seconds()).in(scale),
                Math.pow(Math.abs((one - room) / (two - room)), POWER),
                error));
        found.add(difference(
                Kind.SURROUNDINGS,
                first.surroundings().in(scale),
                second.surroundings().in(scale),
                Math.pow(Math.abs((start - roomOne) / (start - roomTwo)), POWER),
                error));
        double rate =
                Math.max(0, (first.constant().perSecond() + second.constant().perSecond()) / 2);
        double spanOne = first.readings().span();
        double spanTwo = second.readings().span();
        found.add(difference(
                Kind.TIMES, spanOne / 60, spanTwo / 60, meanShare(rate * spanOne) / meanShare(rate * spanTwo), error));
        if (volumes.size() == 2) {
            double v = volumes.get(0).cubicMetres();
            double w = volumes.get(1).cubicMetres();
            found.add(difference(Kind.VOLUME, v * 1e6, w * 1e6, Math.cbrt(w / v), error));
        }
        return List.copyOf(found);
    }

    private static Difference difference(Kind kind, double first, double second, double factor, double error) {
        return new Difference(kind, first, second, factor, Math.abs(Math.log(factor)) > error);
    }

    /**
     * The mean constant of a lesson over that at its start: from {@code θ = A(1 + kt/4)^−4} follows {@code ln(A/θ)/t =
     * 4·ln(1 + kt/4)/t}.
     */
    private static double meanShare(double passed) {
        return passed > 1e-9 ? 4 * Math.log1p(passed / 4) / passed : 1;
    }
}
