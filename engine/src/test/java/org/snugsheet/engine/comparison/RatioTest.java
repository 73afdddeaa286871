package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;

class RatioTest {

    private static final double INFINITY = Double.POSITIVE_INFINITY;

    static List<Map<String, String>> comparisons() {
        return PublishedTable.rows(RatioTest.class, "scipy-comparisons.csv");
    }

    /** The first order alone is SciPy’s own {@code ttest_ind_from_stats}; below three degrees of freedom it is more careful. */
    @ParameterizedTest
    @MethodSource("comparisons")
    void withoutTheSecondOrderItIsWelchsTestOfSciPy(Map<String, String> row) {
        Ratio ratio = ratio(row);
        Welch welch = Welch.of(1, ratio.first(), 1, ratio.second());

        double ours = StudentT.twoSided(welch.t(), welch.satterthwaite());
        double published = number(row, "p");
        double fewest = Math.min(number(row, "freedom1"), number(row, "freedom2"));
        if (fewest >= Welch.FEWEST || number(row, "freedom1") == number(row, "freedom2")) {
            assertEquals(published, ours, 1e-8 * published);
        } else {
            assertTrue(ours > published);
        }
    }

    /** With the second order no difference is claimed that SciPy would not claim, and no limit is nearer than its. */
    @ParameterizedTest
    @MethodSource("comparisons")
    void itIsNeverBolderThanWelchsTestOfSciPy(Map<String, String> row) {
        Ratio ratio = ratio(row);
        Interval interval = ratio.interval(number(row, "confidence"));

        assertTrue(ratio.equalityP() >= number(row, "p") * (1 - 1e-8), "p: " + ratio.equalityP());
        assertTrue(interval.low() <= number(row, "low") * (1 + 1e-8), interval::toString);
        assertTrue(interval.high() >= number(row, "high") * (1 - 1e-8), interval::toString);
    }

    /** Where both errors are known beforehand, or one value is exact, no share is estimated, and both are SciPy’s to the digit. */
    @Test
    void withNothingToBeCarefulAboutItIsSciPys() {
        int compared = 0;
        for (Map<String, String> row : comparisons()) {
            boolean known = number(row, "freedom1") == INFINITY && number(row, "freedom2") == INFINITY;
            if (known || number(row, "error1") == 0) {
                Interval interval = ratio(row).interval(number(row, "confidence"));
                double p = number(row, "p");
                assertEquals(p, ratio(row).equalityP(), 1e-8 * p);
                same(number(row, "low"), interval.low());
                same(number(row, "high"), interval.high());
                compared++;
            }
        }
        assertEquals(5, compared);
    }

    /** Fieller’s limits are by definition where the test just passes; so the two parts of the program must say the same. */
    @ParameterizedTest
    @MethodSource("comparisons")
    void atItsLimitsTheTestJustPasses(Map<String, String> row) {
        double confidence = number(row, "confidence");
        Interval interval = ratio(row).interval(confidence);
        for (double limit : new double[] {interval.low(), interval.high()}) {
            if (limit > 0 && limit < INFINITY) {
                Estimate second = ratio(row).second();
                Estimate scaled =
                        new Estimate(limit * second.value(), limit * second.standardError(), second.degreesOfFreedom());
                assertEquals(1 - confidence, new Ratio(ratio(row).first(), scaled).equalityP(), 1e-7);
            }
        }
    }

    private static Ratio ratio(Map<String, String> row) {
        return new Ratio(
                new Estimate(number(row, "value1"), number(row, "error1"), number(row, "freedom1")),
                new Estimate(number(row, "value2"), number(row, "error2"), number(row, "freedom2")));
    }

    /**
     * Welch’s test of Student’s own data, the hours of sleep that ten people gained by two drugs (Biometrika 6 (1908), 20);
     * the help page of R’s t.test has t = −1.8608, df = 17.776, p = 0.07939.
     */
    @Test
    void studentsSleepersAreComparedAsInTheHelpOfR() {
        Estimate one = sample(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0);
        Estimate other = sample(1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4);

        Welch plain = Welch.of(1, one, 1, other);

        assertEquals(-1.8608, plain.t(), 0.00005);
        assertEquals(17.776, plain.satterthwaite(), 0.0005);
        assertEquals(0.07939, StudentT.twoSided(plain.t(), plain.satterthwaite()), 0.000005);
        // The second order takes next to nothing away where both are known alike.
        assertEquals(0.0794, new Ratio(one, other).equalityP(), 0.0001);
    }

