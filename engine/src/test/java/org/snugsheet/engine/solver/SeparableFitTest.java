package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/** Variable projection against NIST’s certified values and against the search in all parameters together. */
class SeparableFitTest {

    static Stream<Arguments> setsAndStarts() {
        return Stream.of("Misra1a", "BoxBOD", "DanWood")
                .map(ReferenceSet::read)
                .flatMap(set -> IntStream.of(0, 1).mapToObj(start -> Arguments.of(set, start)));
    }

    /** NIST StRD: parameters to 9 digits and standard deviations to 7, from both starting points. */
    @ParameterizedTest(name = "{0} from start {1}")
    @MethodSource("setsAndStarts")
    void reachesTheCertifiedValues(ReferenceSet set, int start) {
        SeparableCurve curve = set.name().equals("DanWood") ? power(set) : approach(set);

        SeparableFit fit = SeparableFit.of(curve, set.response(), set.starts()[start][1]);

        double s = Math.sqrt(fit.sumOfSquares() / set.degreesOfFreedom());
        double[][] covariance = fit.unscaledCovariance();
        same(set.certified()[0], fit.amplitude(), 1e-9);
        same(set.certified()[1], fit.rate(), 1e-9);
        same(set.deviations()[0], s * Math.sqrt(covariance[0][0]), 1e-7);
        same(set.deviations()[1], s * Math.sqrt(covariance[1][1]), 1e-7);
        same(set.deviation(), s, 1e-8);
    }

    @Test
    void aFreeLevelIsFoundAsInTheSearchForAllParameters() {
        SplittableRandom random = new SplittableRandom(3);
        double[] times = IntStream.range(0, 12).mapToDouble(i -> 5 * i).toArray();
        for (int run = 0; run < 50; run++) {
            double rate = random.nextDouble(0.02, 0.1);
            double[] observed = Arrays.stream(times)
                    .map(t -> 4 + 36 * Math.exp(-rate * t) + random.nextDouble(-0.5, 0.5))
                    .toArray();
            Curve together = Curve.at(times, (t, b, slopes) -> {
                double left = Math.exp(-b[1] * t);
                slopes[0] = left;
                slopes[1] = -b[0] * t * left;
                slopes[2] = 1;
                return b[0] * left + b[2];
            });

            SeparableFit fit = SeparableFit.of(new Decay(times, true), observed, 0.05);
            LeastSquaresFit reference = LeastSquares.fit(together, observed, new double[] {36, 0.05, 4});

            same(reference.parameter(0), fit.amplitude(), 1e-7);
            same(reference.parameter(1), fit.rate(), 1e-7);
            same(reference.parameter(2), fit.level(), 1e-7);
            double[][] expected = reference.unscaledCovariance();
            double[][] found = fit.unscaledCovariance();
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    same(expected[i][j], found[i][j], 1e-5);
                }
            }
            assertArrayEquals(reference.residuals(), fit.residuals(), 1e-7);
            // The leverages add up to the number of parameters (trace of the projection).
            assertEquals(3, Arrays.stream(fit.leverages()).sum(), 1e-9);
        }
    }

    @Test
    void theProfileIsLowestAtTheFit() {
        double[] times = {0, 5, 10, 15};
        double[] observed = {30, 24, 20, 15};
        SeparableFit fit = SeparableFit.of(new Decay(times, false), observed, 0.01);

        assertEquals(fit.sumOfSquares(), fit.sumOfSquaresAt(fit.rate()), 1e-12);
        for (double off : new double[] {-1e-3, 1e-3}) {
            assertTrue(fit.sumOfSquaresAt(fit.rate() + off) > fit.sumOfSquares());
        }
    }

    @Test
    void aRateThatNothingTellsIsRefused() {
        double[] times = {0, 5, 10, 15};
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> SeparableFit.of(new Decay(times, false), new double[] {0, 0, 0, 0}, 0.1));

        assertEquals(Problem.UNDETERMINED, refusal.problem());
    }

    private static SeparableCurve approach(ReferenceSet set) {
        double[] x = set.predictors()[0];
        return new OfPlaces(x, (place, rate, at) -> {
            at[0] = -Math.expm1(-rate * place);
            at[1] = place * Math.exp(-rate * place);
        });
    }

    private static SeparableCurve power(ReferenceSet set) {
        double[] x = set.predictors()[0];
        return new OfPlaces(x, (place, rate, at) -> {
            at[0] = Math.pow(place, rate);
            at[1] = at[0] * Math.log(place);
        });
    }

    private static void same(double expected, double actual, double relative) {
        assertEquals(expected, actual, relative * Math.abs(expected));
    }

    private interface Shape {
        void fill(double place, double rate, double[] valueAndSlope);
    }

    @SuppressWarnings("ArrayRecordComponent") // compared never
    private record OfPlaces(double[] places, Shape law) implements SeparableCurve {
        @Override
        public int observations() {
            return places.length;
        }

        @Override
        public boolean hasLevel() {
            return false;
        }

        @Override
        public void evaluate(double rate, double[] shape, double[] slope, double[] offset, double[] offsetSlope) {
            double[] at = new double[2];
            for (int i = 0; i < places.length; i++) {
                law.fill(places[i], rate, at);
                shape[i] = at[0];
                slope[i] = at[1];
            }
        }
    }

    @SuppressWarnings("ArrayRecordComponent") // compared never
    private record Decay(double[] times, boolean hasLevel) implements SeparableCurve {
        @Override
        public int observations() {
            return times.length;
        }

        @Override
        public void evaluate(double rate, double[] shape, double[] slope, double[] offset, double[] offsetSlope) {
            for (int i = 0; i < times.length; i++) {
                shape[i] = Math.exp(-rate * times[i]);
                slope[i] = -times[i] * shape[i];
            }
        }
    }
}
