package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/** Variable projection against NIST’s certified values and against the search in all parameters together. */
class SeparableFitTest {

    /** The sets of which one parameter alone is nonlinear; in Nelson two are linear. */
    static Stream<Arguments> setsAndStarts() {
        return Stream.of("Misra1a", "Misra1b", "Misra1c", "Misra1d", "BoxBOD", "DanWood", "Nelson")
                .map(ReferenceSet::read)
                .flatMap(set -> IntStream.of(0, 1).mapToObj(start -> Arguments.of(set, start)));
    }

    /** NIST StRD: parameters to 9 digits and standard deviations to 7, from both starting points. */
    @ParameterizedTest(name = "{0} from start {1}")
    @MethodSource("setsAndStarts")
    void reachesTheCertifiedValues(ReferenceSet set, int start) {
        SeparableCurve curve = separable(ReferenceCurves.of(set), set.observed().length, set.certified().length - 1);

        double[] guess = set.starts()[start];
        SeparableFit fit = SeparableFit.of(curve, set.response(), guess[guess.length - 1]);

        double s = Math.sqrt(fit.sumOfSquares() / set.degreesOfFreedom());
        same(set.deviation(), s, 1e-8);
        for (int j = 0; j < guess.length; j++) {
            same(set.certified()[j], j < curve.columns() ? fit.coefficient(j) : fit.rate(), 1e-9);
            same(set.deviations()[j], s * Math.sqrt(covariance(fit)[j][j]), 1e-7);
        }
    }

