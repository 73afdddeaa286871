package org.snugsheet.engine.comparison;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Beta;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often a difference that is not there is claimed, by integration instead of simulation.
 *
 * <p>Let the true share of the first in the variance of the difference be r, and X₁, X₂ the sums of squares that the two
 * errors are estimated from, in units of their truth. Then {@code U = X₁/(X₁ + X₂)} has a beta distribution of ν₁/2 and ν₂/2
 * and is independent of X₁ + X₂ (N. L. Johnson and S. Kotz, Continuous Univariate Distributions, volume 2, chapter 24), so
 * that for a given U the difference over {@code √((X₁ + X₂)/(ν₁ + ν₂))} is a Student’s t with ν₁ + ν₂ degrees of freedom. The
 * share that the estimates show follows from U, and with it what the test asks for.
 */
class WelchSizeTest {

    private static final int POINTS = 400;

    /** What numbers of this many points and rounding leave. */
    private static final double SLACK = 2e-5;

    @ParameterizedTest
    @CsvSource({"1, 1", "1, 18", "2, 2", "2, 18", "3, 3", "3, 6", "3, 18", "3, 100", "4.5, 9", "6, 6", "6, 18", "18, 18"
    })
    void aDifferenceThatIsNotThereIsClaimedAtMostOneTimeInTwenty(double nu, double otherNu) {
        double most = mostClaims(nu, otherNu, share -> quantile(share, nu, otherNu, 0.05));
        assertTrue(most <= 0.05 + SLACK, "claims: " + most);
        assertTrue(most > 0.045, "and the test is not blunt: " + most);
    }

    /** The test of the test: these are the figures of plain Welch that the second order is for. */
    @Test
    void plainWelchClaimsMore() {
        double threeAndSix = mostClaims(3, 6, share -> satterthwaites(share, 3, 6, 0.05));
        assertTrue(threeAndSix > 0.058, "claims: " + threeAndSix);
        double oneAndEighteen = mostClaims(1, 18, share -> plain(share, 1, 18));
        assertTrue(oneAndEighteen > 0.11, "claims: " + oneAndEighteen);
    }

    /** Where both are known alike and count alike, hardly anything is given away. */
    @ParameterizedTest
    @CsvSource({"3, 0.035", "6, 0.045", "10, 0.048"})
    void jarsReadAlikeAreToldApartAlmostAsByWelch(double nu, double atLeast) {
        double claims = claims(nu, nu, 0.5, share -> quantile(share, nu, nu, 0.05));
        assertTrue(claims > atLeast, "claims: " + claims);
    }

    /**
     * The strictest level of Holm’s step-down for eight materials. Where the two errors are known alike, the second order is all
     * there is, and claims up to 1.3 times as many as wanted; the second order alone would claim 2.7 times as many for 3 and 18.
     */
    @ParameterizedTest
    @CsvSource({"3, 3, 1.30", "3, 6, 1", "3, 18, 1.12", "4, 8, 1", "6, 6, 1.06", "6, 18, 1.01", "10, 18, 1.01"})
    void atTheStrictestLevelOfEightMaterialsHardlyMoreIsClaimed(double nu, double otherNu, double atMost) {
        double level = 0.05 / 28;
        double most = mostClaims(nu, otherNu, share -> quantile(share, nu, otherNu, level));
        assertTrue(most <= atMost * level, "claims: " + most / level);
        assertTrue(most > 0.8 * level, "and the test is not blunt: " + most / level);
        if (otherNu == 18) {
            double plain = mostClaims(nu, otherNu, share -> satterthwaites(share, nu, otherNu, level));
            assertTrue(plain > 1.1 * level, "without all this: " + plain / level);
        }
    }

    private static double mostClaims(double nu, double otherNu, DoubleUnaryOperator asked) {
        double most = 0;
        for (double r = 0.0005; r < 1; r = r < 0.02 || r > 0.98 ? r + 0.0025 : r + 0.02) {
            most = Math.max(most, claims(nu, otherNu, r, asked));
        }
        return most;
    }

    /** The share of claims, over the angle whose squared sine is U, so that the integrand stays finite. */
    private static double claims(double nu, double otherNu, double r, DoubleUnaryOperator asked) {
        double both = nu + otherNu;
        double logBeta = Beta.logBeta(nu / 2, otherNu / 2);
        double sum = 0;
        double width = Math.PI / 2 / POINTS;
        for (int i = 0; i < POINTS; i++) {
            double angle = (i + 0.5) * width;
            double u = Math.pow(Math.sin(angle), 2);
            double density = 2
                    * Math.exp(
                            (nu - 1) * Math.log(Math.sin(angle)) + (otherNu - 1) * Math.log(Math.cos(angle)) - logBeta);
            double first = r * u / nu;
            double second = (1 - r) * (1 - u) / otherNu;
            double t = asked.applyAsDouble(first / (first + second)) * Math.sqrt((first + second) * both);
            sum += width * density * StudentT.twoSided(t, both);
        }
        return sum;
    }

    /** The t from which on the engine claims a difference, for estimates with this share of the variance. */
    private static double quantile(double share, double nu, double otherNu, double level) {
        return StudentT.criticalValue(level, welch(share, nu, otherNu).freedomAt(level, Welch.beta(level)));
    }

    /** The same without the second order. */
    private static double satterthwaites(double share, double nu, double otherNu, double level) {
        return StudentT.criticalValue(level, welch(share, nu, otherNu).satterthwaite());
    }

    private static Welch welch(double share, double nu, double otherNu) {
        return Welch.of(1, new Estimate(0, Math.sqrt(share), nu), 1, new Estimate(0, Math.sqrt(1 - share), otherNu));
    }

    private static double plain(double share, double nu, double otherNu) {
        return StudentT.criticalValue(0.05, 1 / (share * share / nu + (1 - share) * (1 - share) / otherNu));
    }
}
