package org.snugsheet.engine.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Ratio;

class NormalPowerTest {

    private static final NormalPower.Source EXACT = new NormalPower.Source(0, 0, 0, 1e9, 0, 0);

    /**
     * Beside a value that is known exactly it is Student’s test of one sample, and its power the tails of the noncentral t: SciPy 1.17,
     * {@code nct.sf(c, nu, d) + nct.cdf(-c, nu, d)} with {@code c = t.ppf(0.975, nu)}.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 2, 0.12575632",
        "1, 20, 0.88339444",
        "3, 1.5, 0.18710435",
        "3, 4, 0.75498392",
        "9, 0, 0.05",
        "9, 2.5, 0.60613837",
        "19, 3, 0.81206538",
        "40, 1, 0.16425967"
    })
    void beside_an_exact_value_it_is_the_noncentral_t(double freedom, double apart, double power) {
        NormalPower.Source source = new NormalPower.Source(apart, 1, 1, freedom, 0, 0);
        assertEquals(power, new NormalPower(source, EXACT).share(), 1e-5);
        assertEquals(power, new NormalPower(EXACT, source).share(), 1e-5);
    }

    /** Errors that are known: the normal distribution alone, {@code Φ(d − 1.96) + Φ(−d − 1.96)}, by SciPy’s {@code norm.cdf}. */
    @ParameterizedTest
    @CsvSource({"0, 0.05", "1, 0.17007505", "2, 0.51600527", "3, 0.85083877"})
    void known_errors_leave_the_normal_distribution(double apart, double power) {
        NormalPower.Source first = new NormalPower.Source(apart, 0.6, 0.6, 1e7, 0, 0);
        NormalPower.Source second = new NormalPower.Source(0, 0.8, 0.8, 1e7, 0, 0);
        assertEquals(power, new NormalPower(first, second).share(), 1e-4);
    }

    /** With a floor under the errors and rounded surroundings no reference is known: against as many draws as tell it to 0.35 in a hundred. */
    @Test
    void floors_and_surroundings_are_as_they_are_drawn() {
        NormalPower.Source first = new NormalPower.Source(1.5, 0.4, 0.4, 3, 0.8, 1.2);
        NormalPower.Source second = new NormalPower.Source(0, 0.7, 0.5, 5, 0.5, 0.3);
        Random random = new Random(3);
        int draws = 20_000;
        int apart = 0;
        for (int i = 0; i < draws; i++) {
            double moved = Math.sqrt(12) * (random.nextDouble() - 0.5);
            Estimate one = drawn(first, moved, random);
            Estimate other = drawn(second, moved, random);
            if (new Ratio(one, other).equalityP() <= 0.05) {
                apart++;
            }
        }
        assertEquals((double) apart / draws, new NormalPower(first, second).share(), 0.01);
    }

    private static Estimate drawn(NormalPower.Source source, double moved, Random random) {
        double squares = 0;
        for (int i = 0; i < source.freedom(); i++) {
            squares += Math.pow(random.nextGaussian(), 2) / source.freedom();
        }
        return new Estimate(
                source.value() + source.deviation() * random.nextGaussian() + source.common() * moved,
                source.error() * Math.max(source.least(), Math.sqrt(squares)),
                source.freedom(),
                0,
                source.common());
    }

    /** SciPy 1.10.1, {@code norm.cdf}. */
    @ParameterizedTest
    @CsvSource({
        "-8, 6.22096057427174e-16",
        "-5, 2.866515718791933e-07",
        "-3.25, 0.0005770250423907659",
        "-1.5, 0.06680720126885807",
        "-0.01, 0.4960106436853684",
        "0, 0.5",
        "0.7, 0.758036347776927",
        "1.96, 0.9750021048517795",
        "4, 0.9999683287581669",
        "6.5, 0.99999999995984",
        "9, 1",
        "-Infinity, 0",
        "NaN, NaN"
    })
    void the_normal_distribution_is_that_of_the_tables(double z, double below) {
        assertEquals(below, NormalPower.normal(z), 4e-16);
    }
}
