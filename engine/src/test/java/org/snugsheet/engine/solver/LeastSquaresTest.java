package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where plain methods fail, weights, and that nothing changes behind anybody’s back. */
class LeastSquaresTest {

    // ---- where plain methods fail

    @Test
    void turnsBackWhereTheCurveIsNotDefined() {
        // From b = 4 a Gauss–Newton step for 0.1·x goes to b = −3.6, where the root is not a number.
        Curve root = Curve.at(new double[] {1, 2, 3}, (x, b, d) -> {
            d[0] = x / (2 * Math.sqrt(b[0]));
            return x * Math.sqrt(b[0]);
        });
        LeastSquaresFit fit = LeastSquares.fit(root, new double[] {0.1, 0.2, 0.3}, new double[] {4});
        assertEquals(0.01, fit.parameter(0), 1e-14);
    }

    @Test
    void turnsBackWhereTheSlopesAreNotDefined() {
        // The same, but flat below zero: the values there are nearer than those at the guess, yet lead nowhere.
        Curve root = Curve.at(new double[] {1, 2, 3}, (x, b, d) -> {
            d[0] = b[0] > 0 ? x / (2 * Math.sqrt(b[0])) : Double.NaN;
            return x * Math.sqrt(Math.max(0, b[0]));
        });
        LeastSquaresFit fit = LeastSquares.fit(root, new double[] {0.1, 0.2, 0.3}, new double[] {4});
        assertEquals(0.01, fit.parameter(0), 1e-14);
    }

    @Test
    void settlesWhereGaussNewtonAloneRunsAway() {
        // Powell’s example, R. Fletcher, Practical Methods of Optimization, 2nd ed., Wiley 1987, section 6.1:
        // r = (x + 1, λx² + x − 1) has its least squares at x = 0 for λ < 1, and Gauss–Newton leaves it for λ < −1.
        // The section was quoted from memory; that x = 0 is the lowest point follows from S′(0) = 0 and S″(0) = 4 − 4λ.
        for (double lambda : new double[] {-0.5, -1, -1.5, -2.5}) {
            Curve powell = (b, values, slopes) -> {
                values[0] = b[0];
                values[1] = lambda * b[0] * b[0] + b[0];
                slopes[0][0] = 1;
                slopes[1][0] = 2 * lambda * b[0] + 1;
            };
            LeastSquaresFit fit = LeastSquares.fit(powell, new double[] {-1, 1}, new double[] {0.1});
            assertEquals(0, fit.parameter(0), 1e-9, () -> "λ = " + lambda);
        }
    }

    @Test
    void triesShorterFirstSteps() {
        // NIST’s Rat43 and Misra1a from guesses of our own, from which the longest first step ends on a plateau.
        assertCertified("Rat43", 100, 10, 1, 3);
        assertCertified("Rat43", 1000, 2, 0.5, 4);
        assertCertified("Misra1a", 2000, 2.26e-4);
    }

    private static void assertCertified(String name, double... start) {
        ReferenceSet set = ReferenceSet.read(name);
        LeastSquaresFit fit = LeastSquares.fit(ReferenceCurves.of(set), set.observed(), start);
        for (int j = 0; j < start.length; j++) {
            assertEquals(set.certified()[j], fit.parameter(j), 1e-9 * Math.abs(set.certified()[j]), name);
        }
    }

    @Test
    void settlesOnObservationsWithoutScatter() {
        double[] exact = new double[Jar.MINUTES.length];
        Jar.CURVE.evaluate(new double[] {55, 0.0168}, exact, new double[Jar.MINUTES.length][2]);
        LeastSquaresFit fit = LeastSquares.fit(Jar.CURVE, exact, Jar.GUESS);
        assertArrayEquals(new double[] {55, 0.0168}, fit.parameters(), 1e-12);
        assertTrue(fit.residualStandardDeviation() < 1e-13);
        double[] zeros = {0, 0, 0};
        Curve line = Curve.at(new double[] {1, 2, 4}, Jar::line);
        assertEquals(0, LeastSquares.fit(line, zeros, new double[] {3, -2}).sumOfSquares(), 1e-28);
    }

    @Test
    void isTheSameInAnyUnits() {
        // NIST’s Misra1a with x in units a billion times smaller and y in units a million times larger.
        ReferenceSet set = ReferenceSet.read("Misra1a");
        double xUnit = 1e9;
        double yUnit = 1e-6;
        Curve inOtherUnits = (b, values, slopes) -> {
            ReferenceCurves.of(set).evaluate(new double[] {b[0] / yUnit, b[1] * xUnit}, values, slopes);
            for (int i = 0; i < values.length; i++) {
                values[i] *= yUnit;
                slopes[i][1] *= yUnit * xUnit;
            }
        };
        double[] observed = Arrays.stream(set.observed()).map(y -> y * yUnit).toArray();
        double[] start = {set.starts()[0][0] * yUnit, set.starts()[0][1] / xUnit};
        LeastSquaresFit fit = LeastSquares.fit(inOtherUnits, observed, start);
        assertEquals(set.certified()[0], fit.parameter(0) / yUnit, 1e-9 * set.certified()[0]);
        assertEquals(set.certified()[1], fit.parameter(1) * xUnit, 1e-9 * set.certified()[1]);
        assertEquals(set.deviations()[1], fit.standardErrors()[1] * xUnit, 1e-7 * set.deviations()[1]);
        assertEquals(set.deviation(), fit.residualStandardDeviation() / yUnit, 1e-8 * set.deviation());
    }

