package org.snugsheet.engine.solver;

/**
 * A separable curve at one k, with the linear parameters that fit best there.
 *
 * <p>The columns are made orthogonal one after the other (modified Gram–Schmidt; Å. Björck, Numerical Methods for Least Squares
 * Problems, SIAM 1996, section 2.4), so that {@code φⱼ = qⱼ + Σ_{i<j} rᵢⱼ·qᵢ}; the slope by k is treated as one more column.
 */
final class Projection {

    private final double rate;

    /** q, each orthogonal to the ones before it; not of length 1. */
    private final double[][] orthogonal;

    private final double[] squared;

    /** r, above its diagonal of ones. */
    private final double[][] triangle;

    private final double[] coefficients;
    private final double[] residuals;
    private final double sumOfSquares;

    /** The slope by k less its part along the columns. */
    private final double[] across;

    private final double acrossSquared;
    private final double[] slopeAlong;

    Projection(SeparableCurve curve, double[] observed, double rate) {
        int n = curve.observations();
        int m = curve.columns();
        this.rate = rate;
        orthogonal = new double[m][n];
        double[][] columnSlopes = new double[m][n];
        double[] offset = new double[n];
        across = new double[n];
        curve.evaluate(rate, orthogonal, columnSlopes, offset, across);
        residuals = new double[n];
        for (int i = 0; i < n; i++) {
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
        for (int j = 0; j < m; j++) {
            for (int i = 0; i < n; i++) {
                across[i] += coefficients[j] * columnSlopes[j][i];
            }
        }
        slopeAlong = new double[m];
        for (int j = 0; j < m; j++) {
            slopeAlong[j] = takeOut(j, across);
        }
        acrossSquared = dot(across, across);
    }

    /** Takes the part along one orthogonal column out of a vector, and says how much of the column it was. */
    private double takeOut(int column, double[] vector) {
        double[] q = orthogonal[column];
        double share = dot(q, vector) / squared[column];
        for (int i = 0; i < vector.length; i++) {
            vector[i] -= share * q[i];
        }
        return share;
    }

    /** The parameters of the columns φ from those of the orthogonal ones: back-substitution. */
    private double[] solved(double[] along) {
        double[] solved = along.clone();
        for (int i = solved.length - 1; i >= 0; i--) {
            for (int j = i + 1; j < solved.length; j++) {
                solved[i] -= triangle[i][j] * solved[j];
            }
        }
        return solved;
    }

    double rate() {
        return rate;
    }

    double coefficient(int column) {
        return coefficients[column];
    }

    double sumOfSquares() {
        return sumOfSquares;
    }

    boolean isDefined() {
        return Double.isFinite(sumOfSquares);
    }

    /** Whether k is determined here: its slope must not vanish beside the columns. */
    boolean isDetermined() {
        return isDefined() && acrossSquared > 0 && Double.isFinite(1 / acrossSquared);
    }

    /** How much the curve changes with k beyond what the columns make up for. */
    double lengthAcross() {
        return Math.sqrt(acrossSquared);
    }

    double step() {
        return dot(across, residuals) / acrossSquared;
    }

    double[] residuals() {
        return residuals.clone();
    }

    double[][] unscaledCovariance() {
        double[][] influence = influence();
        int p = influence.length;
        double[][] covariance = new double[p][p];
        for (int i = 0; i < p; i++) {
            for (int j = 0; j < p; j++) {
                covariance[i][j] = dot(influence[i], influence[j]);
            }
        }
        return covariance;
    }

    /** How far each parameter moves with each observation: the rows of (JᵀJ)⁻¹·Jᵀ, in the order of the columns, then k. */
    double[][] influence() {
        int m = orthogonal.length;
        double[][] influence = new double[m + 1][residuals.length];
        for (int i = 0; i < residuals.length; i++) {
            double byRate = across[i] / acrossSquared;
            influence[m][i] = byRate;
            for (int j = m - 1; j >= 0; j--) {
                double moved = orthogonal[j][i] / squared[j] - slopeAlong[j] * byRate;
                for (int k = j + 1; k < m; k++) {
                    moved -= triangle[j][k] * influence[k][i];
                }
                influence[j][i] = moved;
            }
        }
        return influence;
    }

    /** The columns and the slope by k, each with the part along those before it taken out, and of length 1. */
    double[][] basis() {
        int m = orthogonal.length;
        double[][] basis = new double[m + 1][];
        for (int j = 0; j < m; j++) {
            basis[j] = unit(orthogonal[j], squared[j]);
        }
        basis[m] = unit(across, acrossSquared);
        return basis;
    }

    double[] leverages() {
        double[] leverages = new double[residuals.length];
        for (int i = 0; i < leverages.length; i++) {
            leverages[i] = across[i] * across[i] / acrossSquared;
            for (int j = 0; j < squared.length; j++) {
                leverages[i] += orthogonal[j][i] * orthogonal[j][i] / squared[j];
            }
        }
        return leverages;
    }

    /** {@code xᵀ(JᵀJ)⁻¹x} for the row x that another observation would have: its columns and its slope by k. */
    double leverageOf(double[] columns, double slope) {
        int m = squared.length;
        double[] left = new double[m];
        double leftOfSlope = slope;
        double leverage = 0;
        for (int j = 0; j < m; j++) {
            left[j] = columns[j];
            for (int i = 0; i < j; i++) {
                left[j] -= triangle[i][j] * left[i];
            }
            leverage += left[j] * left[j] / squared[j];
            leftOfSlope -= slopeAlong[j] * left[j];
        }
        return leverage + leftOfSlope * leftOfSlope / acrossSquared;
    }

    private static double[] unit(double[] vector, double squared) {
        double length = Math.sqrt(squared);
        double[] unit = new double[vector.length];
        for (int i = 0; i < unit.length; i++) {
            unit[i] = vector[i] / length;
        }
        return unit;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
