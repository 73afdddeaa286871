package org.snugsheet.engine.cooling;

import static org.snugsheet.engine.cooling.Autoregression.dot;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * Whether readings wander together, that is, whether the errors of neighbors are correlated: a thermometer that lags, water
 * that nobody stirs, a draft. Each then tells less than an independent reading, but least squares count them all as
 * independent.
 *
 * <p>The statistic is {@code q = Σ rᵢrᵢ₋₁/Σ rᵢ²} of the residuals, due to J. Durbin and G. S. Watson (Biometrika 37 (1950),
 * 409–428, and 38 (1951), 159–178). Residuals of independent errors are slightly correlated too, depending on the curve and
 * less so with more readings. The mean and variance of q are exact, and its tail is that of the beta distribution with the
 * same mean and variance (the second of these papers, section 4). So a few readings seldom cause an alarm, true or false. By
 * chance there is one in {@value #ONE_IN} clean lessons.
 *
 * <p>The residuals estimate the correlation poorly, and too low, since the curve follows the errors. So no single correlation
 * is assumed: each {@link Autoregression} from 0 to {@value #MOST} is weighted by its likelihood, and the error is the root
 * mean square over all of them.
 */
final class Wander {

    /** How rare false alarms are. */
    static final int ONE_IN = 50;

    /** With fewer readings, wandering does not show (found by trial, no source). */
    private static final int FEWEST = 8;

    /** Most readings are nowhere near an alarm, which is always more than this many standard deviations off. */
    private static final double NEAR = 1.5;

    /** A stronger correlation is drift, which residuals cannot show. */
    private static final double MOST = 0.97;

    private static final int STEPS = 12;

    /** Independent errors. */
    static final Wander NONE = new Wander(List.of(), new double[0]);

    private final List<Autoregression> all;
    private final double[] weights;

    private Wander(List<Autoregression> all, double[] weights) {
        this.all = all;
        this.weights = weights;
    }

    /**
     * Examines residuals.
     *
     * @param residuals the residuals in K, in the order of their times
     * @param basis orthonormal directions of the curve, which the fit has removed from the readings
     */
    static Wander of(double[] residuals, double[][] basis) {
        double squares = dot(residuals, residuals);
        if (residuals.length < FEWEST || !(squares > 0)) {
            return NONE;
        }
        if (chance(dot(residuals, neighbors(residuals)) / squares, basis, residuals.length) >= 1.0 / ONE_IN) {
            return NONE;
        }
        List<Autoregression> all = new ArrayList<>();
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= STEPS; i++) {
            Autoregression one = new Autoregression(MOST * i / STEPS, residuals, basis);
            if (!one.isDetermined()) {
                return NONE;
            }
            all.add(one);
            most = Math.max(most, one.logLikelihood());
        }
        double[] weights = new double[all.size()];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(all.get(i).logLikelihood() - most);
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return new Wander(all, weights);
    }

    /** The probability of a q this large by chance; 1 where it is clearly high. */
    private static double chance(double q, double[][] basis, int n) {
        int spare = n - basis.length;
        Traces left = Traces.without(new Traces(0, (n - 1) / 2.0), Wander::neighbors, basis);
        double mean = left.once() / spare;
        double variance = 2 * (left.twice() - spare * mean * mean) / (spare * (spare + 2.0));
        if (!(q > mean + NEAR * Math.sqrt(variance))) {
            return 1;
        }
        // As a share of the range from −1 to 1.
        double share = (mean + 1) / 2;
        double size = share * (1 - share) / (variance / 4) - 1;
        return 1 - new BetaDistribution(null, share * size, (1 - share) * size).cumulativeProbability((q + 1) / 2);
    }

    /** The mean of the value before and the value after each. */
    private static double[] neighbors(double[] values) {
        int n = values.length;
        double[] moved = new double[n];
        for (int i = 0; i < n; i++) {
            moved[i] = ((i > 0 ? values[i - 1] : 0) + (i < n - 1 ? values[i + 1] : 0)) / 2;
        }
        return moved;
    }

    /** Whether the errors of neighbors are correlated more than by chance. */
    boolean isThere() {
        return weights.length > 0;
    }

    /** The variance of one reading in K². */
    double variance() {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * all.get(i).variance();
        }
        return sum;
    }

    /** The degrees of freedom of the variance. */
    double freedom() {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * all.get(i).freedom();
        }
        return sum;
    }

    /** The mean square error of a weighted sum of the readings whose weights lie in the space of the directions. */
    double squareErrorOf(double[] pull) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * all.get(i).squareErrorOf(pull);
        }
        return sum;
    }
}
