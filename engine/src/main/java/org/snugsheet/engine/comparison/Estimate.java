package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;

/**
 * What readings say a number is, and how sure they are.
 *
 * @param value the estimate, in any unit
 * @param standardError its standard error, in the same unit; zero if it is known without error
 * @param degreesOfFreedom how well the standard error itself is known: readings minus parameters for a fit whose scatter
 *     gave it, infinity if it was known beforehand
 * @param sharedError the standard error of what other estimates got the same way may be off by as well, so that no spread
 *     between them shows it: what rounding to the same marks leaves in jars that cool alike. In the same unit, known
 *     beforehand; zero if there is none
 * @param commonError what one standard error of a cause common to several estimates adds to this one, with its sign, beside
 *     the standard error: the surroundings that all jars stood in, read once. Known beforehand; where two are compared, only
 *     the difference of what the cause does to them counts (JCGM 100:2008, GUM, 5.2.2, correlated input quantities)
 */
public record Estimate(
        double value, double standardError, double degreesOfFreedom, double sharedError, double commonError) {

    /**
     * An estimate.
     *
     * @throws InvalidInputException if the value or an error is no finite number, an error is below zero, or the degrees of freedom
     *     are not above zero
     */
    public Estimate {
        Require.finite(value);
        if (Require.finite(standardError) < 0) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.STANDARD_ERROR, standardError);
        }
        if (Require.finite(sharedError) < 0) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.STANDARD_ERROR, sharedError);
        }
        Require.finite(commonError);
        if (!(degreesOfFreedom > 0)) {
            throw InvalidInputException.of(Problem.NOT_POSITIVE, QuantityName.DEGREES_OF_FREEDOM, degreesOfFreedom);
        }
    }

    /**
     * An estimate whose errors are its own.
     *
     * @param value the estimate
     * @param standardError its standard error
     * @param degreesOfFreedom how well that is known
     * @throws InvalidInputException as above
     */
    public Estimate(double value, double standardError, double degreesOfFreedom) {
        this(value, standardError, degreesOfFreedom, 0, 0);
    }

    /**
     * The standard error together with what a common cause adds, {@code √(s² + c²)} (JCGM 100:2008, 5.1.2).
     *
     * @return the combined standard error, in the unit of the value
     */
    public double combinedError() {
        return Math.hypot(standardError, commonError);
    }

    /**
     * The same estimate where the cause is common to no other one: then its error is one like the others. Degrees of freedom
     * by Welch and Satterthwaite (JCGM 100:2008, G.4.1), infinite for what is known beforehand.
     *
     * @return an estimate with the combined error and nothing in common
     */
    public Estimate onItsOwn() {
        return with(commonError, 0);
    }

    /**
     * The same estimate for any jar wrapped like this one, if such jars differ.
     *
     * @param share the standard deviation between jars wrapped alike, as a share of the value; known beforehand, zero or more
     *     and below 1
     * @return an estimate with that counted in
     * @throws InvalidInputException if the share does not lie between 0 and 1
     */
    public Estimate withSpread(double share) {
        if (!(share >= 0 && share < 1)) {
            throw InvalidInputException.of(Problem.NOT_A_SHARE, share);
        }
        return with(share * value, commonError);
    }

    private Estimate with(double known, double common) {
        if (known == 0) {
            return new Estimate(value, standardError, degreesOfFreedom, sharedError, common);
        }
        double both = Math.hypot(standardError, known);
        double own = standardError / both;
        double freedom = own == 0 ? Double.POSITIVE_INFINITY : degreesOfFreedom / Math.pow(own, 4);
        return new Estimate(value, both, freedom, sharedError, common);
    }

    /**
     * Where the truth lies: {@code value ± √((t·s)² + (z·c)²)} with Student’s t for the standard error s (see the NIST/SEMATECH
     * e-Handbook of Statistical Methods, section 1.3.5.2) and the normal quantile z for the common error c.
     *
     * @param confidence how often such limits hold the truth, such as 0.95
     * @return the limits, in the unit of the value
     * @throws InvalidInputException if the confidence does not lie between 0 and 1
     */
    public Interval interval(double confidence) {
        double margin = marginOfError(Require.confidence(confidence));
        return new Interval(value - margin, value + margin);
    }

    /** Half the width of the interval. */
    double marginOfError(double confidence) {
        double own = StudentT.quantile(confidence, degreesOfFreedom) * standardError;
        return commonError == 0
                ? own
                : Math.hypot(own, StudentT.quantile(confidence, Double.POSITIVE_INFINITY) * commonError);
    }
}
