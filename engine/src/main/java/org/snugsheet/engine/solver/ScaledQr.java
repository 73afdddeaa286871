package org.snugsheet.engine.solver;

import java.util.Arrays;

/**
 * The QR decomposition of a matrix of slopes J whose columns were first scaled to a length near 1.
 *
 * <p>J = Q·R·S with S diagonal, Q with orthonormal columns and R upper triangular. Parameters of very different size (a
 * temperature of 60, a rate of 0.000 3) make the columns of J very different in length; scaled, they only show how alike
 * the columns are, and that is what decides whether the parameters can be told apart. The scales are powers of two, so
 * that scaling rounds nothing. The normal equations JᵀJ are never formed: that would square the condition number.
 *
 * <p>By Householder reflections: G. H. Golub and C. F. Van Loan, Matrix Computations, 4th ed., Johns Hopkins University
 * Press 2013, section 5.2. Columns are not exchanged: that would tell singular matrices more surely where they have dozens
 * of columns, but a curve has few parameters.
 */
final class ScaledQr {

    /** Below n times this a pivot is no more than rounding. */
    private static final double ROUNDING = 16 * Math.ulp(1.0);

    private final int rows;
    private final int columns;
    private final double[][] reflectors;
    private final double[] diagonal;
    private final double[] scales;

    private ScaledQr(double[][] columnsOfJ, int rows) {
        this.rows = rows;
        this.columns = columnsOfJ.length;
        this.reflectors = columnsOfJ;
        this.diagonal = new double[columns];
        this.scales = new double[columns];
    }

    /**
     * Decomposes J.
     *
     * @param slopes J, one row an observation, not fewer rows than columns; copied
     */
    static ScaledQr of(double[][] slopes) {
        int rows = slopes.length;
        int columns = slopes[0].length;
        double[][] byColumn = new double[columns][rows];
        for (int i = 0; i < rows; i++) {
            double[] row = slopes[i];
            for (int j = 0; j < columns; j++) {
                byColumn[j][i] = row[j];
            }
        }
        ScaledQr qr = new ScaledQr(byColumn, rows);
        qr.scale();
        qr.decompose();
        return qr;
    }

    private void scale() {
        for (int j = 0; j < columns; j++) {
            double[] column = reflectors[j];
            double largest = 0;
            for (double x : column) {
                largest = Math.max(largest, Math.abs(x));
            }
            scales[j] = largest > 0 ? Math.scalb(1.0, Math.getExponent(largest)) : 1;
            for (int i = 0; i < rows; i++) {
                column[i] /= scales[j];
            }
        }
    }

    private void decompose() {
        for (int k = 0; k < columns; k++) {
            double[] v = reflectors[k];
            double length = length(v, k);
            if (length == 0) {
                continue;
            }
            double alpha = v[k] > 0 ? -length : length;
            diagonal[k] = alpha;
            // The reflector is kept so that its first entry v[k] also serves as the divisor: Hx = x + v·(vᵀx)/(α·v[k]).
            v[k] -= alpha;
            for (int j = k + 1; j < columns; j++) {
                reflect(v, alpha, k, reflectors[j]);
            }
        }
    }

    private double length(double[] column, int from) {
        double sum = 0;
        for (int i = from; i < rows; i++) {
            sum += column[i] * column[i];
        }
        return Math.sqrt(sum);
    }

    private void reflect(double[] v, double alpha, int from, double[] x) {
        double product = 0;
        for (int i = from; i < rows; i++) {
            product += v[i] * x[i];
        }
        double factor = product / (alpha * v[from]);
        for (int i = from; i < rows; i++) {
            x[i] += factor * v[i];
        }
    }

    /** Whether some direction in the space of parameters leaves all values as they are, up to rounding. */
    boolean isSingular() {
        for (double pivot : diagonal) {
            if (Math.abs(pivot) <= rows * ROUNDING) {
                return true;
            }
        }
        return false;
    }

    /**
     * The first entries of Qᵀr: the part of r that the columns of J can reach.
     *
     * @param residuals r, one for each row; left as they are
     * @return as many numbers as there are columns
     */
    double[] project(double[] residuals) {
        double[] x = residuals.clone();
        for (int k = 0; k < columns; k++) {
            if (diagonal[k] != 0) {
                reflect(reflectors[k], diagonal[k], k, x);
            }
        }
        return Arrays.copyOf(x, columns);
    }

    /**
     * The step d that makes ‖r − J·d‖ smallest. Only when {@link #isSingular()} is false.
     *
     * @param projection what {@link #project} gave for r
     * @return d, in the order of the columns of J
     */
    double[] solve(double[] projection) {
        double[] x = projection.clone();
        double[] step = new double[columns];
        for (int k = columns - 1; k >= 0; k--) {
            for (int j = k + 1; j < columns; j++) {
                x[k] -= reflectors[j][k] * x[j];
            }
            x[k] /= diagonal[k];
            step[k] = x[k] / scales[k];
        }
        return step;
    }

    /**
     * (JᵀJ)⁻¹ = S⁻¹·R⁻¹·R⁻ᵀ·S⁻¹. Only when {@link #isSingular()} is false.
     *
     * @return a new square matrix, exactly symmetric, in the order of the columns of J
     */
    double[][] inverseOfNormalMatrix() {
        double[][] inverse = new double[columns][columns];
        for (int c = 0; c < columns; c++) {
            inverse[c][c] = 1 / diagonal[c];
            for (int r = c - 1; r >= 0; r--) {
                double sum = 0;
                for (int k = r + 1; k <= c; k++) {
                    sum += reflectors[k][r] * inverse[k][c];
                }
                inverse[r][c] = -sum / diagonal[r];
            }
        }
        double[][] result = new double[columns][columns];
        for (int r = 0; r < columns; r++) {
            for (int c = r; c < columns; c++) {
                double sum = 0;
                for (int k = c; k < columns; k++) {
                    sum += inverse[r][k] * inverse[c][k];
                }
                double entry = sum / scales[r] / scales[c];
                result[r][c] = entry;
                result[c][r] = entry;
            }
        }
        return result;
    }
}
