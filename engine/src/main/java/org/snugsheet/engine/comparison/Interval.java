package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * Two limits between which something lies, with a confidence that whoever made it knows.
 *
 * @param low the lower limit; minus infinity if there is none
 * @param high the upper limit, not below the lower; infinity if there is none
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

    /**
     * Whether there is a limit at both ends.
     *
     * @return false if one end or both are infinite
     */
    public boolean isBounded() {
        return Double.isFinite(low) && Double.isFinite(high);
    }
}
