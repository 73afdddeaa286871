package org.snugsheet.engine.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Time;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * The differences between two jars other than their wraps, and the factor by which each alone would change the ratio of the
 * first jar’s rate to the second’s.
 *
 * <p>Still air takes heat in proportion to θ^1.25, where θ is the difference to the surroundings
 * ({@code FreeConvection} in {@code org.snugsheet.engine.cooling}), so that a jar which is warmer or read for less time seems to cool
 * faster. The size of that bias is computed for two bare jars that differ only in this respect: both follow
 * {@code θ = A·(1 + k·t/4)^(−4)} with k as A^¼, both are read without error at the times of the class, and both are fitted as
 * the class’s jars are. A wrap makes the bias smaller. Jars of one shape have a surface that grows with {@code V^⅔}, so
 * {@code k = h·A/C} goes with {@code V^−⅓} (Incropera and DeWitt, section 5.1). The bias of lids is computed in
 * {@link LidBias}; a wrap makes it larger.
 */
public final class FairTest {

    private static final double POWER = 0.25;
    private static final Graduation FINE = Graduation.of(1e-6, Scale.CELSIUS);

    private FairTest() {}

    /** What can differ. */
    public enum Kind {
        /** The temperature of the first reading. */
        START,
        /** The surroundings. */
        SURROUNDINGS,
        /** How long the jars were read, in minutes. */
        TIMES,
        /** The water, in milliliters. */
        VOLUME,
        /** The heat that goes through the lid, in watts. */
        LID
    }

    /**
     * One difference.
     *
     * @param kind what differs
     * @param first the first jar’s value, in degrees of the scale, minutes, milliliters or watts
     * @param second the second jar’s
     * @param factor the factor by which it alone changes the ratio of the rates, first over second; 1 is fair
     * @param matters whether that is more than the standard error of the ratio
     */
    public record Difference(Kind kind, double first, double second, double factor, boolean matters) {

        /**
         * The bias of the ratio.
         *
         * @return percent, positive if it makes the first jar seem to cool faster
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
     * @param volumes their amounts of water, or an empty list if they were not measured
     * @param lids their lids, or an empty list if unknown
     * @return start, surroundings and times, and volume and lid if they were given
     * @throws org.snugsheet.engine.InvalidInputException if the jars cannot be compared at all
     */
    public static List<Difference> of(CoolingFit first, CoolingFit second, List<Volume> volumes, List<Lid> lids) {
        double rate = (first.constant().perMinute() + second.constant().perMinute()) / 2;
        // Jars that do not cool show no bias of their rates.
        if (!(rate > 0)) {
            throw InvalidInputException.of(Problem.BOTH_HARDLY_COOL);
        }
        Scale scale = first.readings().scale();
        // Only a single reading of the surroundings has the same error for both.
        boolean readOnce = first.model().equals(second.model());
        Ratio ratio = readOnce
                ? new Ratio(first.conservativeEstimate(), second.conservativeEstimate())
                : new Ratio(
                        first.conservativeEstimate().onItsOwn(),
                        second.conservativeEstimate().onItsOwn());
        double error = ratio.standardError() / ratio.value();
        double one = first.at(first.readings().first().seconds()).celsius();
        double two = second.at(second.readings().first().seconds()).celsius();
        double roomOne = first.surroundings().celsius();
        double roomTwo = second.surroundings().celsius();
        double room = (roomOne + roomTwo) / 2;
        double start = (one + two) / 2;
        Bare usual = new Bare(rate, start - room);
        List<Difference> found = new ArrayList<>();
        found.add(difference(
                Kind.START,
                new Temperature(one).in(scale),
                new Temperature(two).in(scale),
                usual.read(first, one - room) / usual.read(first, two - room),
                error));
        found.add(difference(
                Kind.SURROUNDINGS,
                first.surroundings().in(scale),
                second.surroundings().in(scale),
                usual.read(first, start - roomOne) / usual.read(first, start - roomTwo),
                error));
        found.add(difference(
                Kind.TIMES,
                first.readings().span() / Time.SECONDS_PER_MINUTE,
                second.readings().span() / Time.SECONDS_PER_MINUTE,
                usual.read(first, start - room) / usual.read(second, start - room),
                error));
        if (volumes.size() == 2) {
            double v = volumes.get(0).cubicMeters();
            double w = volumes.get(1).cubicMeters();
            found.add(difference(Kind.VOLUME, v * 1e6, w * 1e6, Math.cbrt(w) / Math.cbrt(v), error));
        }
        if (lids.size() == 2) {
            LidBias bias = LidBias.of(first, second, volumes);
            bias.factor(lids.get(0), lids.get(1))
                    .ifPresent(factor -> found.add(
                            difference(Kind.LID, bias.watts(lids.get(0)), bias.watts(lids.get(1)), factor, error)));
        }
        return List.copyOf(found);
    }

    /**
     * The bias of the ratio if the first jar were open and the second had a thin lid.
     *
     * @param first the fit of the first jar
     * @param second the fit of the second jar
     * @param volumes their amounts of water, or an empty list if they were not measured
     * @return percent; empty for cold water in a warm room that evaporates more than it takes up
     */
    public static Optional<Double> percentIfOneStoodOpen(CoolingFit first, CoolingFit second, List<Volume> volumes) {
        return LidBias.of(first, second, volumes).factor(Lid.OPEN, Lid.BARE).map(factor -> 100 * (factor - 1));
    }

    private static Difference difference(Kind kind, double first, double second, double factor, double error) {
        return new Difference(kind, first, second, factor, Math.abs(Math.log(factor)) > error);
    }

    /**
     * A bare jar in still air.
     *
     * @param rate its cooling constant at the usual difference, 1/min
     * @param usual that difference, K
     */
    private record Bare(double rate, double usual) {

        /**
         * The constant found if the jar started that much warmer than its surroundings and were read at the times of another
         * jar.
         */
        double read(CoolingFit times, double above) {
            List<Entry> minutes = new ArrayList<>();
            List<Entry> readings = new ArrayList<>();
            double constant = rate * Math.pow(Math.abs(above / usual), POWER);
            double first = times.readings().first().seconds();
            for (Reading reading : times.readings().all()) {
                double passed = (reading.seconds() - first) / Time.SECONDS_PER_MINUTE;
                minutes.add(Entry.of(passed));
                readings.add(Entry.of(above * Math.pow(1 + constant * passed / 4, -4)));
            }
            return CoolingFit.of(Readings.ofMinutes(minutes, readings, Scale.CELSIUS), Surroundings.meltingIce(), FINE)
                    .constant()
                    .perMinute();
        }
    }
}
