package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.quantity.Scale;

/**
 * A small part of {@link CoverageReport} for several jars of one material, with fixed seeds: 1000 lessons each, so that limits
 * of true 95 % hold 93 to 97 % but three times in a thousand.
 */
@Tag("simulation")
class MaterialCoverageTest {

    private static final int RUNS = 1000;
    private static final long SEED = 20_262;

    /** Noise well above the rounding, jars that differ or do not. */
    @ParameterizedTest
    @CsvSource({"2, 0, 0", "2, 0.1, 2", "3, 0, 0.5", "3, 0.02, 0", "6, 0, 0", "6, 0.1, 0.5"})
    void limitsOfSeveralJarsHoldTheTruth(int jars, double spread, double startsApart) {
        Coverage.Count held = material(8, 30, 1, jars, spread, startsApart).limits(RUNS, SEED);

        assertEquals(RUNS, held.answered());
        assertEquals(0.95, held.share(), 0.02);
    }

    /**
     * Jars that truly cool alike, filled alike and read without noise are rounded to the same readings: they have no spread, and
     * all are wrong by as much. Their spread alone would never hold the truth, and what is known of each, divided by the
     * root of their number, two times of three for six of them.
     */
    @ParameterizedTest
    @CsvSource({"2, 0", "6, 0", "6, 0.5", "3, 2"})
    void jarsRoundedAlikeHoldTheTruth(int jars, double startsApart) {
        Coverage.Count without = material(8, 30, 0, jars, 0, startsApart).limits(RUNS, SEED);
        Coverage.Count hardly = material(8, 30, 0.1, jars, 0, startsApart).limits(RUNS, SEED);

        assertTrue(without.share() >= 0.94, "without noise: " + without);
        assertTrue(hardly.share() >= 0.94, "with a little: " + hardly);
    }

    @Test
    void materialsThatCoolAlikeAreSeldomToldApart() {
        for (double noise : new double[] {0, 0.1, 0.3, 1}) {
            Coverage.Count two = material(8, 30, noise, 3, 0, 0).noFalseClaim(2, RUNS, SEED);
            Coverage.Count five = material(8, 30, noise, 2, 0.02, 0.5).noFalseClaim(5, RUNS / 2, SEED);

            assertTrue(two.share() >= 0.94, "two, noise " + noise + ": " + two);
            assertTrue(five.share() >= 0.94, "five, noise " + noise + ": " + five);
        }
    }

    /**
     * As a class does it: one reading of the surroundings, rounded, for all jars. What is common to them does not average out, and
     * must be in the limits of their mean; in the other tests here the surroundings are exact, so that jars alone err.
     */
    @ParameterizedTest
    @CsvSource({"2, 0", "3, 0.02", "6, 0", "6, 0.1"})
    void surroundingsReadOnceAreInTheLimitsOfAllJars(int jars, double spread) {
        MaterialCoverage exact = material(8, 30, 0.3, jars, spread, 0.5);
        MaterialCoverage read = new MaterialCoverage(exact.lesson(), jars, spread, 0.5, true);
        Coverage.Count held = read.limits(RUNS, SEED);

        assertEquals(RUNS, held.answered());
        assertTrue(held.share() >= 0.93, held.toString());
        Coverage.Count apart = read.noFalseClaim(3, RUNS / 2, SEED);
        assertTrue(apart.share() >= 0.93, apart.toString());
    }

    private static MaterialCoverage material(
            int readings, double halfTime, double noise, int jars, double spread, double startsApart) {
        return new MaterialCoverage(
                new Coverage(readings, 1, Scale.CELSIUS, halfTime, noise), jars, spread, startsApart);
    }
}
