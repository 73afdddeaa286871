package org.snugsheet.engine.cooling;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * Whether readings wander together, so that neighbours err alike: a thermometer that lags, water that nobody stirs, a draught. Each tells
 * less than a reading of its own would, and least squares count them all.
 *
 * <p>The statistic is {@code q = Σ rᵢrᵢ₋₁/Σ rᵢ²} of the residuals, that of J. Durbin and G. S. Watson (Biometrika 37 (1950), 409–428,
 * and 38 (1951), 159–178). Residuals of independent errors correlate a little too, the less the more readings there are, and by how much
 * the curve alone decides: the mean of q and its variance are exact, and the tail is that of the beta distribution with the same (the
 * second of these papers, section 4). So few readings cause no false alarms, and seldom any. An alarm comes by chance once in
 * {@value #ONE_IN} clean lessons.
 *
 * <p>After an alarm the errors are taken for a first-order autoregression, {@code ρ^|i − j|}, with the ρ that makes q what is expected. Then
 * the variance of one reading is {@code SSR/tr(M·R)}, where R holds the correlations and M takes the residuals, with {@code
 * tr(M·R)²/tr(M·R·M·R)} degrees of freedom (F. E. Satterthwaite, Biometrics Bulletin 2 (1946), 110–114), and that of a sum of readings with
 * weights w is {@code wᵀ·R·w} times it. With R = 1 all of it is what it was.
 */
final class Wander {

    /** How rare a false alarm is. */
    static final int ONE_IN = 50;

    /** Fewer cannot wander so far that it shows; tried out, no source. */
    private static final int FEWEST = 8;

    /** Most readings are nowhere near an alarm: no alarm is less than so many standard deviations off. */
    private static final double NEAR = 1.5;

    /** More is drift, and no correlation that residuals could tell; of few readings it would be a wild guess. */
    private static final double MOST = 0.8;

    private static final int HALVINGS = 30;

    /** Errors of which each is its own. */
    static final Wander NONE = new Wander(0, 0, 0);

    private final double correlation;
    private final double variance;
    private final double freedom;

    private Wander(double correlation, double variance, double freedom) {
        this.correlation = correlation;
        this.variance = variance;
        this.freedom = freedom;
    }

    /**
     * Looks at residuals.
     *
     * @param residuals the residuals in K, in the order of their times
     * @param basis directions of the curve at right angles, each of length 1: what the fit has taken out of the readings
     */
    static Wander of(double[] residuals, double[][] basis) {
        int n = residuals.length;
        double squares = dot(residuals, residuals);
        if (n < FEWEST || !(squares > 0)) {
            return NONE;
        }
        double q = dot(residuals, neighbours(residuals)) / squares;
        if (!isBeyondChance(q, basis, n)) {
            return NONE;
        }
        double low = 0;
        double high = MOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (new Traces(middle, basis, n).expected() < q) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Traces traces = new Traces(low, basis, n);
        return new Wander(low, squares / traces.mr, traces.mr * traces.mr / traces.mrmr);
    }

    private static boolean isBeyondChance(double q, double[][] basis, int n) {
        int spare = n - basis.length;
        double trace = 0;
        double squared = (n - 1) / 2.0;
        for (double[] one : basis) {
            double[] moved = neighbours(one);
            trace -= dot(one, moved);
            squared -= 2 * dot(moved, moved);
            for (double[] other : basis) {
                double both = dot(other, moved);
                squared += both * both;
            }
        }
        double mean = trace / spare;
        double variance = 2 * (squared - spare * mean * mean) / (spare * (spare + 2.0));
        if (!(q > mean + NEAR * Math.sqrt(variance))) {
            return false;
        }
        // On the way from −1 to 1.
        double share = (mean + 1) / 2;
        double size = share * (1 - share) / (variance / 4) - 1;
        return 1 - new BetaDistribution(null, share * size, (1 - share) * size).cumulativeProbability((q + 1) / 2)
                < 1.0 / ONE_IN;
    }

    /** What is to be expected of residuals if errors correlate so. */
    private static final class Traces {
        private double mr;
        private double mrmr;
        private double mrml;

        Traces(double rho, double[][] basis, int n) {
            mr = n;
            mrmr = n;
            mrml = (n - 1) * rho;
            double power = 1;
            for (int apart = 1; apart < n; apart++) {
                power *= rho * rho;
                mrmr += 2 * (n - apart) * power;
            }
            for (double[] one : basis) {
                double[] correlated = correlated(one, rho);
                double[] moved = neighbours(one);
                mr -= dot(one, correlated);
                mrmr -= 2 * dot(correlated, correlated);
                mrml -= 2 * dot(correlated, moved);
                for (double[] other : basis) {
                    double both = dot(other, correlated);
                    mrmr += both * both;
                    mrml += both * dot(other, moved);
                }
            }
        }

        double expected() {
            return mrml / mr;
        }
    }

    /** Half of what stands before and half of what stands behind. */
    private static double[] neighbours(double[] values) {
        int n = values.length;
        double[] moved = new double[n];
        for (int i = 0; i < n; i++) {
            moved[i] = ((i > 0 ? values[i - 1] : 0) + (i < n - 1 ? values[i + 1] : 0)) / 2;
        }
        return moved;
    }

    /** {@code R·values}, from the left and from the right. */
    private static double[] correlated(double[] values, double rho) {
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

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    /** Whether more than chance makes neighbours err alike. */
    boolean isThere() {
        return correlation > 0;
    }

    /** The variance of one reading in K². */
    double variance() {
        return variance;
    }

    /** How well that is known. */
    double freedom() {
        return freedom;
    }

    /** What a sum of readings with these weights has of the variance of one. */
    double squares(double[] weights) {
        return dot(weights, correlated(weights, correlation));
    }
}
