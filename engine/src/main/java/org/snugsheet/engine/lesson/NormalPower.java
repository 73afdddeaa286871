package org.snugsheet.engine.lesson;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Ratio;

/**
 * How often two wraps are told apart if every error is normal and its own: a double integral over what the two standard errors may come
 * out as, each the root of a χ² over its degrees of freedom (Casella and Berger, Statistical Inference, 2nd edition, theorem 5.3.1), of the
 * share of differences beyond the {@linkplain Ratio#leastDifference() least one} that is found with them. The difference itself is normal
 * and independent of both (the same theorem), but for the rounding of the surroundings, which moves it evenly to either side.
 *
 * @param first what estimates of the one wrap are drawn from
 * @param second of the other
 */
record NormalPower(Source first, Source second) {

    /** Enough for the fifth digit, as NormalPowerTest shows. */
    private static final GaussIntegrator USUAL = new GaussIntegratorFactory().legendre(20);

    /** With few degrees of freedom a quantile is so large that a small part of the roots decides. */
    private static final GaussIntegrator FINE = new GaussIntegratorFactory().legendre(80);

    private static final double FEW = 3;

    /** So many standard deviations of the root of a χ² leave out nothing that counts. */
    private static final double WIDE = 6;

    /** Beyond it nothing is left of a normal distribution. */
    private static final double FAR = 38;

    /** Beyond it less than 1e−16 is left. */
    private static final double DONE = 8.3;

    private static final double HALF = 0.5;
    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);

    /** An even part of this width, in standard deviations, does not show. */
    private static final double NARROW = 0.02;

    /**
     * What estimates are drawn from.
     *
     * @param value the mean
     * @param deviation the standard deviation about it
     * @param error what the standard error comes out as, times the root of χ² over its degrees of freedom
     * @param freedom those
     * @param least the standard error is never below this share of the error
     * @param common what one standard uncertainty of the surroundings adds to it
     */
    record Source(double value, double deviation, double error, double freedom, double least, double common) {

        private Estimate with(double root) {
            return new Estimate(value, error * root, freedom, 0, common);
        }
    }

    /** Roots of χ² over its degrees of freedom, and how likely each is. */
    @SuppressWarnings("ArrayRecordComponent") // never leaves the class and is never compared
    private record Roots(double[] at, double[] weights) {

        static Roots of(Source source) {
            double deviation = 1 / Math.sqrt(2 * source.freedom);
            double low = Math.max(0, 1 - WIDE * deviation);
            double high = 1 + WIDE * deviation;
            double least = Math.min(Math.max(source.least, low), high);
            GaussIntegrator legendre = source.freedom < FEW ? FINE : USUAL;
            int points = legendre.getNumberOfPoints();
            double[] at = new double[points + 1];
            double[] weights = new double[points + 1];
            // All that is less than the least is the least.
            at[points] = least;
            double sum = 0;
            for (int i = 0; i < points; i++) {
                at[i] = least + (high - least) / 2 * (1 + legendre.getPoint(i));
                weights[i] = (high - least) / 2 * legendre.getWeight(i) * density(at[i], source.freedom);
                double below = low + (least - low) / 2 * (1 + legendre.getPoint(i));
                weights[points] +=
                        least > low ? (least - low) / 2 * legendre.getWeight(i) * density(below, source.freedom) : 0;
                sum += weights[i];
            }
            sum += weights[points];
            for (int i = 0; i < weights.length; i++) {
                weights[i] /= sum;
            }
            return new Roots(at, weights);
        }

        /** But for a factor. */
        private static double density(double root, double freedom) {
            return Math.exp((freedom - 1) * Math.log(root) - freedom * (root * root - 1) / 2);
        }
    }

    /** The share of lessons in which a difference is found. */
    double share() {
        Roots one = Roots.of(first);
        Roots other = Roots.of(second);
        double apart = first.value - second.value;
        double deviation = Math.hypot(first.deviation, second.deviation);
        double evenly = Math.sqrt(12) * Math.abs(first.common - second.common);
        double share = 0;
        for (int i = 0; i < one.at.length; i++) {
            for (int j = 0; one.weights[i] > 0 && j < other.at.length; j++) {
                double weight = one.weights[i] * other.weights[j];
                if (weight > 0) {
                    double least = new Ratio(first.with(one.at[i]), second.with(other.at[j])).leastDifference();
                    share += weight
                            * (beyond(least - apart, deviation, evenly) + beyond(least + apart, deviation, evenly));
                }
            }
        }
        return share;
    }

    /** How often the sum of a normal error and an even one is beyond a value. */
    private static double beyond(double value, double deviation, double evenly) {
        double z = -value / deviation;
        double half = evenly / deviation / 2;
        return half < NARROW ? normal(z) : (integral(z + half) - integral(z - half)) / (2 * half);
    }

    /**
     * The normal distribution, to 15 decimals (G. Marsaglia, Evaluating the Normal Distribution, J. Stat. Software 11(4) (2004), 1–7):
     * {@code ½ + φ(z)·(z + z³/3 + z⁵/(3·5) + …)}. It is asked for thousands of times in one cell.
     */
    static double normal(double z) {
        if (!(Math.abs(z) <= DONE)) {
            return Double.isNaN(z) ? z : z > 0 ? 1 : 0;
        }
        double square = z * z;
        double term = z;
        double sum = z;
        double before = Double.NaN;
        for (int odd = 3; sum != before; odd += 2) {
            before = sum;
            term *= square / odd;
            sum += term;
        }
        return HALF + sum * Math.exp(-square / 2) / ROOT_OF_TWO_PI;
    }

    private static double integral(double z) {
        return z < -FAR ? 0 : z * normal(z) + Math.exp(-z * z / 2) / ROOT_OF_TWO_PI;
    }
}
