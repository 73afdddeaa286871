package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

class ReplicateGroupTest {

    /**
     * Student’s differences between two sleeping drugs (Biometrika 6 (1908), 20), ten values without an error of their own:
     * the help page of R’s t.test (paired) has 1.58 with the limits 0.7001142 and 2.4598858.
     */
    @Test
    void valuesWithoutErrorsOfTheirOwnHaveStudentsInterval() {
        ReplicateGroup sleepers = new ReplicateGroup(DoubleStream.of(1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4)
                .mapToObj(gained -> new Estimate(gained, 0, Double.POSITIVE_INFINITY))
                .toList());

        assertEquals(1.58, sleepers.estimate().value(), 1e-12);
        assertEquals(9, sleepers.estimate().degreesOfFreedom());
        Interval interval = sleepers.estimate().interval(0.95);
        assertEquals(0.7001142, interval.low(), 5e-8);
        assertEquals(2.4598858, interval.high(), 5e-8);
    }

    /**
     * R. DerSimonian and R. Kacker, Random-effects model for meta-analysis of clinical trials: an update, Contemporary
     * Clinical Trials 28 (2007), 105–114, Table 3: six trials of aspirin in pregnancy; τ by Cochran’s method is 0.4410, by
     * Paule and Mandel’s 0.3681. The second checks the weights that {@link CoverageReport} compares with.
     */
    @Test
    void theSpreadBetweenTheTrialsOfAspirinIsAsPublished() {
        int[] treated = {156, 303, 565, 1570, 103, 4659};
        int[] ill = {5, 5, 12, 69, 9, 313};
        int[] controls = {74, 303, 477, 1565, 105, 4650};
        int[] illControls = {8, 17, 9, 94, 11, 352};
        List<Estimate> trials = new ArrayList<>();
        for (int i = 0; i < treated.length; i++) {
            double a = ill[i];
            double b = treated[i] - ill[i];
            double c = illControls[i];
            double d = controls[i] - illControls[i];
            double error = Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d);
            trials.add(new Estimate(Math.log(a * d / (b * c)), error, Double.POSITIVE_INFINITY));
        }

