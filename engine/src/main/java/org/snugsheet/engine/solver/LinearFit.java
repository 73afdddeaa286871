package org.snugsheet.engine.solver;

/**
 * What follows exactly in a {@link SeparableCurve} once its k is given: the linear parameters that fit best, and the residuals.
 *
 * <p>The columns are made orthogonal one after the other (modified Gram–Schmidt; Å. Björck, Numerical Methods for Least Squares
 * Problems, SIAM 1996, section 2.4), so that {@code φⱼ = qⱼ + Σ_{i<j} rᵢⱼ·qᵢ}.
 */
public final class LinearFit {

    /** q, each orthogonal to the ones before it; not of length 1. */
    final double[][] orthogonal;

    final double[] squared;

    /** r, above its diagonal of ones. */
    final double[][] triangle;

    final double[] residuals;

    private final double[] coefficients;
    private final double sumOfSquares;

    /** Takes the columns over. */
    LinearFit(double[][] columns, double[] observed, double[] offset) {
        int m = columns.length;
        orthogonal = columns;
        residuals = new double[observed.length];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = observed[i] - offset[i];
        }
        squared = new double[m];
        triangle = new double[m][m];
        double[] along = new double[m];
        for (int j = 0; j < m; j++) {
            for (int i = 0; i < j; i++) {
                triangle[i][j] = takeOut(i, orthogonal[j]);
            }
            squared[j] = dot(orthogonal[j], orthogonal[j]);
            along[j] = takeOut(j, residuals);
        }
        coefficients = solved(along);
        sumOfSquares = dot(residuals, residuals);
    }

    /**
     * The best linear parameters at a given k.
     *
     * @param curve the family of curves
     * @param observed y, one number for each observation
     * @param rate k
     * @return the fit, which need not be {@linkplain #isDefined() defined}
     */
    public static LinearFit at(SeparableCurve curve, double[] observed, double rate) {
        int n = curve.observations();
        double[][] columns = new double[curve.columns()][n];
        double[] offset = new double[n];
        curve.evaluate(rate, columns, offset);
        return new LinearFit(columns, observed, offset);
    }

    /**
     * A parameter that enters linearly.
     *
     * @param column the number of its column, from 0
     * @return A
     */
    public double coefficient(int column) {
        return coefficients[column];
    }

    /**
     * The sum of the squared residuals.
     *
     * @return SSR
     */
    public double sumOfSquares() {
        return sumOfSquares;
    }

    /**
     * Whether the curve is defined here and its columns can be told apart.
     *
     * @return false if the sum of squares is not a finite number
     */
    public boolean isDefined() {
        return Double.isFinite(sumOfSquares);
    }

    /** Takes the part along one orthogonal column out of a vector, and says how much of the column it was. */
    double takeOut(int column, double[] vector) {
        double[] q = orthogonal[column];
        double share = dot(q, vector) / squared[column];
        for (int i = 0; i < vector.length; i++) {
            vector[i] -= share * q[i];
        }
        return share;
    }

    /** The parameters of the columns φ from those of the orthogonal ones: back-substitution. */
    private double[] solved(double[] along) {
        for (int i = along.length - 1; i >= 0; i--) {
            for (int j = i + 1; j < along.length; j++) {
                along[i] -= triangle[i][j] * along[j];
            }
        }
        return along;
    }

    static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
