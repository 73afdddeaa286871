package org.snugsheet.engine.comparison;

/**
 * Two limits between which something lies, with a confidence that whoever made it knows.
 *
 * @param low the lower limit; minus infinity if there is none
 * @param high the upper limit; infinity if there is none
 */
public record Interval(double low, double high) {

    /**
     * Whether a value lies within the limits.
     *
     * @param value the value
     * @return true if it does, the limits included
     */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }
}
