package org.snugsheet.engine.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * The decomposition, against the Hilbert matrix H<sub>ij</sub> = 1/(i + j − 1), whose inverse is known in whole numbers.
 *
 * <p>Source of the inverse for n = 4: M.-D. Choi, Tricks or treats with the Hilbert matrix, The American Mathematical
 * Monthly 90 (1983), pp. 301–312 (from memory; a test below multiplies it out).
 */
class ScaledQrTest {

    private static final double[][] INVERSE_HILBERT = {
        {16, -120, 240, -140},
        {-120, 1200, -2700, 1680},
        {240, -2700, 6480, -4200},
        {-140, 1680, -4200, 2800},
    };

    private static double[][] hilbert(int rows, int columns) {
        double[][] h = new double[rows][columns];
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                h[i][j] = 1.0 / (i + j + 1);
            }
        }
        return h;
    }

    @Test
    void theKnownInverseIsOne() {
        double[][] h = hilbert(4, 4);
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                double sum = 0;
                for (int k = 0; k < 4; k++) {
                    sum += h[i][k] * INVERSE_HILBERT[k][j];
                }
                assertEquals(i == j ? 1 : 0, sum, 1e-12);
            }
        }
    }

    @Test
    void invertsTheNormalMatrix() {
        // For a square J, (JᵀJ)⁻¹ = J⁻¹·J⁻ᵀ.
        double[][] found = ScaledQr.of(hilbert(4, 4)).inverseOfNormalMatrix();
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                double expected = 0;
                for (int k = 0; k < 4; k++) {
                    expected += INVERSE_HILBERT[i][k] * INVERSE_HILBERT[j][k];
                }
                // The normal matrix itself has a condition number of 2.4e8 here, its square root bounds the loss of QR.
                assertEquals(expected, found[i][j], 1e-10 * Math.abs(expected));
                assertEquals(found[i][j], found[j][i]);
            }
        }
    }

    @Test
    void solvesHoweverTheColumnsAreScaled() {
        double[][] slopes = hilbert(4, 4);
        double[] scales = {1e-150, 1, 1e150, 1e3};
        for (double[] row : slopes) {
            for (int j = 0; j < 4; j++) {
                row[j] *= scales[j];
            }
        }
        ScaledQr qr = ScaledQr.of(slopes);
        double[] residuals = {1, 0, 0, 0};
        double[] step = qr.solve(qr.project(residuals));
        for (int j = 0; j < 4; j++) {
            double expected = INVERSE_HILBERT[j][0] / scales[j];
            assertEquals(expected, step[j], 1e-11 * Math.abs(expected));
        }
        assertArrayEquals(new double[] {1, 0, 0, 0}, residuals);
    }

    @Test
    void projectsOnWhatTheColumnsReach() {
        ScaledQr qr = ScaledQr.of(new double[][] {{3, 0}, {4, 0}, {0, 2}, {0, 0}});
        double[] projection = qr.project(new double[] {3, 4, 1, 7});
        // (3, 4, 1, 0) can be reached and has length √26; the 7 cannot.
        assertEquals(Math.sqrt(26), Math.hypot(projection[0], projection[1]), 1e-14);
    }

    @Test
    void tellsDependentColumnsHoweverTheyAreScaled() {
        double[][] dependent = hilbert(6, 3);
        for (double[] row : dependent) {
            row[2] = 1e9 * row[0] - 3e9 * row[1];
        }
        assertTrue(ScaledQr.of(dependent).isSingular());
        double[][] empty = hilbert(6, 3);
        for (double[] row : empty) {
            row[1] = 0;
        }
        assertTrue(ScaledQr.of(empty).isSingular());
        double[][] independent = hilbert(6, 3);
        for (double[] row : independent) {
            row[2] *= 1e-200;
        }
        assertFalse(ScaledQr.of(independent).isSingular());
    }

    @Test
    void columnsAlikeToTenDigitsAreStillToldApart() {
        double[][] alike = {{1, 1}, {1, 1 + 1e-10}, {1, 1}};
        assertFalse(ScaledQr.of(alike).isSingular());
        double[][] tooAlike = {{1, 1}, {1, 1 + 1e-15}, {1, 1}};
        assertTrue(ScaledQr.of(tooAlike).isSingular());
    }
}
