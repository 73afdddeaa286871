package org.snugsheet.engine.solver;

import static org.snugsheet.engine.solver.LinearFit.dot;

/** A separable curve at one k, with the linear parameters that fit best there; the slope by k is treated as one more column. */
final class Projection {

    private final double rate;
    private final LinearFit linear;

    /** The slope by k less its part along the columns. */
    private final double[] across;

    private final double acrossSquared;
    private final double[] slopeAlong;

    Projection(SeparableCurve curve, double[] observed, double rate) {
        int n = curve.observations();
        int m = curve.columns();
        this.rate = rate;
        double[][] columns = new double[m][n];
        double[][] columnSlopes = new double[m][n];
        double[] offset = new double[n];
        across = new double[n];
        curve.evaluate(rate, columns, columnSlopes, offset, across);
        linear = new LinearFit(columns, observed, offset);
        for (int j = 0; j < m; j++) {
            for (int i = 0; i < n; i++) {
                across[i] += linear.coefficient(j) * columnSlopes[j][i];
            }
        }
        slopeAlong = new double[m];
        for (int j = 0; j < m; j++) {
            slopeAlong[j] = linear.takeOut(j, across);
        }
        acrossSquared = dot(across, across);
    }

    double rate() {
        return rate;
    }

    double coefficient(int column) {
        return linear.coefficient(column);
    }

    double sumOfSquares() {
        return linear.sumOfSquares();
    }

    boolean isDefined() {
        return linear.isDefined();
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
        return dot(across, linear.residuals) / acrossSquared;
    }

    double[] residuals() {
        return linear.residuals.clone();
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
        int m = linear.orthogonal.length;
        double[][] influence = new double[m + 1][linear.residuals.length];
        for (int i = 0; i < linear.residuals.length; i++) {
            double byRate = across[i] / acrossSquared;
            influence[m][i] = byRate;
            for (int j = m - 1; j >= 0; j--) {
                double moved = linear.orthogonal[j][i] / linear.squared[j] - slopeAlong[j] * byRate;
                for (int k = j + 1; k < m; k++) {
                    moved -= linear.triangle[j][k] * influence[k][i];
                }
                influence[j][i] = moved;
            }
        }
        return influence;
    }

    /** The columns and the slope by k, each with the part along those before it taken out, and of length 1. */
    double[][] basis() {
        int m = linear.orthogonal.length;
        double[][] basis = new double[m + 1][];
        for (int j = 0; j < m; j++) {
            basis[j] = unit(linear.orthogonal[j], linear.squared[j]);
        }
        basis[m] = unit(across, acrossSquared);
        return basis;
    }

    double[] leverages() {
        double[] leverages = new double[linear.residuals.length];
        for (int i = 0; i < leverages.length; i++) {
            leverages[i] = across[i] * across[i] / acrossSquared;
            for (int j = 0; j < linear.squared.length; j++) {
                leverages[i] += linear.orthogonal[j][i] * linear.orthogonal[j][i] / linear.squared[j];
            }
        }
        return leverages;
    }

    /** {@code xᵀ(JᵀJ)⁻¹x} for the row x that another observation would have: its columns and its slope by k. */
    double leverageOf(double[] columns, double slope) {
        int m = linear.squared.length;
        double[] left = new double[m];
        double leftOfSlope = slope;
        double leverage = 0;
        for (int j = 0; j < m; j++) {
            left[j] = columns[j];
            for (int i = 0; i < j; i++) {
                left[j] -= linear.triangle[i][j] * left[i];
            }
            leverage += left[j] * left[j] / linear.squared[j];
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
}
