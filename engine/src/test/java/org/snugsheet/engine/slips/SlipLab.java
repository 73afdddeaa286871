package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.CoolingModel;
import org.snugsheet.engine.cooling.FittedSurroundings;
import org.snugsheet.engine.cooling.TwoStage;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * A labelled set of typed columns: clean ones, and ones with a slip of a known kind in a known row, made from invented jars.
 *
 * <p><b>What can be seen at all.</b> No finder can see a slip that moves the numbers by less than they scatter. A slip counts as visible
 * if the column it leaves, without noise and rounding, lies off every curve of Newton’s law in the surroundings typed, and off those with
 * free surroundings and those of two stages if the jar has them, by a root sum of squares of {@value #VISIBLE} standard deviations of a reading (noise and rounding), and one
 * reading by more than a mark and two standard deviations of the noise. This is the noncentrality of the χ² test for lack of fit; at {@value #VISIBLE} deviations even a
 * test for one unknown row among twenty at one false alarm in a thousand has a power above 95 %. Slips of whole columns that keep to
 * a law (all on the other scale) have principles of their own, said beside them.
 */
final class SlipLab {

    static final double VISIBLE = 6.5;

    /** The slips, each with what it may be called. */
    enum Made {
        FAHRENHEIT_OR_CELSIUS_IN_ONE_ROW(EnumSet.of(SlipKind.READING_ON_OTHER_SCALE), true),
        COLUMN_ON_OTHER_SCALE(EnumSet.of(SlipKind.COLUMN_ON_OTHER_SCALE, SlipKind.ALL_ON_OTHER_SCALE), false),
        ALL_ON_OTHER_SCALE(EnumSet.of(SlipKind.ALL_ON_OTHER_SCALE, SlipKind.COLUMN_ON_OTHER_SCALE), false),
        SURROUNDINGS_ON_OTHER_SCALE(EnumSet.of(SlipKind.SURROUNDINGS_ON_OTHER_SCALE), false),
        DIGITS_SWAPPED(EnumSet.of(SlipKind.DIGITS_SWAPPED), true),
        COMMA_LOST(EnumSet.of(SlipKind.COMMA_LOST), true),
        MINUTES_SKIPPED(EnumSet.of(SlipKind.MINUTES_SKIPPED), true),
        MINUTES_REPEATED(EnumSet.of(SlipKind.MINUTES_REPEATED, SlipKind.TIME_WRONG), true),
        CLOCK_TIMES(EnumSet.of(SlipKind.CLOCK_TIMES), false),
        WARMER_THAN_BEFORE(EnumSet.of(SlipKind.GOES_BACK), true),
        BELOW_SURROUNDINGS(EnumSet.of(SlipKind.BEYOND_SURROUNDINGS), true),
        CONSTANT(EnumSet.of(SlipKind.CONSTANT), false),
        NOT_SETTLED(EnumSet.of(SlipKind.NOT_SETTLED), true),
        STIRRED_OR_MOVED(EnumSet.of(SlipKind.STIRRED_OR_MOVED), true),
        STUCK(EnumSet.of(SlipKind.STUCK), true);

        @SuppressWarnings("ImmutableEnumChecker") // nobody changes it
        private final Set<SlipKind> names;

        private final boolean hasRow;

        Made(Set<SlipKind> names, boolean hasRow) {
            this.names = names;
            this.hasRow = hasRow;
        }

        /**
         * Whether a slip stands where it was made. The last good reading of a thermometer that sticks there is the same number as the
         * first stuck one, so that its row cannot be told from the next.
         */
        private boolean isAt(Slip slip, Typed typed) {
            int reach = this == STUCK ? 1 : 0;
            return !hasRow || Math.abs(slip.row().orElse(Integer.MIN_VALUE / 2) - typed.row()) <= reach;
        }
    }

    /**
     * A typed column with its label.
     *
     * @param row the row of the slip; 0 if it is not one row’s
     */
    record Typed(
            InventedJar jar,
            List<Entry> times,
            List<Entry> temps,
            List<Entry> around,
            Scale scale,
            Graduation mark,
            int row) {

        List<Slip> slips() {
            return SlipFinder.find(times, temps, around, mark, scale);
        }
    }

    private SlipLab() {}

    static Typed clean(double mark, SplittableRandom random) {
        InventedJar jar = InventedJar.of(mark, random);
        return typed(jar, jar.minutes(), jar.read(jar.truth(), random), jar.surroundings(), jar.scale(), 0);
    }

    /** A column with a visible slip, as soon as one comes up. */
    static Typed with(Made made, double mark, SplittableRandom random) {
        while (true) {
            InventedJar jar = InventedJar.of(mark, random);
            Optional<Typed> typed = Slipped.of(made, jar, random);
            if (typed.isPresent()) {
                return typed.get();
            }
        }
    }

    /** Whether the slip is found: something at the right row, or for the whole column by its kind. */
    static boolean isFound(Made made, Typed typed, List<Slip> slips) {
        return slips.stream().anyMatch(slip -> made.hasRow ? made.isAt(slip, typed) : made.names.contains(slip.kind()));
    }

    /** Whether it is also called what it was. */
    static boolean isNamed(Made made, Typed typed, List<Slip> slips) {
        return slips.stream().anyMatch(slip -> made.names.contains(slip.kind()) && made.isAt(slip, typed));
    }

    /** Whether any other row is accused as well. */
    static boolean accusesOthers(Made made, Typed typed, List<Slip> slips) {
        return slips.stream()
                .anyMatch(slip -> made.hasRow ? !made.isAt(slip, typed) : !made.names.contains(slip.kind()));
    }

    static Typed typed(InventedJar jar, double[] minutes, double[] temps, List<Entry> around, Scale scale, int row) {
        List<Entry> times = new ArrayList<>();
        List<Entry> readings = new ArrayList<>();
        for (int i = 0; i < minutes.length; i++) {
            times.add(Entry.of(minutes[i]));
            readings.add(jar.missed()[i] && i + 1 != row ? Entry.of("-") : Entry.of(temps[i]));
        }
        return new Typed(jar, times, readings, around, scale, Graduation.of(jar.mark(), jar.scale()), row);
    }

    /** Whether a column without noise, with its slip, lies off every curve; see above. */
    static boolean isVisible(InventedJar jar, double[] minutes, double[] celsius, double most) {
        return most > jar.grain().graduation().kelvins() + 2 * jar.noise()
                && isOffItsSurroundings(jar, minutes, celsius)
                && misfit(jar, minutes, celsius, around -> new FittedSurroundings()) >= VISIBLE * jar.deviation();
    }

    /** Whether readings without noise lie off the curves of the jar’s law in the surroundings typed; see above. */
    static boolean isOffItsSurroundings(InventedJar jar, double[] minutes, double[] celsius) {
        double least = misfit(jar, minutes, celsius, CoolingModel::newton);
        if (jar.law() == InventedJar.Law.TWO_STAGES && Double.isFinite(least)) {
            Temperature room = new Temperature(jar.around()[0]);
            least = Math.min(least, misfit(jar, minutes, celsius, around -> new TwoStage(room)));
        }
        return least >= VISIBLE * jar.deviation();
    }

    private static double misfit(
            InventedJar jar, double[] minutes, double[] celsius, Function<Surroundings, CoolingModel> law) {
        List<Entry> times = new ArrayList<>();
        List<Entry> temps = new ArrayList<>();
        List<Entry> around = new ArrayList<>();
        for (int i = 0; i < minutes.length; i++) {
            times.add(Entry.of(minutes[i]));
            temps.add(jar.missed()[i] ? Entry.of("-") : Entry.of(celsius[i]));
            around.add(Entry.of(jar.around()[i]));
        }
        try {
            CoolingModel model = law.apply(Surroundings.of(around, times, Scale.CELSIUS));
            return Math.sqrt(model.fit(Readings.ofMinutes(times, temps, Scale.CELSIUS), jar.grain())
                    .sumOfSquares());
        } catch (InvalidInputException refusal) {
            // What no jar can do is off every curve.
            return Double.POSITIVE_INFINITY;
        }
    }

    static double number(double celsius, Scale scale) {
        return InventedJar.clean(new Temperature(celsius).in(scale));
    }
}
