package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;

/**
 * Which of two jars cools slower, or that the readings do not show it.
 *
 * <p>A difference is claimed only if Welch’s test finds it at the 5 % level and the 95 % limits of the ratio lie on one side
 * of 1. The two agree except with very few degrees of freedom, where {@link Ratio#interval} may be wider; then nothing is
 * claimed.
 */
public sealed interface Verdict {

    /** How often the limits of a verdict hold the truth. */
    double CONFIDENCE = 0.95;

    /**
     * Compares two estimates.
     *
     * @param first the cooling constant of one jar, or of several by {@link ReplicateGroup}
     * @param second that of the other, in the same unit, from other readings
     * @return the verdict
     * @throws InvalidInputException if one of them is below zero by more than its error
     */
    static Verdict of(Estimate first, Estimate second) {
        Ratio ratio = new Ratio(first, second);
        Interval interval = ratio.interval(CONFIDENCE);
        double p = ratio.equalityP();
        if (interval.contains(1) || !(p < 1 - CONFIDENCE)) {
            return new CannotTell(ratio, interval, p);
        }
        if (interval.low() > 1) {
            return new SecondSlower(ratio, interval, p);
        }
        Ratio inverse = ratio.inverse();
        return new FirstSlower(inverse, inverse.interval(CONFIDENCE), p);
    }

    /**
     * How many times slower the slower one cools.
     *
     * @return the ratio; the {@link #interval} gives its limits
     */
    Ratio ratio();

    /**
     * The limits of the ratio, with a confidence of {@value #CONFIDENCE}.
     *
     * @return the limits of the {@link #ratio}; the upper one may be infinite
     */
    Interval interval();

    /**
     * How often chance alone would make jars that cool alike differ as much.
     *
     * @return the two-sided p of Welch’s test
     */
    double p();

    private static String numbers(Verdict verdict) {
        return verdict.ratio() + " times (95 % limits " + verdict.interval() + "), p = " + Plain.number(verdict.p());
    }

    /**
     * The first cools slower.
     *
     * @param ratio how many times slower: the second cooling constant divided by the first
     * @param interval its limits, both above 1
     * @param p how often chance alone would make them differ as much
     */
    record FirstSlower(Ratio ratio, Interval interval, double p) implements Verdict {
        @Override
        public String toString() {
            return "the first cools more slowly, " + numbers(this);
        }
    }

    /**
     * The second cools slower.
     *
     * @param ratio how many times slower: the first cooling constant divided by the second
     * @param interval its limits, both above 1
     * @param p how often chance alone would make them differ as much
     */
    record SecondSlower(Ratio ratio, Interval interval, double p) implements Verdict {
        @Override
        public String toString() {
            return "the second cools more slowly, " + numbers(this);
        }
    }

    /**
     * The two may cool alike.
     *
     * @param ratio the first cooling constant divided by the second
     * @param interval its limits, which usually include 1
     * @param p how often chance alone would make them differ as much
     */
    record CannotTell(Ratio ratio, Interval interval, double p) implements Verdict {
        @Override
        public String toString() {
            return "the readings do not show which cools more slowly, " + numbers(this);
        }
    }
}
