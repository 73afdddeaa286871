package org.snugsheet.office.functions.shared;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/** Cells count in minutes, the engine in seconds. */
public final class Minutes {

    private static final double SECONDS = 60;

    private Minutes() {}

    /**
     * Seconds as minutes.
     *
     * @param seconds the seconds
     * @return the minutes
     */
    public static double of(double seconds) {
        return seconds / SECONDS;
    }

    /**
     * Minutes as seconds.
     *
     * @param minutes the minutes
     * @return the seconds
     * @throws InvalidInputException if they are more than a number can be
     */
    public static double toSeconds(double minutes) {
        double seconds = minutes * SECONDS;
        if (Double.isInfinite(seconds)) {
            throw InvalidInputException.of(Problem.ANSWER_TOO_LARGE);
        }
        return seconds;
    }

    /**
     * A rate for each second as one for each minute.
     *
     * @param perSecond the rate in 1/s
     * @return the rate in 1/min
     */
    public static double perMinute(double perSecond) {
        return perSecond * SECONDS;
    }

    /**
     * A rate for each minute as one for each second.
     *
     * @param perMinute the rate in 1/min
     * @return the rate in 1/s
     */
    public static double perSecond(double perMinute) {
        return perMinute / SECONDS;
    }
}