    @Test
    void asksTheCurveOnlyAFewTimes() {
        int evaluations = LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS).evaluations();
        assertTrue(evaluations <= 12, () -> evaluations + " looks");
    }

    // ---- weights

    @Test
    void aWeightOfTwoIsAsGoodAsTwoObservations() {
        double[] weights = {1, 2, 1, 3, 1, 1, 1, 1, 2, 1, 1, 1};
        double[] minutes = repeat(Jar.MINUTES, weights);
        double[] degrees = repeat(Jar.DEGREES, weights);
        LeastSquaresFit weighted =
                LeastSquares.standard().withWeights(weights).solve(Jar.CURVE, Jar.DEGREES, Jar.GUESS);
        LeastSquaresFit repeated = LeastSquares.fit(Curve.at(minutes, Jar::cooling), degrees, Jar.GUESS);
        LeastSquaresFit plain = LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS);
        assertAll(
                () -> assertClose(repeated.parameter(0), weighted.parameter(0)),
                () -> assertClose(repeated.parameter(1), weighted.parameter(1)),
                () -> assertClose(repeated.sumOfSquares(), weighted.sumOfSquares()),
                () -> assertClose(repeated.unscaledCovariance()[0][1], weighted.unscaledCovariance()[0][1]),
                () -> assertClose(repeated.unscaledCovariance()[1][1], weighted.unscaledCovariance()[1][1]),
                () -> assertEquals(10, weighted.degreesOfFreedom()),
                () -> assertEquals(14, repeated.degreesOfFreedom()),
                () -> assertTrue(Math.abs(plain.parameter(1) / weighted.parameter(1) - 1) > 1e-6));
    }

    @Test
    void residualsAreThoseOfTheObservations() {
        double[] weights = new double[Jar.MINUTES.length];
        Arrays.fill(weights, 4);
        LeastSquaresFit plain = LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS);
        LeastSquaresFit weighted =
                LeastSquares.standard().withWeights(weights).solve(Jar.CURVE, Jar.DEGREES, Jar.GUESS);
        double[] values = new double[Jar.MINUTES.length];
        Jar.CURVE.evaluate(plain.parameters(), values, new double[Jar.MINUTES.length][2]);
        for (int i = 0; i < values.length; i++) {
            assertEquals(Jar.DEGREES[i] - values[i], plain.residuals()[i], 1e-14);
            assertEquals(plain.residuals()[i], weighted.residuals()[i], 1e-10);
        }
        assertClose(4 * plain.sumOfSquares(), weighted.sumOfSquares());
        assertClose(plain.standardErrors()[1], weighted.standardErrors()[1]);
        assertClose(plain.unscaledCovariance()[1][1] / 4, weighted.unscaledCovariance()[1][1]);
    }

    private static double[] repeat(double[] values, double[] times) {
        return IntStream.range(0, values.length)
                .boxed()
                .flatMap(i -> IntStream.range(0, (int) times[i]).mapToObj(k -> values[i]))
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static void assertClose(double expected, double actual) {
        assertEquals(expected, actual, 1e-9 * Math.abs(expected));
    }

    // ---- nothing changes behind anybody’s back

    @Test
    void leavesWhatItIsGivenAlone() {
        double[] places = Jar.MINUTES.clone();
        double[] observed = Jar.DEGREES.clone();
        double[] start = Jar.GUESS.clone();
        double[] weights = new double[Jar.MINUTES.length];
        Arrays.fill(weights, 1);
        Curve curve = Curve.at(places, Jar::cooling);
        LeastSquares settings = LeastSquares.standard().withWeights(weights);
        LeastSquaresFit before = settings.solve(curve, observed, start);
        assertArrayEquals(Jar.DEGREES, observed);
        assertArrayEquals(Jar.GUESS, start);
        places[3] = -100;
        weights[3] = 1000;
        observed[3] = -100;
        LeastSquaresFit after = settings.solve(curve, Jar.DEGREES, start);
        assertEquals(before, after);
    }

    @Test
    void takesItsOwnCopiesFirst() {
        double[] observed = Jar.DEGREES.clone();
        double[] start = Jar.GUESS.clone();
        Curve meddling = (b, values, slopes) -> {
            Jar.CURVE.evaluate(b, values, slopes);
            // As another thread might do meanwhile.
            Arrays.fill(observed, 1000);
            Arrays.fill(start, 1e-300);
        };
        assertEquals(LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS), LeastSquares.fit(meddling, observed, start));
    }

    @Test
    void aCurveMayScribbleOnItsParameters() {
        Curve scribbling = (b, values, slopes) -> {
            Jar.CURVE.evaluate(b, values, slopes);
            Arrays.fill(b, 1e-300);
        };
        assertEquals(
                LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS),
                LeastSquares.fit(scribbling, Jar.DEGREES, Jar.GUESS));
    }

    @Test
    void manyThreadsGetTheSameAnswer() {
        LeastSquaresFit alone = LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS);
        assertTrue(IntStream.range(0, 2000)
                .parallel()
                .mapToObj(i -> LeastSquares.fit(Jar.CURVE, Jar.DEGREES, Jar.GUESS))
                .allMatch(alone::equals));
    }
}
