package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;

/**
 * A quantity estimated from readings, with its uncertainty.
 *
 * @param value the estimate, in any unit
 * @param standardError its standard error, in the same unit; zero if it is known without error
 * @param degreesOfFreedom how well the standard error itself is known: readings minus parameters for a fit whose scatter gave
 *     it, infinity if it was known in advance
 * @param sharedError the standard error of an effect that other estimates obtained in the same way may share, so that the
 *     spread between them does not show it: rounding to the same marks in jars that cool alike. In the same unit, known in
 *     advance; zero if there is no such effect
 * @param commonError the change of this estimate, with its sign, caused by one standard error of something common to several
 *     estimates: the surroundings of all jars, read once. It comes in addition to the standard error and is known in advance.
 *     Where two estimates are compared, only the difference of the two changes counts (JCGM 100:2008, GUM, 5.2.2, correlated
 *     input quantities)
 */
public record Estimate(
        double value, double standardError, double degreesOfFreedom, double sharedError, double commonError) {

    /**
     * An estimate.
     *
     * @throws InvalidInputException if the value or an error is not a finite number, a standard error is negative, or the
     *     degrees of freedom are not positive
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
     * An estimate that has no errors in common with others.
     *
     * @param value the estimate
     * @param standardError its standard error
     * @param degreesOfFreedom the degrees of freedom of the standard error
     * @throws InvalidInputException as above
     */
    public Estimate(double value, double standardError, double degreesOfFreedom) {
        this(value, standardError, degreesOfFreedom, 0, 0);
    }

    /**
     * The standard error combined with the common error, {@code √(s² + c²)} (JCGM 100:2008, 5.1.2).
     *
     * @return the combined standard error, in the unit of the value
     */
    public double combinedError() {
        return Math.hypot(standardError, commonError);
    }

    /**
     * The same estimate where nothing else shares the common error, so that it is an error like the others. Degrees of
     * freedom by Welch and Satterthwaite (JCGM 100:2008, G.4.1), infinite for an error known in advance.
     *
     * @return an estimate with the combined error and no common error
     */
    public Estimate onItsOwn() {
        return with(commonError, 0);
    }

    /**
     * The same estimate for any jar wrapped like this one, where such jars differ.
     *
     * @param share the standard deviation between jars wrapped alike, as a share of the value; known in advance, zero or more
     *     and below 1
     * @return an estimate that includes this spread
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
     * Confidence limits: {@code value ± √((t·s)² + (z·c)²)} with Student’s t for the standard error s (see the NIST/SEMATECH
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

    /** Such as {@code 0.03000 ± 0.00040}, with the combined error. */
    @Override
    public String toString() {
        return Plain.withError(value, combinedError());
    }
}
