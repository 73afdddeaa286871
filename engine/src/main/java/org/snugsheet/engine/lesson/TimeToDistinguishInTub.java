package org.snugsheet.engine.lesson;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.reading.Graduation;

/**
 * As {@link TimeToDistinguish}, of two jars in one tub that warms: when they are farthest apart is searched for, for no formula tells it.
 *
 * @param first the one jar
 * @param second the other
 */
public record TimeToDistinguishInTub(Warming first, Warming second) {

    private static final int MOST_STEPS = 500;

    private static final double SECONDS_PER_MINUTE = 60;

    /**
     * Two jars.
     *
     * @throws InvalidInputException if a jar does not cool, both cool alike, or they are as warm as the tub
     */
    public TimeToDistinguishInTub {
        if (!(first.constant().perSecond() > 0 && second.constant().perSecond() > 0)) {
            throw InvalidInputException.of(Problem.RATE_NOT_POSITIVE);
        }
        if (first.constant().equals(second.constant())) {
            throw InvalidInputException.of(Problem.RATES_ALIKE);
        }
        if (first.difference(0) == 0) {
            throw InvalidInputException.of(Problem.TOO_NEAR_TO_READ);
        }
    }

    /**
     * How far apart they are.
     *
     * @param seconds since the start
     * @return K, zero or more
     */
    public double difference(double seconds) {
        return Math.abs(first.after(seconds).minus(second.after(seconds)).kelvins());
    }

    /**
     * When they are farthest apart: both then cool equally fast, {@code k₁·(T₁ − T₂(t)) = k₂·(T₂ − T₂(t))} by Newton’s law. In
     * surroundings that stay it would be {@code ln(k₂/k₁)/(k₂ − k₁)}; a tub that warms brings it forward, so that twice that holds it.
     *
     * @return seconds since the start
     */
    public double farthest() {
        double k = first.constant().perSecond();
        double apart = (second.constant().perSecond() - k) / k;
        double ifTheyStayed = Math.log1p(apart) / apart / k;
        double end = 2 * ifTheyStayed;
        // Rates so nearly alike that the digits run out: any time about then is as good.
        return fasterBy(0) * fasterBy(end) < 0
                ? new BrentSolver(1e-12, 1e-9).solve(MOST_STEPS, this::fasterBy, 0, end)
                : ifTheyStayed;
    }

    private double fasterBy(double seconds) {
        return first.constant().perSecond() * first.difference(seconds)
                - second.constant().perSecond() * second.difference(seconds);
    }

    /**
     * When they first differ by a mark.
     *
     * @param mark the smallest mark of the thermometer
     * @return seconds since the start
     * @throws InvalidInputException if they never do, saying how far they come
     */
    public double by(Graduation mark) {
        double wanted = mark.graduation().kelvins();
        double farthest = farthest();
        if (difference(farthest) < wanted) {
            throw InvalidInputException.of(
                    Problem.NEVER_TOLD_APART, difference(farthest), farthest / SECONDS_PER_MINUTE);
        }
        return new BrentSolver(1e-12, 1e-9).solve(MOST_STEPS, t -> difference(t) - wanted, 0, farthest);
    }
}
