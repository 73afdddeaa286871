package org.snugsheet.engine.solver;

/** A separable curve at one k, with the A and B that fit best there. */
final class Projection {

    private final double rate;
    private final boolean hasLevel;
    private final double[] shape;
    private final double[] residuals;
    private final double[] slope;
    private final double[] across;
    private final double amplitude;
    private final double level;
    private final double sumOfSquares;
    private final double acrossSquared;
    private final double shapeSquared;
    private final double shapeMean;
    private final double slopeMean;
    private final double slopeAlongShape;

    Projection(SeparableCurve curve, double[] observed, double rate) {
        int n = curve.observations();
        this.rate = rate;
        hasLevel = curve.hasLevel();
        shape = new double[n];
        slope = new double[n];
        residuals = new double[n];
        across = new double[n];
        double[] shapeSlope = new double[n];
        double[] offset = new double[n];
        curve.evaluate(rate, shape, shapeSlope, offset, slope);
        for (int i = 0; i < n; i++) {
            residuals[i] = observed[i] - offset[i];
        }
        // With a level, everything is measured from its mean: that takes the part along the level out.
        shapeMean = hasLevel ? mean(shape) : 0;
        double observedMean = hasLevel ? mean(residuals) : 0;
        double squared = 0;
        double together = 0;
        for (int i = 0; i < n; i++) {
            double centred = shape[i] - shapeMean;
            squared += centred * centred;
            together += centred * (residuals[i] - observedMean);
        }
        shapeSquared = squared;
        amplitude = together / squared;
        level = hasLevel ? observedMean - amplitude * shapeMean : 0;
        double ssr = 0;
        for (int i = 0; i < n; i++) {
            residuals[i] -= amplitude * shape[i] + level;
            ssr += residuals[i] * residuals[i];
            slope[i] += amplitude * shapeSlope[i];
        }
        sumOfSquares = ssr;
        slopeMean = hasLevel ? mean(slope) : 0;
        double along = 0;
        for (int i = 0; i < n; i++) {
            along += (shape[i] - shapeMean) * (slope[i] - slopeMean);
        }
        slopeAlongShape = along / squared;
        double crossed = 0;
        for (int i = 0; i < n; i++) {
            across[i] = slope[i] - slopeMean - slopeAlongShape * (shape[i] - shapeMean);
            crossed += across[i] * across[i];
        }
        acrossSquared = crossed;
    }

    double rate() {
        return rate;
    }

    double amplitude() {
        return amplitude;
    }

    double level() {
        return level;
    }

    double sumOfSquares() {
        return sumOfSquares;
    }

    boolean isDefined() {
        return Double.isFinite(sumOfSquares);
    }

    /** Whether k can be told at all here: its slope must not vanish beside those of A and B. */
    boolean isDetermined() {
        return isDefined() && acrossSquared > 0 && Double.isFinite(1 / acrossSquared);
    }

    double step() {
        double together = 0;
        for (int i = 0; i < residuals.length; i++) {
            together += across[i] * residuals[i];
        }
        return together / acrossSquared;
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
                for (int k = 0; k < residuals.length; k++) {
                    covariance[i][j] += influence[i][k] * influence[j][k];
                }
            }
        }
        return covariance;
    }

    /** How far each parameter moves with each observation: the rows of (JᵀJ)⁻¹·Jᵀ, in the order A, k, B. */
    double[][] influence() {
        int n = residuals.length;
        double[][] influence = new double[hasLevel ? 3 : 2][n];
        for (int i = 0; i < n; i++) {
            influence[1][i] = across[i] / acrossSquared;
            influence[0][i] = (shape[i] - shapeMean) / shapeSquared - slopeAlongShape * influence[1][i];
            if (hasLevel) {
                influence[2][i] = 1.0 / n - shapeMean * influence[0][i] - slopeMean * influence[1][i];
            }
        }
        return influence;
    }

    /** The slopes by A, k and B, each with the part along those before it taken out, and of length 1. */
    double[][] basis() {
        int n = residuals.length;
        double[][] basis = new double[hasLevel ? 3 : 2][n];
        for (int i = 0; i < n; i++) {
            basis[0][i] = (shape[i] - shapeMean) / Math.sqrt(shapeSquared);
            basis[1][i] = across[i] / Math.sqrt(acrossSquared);
            if (hasLevel) {
                basis[2][i] = 1 / Math.sqrt(n);
            }
        }
        return basis;
    }

    double[] leverages() {
        double[] leverages = new double[residuals.length];
        for (int i = 0; i < leverages.length; i++) {
            double centred = shape[i] - shapeMean;
            leverages[i] = (hasLevel ? 1.0 / leverages.length : 0)
                    + centred * centred / shapeSquared
                    + across[i] * across[i] / acrossSquared;
        }
        return leverages;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
