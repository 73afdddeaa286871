package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/**
 * What the search for slips counts and weighs, worked out by hand or, where squares are summed, by Commons Math. What likelihoods mean is
 * in the package’s description.
 */
class SlipArithmeticTest {

    // ---- digits

    @ParameterizedTest
    @CsvSource({
        "53, 35",
        "105, 15 150",
        "41.5, 14.5 45.1",
        "4, 40",
        "-53, -35",
        "55, ''",
        "0, ''",
        "0.5, 5",
        "12.34, 21.34 13.24 12.43"
    })
    void twoDigitsBesideEachOtherMayBeSwapped(double typed, String meant) {
        Set<Double> expected = meant.isEmpty()
                ? Set.of()
                : Set.copyOf(
                        Arrays.stream(meant.split(" ")).map(Double::valueOf).toList());
        assertEquals(expected, DigitSlips.swapped(typed));
    }

    @Test
    void nobodyTypesSixteenDigits() {
        assertEquals(Set.of(), DigitSlips.swapped(1e15));
        assertEquals(Set.of(), DigitSlips.swapped(Double.POSITIVE_INFINITY));
        assertFalse(DigitSlips.swapped(999_999_999_999_998.0).isEmpty());
    }

    // ---- a thermometer out of the water

    /**
     * Half the gain is the logarithm of the odds of two hypotheses with normal errors, that is, half the difference of their sums of
     * squares in units of the variance: that of rounding to the mark, a twelfth of its square, and 0.2 K for the rest.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 1, 10",
        "12, 1, 10",
        "NaN, 1, 5",
        "20, 0.5, 8",
        "-4, 2, 6",
        "22, 1, 10",
        "38, 1, 9",
        "23, 0.5, 8",
        "15, 2, 10"
    })
    void aConstantColumnIsWeighedAgainstAJarWithAHalfTimeOfTwoAndAHalfHours(double around, double mark, int count) {
        double[] all = {30, 30, 30 + mark / 2, 30, 30 + mark / 2, 30, 30, 30, 30 + mark / 2, 30};
        double[] read = Arrays.copyOf(all, count);
        double mean = StatUtils.mean(read);
        double[] slow = new double[read.length];
        double[] off = new double[read.length];
        for (int i = 0; i < read.length; i++) {
            double warmer = Double.isNaN(around) ? 20 : mean - around;
            slow[i] = warmer * Math.exp(-Math.log(2) * 5 * i / 150);
        }
        for (int i = 0; i < read.length; i++) {
            off[i] = read[i] - slow[i];
        }
        double variance = Math.max(mark * mark / 12 + 0.04, StatUtils.variance(read));
        double gain = (StatUtils.variance(off) - StatUtils.variance(read)) * (read.length - 1) / variance - 0.5;
        Slip slip = ConstantColumn.in(column(around, mark, read)).orElseThrow();
        assertEquals(SlipKind.CONSTANT, slip.kind());
        assertEquals(1 / (1 + Math.exp(-gain / 2)), slip.certainty(), 1e-12);
    }

    // ---- a thermometer that sticks

    @Test
    void threeReadingsAlikeAtTheEndMayBeStuckAndTwoAreTooFew() {
        Sample sample = Sample.of(column(5, 1, 38, 33, 29, 25, 25, 25));
        assertTrue(Stuck.stays(sample, 3));
        assertFalse(Stuck.stays(sample, 4), "two readings");
        assertFalse(Stuck.stays(sample, 2), "29 is another level");
    }

    /** 40 35 31 27 go on as they should, so that only the repeats are wrong; a fall from 31 to 20 does not. */
    @Test
    void theRowBlamedIsTheFirstThatDoesNotFollowFromThoseBefore() {
        assertEquals(5, stuckFrom(3, 40, 35, 31, 27, 27, 27, 27));
        assertEquals(4, stuckFrom(3, 40, 35, 31, 20, 20, 20, 20));
        assertEquals(4, stuckFrom(3, 40, 35, 31, 31, 31, 31, 31), "no step at all");
        assertEquals(4, stuckFrom(3, 40, 36, 32, 36, 36, 36, 36), "back up");
    }

