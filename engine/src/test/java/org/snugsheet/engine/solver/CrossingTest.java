package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CrossingTest {

    private static final double CLOSE = 1e-9;

    private int looks;

    /** The solution of cos x = x: OEIS A003957. */
    @Test
    void findsDottiesNumberFromBothSides() {
        double dottie = 0.7390851332151607;
        assertEquals(dottie, found(x -> x - Math.cos(x), 0, 1), CLOSE);
        assertTrue(looks < 12, "bisection needs 31, this took " + looks);
        assertEquals(dottie, found(x -> Math.cos(x) - x, 1, 0), CLOSE);
    }

    /** The root of x·eˣ − 1, Lambert’s Ω: OEIS A030178. */
    @Test
    void findsLambertsOmega() {
        assertEquals(0.5671432904097838, found(x -> x * Math.exp(x) - 1, -1, 1), CLOSE);
        assertTrue(looks < 14, "looks: " + looks);
    }

    /** Twice the length of the range halved to twice what is close enough takes 30 looks; two more are at the ends, one is the slack. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.25, 1 / 3.0, 0.731, 0.999})
    void aJumpTakesHardlyMoreThanBisection(double jump) {
        assertEquals(jump, found(x -> x <= jump ? -1 : 1e9, 0, 1), CLOSE);
        assertTrue(looks <= 33, "looks: " + looks);
        assertEquals(jump, found(x -> x <= jump ? Double.NEGATIVE_INFINITY : 1, 0, 1), CLOSE);
        assertEquals(jump, found(x -> x >= jump ? -1 : Double.POSITIVE_INFINITY, 1, 0), CLOSE);
        assertEquals(jump, found(x -> x <= jump ? -1 : Double.NaN, 0, 1), CLOSE);
        assertTrue(looks <= 33, "looks: " + looks);
    }

    @Test
    void aFlatFunctionTakesHardlyMoreThanBisection() {
        assertEquals(0.3, found(x -> Math.pow(x - 0.3, 9), -1, 1), CLOSE);
        assertTrue(looks <= 34, "looks: " + looks);
    }

    @Test
    void endsWhereNothingIsCrossed() {
        assertEquals(0, found(x -> 1 + x, 0, 1), 1);
        assertEquals(0.5, found(x -> Double.NaN, 0, 1), 0.5);
    }

    private double found(DoubleUnaryOperator function, double inside, double outside) {
        looks = 0;
        return Crossing.of(
                x -> {
                    looks++;
                    return function.applyAsDouble(x);
                },
                inside,
                outside,
                CLOSE);
    }
}
