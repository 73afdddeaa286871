package org.snugsheet.engine.comparison;

import org.snugsheet.engine.solver.Crossing;

/**
 * Tests whether two estimates with different errors may be equal.
 *
 * <p>B. L. Welch, The generalization of “Student’s” problem when several different population variances are involved,
 * Biometrika 34 (1947), 28–35: the difference divided by its standard error is treated as Student’s t, with the degrees of
 * freedom of F. E. Satterthwaite, An approximate distribution of estimates of variance components, Biometrics Bulletin 2
 * (1946), 110–114: {@code 1/ν = c₁²/ν₁ + c₂²/ν₂}, where c₁ and c₂ are the shares of the two in the variance of the
 * difference.
 *
 * <p>That is the first order of Welch’s series. With few degrees of freedom it is too confident where the less well-known
 * estimate also has the larger share, because the shares are estimates themselves. His second order (the same paper; A. A.
 * Aspin, Biometrika 35 (1948), 88–96), compared with the series of Student’s t, adds
 * {@code β·c₁c₂·(c₁/ν₁ − c₂/ν₂)² − 2·Σc²(1 − c)/ν²} to 1/ν, with {@code β = 2(3 + ξ²)(1 + 2ξ²)/(3(1 + ξ²))} and ξ the normal
 * quantile of the level. The first of the two terms is used; the second, which would only make the test less strict, is left
 * out. ν is never less than the smaller of ν₁ and ν₂, with which the test is conservative whatever the errors (M. R. Mickey
 * and M. B. Brown, Annals of Mathematical Statistics 37 (1966), 639–642).
 *
 * <p>The {@linkplain Estimate#commonError() common error} is a third part of the variance of the difference, known in
 * advance: in the series it has infinitely many degrees of freedom.
 *
 * <p>So at the 5 % level a false difference is claimed at most 5.0 % of the time, whatever the two errors, for
 * {@value #FEWEST} and more degrees of freedom: this is not a simulation but an integral, which WelchSizeTest evaluates.
 * Below {@value #FEWEST} the better-known error is treated as no better known than the other, which keeps the level. Two or
 * three jars of one material against many of another are such a case.
 *
 * <p>At the stricter levels that Holm’s step-down asks for, the series is too short where one error is known much less well
 * than the other. There β counts {@code 1 + }{@value #UNEVEN}{@code ·(1/ν_min)·(1/ν_min − 1/ν_max)·(0.05/level − 1)} times.
 * No theory gives that factor: it is the simplest found that brings the integral down to the level (within a ninth of it down
 * to 0.05/28, the strictest of eight materials), leaves the 5 % level as it is, and leaves errors known alike as they are.
 * See engine/docs/comparison-coverage.md.
 */
final class Welch {

    /** Below this the series is no longer valid. */
    static final int FEWEST = 3;

    /** Beyond this level the normal quantile is not computed, since a double cannot represent it. */
    private static final double STRICTEST = 1e-12;

    /** How much stricter the test gets at strict levels where one error is known less well than the other. */
    private static final double UNEVEN = 6;

    /** The level down to which the second order is sufficient. */
    private static final double USUAL = 0.05;

    private static final double USUAL_BETA = beta(USUAL);

    private static final double SAME = 1e-14;

    private final double t;
    private final double freedom;
    private final double fewest;
    private final double unsure;
    private final double uneven;

    private Welch(double t, double share, double nu, double otherShare, double otherNu) {
        this.t = t;
        double one = share / nu;
        double other = otherShare / otherNu;
        double known = Math.max(0, 1 - share - otherShare);
        this.freedom = 1 / (share * one + otherShare * other);
        this.fewest = Math.min(nu, otherNu);
        this.unsure = share * otherShare * (one - other) * (one - other)
                + known * (share * one * one + otherShare * other * other);
        this.uneven = UNEVEN / fewest * Math.abs(1 / nu - 1 / otherNu);
    }

    /**
     * Compares two estimates.
     *
     * @param scale the factor of the first
     * @param otherScale the factor of the other
     */
    static Welch of(double scale, Estimate first, double otherScale, Estimate other) {
        double difference = scale * first.value() - otherScale * other.value();
        double error = scale * first.standardError();
        double otherError = otherScale * other.standardError();
        double common = scale * first.commonError() - otherScale * other.commonError();
        double both = Independent.together(Independent.together(error, otherError), common);
        double nu = first.degreesOfFreedom();
        double otherNu = other.degreesOfFreedom();
        if (both == 0) {
            return new Welch(difference == 0 ? 0 : Double.POSITIVE_INFINITY, 0.5, nu, 0.5, otherNu);
        }
        double fewest = Math.min(nu, otherNu);
        boolean few = fewest < FEWEST;
        // Ratios of errors, so that no fourth power underflows.
        double share = error / both;
        double otherShare = otherError / both;
        return new Welch(
                difference / both, share * share, few ? fewest : nu, otherShare * otherShare, few ? fewest : otherNu);
    }

    /** How often chance alone makes two estimates of equal quantities differ as much: two-sided p. */
    static double p(double scale, Estimate first, double otherScale, Estimate other) {
        return of(scale, first, otherScale, other).p();
    }

    /** The difference beyond which the test no longer allows the two to be equal, at the level of a verdict. */
    static double leastDifference(Estimate first, Estimate other) {
        double common = first.commonError() - other.commonError();
        double square = first.standardError() * first.standardError() + other.standardError() * other.standardError();
        return CriticalT.at(of(1, first, 1, other).freedomAt(USUAL, USUAL_BETA)) * Math.sqrt(square + common * common);
    }

    /** The degrees of freedom of Satterthwaite, without the second order. */
    double satterthwaite() {
        return freedom;
    }

    /** The difference divided by its standard error. */
    double t() {
        return t;
    }

    /**
     * Whether the two may be equal, according to a test at this level.
     *
     * @param level such as 0.05
     * @param beta the {@linkplain #beta factor} of that level
     */
    boolean isAllowed(double level, double beta) {
        return p(level, beta) >= level;
    }

    /** How often chance alone gives a t at least that far from zero, by the degrees of freedom of this level. */
    double p(double level, double beta) {
        return StudentT.twoSided(t, freedomAt(level, beta));
    }

    /** The factor β of the second order. */
    static double beta(double level) {
        double xi = StudentT.criticalValue(Math.max(level, STRICTEST), Double.POSITIVE_INFINITY);
        double square = xi * xi;
        return 2 * (3 + square) * (1 + 2 * square) / (3 * (1 + square));
    }

    /** The level at which a test would just allow it. There is one, because the tail grows as the level gets stricter. */
    private double p() {
        double high = StudentT.twoSided(t, fewest);
        double low = Math.max(StudentT.twoSided(t, freedom), Double.MIN_NORMAL);
        if (unsure == 0 || high <= low) {
            return StudentT.twoSided(t, freedom);
        }
        if (isAllowed(high, beta(high))) {
            return high;
        }
        return Math.exp(Crossing.of(
                logarithm -> {
                    double level = Math.exp(logarithm);
                    return logarithm - Math.log(p(level, beta(level)));
                },
                Math.log(low),
                Math.log(high),
                SAME / 2));
    }

    /** The degrees of freedom with the second order, at a level and its β. */
    double freedomAt(double level, double beta) {
        double stricter = Math.max(0, USUAL / level - 1);
        return Math.max(fewest, 1 / (1 / freedom + beta * (1 + uneven * stricter) * unsure));
    }
}
