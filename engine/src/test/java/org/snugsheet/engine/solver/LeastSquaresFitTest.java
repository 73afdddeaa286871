package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * The result value, on a straight line through (1, 1), (2, 3), (3, 2), (4, 5), (5, 4).
 *
 * <p>Source of the expected values: the textbook formulas for a straight line b₀ + b₁x, as in the NIST/SEMATECH
 * e-Handbook of Statistical Methods, section 4.1.4.1 (number from memory), worked out by hand: mean x 3, mean y 3, Sxx =
 * 10, Sxy = 8, Syy = 10, so b₁ = 0.8, b₀ = 0.6, S = Syy − Sxy²/Sxx = 3.6; var b₁ = v/Sxx, var b₀ = v·(1/5 + 9/10), cov =
 * −3v/10.
 */
class LeastSquaresFitTest {

    private static final double[] X = {1, 2, 3, 4, 5};
    private static final double[] Y = {1, 3, 2, 5, 4};

    private static LeastSquaresFit line() {
        Curve line = Curve.at(X, (x, b, d) -> {
            d[0] = 1;
            d[1] = x;
            return b[0] + b[1] * x;
        });
        return LeastSquares.fit(line, Y, new double[] {0, 0});
    }

    @Test
    void hasTheValuesOfTheTextbook() {
        LeastSquaresFit fit = line();
        assertArrayEquals(new double[] {0.6, 0.8}, fit.parameters(), 1e-14);
        assertEquals(0.8, fit.parameter(1), 1e-14);
        assertArrayEquals(new double[] {-0.4, 0.8, -1, 1.2, -0.6}, fit.residuals(), 1e-14);
        assertEquals(3.6, fit.sumOfSquares(), 1e-14);
        assertEquals(3, fit.degreesOfFreedom());
        assertEquals(1.2, fit.residualVariance(), 1e-14);
        assertEquals(Math.sqrt(1.2), fit.residualStandardDeviation(), 1e-14);
    }

    @Test
    void covarianceIsScaledByTheVarianceAskedFor() {
        LeastSquaresFit fit = line();
        assertMatrix(new double[][] {{1.1, -0.3}, {-0.3, 0.1}}, fit.unscaledCovariance());
        assertMatrix(new double[][] {{1.32, -0.36}, {-0.36, 0.12}}, fit.covariance());
        assertMatrix(new double[][] {{0.275, -0.075}, {-0.075, 0.025}}, fit.covariance(0.25));
        assertArrayEquals(new double[] {Math.sqrt(1.32), Math.sqrt(0.12)}, fit.standardErrors(), 1e-14);
        assertArrayEquals(new double[] {Math.sqrt(0.275), Math.sqrt(0.025)}, fit.standardErrors(0.25), 1e-14);
        assertArrayEquals(new double[] {0, 0}, fit.standardErrors(0));
    }

    @Test
    void refusesAVarianceThatIsNone() {
        LeastSquaresFit fit = line();
        assertEquals(
                Problem.NEGATIVE,
                assertThrows(InvalidInputException.class, () -> fit.covariance(-1))
                        .problem());
        assertEquals(
                Problem.NOT_A_NUMBER,
                assertThrows(InvalidInputException.class, () -> fit.standardErrors(Double.NaN))
                        .problem());
    }

    @Test
    void cannotBeChangedThroughItsArrays() {
        LeastSquaresFit fit = line();
        fit.parameters()[0] = 99;
        fit.residuals()[0] = 99;
        fit.unscaledCovariance()[0][0] = 99;
        fit.covariance()[0][0] = 99;
        fit.standardErrors()[0] = 99;
        assertEquals(line(), fit);
        assertEquals(0.6, fit.parameter(0), 1e-14);
        assertEquals(1.1, fit.unscaledCovariance()[0][0], 1e-14);
    }

    @Test
    void isEqualByValue() {
        assertEquals(line(), line());
        assertEquals(line().hashCode(), line().hashCode());
        Curve level = Curve.at(X, (x, b, d) -> {
            d[0] = 1;
            return b[0];
        });
        assertNotEquals(line(), LeastSquares.fit(level, Y, new double[] {0}));
    }

    private static void assertMatrix(double[][] expected, double[][] actual) {
        assertEquals(expected.length, actual.length);
        for (int i = 0; i < expected.length; i++) {
            assertArrayEquals(expected[i], actual[i], 1e-14);
        }
    }
}
