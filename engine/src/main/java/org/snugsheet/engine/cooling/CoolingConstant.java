package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Time;

/**
 * The cooling constant k of Newton’s law: the share of the remaining difference that is lost per second.
 *
 * @param perSecond 1/s, finite; an estimate may come out at or below zero when a jar hardly cools
 */
public record CoolingConstant(double perSecond) {

    /**
     * A cooling constant in 1/s.
     *
     * @throws InvalidInputException if it is not a finite number
     */
    public CoolingConstant {
        if (!Double.isFinite(perSecond)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(perSecond));
        }
    }

    /**
     * A cooling constant in 1/min, as a sheet holds it.
     *
     * @param perMinute 1/min
     * @return the constant
     * @throws InvalidInputException if it is not a finite number
     */
    public static CoolingConstant ofPerMinute(double perMinute) {
        return new CoolingConstant(perMinute / Time.SECONDS_PER_MINUTE);
    }

    /**
     * This constant in 1/min.
     *
     * @return 1/min
     */
    public double perMinute() {
        return perSecond * Time.SECONDS_PER_MINUTE;
    }

    /**
     * The half-time: the time in which half of the difference to the surroundings is lost, {@code ln 2 / k}.
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
     * The half-time of an estimated constant.
     *
     * @param error its standard error
     * @return seconds
     * @throws InvalidInputException if the constant is not above its own standard error: otherwise it could be zero and the
     *     half-time anything
     */
    public double halfTime(CoolingConstant error) {
        if (!(perSecond > error.perSecond)) {
            throw InvalidInputException.of(Problem.HARDLY_COOLS);
        }
        return halfTime();
    }
}
