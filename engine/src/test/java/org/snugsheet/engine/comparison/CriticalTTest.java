package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CriticalTTest {

    /** NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, the column of 0.975. */
    @ParameterizedTest
    @CsvSource({"1, 12.706", "2, 4.303", "3, 3.182", "10, 2.228", "30, 2.042", "100, 1.984", "Infinity, 1.960"})
    void it_is_the_published_quantile(double freedom, double quantile) {
        assertEquals(quantile, CriticalT.at(freedom), 5e-4);
        assertEquals(quantile, StudentT.quantile(0.95, freedom), 5e-4);
    }

    /** Property: between whole numbers too it is what Commons Math searches for, as nearly as that is known. */
    @Test
    void it_is_the_quantile_of_commons_math() {
        for (double inverse = 0.0005; inverse <= 1; inverse += 0.0031) {
            double searched = StudentT.quantile(0.95, 1 / inverse);
            assertEquals(searched, CriticalT.at(1 / inverse), 2e-12 * searched, "1/ν = " + inverse);
        }
        assertEquals(StudentT.quantile(0.95, 0.7), CriticalT.at(0.7));
    }

    /** Property: the least difference is where the p value passes 5 %. */
    @RepeatedTest(50)
    void the_least_difference_is_where_p_is_five_percent(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Estimate first = drawn(0, random);
        Estimate second = drawn(0, random);
        double least = new Ratio(first, second).leastDifference();
        assertTrue(p(first, second, least * (1 + 1e-6)) <= 0.05);
        assertTrue(p(first, second, least * (1 - 1e-6)) > 0.05);
    }

    private static double p(Estimate first, Estimate second, double apart) {
        Estimate moved = new Estimate(
                first.value() + apart,
                first.standardError(),
                first.degreesOfFreedom(),
                first.sharedError(),
                first.commonError());
        return new Ratio(moved, second).equalityP();
    }

    private static Estimate drawn(double value, Random random) {
        return new Estimate(
                value, 0.1 + random.nextDouble(), 1 + random.nextInt(20), 0, random.nextInt(2) * random.nextGaussian());
    }
}
