package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/**
 * The slip finder on a labelled set, made from invented jars with other seeds than those of {@link SlipReport}, whose large tables
 * stand in {@code engine/docs/slips.md}; and on single columns. It works longer than all other classes together, so its tests share the cores.
 */
@Execution(ExecutionMode.CONCURRENT)
class SlipFinderTest {

    private static final int RUNS = 70;
    private static final List<Double> TEMPERATURES = List.of(40.0, 35.0, 30.0, 26.0, 23.0, 20.0, 18.0, 16.0);

    /**
     * Ninety-five in a hundred are to be found. Of {@value #RUNS} at each of three marks so many may be missed by chance that 91 in a
     * hundred is three standard errors below it. Surroundings on the other scale, which nobody asked for, are found less often. What a mend
     * is proposed for has to be the right thing as well: 95 in a hundred, and nine in ten by chance.
     */
    @ParameterizedTest
    @EnumSource(SlipLab.Made.class)
    @Tag("simulation")
    void slipsAreFoundInTheirRow(SlipLab.Made made) {
        SplittableRandom random = new SplittableRandom(987_654 + made.name().hashCode());
        int found = 0;
        int named = 0;
        for (double mark : SlipReport.MARKS) {
            for (int run = 0; run < RUNS; run++) {
                SlipLab.Typed typed = SlipLab.with(made, mark, random);
                List<Slip> slips = typed.slips();
                found += SlipLab.isFound(made, typed, slips) ? 1 : 0;
                named += SlipLab.isNamed(made, typed, slips) ? 1 : 0;
            }
        }
        double wanted = made == SlipLab.Made.SURROUNDINGS_ON_OTHER_SCALE ? 0.86 : 0.91;
        assertTrue(found >= wanted * 3 * RUNS, found + " of " + 3 * RUNS);
        assertTrue(made != SlipLab.Made.MINUTES_SKIPPED || named >= 0.9 * 3 * RUNS, named + " of " + 3 * RUNS);
    }

    /** At most one clean column in a hundred is accused; of 1500 at most 26 by chance, three standard errors above 15. */
    @Test
    @Tag("simulation")
    void cleanColumnsAreLetAlone() {
        SplittableRandom random = new SplittableRandom(13_579);
        int accused = 0;
        for (double mark : SlipReport.MARKS) {
            for (int run = 0; run < 500; run++) {
                accused += SlipLab.clean(mark, random).slips().isEmpty() ? 0 : 1;
            }
        }
        assertTrue(accused <= 26, accused + " of 1500");
    }

    @ParameterizedTest
    @CsvSource({
        "3, 62, DIGITS_SWAPPED",
        "4, 73, READING_ON_OTHER_SCALE",
        "3, 260, COMMA_LOST",
        "5, 3, BEYOND_SURROUNDINGS"
    })
    void oneWrongReadingIsNamed(int index, double typed, SlipKind kind) {
        List<Double> readings = new ArrayList<>(TEMPERATURES);
        readings.set(index, typed);
        List<Slip> slips = find(readings, 0, Scale.CELSIUS);
        assertEquals(index + 1, slips.get(0).row().orElse(0), slips.toString());
        if (kind != SlipKind.COMMA_LOST) {
            assertEquals(kind, slips.get(0).kind());
        }
    }

    @Test
    void twoSlipsAreBothFound() {
        List<Double> readings = new ArrayList<>(TEMPERATURES);
        readings.set(1, 53.0);
        readings.set(6, 64.0);
        List<Integer> rows = find(readings, 0, Scale.CELSIUS).stream()
                .map(slip -> slip.row().orElse(0))
                .sorted()
                .toList();
        assertEquals(List.of(2, 7), rows);
    }

    @RepeatedTest(40)
    @Tag("simulation")
    void aLaterStartOfTheClockChangesNothing(RepetitionInfo seed) {
        SlipLab.Typed typed = withSlip(seed);
        List<Entry> later = typed.times().stream()
                .map(time -> Entry.of(((Entry.Value) time).value() + 7))
                .toList();
        List<Slip> moved = SlipFinder.find(later, typed.temps(), typed.around(), typed.mark(), typed.scale());
        assertEquals(kindsAndRows(typed.slips()), kindsAndRows(moved));
    }