    /** A change by 5 K in 5 minutes is one by 10 K in ten. */
    @Test
    void theStepIsJudgedByItsMinutes() {
        double[] read = {45, 40, 35, 25, 25, 25, 25};
        List<Line> lines = new ArrayList<>(column(5, 1, read).lines());
        for (int i = 3; i < lines.size(); i++) {
            lines.set(i, lines.get(i).withMinute(lines.get(i).minute() + 5));
        }
        Column late = new Column(lines, Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS);
        assertEquals(5, stuckFrom(late, 3));
        assertEquals(4, stuckFrom(column(5, 1, read), 3), "10 K in five minutes are too many");
    }

    private static int stuckFrom(int row, double... read) {
        return stuckFrom(column(5, 1, read), row);
    }

    private static int stuckFrom(Column column, int row) {
        return new Stuck()
                .hypotheses(column, RobustFit.of(column))
                .filter(hypothesis -> hypothesis.corrected().at(row).part()
                        != hypothesis.corrected().at(row - 1).part())
                .findFirst()
                .orElseThrow()
                .finding()
                .row()
                .orElse(0);
    }

    // ---- how many

    /** Times that never rise are left out one by one, but twelve slips are enough for anybody. */
    @Test
    void atMostTwelveSlipsAreTold() {
        List<Slip> slips = SlipFinder.find(
                Collections.nCopies(20, Entry.of(5)),
                Collections.nCopies(20, Entry.of(30)),
                List.of(Entry.of(5)),
                Graduation.of(1, Scale.CELSIUS),
                Scale.CELSIUS);
        assertEquals(12, slips.size());
    }

    /** Four readings are the fewest that are searched; of three left nothing more is said. */
    @Test
    void ofFourReadingsOneTimeMayBeWrong() {
        List<Entry> times = List.of(Entry.of(0), Entry.of(5), Entry.of(5), Entry.of(10));
        List<Entry> readings = List.of(Entry.of(38), Entry.of(33), Entry.of(29), Entry.of(25));
        List<Slip> slips =
                SlipFinder.find(times, readings, List.of(Entry.of(5)), Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS);
        assertEquals(1, slips.size(), slips::toString);
        assertEquals(3, slips.get(0).row().orElse(0));
        List<Slip> ofThree = SlipFinder.find(
                times.subList(0, 3),
                readings.subList(0, 3),
                List.of(Entry.of(5)),
                Graduation.of(1, Scale.CELSIUS),
                Scale.CELSIUS);
        assertTrue(
                ofThree.stream()
                        .allMatch(slip -> slip.kind() == SlipKind.REFUSED || slip.kind() == SlipKind.UNREADABLE),
                ofThree::toString);
    }

    /** Two wild readings in one column of twelve are both told, and none of the others. */
    @Test
    void severalMisreadingsAreToldTogether() {
        List<Entry> times = new ArrayList<>();
        List<Entry> readings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            times.add(Entry.of(5 * i));
            readings.add(Entry.of(Math.rint(5 + 34 * Math.exp(-0.15 * i))));
        }
        readings.set(3, Entry.of(34.6));
        readings.set(8, Entry.of(2.3));
        List<Slip> slips =
                SlipFinder.find(times, readings, List.of(Entry.of(5)), Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS);
        assertEquals(
                Set.of(4, 9),
                Set.copyOf(slips.stream().map(slip -> slip.row().orElse(0)).toList()),
                slips::toString);
        assertTrue(slips.stream()
                .anyMatch(slip -> slip.finding().problem() == Problem.ROW_BEYOND_SURROUNDINGS
                        || slip.kind() != SlipKind.UNREADABLE));
    }

    private static Column column(double around, double mark, double... celsius) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            lines.add(new Line(i + 1, 5 * i, 5 * i, celsius[i], Scale.CELSIUS, around, 0, false, false));
        }
        return new Column(lines, Graduation.of(mark, Scale.CELSIUS), Scale.CELSIUS);
    }
}
