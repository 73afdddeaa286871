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
 */
public record Estimate(double value, double standardError, double degreesOfFreedom) {

    /**
     * An estimate.
     *
     * @throws Refusal if the value or the error is no finite number, the error is below zero, or the degrees of freedom
     *     are not above zero
     */
    public Estimate {
        Require.finite(value);
        if (Require.finite(standardError) < 0) {
            throw Refusal.of(Trouble.NEGATIVE, QuantityName.STANDARD_ERROR, standardError);
        }
        if (!(degreesOfFreedom > 0)) {
            throw Refusal.of(Trouble.NOT_POSITIVE, QuantityName.DEGREES_OF_FREEDOM, degreesOfFreedom);
        }
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