    @RepeatedTest(40)
    @Tag("simulation")
    void aCleanColumnWithoutNoiseIsCleanWhateverTheLaw(RepetitionInfo seed) {
        SplittableRandom random = new SplittableRandom(seed.getCurrentRepetition());
        double rate = random.nextDouble(0.01, 0.15);
        double around = random.nextDouble(0, 15);
        List<Double> readings = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double left =
                    seed.getCurrentRepetition() % 2 == 0 ? Math.exp(-rate * 3 * i) : Math.pow(1 + rate * 3 * i / 4, -4);
            readings.add((double) Math.round(around + (42 - around) * left));
        }
        assertTrue(find(readings, around, Scale.CELSIUS, 3).isEmpty(), readings.toString());
    }

    @Test
    void nothingTypedIsChangedAndNoColumnIsTooShort() {
        assertFalse(find(List.of(), 5, Scale.CELSIUS).isEmpty(), "no readings are a trouble");
        assertFalse(find(List.of(40.0), 5, Scale.CELSIUS).isEmpty(), "one reading is too few");
    }

    /** Slips of the hand, each with what was meant; the readings are invented, rounded to a mark of 1 °C or half of one. */
    @ParameterizedTest
    @CsvSource({
        "0, 4.15, COMMA_LOST, 41.5",
        "1, 3.5, COMMA_LOST, 35",
        "3, -26, SIGN_WRONG, 26",
        "2, 40, TENS_MISREAD, 30",
        "5, 10, TENS_MISREAD, 20"
    })
    void whatWasMeantIsProposed(int index, double typed, SlipKind kind, double meant) {
        List<Double> readings = new ArrayList<>(TEMPERATURES);
        readings.set(index, typed);
        Slip slip = find(readings, 0, Scale.CELSIUS).get(0);
        assertEquals(kind, slip.kind(), slip.finding().sentence());
        assertEquals(index + 1, slip.row().orElse(0));
        assertEquals(meant, (double) slip.finding().arguments().get(2), 1e-9);
    }

    /** Two readings were typed in each other’s rows. Whatever is said, it quotes numbers that stand there. */
    @RepeatedTest(60)
    @Tag("simulation")
    void noReadingIsQuotedThatNobodyTyped(RepetitionInfo seed) {
        SplittableRandom random = new SplittableRandom(seed.getCurrentRepetition());
        SlipLab.Typed clean = SlipLab.clean(1, random);
        List<Entry> temps = new ArrayList<>(clean.temps());
        int one = random.nextInt(temps.size() - 4);
        java.util.Collections.swap(temps, one, one + random.nextInt(2, 5));
        for (Slip slip : SlipFinder.find(clean.times(), temps, clean.around(), clean.mark(), clean.scale())) {
            if (slip.row().isPresent() && slip.finding().arguments().size() == 4) {
                Entry typed = temps.get(slip.row().getAsInt() - 1);
                assertEquals(
                        ((Entry.Value) typed).value(),
                        (double) slip.finding().arguments().get(1),
                        1e-6,
                        slip.finding().sentence());
            }
        }
    }

    @Test
    void aSwapInTheFirstRowsQuotesWhatStandsThere() {
        List<Double> readings = List.of(35.0, 36.0, 37.0, 33.0, 32.0, 31.0, 30.0, 29.0, 28.0);
        for (Slip slip : find(readings, 19, Scale.CELSIUS, 3)) {
            assertFalse(slip.finding().sentence().contains("73"), slip.finding().sentence());
        }
    }

    private static List<String> kindsAndRows(List<Slip> slips) {
        return slips.stream()
                .map(slip -> slip.kind() + " " + slip.row().orElse(0))
                .sorted()
                .toList();
    }

    private static SlipLab.Typed withSlip(RepetitionInfo seed) {
        SlipLab.Made[] kinds = {
            SlipLab.Made.DIGITS_SWAPPED,
            SlipLab.Made.COMMA_LOST,
            SlipLab.Made.NOT_SETTLED,
            SlipLab.Made.STIRRED_OR_MOVED
        };
        int run = seed.getCurrentRepetition();
        return SlipLab.with(kinds[run % kinds.length], 1, new SplittableRandom(run));
    }

    private static List<Slip> find(List<Double> readings, double around, Scale scale) {
        return find(readings, around == 0 ? 8 : around, scale, 5);
    }

    private static List<Slip> find(List<Double> readings, double around, Scale scale, double interval) {
        List<Entry> times = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            times.add(Entry.of(i * interval));
        }
        return SlipFinder.find(
                times,
                readings.stream().map(Entry::of).toList(),
                List.of(Entry.of(around)),
                Graduation.usual(scale),
                scale);
    }
}
