package org.snugsheet.engine.comparison;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Student’s t distribution for any positive number of degrees of freedom, integer or not; the normal distribution for
 * infinity. Source: Student (W. S. Gosset), The probable error of a mean, Biometrika 6 (1908), 1–25.
 */
public final class StudentT {

    /** Beyond this the normal distribution is closer than the rounding of Commons Math’s t; both are off by 1e−8. */
    private static final double AS_GOOD_AS_NORMAL = 1e8;

    private static final double QUANTILE_ACCURACY = 1e-13;

    /** The next step would be as small as the square of this one. */
    private static final double NEAR_ENOUGH = 1e-8;

    /** Nearer to the middle, and so far out that a tail is hardly a number, Commons Math searches. */
    private static final double LARGEST_TAIL = 0.4;

    private static final double SMALLEST_TAIL = 1e-100;
    private static final int LOOKS = 30;

    /** What is asked for again and again: the level of a verdict, and as many degrees of freedom as a class has spare readings. */
    private static final class Usual {

        private static final double LEVEL = 1 - Verdict.CONFIDENCE;

        private static final double NORMAL = search(LEVEL, Double.POSITIVE_INFINITY);

        private static final double[] QUANTILES = new double[50];

        static {
            for (int freedom = 1; freedom < QUANTILES.length; freedom++) {
                QUANTILES[freedom] = search(LEVEL, freedom);
            }
        }

        static boolean has(double degreesOfFreedom) {
            return Double.isInfinite(degreesOfFreedom)
                    || (degreesOfFreedom < QUANTILES.length && degreesOfFreedom == Math.rint(degreesOfFreedom));
        }

        static double quantile(double degreesOfFreedom) {
            return Double.isInfinite(degreesOfFreedom) ? NORMAL : QUANTILES[(int) degreesOfFreedom];
        }
    }

    private StudentT() {}

    /**
     * The number of standard errors on either side that holds the truth with this confidence.
     *
     * @param confidence such as 0.95
     * @param degreesOfFreedom above zero; infinite for the normal distribution
     * @return the two-sided quantile
     */
    public static double quantile(double confidence, double degreesOfFreedom) {
        return criticalValue(1 - confidence, degreesOfFreedom);
    }

    /**
     * The number of standard errors that is exceeded this often by chance, on either side.
     *
     * @param level such as 0.05
     * @param degreesOfFreedom above zero; infinite for the normal distribution
     * @return the two-sided quantile of what is left
     */
    public static double criticalValue(double level, double degreesOfFreedom) {
        return level == Usual.LEVEL && Usual.has(degreesOfFreedom)
                ? Usual.quantile(degreesOfFreedom)
                : search(level, degreesOfFreedom);
    }

    /**
     * By Newton’s method for the logarithm of the tail as a function of that of t: nearly a straight line for few degrees of freedom, and bent
     * downward for many, so that the search passes the place once at most. Begun by the first term of the series of R. A.
     * Fisher and E. A. Cornish (Technometrics 2 (1960), 209–225).
     */
    private static double search(double level, double degreesOfFreedom) {
        double tail = level / 2;
        RealDistribution distribution = distribution(degreesOfFreedom);
        // From the lower tail: near 1 a double cannot represent the small difference.
        if (degreesOfFreedom >= AS_GOOD_AS_NORMAL || tail > LARGEST_TAIL || tail < SMALLEST_TAIL) {
            return -distribution.inverseCumulativeProbability(tail);
        }
        double z = -distribution(Double.POSITIVE_INFINITY).inverseCumulativeProbability(tail);
        double t = z * (1 + (z * z + 1) / (4 * degreesOfFreedom));
        for (int look = 0; look < LOOKS; look++) {
            double there = distribution.cumulativeProbability(-t);
            double step = Math.log(there / tail) * there / (t * distribution.density(t));
            t *= Math.exp(step);
            if (Math.abs(step) < NEAR_ENOUGH) {
                return t;
            }
        }
        return -distribution.inverseCumulativeProbability(tail);
    }

    /** How often chance alone gives a t at least that far from zero, on either side; 1 for 0, 0 for infinity. */
    static double twoSided(double t, double degreesOfFreedom) {
        if (Double.isInfinite(t)) {
            return 0;
        }
        return Math.min(1, 2 * distribution(degreesOfFreedom).cumulativeProbability(-Math.abs(t)));
    }

    private static RealDistribution distribution(double degreesOfFreedom) {
        // No random numbers are drawn from these, so they get no generator.
        return degreesOfFreedom < AS_GOOD_AS_NORMAL
                ? new TDistribution(null, degreesOfFreedom, QUANTILE_ACCURACY)
                : new NormalDistribution(null, 0, 1);
    }
}
