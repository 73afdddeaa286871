package org.snugsheet.engine.lesson;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.reading.Mark;

/**
 * As {@link TellApart}, of two jars in one tub that warms: when they are farthest apart is searched for, for no formula tells it.
 *
 * @param first the one jar
 * @param second the other
 */
public record TellApartInTub(Warming first, Warming second) {

    private static final int MOST_STEPS = 500;

    private static final double SECONDS_PER_MINUTE = 60;

    /**
     * Two jars.
     *
     * @throws Refusal if a jar does not cool, both cool alike, or they are as warm as the tub
     */
    public TellApartInTub {
        if (!(first.constant().perSecond() > 0 && second.constant().perSecond() > 0)) {
            throw Refusal.of(Trouble.RATE_NOT_POSITIVE);
        }
        if (first.constant().equals(second.constant())) {
            throw Refusal.of(Trouble.RATES_ALIKE);
        }
        if (first.difference(0) == 0) {
            throw Refusal.of(Trouble.TOO_NEAR_TO_READ);
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
     * When they are farthest apart. In surroundings that stay it would be {@code ln(k₂/k₁)/(k₂ − k₁)}; a tub that warms brings it
     * forward, so that twice that holds it.
     *
     * @return seconds since the start
     */
    public double farthest() {
        double k = first.constant().perSecond();
        double apart = (second.constant().perSecond() - k) / k;
        double ifTheyStayed = Math.log1p(apart) / apart / k;
        return new BrentOptimizer(1e-9, 1e-6)
                .optimize(
                        new UnivariateObjectiveFunction(this::difference),
                        GoalType.MAXIMIZE,
                        new SearchInterval(0, 2 * ifTheyStayed),
                        new MaxEval(MOST_STEPS))
                .getPoint();
    }

    /**
     * When they first differ by a mark.
     *
     * @param mark the smallest mark of the thermometer
     * @return seconds since the start
     * @throws Refusal if they never do, saying how far they come
     */
    public double by(Mark mark) {
        double wanted = mark.graduation().kelvins();
        double farthest = farthest();
        if (difference(farthest) < wanted) {
            throw Refusal.of(Trouble.NEVER_TOLD_APART, difference(farthest), farthest / SECONDS_PER_MINUTE);
        }
        return new BrentSolver(1e-12, 1e-9).solve(MOST_STEPS, t -> difference(t) - wanted, 0, farthest);
    }
}
