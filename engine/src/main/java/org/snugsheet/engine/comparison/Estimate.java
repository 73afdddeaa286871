package org.snugsheet.engine.comparison;

import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

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
 */
public record Estimate(double value, double standardError, double degreesOfFreedom, double sharedError) {

    /**
     * An estimate.
     *
     * @throws Refusal if the value or an error is no finite number, an error is below zero, or the degrees of freedom
     *     are not above zero
     */
    public Estimate {
        Require.finite(value);
        if (Require.finite(standardError) < 0) {
            throw Refusal.of(Trouble.NEGATIVE, QuantityName.STANDARD_ERROR, standardError);
        }
        if (Require.finite(sharedError) < 0) {
            throw Refusal.of(Trouble.NEGATIVE, QuantityName.STANDARD_ERROR, sharedError);
        }
        if (!(degreesOfFreedom > 0)) {
            throw Refusal.of(Trouble.NOT_POSITIVE, QuantityName.DEGREES_OF_FREEDOM, degreesOfFreedom);
        }
    }

    /**
     * An estimate whose errors are its own.
     *
     * @param value the estimate
     * @param standardError its standard error
     * @param degreesOfFreedom how well that is known
     * @throws Refusal as above
     */
    public Estimate(double value, double standardError, double degreesOfFreedom) {
        this(value, standardError, degreesOfFreedom, 0);
    }

    /**
     * Where the truth lies: {@code value ± t·standardError}, with Student’s t (see the NIST/SEMATECH e-Handbook of
     * Statistical Methods, section 1.3.5.2).
     *
     * @param confidence how often such limits hold the truth, such as 0.95
     * @return the limits, in the unit of the value
     * @throws Refusal if the confidence does not lie between 0 and 1
     */
    public Interval interval(double confidence) {
        double reach = reach(Require.confidence(confidence));
        return new Interval(value - reach, value + reach);
    }

    /** Half the width of the interval. */
    double reach(double confidence) {
        return StudentT.quantile(confidence, degreesOfFreedom) * standardError;
    }
}
