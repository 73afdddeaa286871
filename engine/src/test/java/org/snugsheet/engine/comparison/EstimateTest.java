package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;

class EstimateTest {

    /** NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, table of critical values, column 0.975. */
    @ParameterizedTest
    @CsvSource({
        "1, 12.706",
        "2, 4.303",
        "3, 3.182",
        "5, 2.571",
        "10, 2.228",
        "18, 2.101",
        "100, 1.984",
        "Infinity, 1.960"
    })
    void ninetyFivePercentReachAsFarAsNistsTableSays(double degreesOfFreedom, double critical) {
        Interval interval = new Estimate(0, 1, degreesOfFreedom).interval(0.95);

        assertEquals(critical, interval.high(), 0.0005);
        assertEquals(-critical, interval.low(), 0.0005);
    }

    /** NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.2: 195 readings of a heat flow meter (ZARR13.DAT). */
    @Test
    void theHeatFlowMeterHasTheLimitsOfTheHandbook() {
        Interval interval = new Estimate(9.261460, 0.022789 / Math.sqrt(195), 194).interval(0.95);

        assertEquals(9.258242, interval.low(), 1e-6);
        assertEquals(9.264679, interval.high(), 1e-6);
    }

    static List<Map<String, String>> student() {
        return PublishedTable.rows(EstimateTest.class, "scipy-student.csv");
    }

    /** SciPy’s quantiles themselves are right to about 1e−10. */
    @ParameterizedTest
    @MethodSource("student")
    void quantilesAndProbabilitiesAgreeWithSciPy(Map<String, String> row) {
        double degreesOfFreedom = number(row, "freedom");
        double quantile = number(row, "quantile");
        double p = number(row, "p");

        assertEquals(
                quantile,
                StudentT.quantile(number(row, "confidence"), degreesOfFreedom),
                1e-8 * quantile,
                row::toString);
        assertEquals(p, StudentT.twoSided(number(row, "t"), degreesOfFreedom), 1e-8 * p, row::toString);
        assertEquals(p, StudentT.twoSided(-number(row, "t"), degreesOfFreedom), 1e-8 * p, row::toString);
    }

    @Test
    void veryManyDegreesOfFreedomRunIntoInfinitelyManyWithoutAStep() {
        double normal = StudentT.quantile(0.95, Double.POSITIVE_INFINITY);
        assertEquals(normal, StudentT.quantile(0.95, 0.99e8), 1e-7);
        assertEquals(normal, StudentT.quantile(0.95, 1.01e8), 1e-7);
        assertEquals(normal, StudentT.quantile(0.95, Double.MAX_VALUE), 0);
    }

    @Test
    void anEstimateWithoutErrorIsItsOwnInterval() {
        assertEquals(new Interval(0.02, 0.02), new Estimate(0.02, 0, 3).interval(0.95));
    }

    @Test
    void anIntervalContainsItsLimitsAndWhatLiesBetween() {
        Interval interval = new Interval(1, 2);
        assertTrue(interval.contains(1) && interval.contains(1.5) && interval.contains(2));
        assertFalse(interval.contains(0.999) || interval.contains(2.001) || interval.contains(Double.NaN));
        assertTrue(interval.isBounded());
        Interval atLeast = new Interval(3, Double.POSITIVE_INFINITY);
        assertTrue(atLeast.contains(1e300));
        assertFalse(atLeast.isBounded());
    }

