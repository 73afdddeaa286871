package org.snugsheet.engine.solver;

import java.util.Arrays;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;

/**
 * The curve nearest to some observations, and how sure its parameters are.
 *
 * <p>Immutable, and equal to a fit with the same numbers; arrays are copied on their way out. With n observations, p
 * parameters, residuals r = y − f(b), weights w (1 unless given) and the slopes J = ∂f/∂b:
 *
 * <ul>
 *   <li>sum of squares S = Σ w·r²
 *   <li>residual standard deviation s = √(S/(n − p)), an estimate of the scatter of an observation of weight 1
 *   <li>covariance of the parameters v·(JᵀWJ)⁻¹, where v is the variance of an observation of weight 1: either s², told
 *       by the scatter itself, or one that is known from elsewhere, such as that of the thermometer
 *   <li>standard errors: the square roots of its diagonal
 * </ul>
 *
 * <p>The covariance takes the curve for straight as far as the errors reach. Source: G. A. F. Seber and C. J. Wild,
 * Nonlinear Regression, Wiley 1989, section 2.1; the same s and standard errors are certified by NIST in its Statistical
 * Reference Datasets.
 */
public final class LeastSquaresFit {

    private final double[] parameters;
    private final double[] residuals;
    private final double sumOfSquares;
    private final double[][] unscaledCovariance;
    private final int evaluations;

    /** Takes arrays that nobody else holds. */
    LeastSquaresFit(
            double[] parameters,
            double[] residuals,
            double sumOfSquares,
            double[][] unscaledCovariance,
            int evaluations) {
        this.parameters = parameters;
        this.residuals = residuals;
        this.sumOfSquares = sumOfSquares;
        this.unscaledCovariance = unscaledCovariance;
        this.evaluations = evaluations;
    }

    /**
     * All parameters.
     *
     * @return b, a new array
     */
    public double[] parameters() {
        return parameters.clone();
    }

    /**
     * One parameter.
     *
     * @param index which, from 0
     * @return b<sub>index</sub>
     */
    public double parameter(int index) {
        return parameters[index];
    }

    /**
     * What is left of the observations: observed minus curve, without weights, in the unit of the observations.
     *
     * @return r, a new array, in the order of the observations
     */
    public double[] residuals() {
        return residuals.clone();
    }

    /**
     * The sum of squares that was made smallest.
     *
     * @return S = Σ w·r², in the square of the observations’ unit, if the weights have none
     */
    public double sumOfSquares() {
        return sumOfSquares;
    }

    /**
     * How many observations there are beyond what the parameters need.
     *
     * @return n − p, at least 1
     */
    public int degreesOfFreedom() {
        return residuals.length - parameters.length;
    }

    /**
     * The variance of an observation of weight 1, as the scatter about the curve tells it.
     *
     * @return s² = S/(n − p)
     */
    public double residualVariance() {
        return sumOfSquares / degreesOfFreedom();
    }

    /**
     * The standard deviation of an observation of weight 1, as the scatter about the curve tells it.
     *
     * @return s = √(S/(n − p)), in the unit of the observations, if the weights have none
     */
    public double residualStandardDeviation() {
        return Math.sqrt(residualVariance());
    }

    /**
     * The covariance of the parameters for a variance of 1.
     *
     * @return (JᵀWJ)⁻¹, a new symmetric matrix
     */
    public double[][] unscaledCovariance() {
        return covariance(1);
    }

    /**
     * The covariance of the parameters, as the scatter about the curve tells it.
     *
     * @return s²·(JᵀWJ)⁻¹, a new symmetric matrix
     */
    public double[][] covariance() {
        return covariance(residualVariance());
    }

    /**
     * The covariance of the parameters for a known variance.
     *
     * @param variance v, that of an observation of weight 1, not negative
     * @return v·(JᵀWJ)⁻¹, a new symmetric matrix
     * @throws InvalidInputException if the variance is negative or not a number
     */
    public double[][] covariance(double variance) {
        requireVariance(variance);
        double[][] covariance = new double[parameters.length][parameters.length];
        for (int i = 0; i < parameters.length; i++) {
            for (int j = 0; j < parameters.length; j++) {
                covariance[i][j] = variance * unscaledCovariance[i][j];
            }
        }
        return covariance;
    }

    /**
     * The standard errors of the parameters, as the scatter about the curve tells them.
     *
     * @return s·√((JᵀWJ)⁻¹<sub>jj</sub>), a new array, each in the unit of its parameter
     */
    public double[] standardErrors() {
        return standardErrors(residualVariance());
    }

    /**
     * The standard errors of the parameters for a known variance.
     *
     * @param variance v, that of an observation of weight 1, not negative
     * @return √(v·(JᵀWJ)⁻¹<sub>jj</sub>), a new array, each in the unit of its parameter
     * @throws InvalidInputException if the variance is negative or not a number
     */
    public double[] standardErrors(double variance) {
        requireVariance(variance);
        double[] errors = new double[parameters.length];
        for (int j = 0; j < errors.length; j++) {
            errors[j] = Math.sqrt(variance * unscaledCovariance[j][j]);
        }
        return errors;
    }

    /**
     * How often the curve was asked for its values and slopes.
     *
     * @return the number, never more than the limit
     */
    public int evaluations() {
        return evaluations;
    }

    private static void requireVariance(double variance) {
        if (!Double.isFinite(variance)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(variance));
        }
        if (variance < 0) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.VARIANCE, variance);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LeastSquaresFit that
                && Arrays.equals(parameters, that.parameters)
                && Arrays.equals(residuals, that.residuals)
                && Double.compare(sumOfSquares, that.sumOfSquares) == 0
                && Arrays.deepEquals(unscaledCovariance, that.unscaledCovariance)
                && evaluations == that.evaluations;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(parameters) + Arrays.hashCode(residuals);
    }

    @Override
    public String toString() {
        return "b = " + Arrays.toString(parameters) + " ± " + Arrays.toString(standardErrors()) + ", s = "
                + residualStandardDeviation();
    }
}