    /** Columns 1, t and e^(−kt) together, against the search for all four parameters by Commons Math. */
    @Test
    void severalColumnsAreFoundAsInTheSearchForAllParameters() {
        SplittableRandom random = new SplittableRandom(3);
        double[] times = IntStream.range(0, 12).mapToDouble(i -> 5 * i).toArray();
        NonlinearFit.Formula formula = (i, b, slopes) -> {
            double left = Math.exp(-b[3] * times[i]);
            slopes[0] = 1;
            slopes[1] = times[i];
            slopes[2] = left;
            slopes[3] = -b[2] * times[i] * left;
            return b[0] + b[1] * times[i] + b[2] * left;
        };
        for (int run = 0; run < 50; run++) {
            double rate = random.nextDouble(0.05, 0.1);
            double[] observed = Arrays.stream(times)
                    .map(t -> 4 + 0.02 * t + 36 * Math.exp(-rate * t) + random.nextDouble(-0.1, 0.1))
                    .toArray();

            SeparableFit fit = SeparableFit.of(separable(formula, times.length, 3), observed, 0.07);
            NonlinearFit reference = NonlinearFit.of(formula, observed, new double[] {4, 0.02, 36, 0.07}, 1000)
                    .orElseThrow();

            for (int j = 0; j < 3; j++) {
                same(reference.parameter(j), fit.coefficient(j), 1e-6);
            }
            same(reference.parameter(3), fit.rate(), 1e-7);
            same(reference.sumOfSquares(), fit.sumOfSquares(), 1e-9);
            RealMatrix expected = new QRDecomposition(reference
                            .at()
                            .getJacobian()
                            .transpose()
                            .multiply(reference.at().getJacobian()))
                    .getSolver()
                    .getInverse();
            double[][] found = covariance(fit);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    same(expected.getEntry(i, j), found[i][j], 1e-5);
                }
            }
            assertArrayEquals(reference.at().getResiduals().toArray(), fit.residuals(), 1e-7);
            // The leverages add up to the number of parameters (trace of the projection).
            assertEquals(4, Arrays.stream(fit.leverages()).sum(), 1e-9);
            double[] row = reference.at().getJacobian().getRow(5);
            assertEquals(fit.leverages()[5], fit.leverageOf(Arrays.copyOf(row, 3), row[3]), 1e-6);
        }
    }

    /** A place far outside: {@code xᵀ(JᵀJ)⁻¹x} written out. */
    @Test
    void aPlaceWithoutAnObservationHasTheVarianceOfTheCurveThere() {
        double[] times = {0, 5, 10, 15, 25};
        double[] observed = {30, 24.2, 19.9, 15.7, 10};
        SeparableFit fit = SeparableFit.of(new Decay(times), observed, 0.04);
        double left = Math.exp(-fit.rate() * 60);
        double[] x = {left, -60 * fit.coefficient(0) * left};
        double[][] covariance = covariance(fit);

        double expected =
                x[0] * x[0] * covariance[0][0] + 2 * x[0] * x[1] * covariance[0][1] + x[1] * x[1] * covariance[1][1];
        same(expected, fit.leverageOf(new double[] {x[0]}, x[1]), 1e-9);
    }

    /** How far parameters move together: influences are the rows of {@code (JᵀJ)⁻¹Jᵀ}, so their products are {@code (JᵀJ)⁻¹}. */
    private static double[][] covariance(SeparableFit fit) {
        double[][] influence = fit.influence();
        return Arrays.stream(influence)
                .map(one -> Arrays.stream(influence)
                        .mapToDouble(other -> IntStream.range(0, one.length)
                                .mapToDouble(i -> one[i] * other[i])
                                .sum())
                        .toArray())
                .toArray(double[][]::new);
    }

    @Test
    void theProfileIsLowestAtTheFit() {
        double[] times = {0, 5, 10, 15};
        double[] observed = {30, 24, 20, 15};
        SeparableFit fit = SeparableFit.of(new Decay(times), observed, 0.01);

        assertEquals(fit.sumOfSquares(), fit.sumOfSquaresAt(fit.rate()), 1e-12);
        for (double off : new double[] {-1e-3, 1e-3}) {
            assertTrue(fit.sumOfSquaresAt(fit.rate() + off) > fit.sumOfSquares());
        }
    }

    @Test
    void aRateThatNothingTellsIsRefused() {
        double[] times = {0, 5, 10, 15};
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class, () -> SeparableFit.of(new Decay(times), new double[] {0, 0, 0, 0}, 0.1));

        assertEquals(Problem.UNDETERMINED, refusal.problem());
    }

    private static void same(double expected, double actual, double relative) {
        assertEquals(expected, actual, relative * Math.abs(expected));
    }

    /** A formula whose last parameter alone is nonlinear, as a separable curve: its columns are its slopes by the others. */
    private static SeparableCurve separable(NonlinearFit.Formula formula, int observations, int columns) {
        return new SeparableCurve() {
            @Override
            public int observations() {
                return observations;
            }

            @Override
            public int columns() {
                return columns;
            }

            @Override
            public void evaluate(
                    double rate, double[][] shapes, double[][] slopes, double[] offset, double[] offsetSlope) {
                for (int i = 0; i < observations; i++) {
                    for (int j = 0; j < columns; j++) {
                        // With one linear parameter 1 and the others 0, the slope by k is that of its column.
                        double[] b = new double[columns + 1];
                        b[j] = 1;
                        b[columns] = rate;
                        double[] d = new double[columns + 1];
                        formula.at(i, b, d);
                        shapes[j][i] = d[j];
                        slopes[j][i] = d[columns];
                    }
                }
            }
        };
    }

    @SuppressWarnings("ArrayRecordComponent") // compared never
    private record Decay(double[] times) implements SeparableCurve {
        @Override
        public int observations() {
            return times.length;
        }

        @Override
        public int columns() {
            return 1;
        }

        @Override
        public void evaluate(
                double rate, double[][] columns, double[][] slopes, double[] offset, double[] offsetSlope) {
            for (int i = 0; i < times.length; i++) {
                columns[0][i] = Math.exp(-rate * times[i]);
                slopes[0][i] = -times[i] * columns[0][i];
            }
        }
    }
}
