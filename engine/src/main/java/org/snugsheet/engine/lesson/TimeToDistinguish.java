package org.snugsheet.engine.lesson;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/**
 * When two jars that began alike differ by a mark that a child can read.
 *
 * <p>They differ by {@code D(t) = (T₀ − Tₛ)·(e^(−k₁·t) − e^(−k₂·t))}: nothing at first, most at {@code t = ln(k₂/k₁)/(k₂ − k₁)},
 * and nothing again when both are as cold as their surroundings. (The sum of exponentials of one-compartment kinetics, H.
 * Bateman, Proc. Cambridge Phil. Soc. 15 (1910), 423.)
 *
 * @param start where both begin
 * @param surroundings what both stand in
 * @param first the one’s cooling constant
 * @param second the other’s
 */
public record TimeToDistinguish(
        Temperature start, Temperature surroundings, CoolingConstant first, CoolingConstant second) {

    private static final int MOST_STEPS = 200;

    private static final double SECONDS_PER_MINUTE = 60;

    /**
     * Two jars.
     *
     * @throws InvalidInputException if the start is too hot for pupils, a jar does not cool, or both cool alike
     */
    public TimeToDistinguish {
        SafeStart.require(start);
        if (!(first.perSecond() > 0 && second.perSecond() > 0)) {
            throw InvalidInputException.of(Problem.RATE_NOT_POSITIVE);
        }
        if (first.equals(second)) {
            throw InvalidInputException.of(Problem.RATES_ALIKE);
        }
        if (start.equals(surroundings)) {
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
        double one = Math.expm1(-first.perSecond() * seconds);
        double other = Math.expm1(-second.perSecond() * seconds);
        return Math.abs(start.minus(surroundings).kelvins() * (one - other));
    }

    /**
     * When they are farthest apart.
     *
     * @return seconds since the start
     */
    public double farthest() {
        double apart = (second.perSecond() - first.perSecond()) / first.perSecond();
        return Math.log1p(apart) / apart / first.perSecond();
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
