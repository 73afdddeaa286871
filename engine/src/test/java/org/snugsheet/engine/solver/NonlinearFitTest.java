package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where plain methods fail; {@link NistReferenceTest} has the certified sets. */
class NonlinearFitTest {

    private static final int LOOKS = 1000;

    @Test
    void turnsBackWhereTheCurveIsNotDefined() {
        // From b = 4 a Gauss–Newton step for 0.1·x goes to b = −3.6, where the root is not a number.
        NonlinearFit.Formula root = (i, b, d) -> {
            d[0] = (i + 1) / (2 * Math.sqrt(b[0]));
            return (i + 1) * Math.sqrt(b[0]);
        };
        NonlinearFit fit = NonlinearFit.of(root, new double[] {0.1, 0.2, 0.3}, new double[] {4}, LOOKS)
                .orElseThrow();
        assertEquals(0.01, fit.parameter(0), 1e-14);
    }

    @Test
    void settlesWhereGaussNewtonAloneRunsAway() {
        // Powell’s example, R. Fletcher, Practical Methods of Optimization, 2nd ed., Wiley 1987, section 6.1:
        // r = (x + 1, λx² + x − 1) has its least squares at x = 0 for λ < 1, and Gauss–Newton leaves it for λ < −1.
        // The section was quoted from memory; that x = 0 is the lowest point follows from S′(0) = 0 and S″(0) = 4 − 4λ.
        for (double lambda : new double[] {-0.5, -1, -1.5, -2.5}) {
            NonlinearFit.Formula powell = (i, b, d) -> {
                d[0] = i == 0 ? 1 : 2 * lambda * b[0] + 1;
                return i == 0 ? b[0] : lambda * b[0] * b[0] + b[0];
            };
            NonlinearFit fit = NonlinearFit.of(powell, new double[] {-1, 1}, new double[] {0.1}, LOOKS)
                    .orElseThrow();
            assertEquals(0, fit.parameter(0), 1e-9, () -> "λ = " + lambda);
        }
    }

    @Test
    void triesShorterFirstSteps() {
        // NIST’s Rat43 and Misra1a from other guesses than NIST’s, from which the longest first step ends on a plateau.
        assertCertified("Rat43", 100, 10, 1, 3);
        assertCertified("Rat43", 1000, 2, 0.5, 4);
        assertCertified("Misra1a", 2000, 2.26e-4);
    }

    private static void assertCertified(String name, double... start) {
        ReferenceSet set = ReferenceSet.read(name);
        NonlinearFit fit = NonlinearFit.of(ReferenceCurves.of(set), set.observed(), start, 4000)
                .orElseThrow();
        for (int j = 0; j < start.length; j++) {
            assertEquals(set.certified()[j], fit.parameter(j), 1e-9 * Math.abs(set.certified()[j]), name);
        }
    }

    @Test
    void settlesOnObservationsWithoutScatter() {
        double[] exact = {60, 55.1, 50.6, 46.5};
        NonlinearFit.Formula line = (i, b, d) -> {
            d[0] = Math.exp(-b[1] * i);
            d[1] = -b[0] * i * d[0];
            return b[0] * d[0];
        };
        for (int i = 0; i < exact.length; i++) {
            exact[i] = line.at(i, new double[] {60, 0.084}, new double[2]);
        }
        NonlinearFit fit =
                NonlinearFit.of(line, exact, new double[] {50, 0.05}, LOOKS).orElseThrow();
        assertEquals(60, fit.parameter(0), 1e-11);
        assertEquals(0.084, fit.parameter(1), 1e-13);
        assertTrue(fit.sumOfSquares() < 1e-24);
    }

    @Test
    void parametersThatNothingTellsApartAreRefused() {
        // Only the sum of the two shows.
        NonlinearFit.Formula sum = (i, b, d) -> {
            d[0] = 1;
            d[1] = 1;
            return b[0] + b[1];
        };
        assertEquals(Optional.empty(), NonlinearFit.of(sum, new double[] {1, 2, 4}, new double[] {0, 0}, LOOKS));
    }

    @Test
    void aSearchWithTooFewLooksIsRefused() {
        ReferenceSet set = ReferenceSet.read("MGH09");
        assertTrue(NonlinearFit.of(ReferenceCurves.of(set), set.observed(), set.starts()[0], 20)
                .isEmpty());
    }

    @Test
    void whatItIsGivenStaysAsItIs() {
        ReferenceSet set = ReferenceSet.read("Misra1a");
        double[] observed = set.observed().clone();
        double[] start = set.starts()[0].clone();
        assertTrue(
                NonlinearFit.of(ReferenceCurves.of(set), observed, start, LOOKS).isPresent());
        assertTrue(Arrays.equals(set.observed(), observed));
        assertTrue(Arrays.equals(set.starts()[0], start));
    }
}
