package org.snugsheet.engine.cooling;

/**
 * First-order autoregressive errors: each keeps the share ρ of the one before, so that their correlation matrix is
 * {@code R = ρ^|i − j|}. This is what the residuals of ordinary least squares then imply. Generalized least squares would put
 * the curve elsewhere; how far, and with what error, follows from {@code R⁻¹}, which is tridiagonal.
 *
 * <p>The likelihood is the restricted one, of the residuals alone: {@code ln L(ρ) = −½·ln|R| − ½·ln|QᵀR⁻¹Q| − ½(n − p)·ln S},
 * with the directions Q of the curve and S the weighted sum of squares about the generalized fit (H. D. Patterson and R.
 * Thompson, Biometrika 58 (1971), 545–554; D. A. Harville, Biometrika 61 (1974), 383–385; both from memory).
 */
final class Autoregression {

    private final double rho;
    private final double[][] basis;
    private final double[][] root;
    private final double[] shift;
    private final double variance;
    private final double logLikelihood;

    /**
     * Analyzes residuals whose errors have this correlation.
     *
     * @param rho ρ, from 0 to less than 1
     * @param residuals of least squares, in K
     * @param basis orthonormal directions of the curve
     */
    Autoregression(double rho, double[] residuals, double[][] basis) {
        this.rho = rho;
        this.basis = basis;
        int n = residuals.length;
        int p = basis.length;
        double[] weighted = weighted(residuals);
        double[] pulled = new double[p];
        double[][] information = new double[p][p];
        for (int i = 0; i < p; i++) {
            double[] direction = weighted(basis[i]);
            pulled[i] = dot(basis[i], weighted);
            for (int j = 0; j < p; j++) {
                information[i][j] = dot(direction, basis[j]);
            }
        }
        double logDeterminant = 0;
        root = root(information);
        for (int i = 0; i < p; i++) {
            logDeterminant += 2 * Math.log(root[i][i]);
        }
        shift = forward(pulled);
        double squares = Math.max(dot(residuals, weighted) - dot(shift, shift), Double.MIN_NORMAL);
        variance = squares / (n - p);
        logLikelihood = -((n - 1) * Math.log1p(-rho * rho) + logDeterminant + (n - p) * Math.log(squares)) / 2;
    }

    /** Whether the directions are independent; rounding may have made two of them one, and then nothing can be said. */
    boolean isDetermined() {
        return Double.isFinite(logLikelihood);
    }

    double logLikelihood() {
        return logLikelihood;
    }

    /** The variance of one reading in K². */
    double variance() {
        return variance;
    }

    /** The mean square error of a weighted sum of the readings whose weights lie in the space of the directions. */
    double squareErrorOf(double[] weights) {
        double[] along = new double[basis.length];
        for (int i = 0; i < along.length; i++) {
            along[i] = dot(basis[i], weights);
        }
        double[] sum = forward(along);
        double off = dot(sum, shift);
        return variance * dot(sum, sum) + off * off;
    }

    /** The lower triangle L of a symmetric matrix {@code L·Lᵀ} (A.-L. Cholesky); NaN if the matrix is not positive definite. */
    private static double[][] root(double[][] matrix) {
        int p = matrix.length;
        double[][] root = new double[p][p];
        for (int i = 0; i < p; i++) {
            for (int j = 0; j <= i; j++) {
                double left = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    left -= root[i][k] * root[j][k];
                }
                root[i][j] = i == j ? Math.sqrt(left) : left / root[j][j];
            }
        }
        return root;
    }

    /** {@code L⁻¹·values}: products of two such vectors are those with the inverse of the matrix. */
    private double[] forward(double[] values) {
        double[] solved = new double[values.length];
        for (int i = 0; i < solved.length; i++) {
            double left = values[i];
            for (int k = 0; k < i; k++) {
                left -= root[i][k] * solved[k];
            }
            solved[i] = left / root[i][i];
        }
        return solved;
    }

    /**
     * The effective degrees of freedom of the residuals: {@code tr(M·R)²/tr(M·R·M·R)}, where M projects onto the residuals
     * (F. E. Satterthwaite, Biometrics Bulletin 2 (1946), 110–114).
     */
    double freedom() {
        int n = basis[0].length;
        double squares = n;
        double power = 1;
        for (int apart = 1; apart < n; apart++) {
            power *= rho * rho;
            squares += 2 * (n - apart) * power;
        }
        Traces left = Traces.without(new Traces(n, squares), this::correlated, basis);
        return left.once() * left.once() / left.twice();
    }

    /** {@code R⁻¹·values}. */
    private double[] weighted(double[] values) {
        int n = values.length;
        double[] sums = new double[n];
        double scale = 1 / (1 - rho * rho);
        for (int i = 0; i < n; i++) {
            double before = i > 0 ? values[i - 1] : 0;
            double behind = i < n - 1 ? values[i + 1] : 0;
            double own = i > 0 && i < n - 1 ? 1 + rho * rho : 1;
            sums[i] = scale * (own * values[i] - rho * (before + behind));
        }
        return sums;
    }

    /** {@code R·values}, by one pass from the left and one from the right. */
    private double[] correlated(double[] values) {
        int n = values.length;
        double[] sums = new double[n];
        double running = 0;
        for (int i = 0; i < n; i++) {
            sums[i] = rho * running;
            running = rho * running + values[i];
        }
        running = 0;
        for (int i = n - 1; i >= 0; i--) {
            running = rho * running + values[i];
            sums[i] += running;
        }
        return sums;
    }

    static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
