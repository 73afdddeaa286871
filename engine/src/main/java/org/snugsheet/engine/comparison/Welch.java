package org.snugsheet.engine.comparison;

/**
 * Whether two estimates with errors of different size may be equal.
 *
 * <p>B. L. Welch, The generalization of “Student’s” problem when several different population variances are involved,
 * Biometrika 34 (1947), 28–35: the difference over its standard error is taken for a Student’s t, with the degrees of
 * freedom of F. E. Satterthwaite, An approximate distribution of estimates of variance components, Biometrics Bulletin 2
 * (1946), 110–114: {@code ν = (V₁ + V₂)² / (V₁²/ν₁ + V₂²/ν₂)}.
 *
 * <p>With one or two degrees of freedom on one side and many on the other that goes wrong: when the little-known error
 * comes out far too small, as it often does, ν comes out large and the test too sure. With 1 and 18 it claims up to 12 % false
 * differences at the 5 % level. So below {@value #FEWEST} degrees of freedom the better-known error counts as no better known
 * than the other; with 1 and 1 Welch’s test keeps below 5 %. Two or three jars of one material against many of another are
 * such a case. Both are in the table of engine/docs/comparison-coverage.md.
 */
final class Welch {

    /** From here on Welch’s test claims at most about 6 % false differences at the 5 % level, whatever the errors. */
    static final int FEWEST = 3;

    private Welch() {}

    /**
     * How often chance alone makes two estimates of equal quantities differ as much as these: two-sided p.
     *
     * @param scale what the first is multiplied by
     * @param otherScale what the other is multiplied by
     */
    static double p(double scale, Estimate first, double otherScale, Estimate other) {
        double difference = scale * first.value() - otherScale * other.value();
        double error = scale * first.standardError();
        double otherError = otherScale * other.standardError();
        double both = Math.hypot(error, otherError);
        if (both == 0) {
            return difference == 0 ? 1 : 0;
        }
        double fewest = Math.min(first.degreesOfFreedom(), other.degreesOfFreedom());
        boolean few = fewest < FEWEST;
        double degreesOfFreedom = degreesOfFreedom(
                error / both,
                few ? fewest : first.degreesOfFreedom(),
                otherError / both,
                few ? fewest : other.degreesOfFreedom());
        return StudentT.twoSided(difference / both, degreesOfFreedom);
    }

    // The errors come as shares of their root sum of squares, so that V₁ + V₂ = 1 and no fourth power is lost.
    private static double degreesOfFreedom(double share, double nu, double otherShare, double otherNu) {
        return 1 / (Math.pow(share, 4) / nu + Math.pow(otherShare, 4) / otherNu);
    }
}
