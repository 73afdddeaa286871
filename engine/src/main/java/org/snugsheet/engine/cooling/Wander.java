package org.snugsheet.engine.cooling;

import static org.snugsheet.engine.cooling.Autoregression.dot;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * Whether readings wander together, so that neighbors err alike: a thermometer that lags, water that nobody stirs, a draught. Each tells
 * less than a reading of its own would, and least squares count them all.
 *
 * <p>The statistic is {@code q = Σ rᵢrᵢ₋₁/Σ rᵢ²} of the residuals, that of J. Durbin and G. S. Watson (Biometrika 37 (1950), 409–428,
 * and 38 (1951), 159–178). Residuals of independent errors correlate a little too, the less the more readings there are, and by how much
 * the curve alone decides: the mean of q and its variance are exact, and the tail is that of the beta distribution with the same (the
 * second of these papers, section 4). So few readings cause no false alarms, and seldom any. An alarm comes by chance once in
 * {@value #ONE_IN} clean lessons.
 *
 * <p>How strongly errors go together, residuals tell badly, and they tell too little of it, since the curve follows the errors. So no single
 * correlation is taken for true: each {@link Autoregression} from 0 to {@value #MOST} counts as much as the residuals make it likely,
 * and the error is the root mean square over all of them.
 */
final class Wander {

    /** How rare a false alarm is. */
    static final int ONE_IN = 50;

    /** Fewer cannot wander so far that it shows; tried out, no source. */
    private static final int FEWEST = 8;

    /** Most readings are nowhere near an alarm: no alarm is less than so many standard deviations off. */
    private static final double NEAR = 1.5;

    /** More is drift, and no correlation that residuals could tell. */
    private static final double MOST = 0.97;

    private static final int STEPS = 12;

    /** Errors of which each is its own. */
    static final Wander NONE = new Wander(List.of(), new double[0]);

    private final List<Autoregression> all;
    private final double[] weights;

    private Wander(List<Autoregression> all, double[] weights) {
        this.all = all;
        this.weights = weights;
    }

    /**
     * Looks at residuals.
     *
     * @param residuals the residuals in K, in the order of their times
     * @param basis directions of the curve at right angles, each of length 1: what the fit has taken out of the readings
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

    /** How often q comes as large by chance; 1 where that is often. */
    private static double chance(double q, double[][] basis, int n) {
        int spare = n - basis.length;
        Traces left = Traces.without(new Traces(0, (n - 1) / 2.0), Wander::neighbors, basis);
        double mean = left.once() / spare;
        double variance = 2 * (left.twice() - spare * mean * mean) / (spare * (spare + 2.0));
        if (!(q > mean + NEAR * Math.sqrt(variance))) {
            return 1;
        }
        // On the way from −1 to 1.
        double share = (mean + 1) / 2;
        double size = share * (1 - share) / (variance / 4) - 1;
        return 1 - new BetaDistribution(null, share * size, (1 - share) * size).cumulativeProbability((q + 1) / 2);
    }

    /** Half of what stands before and half of what stands behind. */
    private static double[] neighbors(double[] values) {
        int n = values.length;
        double[] moved = new double[n];
        for (int i = 0; i < n; i++) {
            moved[i] = ((i > 0 ? values[i - 1] : 0) + (i < n - 1 ? values[i + 1] : 0)) / 2;
        }
        return moved;
    }

    /** Whether more than chance makes neighbors err alike. */
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

    /** How well that is known. */
    double freedom() {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * all.get(i).freedom();
        }
        return sum;
    }

    /** The mean square error of a sum of the readings with these weights, which the curve can follow. */
    double squareErrorOf(double[] pull) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * all.get(i).squareErrorOf(pull);
        }
        return sum;
    }
}