    /** Fieller 1954, in the closed form for known errors: the roots of (b² − z²·s_b²)·ρ² − 2·a·b·ρ + a² − z²·s_a² = 0. */
    @Test
    void withKnownErrorsTheLimitsAreFiellersRoots() {
        double z = 1.959963984540054;
        Random random = new Random(4);
        for (int i = 0; i < 200; i++) {
            double a = 1 + 3 * random.nextDouble();
            double b = 1 + 3 * random.nextDouble();
            double errorA = 0.4 * random.nextDouble();
            double errorB = 0.4 * random.nextDouble();
            double square = b * b - z * z * errorB * errorB;
            double root = Math.sqrt(a * b * a * b - square * (a * a - z * z * errorA * errorA));

            Interval interval =
                    new Ratio(new Estimate(a, errorA, INFINITY), new Estimate(b, errorB, INFINITY)).interval(0.95);

            same((a * b - root) / square, interval.low());
            same((a * b + root) / square, interval.high());
        }
    }

    /** JCGM 100:2008, 5.1.6: the relative variances of a quotient add. */
    @Test
    void theStandardErrorAddsRelativeVariances() {
        Ratio ratio = new Ratio(new Estimate(0.03, 0.0015, 8), new Estimate(0.015, 0.0018, 8));

        assertEquals(2, ratio.value(), 1e-12);
        assertEquals(2 * Math.sqrt(0.05 * 0.05 + 0.12 * 0.12), ratio.standardError(), 1e-12);
    }

    @Test
    void anEstimateDividedByItselfIsOneAndNotSeparated() {
        Random random = new Random(5);
        for (int i = 0; i < 100; i++) {
            Estimate any = anyEstimate(random);
            Ratio ratio = new Ratio(any, any);

            assertEquals(1, ratio.equalityP(), 0);
            assertTrue(ratio.interval(0.95).contains(1));
            if (ratio.isDefined()) {
                assertTrue(ratio.interval(0.01).contains(1));
                assertEquals(1, ratio.value(), 0);
            }
        }
    }

    @Test
    void theLimitsHoldTheValueAndWidenWithConfidence() {
        Random random = new Random(6);
        for (int i = 0; i < 200; i++) {
            Ratio ratio = new Ratio(anyEstimate(random), anyEstimate(random));
            Interval narrow = ratio.interval(0.8);
            Interval wide = ratio.interval(0.95);

            if (ratio.isDefined() && ratio.value() >= 0) {
                assertTrue(narrow.contains(ratio.value()), ratio::toString);
            }
            assertTrue(wide.low() <= narrow.low() && narrow.high() <= wide.high(), ratio::toString);
        }
    }

    @Test
    void swappingTheTwoInvertsTheRatioAndItsLimits() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Ratio ratio = new Ratio(anyEstimate(random), anyEstimate(random));
            Interval interval = ratio.interval(0.95);
            Interval swapped = ratio.inverse().interval(0.95);

