package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/** What the solver refuses, each beside something like it that it does not refuse. */
class LeastSquaresRefusalTest {

    private static Problem refusal(Runnable call) {
        return assertThrows(InvalidInputException.class, call::run).problem();
    }

    @Test
    void needsOneObservationMoreThanParameters() {
        Curve two = Curve.at(new double[] {0, 1}, Jar::line);
        Curve three = Curve.at(new double[] {0, 1, 2}, Jar::line);
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class, () -> LeastSquares.fit(two, new double[] {1, 2}, new double[] {0, 0}));
        assertEquals(Problem.TOO_FEW_READINGS, refusal.problem());
        assertEquals(InvalidInputException.of(Problem.TOO_FEW_READINGS, 3, 2).getMessage(), refusal.getMessage());
        assertEquals(
                1,
                LeastSquares.fit(three, new double[] {1, 2, 2}, new double[] {0, 0})
                        .degreesOfFreedom());
    }

    @Test
    void refusesAnObservationThatIsNoNumber() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            double[] observed = Jar.DEGREES.clone();
            observed[4] = bad;
            assertEquals(Problem.NOT_A_NUMBER, refusal(() -> LeastSquares.fit(Jar.CURVE, observed, Jar.GUESS)));
        }
    }

    @Test
    void refusesAGuessWhereTheCurveIsNotFinite() {
        assertEquals(
                Problem.NO_CONVERGENCE,
                refusal(() -> LeastSquares.fit(Jar.CURVE, Jar.DEGREES, new double[] {50, Double.NaN})));
        assertEquals(
                Problem.NO_CONVERGENCE,
                refusal(() -> LeastSquares.fit(Jar.CURVE, Jar.DEGREES, new double[] {50, -1e6})));
        Curve slopeless = (b, values, slopes) -> {
            Jar.CURVE.evaluate(b, values, slopes);
            slopes[7][1] = Double.NaN;
        };
        assertEquals(Problem.NO_CONVERGENCE, refusal(() -> LeastSquares.fit(slopeless, Jar.DEGREES, Jar.GUESS)));
    }

    @Test
    void refusesParametersThatCannotBeToldApart() {
        double[] x = {1, 2, 3, 4};
        Curve sum = Curve.at(x, (at, b, d) -> {
            d[0] = at;
            d[1] = at;
            return (b[0] + b[1]) * at;
        });
        Curve idle = Curve.at(x, (at, b, d) -> {
            d[0] = at;
            return b[0] * at;
        });
        double[] observed = {1.1, 1.9, 3.2, 3.9};
        for (double[] start : new double[][] {{0.3, 0.2}, {0, 0}}) {
            assertEquals(Problem.UNDETERMINED, refusal(() -> LeastSquares.fit(sum, observed, start)));
            assertEquals(Problem.UNDETERMINED, refusal(() -> LeastSquares.fit(idle, observed, start)));
        }
        assertEquals(Problem.UNDETERMINED, refusal(() -> LeastSquares.fit(sum, new double[4], new double[] {0, 0})));
        // A jar that was at its surroundings all along tells nothing about its rate.
        double[] five = new double[Jar.MINUTES.length];
        Arrays.fill(five, 5);
        assertEquals(Problem.UNDETERMINED, refusal(() -> LeastSquares.fit(Jar.CURVE, five, Jar.GUESS)));
    }

    @Test
    void aParameterMayBeZero() {
        Curve line = Curve.at(new double[] {1, 2, 3, 4}, Jar::line);
        double[] throughTheOrigin = {2, 4, 6, 8};
        for (double guess : new double[] {0, 1e-3, 1000}) {
            LeastSquaresFit fit = LeastSquares.fit(line, throughTheOrigin, new double[] {guess, guess});
            assertArrayEquals(new double[] {0, 2}, fit.parameters(), 1e-12);
        }
    }

    @Test
    void keepsTheLimit() {
        // NIST’s MGH09 takes some 500 steps from its far start.
        ReferenceSet set = ReferenceSet.read("MGH09");
        AtomicInteger asked = new AtomicInteger();
        Curve counted = (b, values, slopes) -> {
            asked.incrementAndGet();
            ReferenceCurves.of(set).evaluate(b, values, slopes);
        };
        for (int limit : new int[] {1, 2, 3, 50, 300}) {
            asked.set(0);
            LeastSquares limited = LeastSquares.standard().withMaxEvaluations(limit);
            assertEquals(
                    Problem.NO_CONVERGENCE, refusal(() -> limited.solve(counted, set.observed(), set.starts()[0])));
            assertTrue(asked.get() <= limit, () -> asked.get() + " looks, limit " + limit);
        }
        asked.set(0);
        LeastSquaresFit fit = LeastSquares.fit(counted, set.observed(), set.starts()[0]);
        assertEquals(asked.get(), fit.evaluations());
    }

    @Test
    void refusesWeightsThatAreNotPositiveNumbers() {
        LeastSquares standard = LeastSquares.standard();
        assertEquals(Problem.NOT_POSITIVE, refusal(() -> standard.withWeights(new double[] {1, 0, 1})));
        assertEquals(Problem.NOT_POSITIVE, refusal(() -> standard.withWeights(new double[] {1, -1, 1})));
        assertEquals(Problem.NOT_A_NUMBER, refusal(() -> standard.withWeights(new double[] {1, Double.NaN, 1})));
    }

    @Test
    void slipsOfTheCallerAreNotRefusals() {
        LeastSquares twoWeights = LeastSquares.standard().withWeights(new double[] {1, 2});
        assertThrows(IllegalArgumentException.class, () -> twoWeights.solve(Jar.CURVE, Jar.DEGREES, Jar.GUESS));
        assertThrows(IllegalArgumentException.class, () -> LeastSquares.fit(Jar.CURVE, Jar.DEGREES, new double[0]));
        assertThrows(
                IllegalArgumentException.class, () -> LeastSquares.standard().withWeights(new double[0]));
        assertThrows(
                IllegalArgumentException.class, () -> LeastSquares.standard().withMaxEvaluations(0));
    }

    @Test
    void settingsAreNotChangedByWith() {
        LeastSquares standard = LeastSquares.standard();
        LeastSquares limited = standard.withMaxEvaluations(1);
        LeastSquares both = limited.withWeights(new double[] {1, 1}).withMaxEvaluations(500);
        assertEquals(Problem.NO_CONVERGENCE, refusal(() -> limited.solve(Jar.CURVE, Jar.DEGREES, Jar.GUESS)));
        assertEquals(
                LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS), standard.solve(Jar.CURVE, Jar.DEGREES, Jar.GUESS));
        // The weights are still there after the limit was changed: two do not suit twelve observations.
        assertThrows(IllegalArgumentException.class, () -> both.solve(Jar.CURVE, Jar.DEGREES, Jar.GUESS));
    }
}
