package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * The cooling constant k of Newton’s law: the share of the remaining difference that is lost each second.
 *
 * @param perSecond 1/s, finite; an estimate may come out at or below zero when a jar hardly cools
 */
public record CoolingConstant(double perSecond) {

    private static final double SECONDS_PER_MINUTE = 60;

    /**
     * A cooling constant in 1/s.
     *
     * @throws InvalidInputException if it is no finite number
     */
    public CoolingConstant {
        if (!Double.isFinite(perSecond)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(perSecond));
        }
    }

    /**
     * A cooling constant as a sheet holds it.
     *
     * @param perMinute 1/min
     * @return the constant
     * @throws InvalidInputException if it is no finite number
     */
    public static CoolingConstant ofPerMinute(double perMinute) {
        return new CoolingConstant(perMinute / SECONDS_PER_MINUTE);
    }

    /**
     * This constant for a minute.
     *
     * @return 1/min
     */
    public double perMinute() {
        return perSecond * SECONDS_PER_MINUTE;
    }

    /**
     * The half-time: how long until half of the difference to the surroundings is gone, {@code ln 2 / k}.
     *
     * @return seconds
     * @throws InvalidInputException if the constant is not above zero
     */
    public double halfTime() {
        if (!(perSecond > 0)) {
            throw InvalidInputException.of(Problem.HARDLY_COOLS);
        }
        return Math.log(2) / perSecond;
    }

    /**
     * The half-time of a constant that was estimated.
     *
     * @param error its standard error
     * @return seconds
     * @throws InvalidInputException if the constant is not above its own standard error: then it may as well be zero, and the half-time
     *     any number
     */
    public double halfTime(CoolingConstant error) {
        if (!(perSecond > error.perSecond)) {
            throw InvalidInputException.of(Problem.HARDLY_COOLS);
        }
        return halfTime();
    }
}