    @Test
    void whatIsNoIntervalIsNotMade() {
        assertSame(Problem.NOT_A_NUMBER, refused(() -> new Interval(Double.NaN, 1)));
        assertSame(Problem.NOT_A_NUMBER, refused(() -> new Interval(1, Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1));
    }

    @Test
    void whatIsNoEstimateIsRefused() {
        assertSame(Problem.NOT_A_NUMBER, refused(() -> new Estimate(Double.NaN, 1, 3)));
        assertSame(Problem.NOT_A_NUMBER, refused(() -> new Estimate(1, Double.POSITIVE_INFINITY, 3)));
        assertSame(Problem.NEGATIVE, refused(() -> new Estimate(1, -1, 3)));
        assertSame(Problem.NOT_POSITIVE, refused(() -> new Estimate(1, 1, 0)));
        assertSame(Problem.NOT_POSITIVE, refused(() -> new Estimate(1, 1, Double.NaN)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, 95, -0.5, Double.NaN})
    void whatIsNoConfidenceIsRefused(double confidence) {
        assertSame(Problem.NOT_A_CONFIDENCE, refused(() -> new Estimate(1, 1, 3).interval(confidence)));
    }

    private static Problem refused(Runnable question) {
        return assertThrows(InvalidInputException.class, question::run).problem();
    }

    private static double number(Map<String, String> row, String column) {
        String cell = row.getOrDefault(column, "");
        return cell.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(cell);
    }

    /**
     * The example of JCGM 100:2008, 5.2.2: ten resistors of 1000 Ω, each compared with one standard that is uncertain by 0.1 Ω. Their sum
     * is uncertain by 1 Ω, and not by 0.32 Ω as if each had an error of its own; so their mean by 0.1 Ω.
     */
    @Test
    void aCommonCauseDoesNotAverageOut() {
        List<Estimate> resistors = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            resistors.add(new Estimate(1000, 1e-9, 10, 0, 0.1));
        }
        Estimate mean = new ReplicateGroup(resistors).estimate();

        assertEquals(1, 10 * mean.combinedError(), 1e-6);
        assertEquals(1.959964 * 0.1, mean.interval(0.95).high() - 1000, 1e-6);
    }

    /** The same two resistors compared with each other: the standard does not matter at all (the same equation 13, with r = 1). */
    @Test
    void aCommonCauseIsNotSeenInADifference() {
        Estimate one = new Estimate(1000.02, 0.003, 8, 0, 0.1);
        Estimate other = new Estimate(1000, 0.003, 8, 0, 0.1);

        assertEquals(
                new Ratio(new Estimate(1000.02, 0.003, 8), new Estimate(1000, 0.003, 8)).equalityP(),
                new Ratio(one, other).equalityP(),
                1e-12);
        assertTrue(new Ratio(one, other).equalityP() < 0.01);
        assertTrue(new Ratio(one.onItsOwn(), other.onItsOwn()).equalityP() > 0.5);
        assertEquals(Math.hypot(0.003, 0.1), one.onItsOwn().standardError(), 1e-15);
        assertEquals(0, one.onItsOwn().commonError());
    }

    /** The same equation: a cause that moves one up and the other down moves their difference by both, 1 + 1. */
    @Test
    void aCommonCauseThatMovesTwoOppositelyIsSeenTwice() {
        Estimate one = new Estimate(10.5, 0.1, 100, 0, 1);
        Estimate other = new Estimate(10, 0.1, 100, 0, -1);

        assertTrue(new Ratio(new Estimate(10.5, 0.1, 100), new Estimate(10, 0.1, 100)).equalityP() < 0.001);
        // z = 0.5/√(0.01 + 0.01 + 4) = 0.2494; 2·Φ(−0.2494) = 0.803 by a table of the normal distribution (from memory)
        assertEquals(0.803, new Ratio(one, other).equalityP(), 0.001);
        assertTrue(new Ratio(one, other).interval(0.95).contains(1));
    }

    /** JCGM 100:2008, equation 16, with the correlation 1 of the common parts: (0.3/4)² + (3·0.2/4)² + ((0.5 − 3·0.1)/4)². */
    @Test
    void ofARatioOnlyTheDifferenceOfTheCommonPartsCounts() {
        Ratio ratio = new Ratio(new Estimate(12, 0.3, 8, 0, 0.5), new Estimate(4, 0.2, 8, 0, 0.1));

        assertEquals(Math.sqrt(0.09 + 0.36 + 0.04) / 4, ratio.standardError(), 1e-12);
    }

    /** Welch and Satterthwaite as JCGM 100:2008, G.4.1, has it: what is known beforehand has infinitely many degrees of freedom. */
    @Test
    void theSpreadBetweenJarsIsKnownBeforehand() {
        Estimate jar = new Estimate(0.04, 0.003, 8).withSpread(0.1);

        assertEquals(0.005, jar.standardError(), 1e-15);
        assertEquals(8 * Math.pow(5.0 / 3, 4), jar.degreesOfFreedom(), 1e-9);
        assertEquals(new Estimate(0.04, 0.003, 8), new Estimate(0.04, 0.003, 8).withSpread(0));
        assertThrows(InvalidInputException.class, () -> jar.withSpread(1));
        assertThrows(InvalidInputException.class, () -> new Estimate(1, 1, 1, 0, Double.NaN));
    }
}
