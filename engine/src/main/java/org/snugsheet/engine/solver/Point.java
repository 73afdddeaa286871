package org.snugsheet.engine.solver;

/**
 * One place in the space of parameters, with all that is known there.
 *
 * <p>Residuals and slopes are already multiplied with the square roots of the weights, so that everything that comes
 * after is plain, unweighted least squares. The arrays are shared within the package and never written to again.
 *
 * @param parameters b
 * @param residuals √w·(y − f(b))
 * @param slopes √w·∂f/∂b, one row an observation
 * @param sumOfSquares Σ w·(y − f(b))²; positive infinity where the curve or its slopes are not finite
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never leaves the package
record Point(double[] parameters, double[] residuals, double[][] slopes, double sumOfSquares) {

    boolean isFinite() {
        return sumOfSquares < Double.POSITIVE_INFINITY;
    }
}