        assertEquals(0.4410, new ReplicateGroup(trials).spreadBetweenJars(), 5e-5);
        assertEquals(0.3681, PauleMandel.spread(trials), 5e-5);
        // the same paper: the mean with these weights and its standard error
        assertEquals(-0.3811, PauleMandel.estimate(trials).value(), 5e-5);
    }

    @Test
    void oneJarIsItselfAndSaysSo() {
        Estimate only = new Estimate(0.02, 0.001, 8);
        ReplicateGroup jars = new ReplicateGroup(List.of(only));

        assertTrue(jars.isSingleJar());
        assertSame(only, jars.estimate());
        assertSame(only, jars.byReadings());
        assertSame(Problem.ONE_JAR_HAS_NO_SPREAD, refused(jars::bySpread));
        assertSame(Problem.ONE_JAR_HAS_NO_SPREAD, refused(jars::spreadBetweenJars));
        assertFalse(new ReplicateGroup(List.of(only, only)).isSingleJar());
    }

    @Test
    void noJarIsRefused() {
        assertSame(Problem.NO_JARS, refused(() -> new ReplicateGroup(List.of())));
    }

    /** 0.0300 and 0.0200: mean 0.0250, standard deviation 0.00707, of the mean 0.0050. */
    @Test
    void jarsThatDifferMoreThanTheirReadingsExplainGiveTheErrorOfTheirSpread() {
        ReplicateGroup jars = new ReplicateGroup(List.of(new Estimate(0.03, 0.001, 8), new Estimate(0.02, 0.001, 8)));

        assertEquals(jars.bySpread(), jars.estimate());
        assertEquals(0.025, jars.estimate().value(), 1e-15);
        assertEquals(0.005, jars.estimate().standardError(), 1e-15);
        assertEquals(1, jars.estimate().degreesOfFreedom());
        assertEquals(Math.sqrt(2 * 0.005 * 0.005 - 0.001 * 0.001), jars.spreadBetweenJars(), 1e-15);
    }

    @Test
    void jarsThatAgreeByChanceAreNoSurerThanTheirReadings() {
        ReplicateGroup jars = new ReplicateGroup(List.of(new Estimate(0.02, 0.001, 8), new Estimate(0.02, 0.001, 8)));

        assertEquals(0, jars.bySpread().standardError());
        assertEquals(0, jars.spreadBetweenJars());
        assertEquals(jars.byReadings(), jars.estimate());
        assertEquals(0.001 / Math.sqrt(2), jars.estimate().standardError(), 1e-15);
        assertEquals(16, jars.estimate().degreesOfFreedom(), 1e-12);
    }

    /** Satterthwaite: with errors 1 and 3 known to 4 and 9 degrees of freedom, (1 + 9)²/(1/4 + 81/9). */
    @Test
    void degreesOfFreedomOfReadingsAreSatterthwaites() {
        Estimate estimate = new ReplicateGroup(List.of(new Estimate(5, 1, 4), new Estimate(5, 3, 9))).byReadings();

        assertEquals(100 / 9.25, estimate.degreesOfFreedom(), 1e-12);
        assertEquals(Math.sqrt(10) / 2, estimate.standardError(), 1e-15);
        Estimate exact = new ReplicateGroup(List.of(new Estimate(5, 0, 4), new Estimate(5, 0, 9))).byReadings();
        assertEquals(new Estimate(5, 0, Double.POSITIVE_INFINITY), exact);
    }

    @Test
    void howWellTheJarsWereReadDoesNotCountBesideTheirSpread() {
        ReplicateGroup close =
                new ReplicateGroup(List.of(new Estimate(0.0201, 0.005, 8), new Estimate(0.0199, 0.005, 8)));

        assertEquals(close.bySpread(), close.estimate());
        assertEquals(0.0001, close.estimate().standardError(), 1e-15);
    }

    /** S. K. Banerjee’s limits (Sankhyā 22 (1960), 357–358): t² = 12.706² with one degree of freedom, z² = 1.960². */
    @Test
    void whatAllJarsShareIsAddedWithTheNormalQuantile() {
        ReplicateGroup jars = new ReplicateGroup(
                List.of(new Estimate(0.0201, 0.001, 8, 0.0004, 0), new Estimate(0.0199, 0.001, 8, 0.0002, 0)));

        Interval interval = jars.estimate().interval(0.95);
        double half = Math.sqrt(Math.pow(12.7062 * 0.0001, 2) + Math.pow(1.959964 * 0.0003, 2));
        assertEquals(0.02 - half, interval.low(), 1e-8);
        assertEquals(0.02 + half, interval.high(), 1e-8);
        assertEquals(0.0003, jars.estimate().sharedError(), 1e-15);
        assertTrue(
                width(jars.estimate(), 0.999)
                        >= 2 * Math.sqrt(Math.pow(636.619 * 0.0001, 2) + Math.pow(3.290527 * 0.0003, 2)),
                "at a stricter level it is enough as well");
    }

    /** Jars rounded to the same readings: the limits are those of what they share, and not the narrower for being many. */
    @Test
    void jarsThatAgreeInEveryDigitShareTheirRounding() {
        Estimate jar = new Estimate(0.02, 0.001, 8, 0.0015, 0);
        ReplicateGroup jars = new ReplicateGroup(List.of(jar, jar, jar, jar, jar, jar));

        Interval interval = jars.estimate().interval(0.95);
        assertEquals(0.02 + 1.959964 * 0.0015, interval.high(), 1e-8);
    }

    @Test
    void theOrderOfTheJarsDoesNotMatterAndTheUnitNeither() {
        Chance chance = new Chance(42);
        List<Estimate> jars = chance.jars(5, 0.02, 0.002, new double[] {0.001, 0.002}, 6);
        List<Estimate> reversed = new ArrayList<>(jars);
        Collections.reverse(reversed);
        List<Estimate> perHour = jars.stream()
                .map(j -> new Estimate(60 * j.value(), 60 * j.standardError(), j.degreesOfFreedom()))
                .toList();

        Interval interval = new ReplicateGroup(jars).estimate().interval(0.95);
        assertEquals(
                interval.low(),
                new ReplicateGroup(reversed).estimate().interval(0.95).low(),
                1e-15);
        assertEquals(
                60 * interval.high(),
                new ReplicateGroup(perHour).estimate().interval(0.95).high(),
                1e-12);
    }

    @Test
    void moreJarsTellMore() {
        double before = Double.POSITIVE_INFINITY;
        for (int count = 2; count <= 6; count++) {
            Chance chance = new Chance(43);
            double width = 0;
            for (int i = 0; i < 400; i++) {
                width += width(new ReplicateGroup(chance.jars(count, 0.02, 0.002, new double[] {0.001}, 6)).estimate());
            }
            assertTrue(width < 0.9 * before, count + " jars: " + width / 400);
            before = width;
        }
    }

    /**
     * Of 2000 intervals 1900 hold the truth on average, with a standard deviation of 10: exactly so for jars read alike, and
     * no fewer for others. What the readings alone leave is far too narrow for jars that differ, and a floor under the limits,
     * “never narrower than the readings allow”, holds the truth too often where they do not.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 3, 1, 0",
        "2, 3, 1, 3",
        "2, 18, 4, 1",
        "2, 18, 4, 3",
        "3, 3, 1, 0",
        "3, 3, 1, 3",
        "3, 6, 4, 1",
        "4, 6, 1, 1",
        "6, 3, 1, 0",
        "6, 3, 1, 1",
        "6, 18, 4, 3"
    })
    void theLimitsHoldTheTruthAsOftenAsTheySay(int count, int degreesOfFreedom, double otherError, double between) {
        Chance chance = new Chance(44);
        int held = 0;
        int byReadings = 0;
        int byTheWider = 0;
        for (int i = 0; i < 2000; i++) {
            ReplicateGroup jars =
                    new ReplicateGroup(chance.jars(count, 5, between, new double[] {1, otherError}, degreesOfFreedom));
            boolean isHeld = jars.estimate().interval(0.95).contains(5);
            boolean isHeldByReadings = jars.byReadings().interval(0.95).contains(5);
            held += isHeld ? 1 : 0;
            byReadings += isHeldByReadings ? 1 : 0;
            byTheWider += isHeld || isHeldByReadings ? 1 : 0;
        }
        assertTrue(held >= 1860, "held: " + held);
        if (otherError == 1) {
            assertTrue(held <= 1940, "held: " + held);
        }
        if (otherError == 1 && between == 3) {
            assertTrue(byReadings < 1700, "without the spread it would be few: " + byReadings);
        }
        if (between == 0) {
            assertTrue(byTheWider > 1940, "with a floor it would be many: " + byTheWider);
        }
    }

    private static double width(Estimate estimate, double confidence) {
        Interval interval = estimate.interval(confidence);
        return interval.high() - interval.low();
    }

    private static double width(Estimate estimate) {
        return width(estimate, 0.95);
    }

    private static Problem refused(Runnable question) {
        return assertThrows(InvalidInputException.class, question::run).problem();
    }
}
