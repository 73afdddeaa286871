package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * Two limits between which a quantity lies; the caller knows with which confidence.
 *
 * @param low the lower limit; minus infinity if there is no limit
 * @param high the upper limit, not below the lower; infinity if there is no limit
 */
public record Interval(double low, double high) {

    /**
     * An interval.
     *
     * @throws InvalidInputException if a limit is NaN
     */
    public Interval {
        if (Double.isNaN(low) || Double.isNaN(high)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, "NaN");
        }
        if (low > high) {
            throw new IllegalArgumentException(low + " > " + high);
        }
    }

    /**
     * Whether a value lies within the limits.
     *
     * @param value the value
     * @return true if it does, the limits included
     */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** Such as {@code 1.42 to 1.58}, {@code at least 1.42}, {@code at most 1.58}. */
    @Override
    public String toString() {
        if (isBounded()) {
            return Plain.number(low) + " to " + Plain.number(high);
        }
        if (Double.isInfinite(low)) {
            return Double.isInfinite(high) ? "without limits" : "at most " + Plain.number(high);
        }
        return "at least " + Plain.number(low);
    }

    /**
     * Whether there is a limit at both ends.
     *
     * @return false if one end or both are infinite
     */
    public boolean isBounded() {
        return Double.isFinite(low) && Double.isFinite(high);
    }
}