            assertEquals(ratio.equalityP(), ratio.inverse().equalityP(), 1e-15);
            same(1 / interval.high(), swapped.low());
            same(1 / interval.low(), swapped.high());
        }
    }

    @Test
    void theUnitDoesNotMatter() {
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            Estimate first = anyEstimate(random);
            Estimate second = anyEstimate(random);
            Ratio ratio = new Ratio(first, second);
            Ratio other = new Ratio(scaled(first, 1e-7), scaled(second, 1e-7));

            assertEquals(ratio.equalityP(), other.equalityP(), 1e-12);
            same(ratio.interval(0.95).low(), other.interval(0.95).low());
            same(ratio.interval(0.95).high(), other.interval(0.95).high());
        }
    }

    /** With three degrees of freedom or more, so that the allowed ratios are in one piece. */
    @Test
    void theLimitsHoldOneJustWhenWelchsTestDoesNotTellTheTwoApart() {
        Random random = new Random(9);
        int apart = 0;
        for (int i = 0; i < 300; i++) {
            Ratio ratio = new Ratio(anyEstimate(random), anyEstimate(random));
            boolean told = ratio.equalityP() < 0.05;
            apart += told ? 1 : 0;

            assertEquals(!told, ratio.interval(0.95).contains(1), ratio::toString);
        }
        assertTrue(apart > 50 && apart < 250, "both happen: " + apart);
    }

    @Test
    void aSecondThatMayNotCoolLeavesNoUpperLimit() {
        Ratio ratio = new Ratio(new Estimate(0.03, 0.001, 10), new Estimate(0.001, 0.0008, 10));

        Interval interval = ratio.interval(0.95);
        assertEquals(INFINITY, interval.high());
        assertTrue(interval.low() > 5 && interval.low() < 30, interval::toString);
        assertTrue(ratio.isDefined());
    }

    @Test
    void aSecondBelowItsErrorIsNotDividedBy() {
        Ratio ratio = new Ratio(new Estimate(0.03, 0.001, 10), new Estimate(0.0007, 0.0008, 10));

        assertFalse(ratio.isDefined());
        assertSame(Problem.SECOND_HARDLY_COOLS, refused(ratio::value));
        assertSame(Problem.SECOND_HARDLY_COOLS, refused(ratio::standardError));
        assertTrue(ratio.interval(0.95).low() > 5);
    }

    @Test
    void whenBothMayNotCoolAnythingIsPossible() {
        Estimate hardly = new Estimate(0.0005, 0.0008, 10);
        Estimate warming = new Estimate(-0.0005, 0.0008, 10);

        assertEquals(new Interval(0, INFINITY), new Ratio(hardly, hardly).interval(0.95));
        assertEquals(new Interval(0, INFINITY), new Ratio(warming, hardly).interval(0.95));
        assertEquals(new Interval(0, INFINITY), new Ratio(warming, warming).interval(0.95));
    }

    @Test
    void aJarThatWarmsByMoreThanItsErrorHasNoRatio() {
        Estimate cools = new Estimate(0.03, 0.001, 10);
        Estimate warms = new Estimate(-0.01, 0.001, 10);

        assertSame(Problem.NO_RATIO, refused(() -> new Ratio(cools, warms).interval(0.95)));
        assertSame(Problem.NO_RATIO, refused(() -> new Ratio(warms, cools).interval(0.95)));
        assertSame(Problem.NO_RATIO, refused(() -> new Ratio(warms, warms).interval(0.95)));
    }

    @Test
    void withoutAnyErrorTheRatioIsExact() {
        Random random = new Random(10);
        for (int i = 0; i < 100; i++) {
            Ratio ratio =
                    new Ratio(new Estimate(random.nextDouble(), 0, 5), new Estimate(random.nextDouble() + 1, 0, 7));

            assertTrue(ratio.interval(0.95).contains(ratio.value()));
            same(ratio.value(), ratio.interval(0.95).low());
            same(ratio.value(), ratio.interval(0.95).high());
            assertEquals(0, ratio.equalityP());
            assertEquals(0, ratio.standardError());
        }
        assertEquals(
                0,
                new Ratio(new Estimate(0, 0, 5), new Estimate(2, 0, 5))
                        .interval(0.95)
                        .low());
    }

    /** Two jars on each side: t is 12.7 at the ends and 4.3 between, so 0 is allowed, 0.8 and 1 are not, and 2.4 is. */
    @Test
    void ratiosInTwoPiecesAreReachedOverByOneInterval() {
        Estimate first = new Estimate(12, 1, 1);
        Estimate second = new Estimate(5, 1, 1);

        assertTrue(Welch.p(1, first, 0, second) > 0.05);
        assertTrue(Welch.p(1, first, 0.8, second) < 0.05);
        assertTrue(Welch.p(1, first, 1, second) < 0.05);
        assertEquals(new Interval(0, INFINITY), new Ratio(first, second).interval(0.95));
    }

    /**
     * With one degree of freedom t itself grows toward the ends, and what is allowed lies in two pieces: here up to a ratio of about 4 and
     * again from about 9 to 50. The limits hold both.
     */
    @Test
    void limitsHoldBothPiecesOfWhatIsAllowed() {
        Estimate first = new Estimate(0.0269671, 0.0229338, 1);
        Estimate second = new Estimate(1.55376, 0.00433358, 2.5);
        double level = 0.05 / 28;
        Interval limits = new Ratio(first, second).interval(1 - level);
        DoublePredicate isAllowed = ratio -> Welch.of(1, first, ratio, second).isAllowed(level, Welch.beta(level));
        double[] ratios = DoubleStream.iterate(0.05, ratio -> ratio < 1000, ratio -> 1.02 * ratio)
                .toArray();

        assertTrue(Arrays.stream(ratios).filter(isAllowed).allMatch(limits::contains), limits::toString);
        assertTrue(Arrays.stream(ratios)
                .anyMatch(ratio -> ratio < 20 && limits.contains(ratio) && !isAllowed.test(ratio)));
        assertTrue(Arrays.stream(ratios).filter(isAllowed).anyMatch(ratio -> ratio > 20));
    }

    private static Estimate anyEstimate(Random random) {
        double error = 0.001 * (0.2 + random.nextDouble());
        return new Estimate(error * (-1 + 15 * random.nextDouble()), error, 3 + random.nextInt(20));
    }

    private static Estimate scaled(Estimate estimate, double factor) {
        return new Estimate(factor * estimate.value(), factor * estimate.standardError(), estimate.degreesOfFreedom());
    }

    private static Estimate sample(double... values) {
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        int n = values.length;
        return new Estimate(mean, Math.sqrt(squares / (n - 1) / n), n - 1);
    }

    private static void same(double expected, double actual) {
        if (Double.isInfinite(expected)) {
            assertEquals(expected, actual);
        } else {
            assertEquals(expected, actual, 1e-8 * Math.abs(expected));
        }
    }

    private static Problem refused(Runnable question) {
        return assertThrows(InvalidInputException.class, question::run).problem();
    }

    private static double number(Map<String, String> row, String column) {
        String cell = row.getOrDefault(column, "");
        return cell.equals("inf") ? INFINITY : Double.parseDouble(cell);
    }
}
