package org.snugsheet.engine.comparison;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * How many times slower the second jar cools than the first: the first cooling constant divided by the second.
 *
 * <p>The two estimates are independent except for the {@linkplain Estimate#commonError() common error}. Above 1 the second is
 * slower.
 *
 * @param first the numerator
 * @param second the denominator
 */
public record Ratio(Estimate first, Estimate second) {

    /**
     * Whether the ratio has a value: the second is above its own standard error. Otherwise it could be zero and the ratio
     * anything; {@link #interval} still gives limits.
     *
     * @return whether {@link #value} and {@link #standardError} are available
     */
    public boolean isDefined() {
        return second.value() > second.combinedError();
    }

    /**
     * The ratio of the two values.
     *
     * @return how many times; slightly negative if the first is
     * @throws InvalidInputException if it is not {@linkplain #isDefined() defined}
     */
    public double value() {
        if (!isDefined()) {
            throw InvalidInputException.of(Problem.SECOND_HARDLY_COOLS);
        }
        return first.value() / second.value();
    }

    /**
     * The standard error of the ratio to first order, {@code √(s_a² + ρ²·s_b² + (c_a − ρ·c_b)²)/b} with the common errors c
     * (the law of propagation of uncertainty, JCGM 100:2008, 5.1.2 and 5.2.2). It is for display: limits from it would be too
     * narrow above and too wide below, so {@link #interval} does not use it.
     *
     * @return the standard error
     * @throws InvalidInputException if the ratio is not {@linkplain #isDefined() defined}
     */
    public double standardError() {
        double ratio = value();
        double own = Independent.together(first.standardError(), ratio * second.standardError());
        return Independent.together(own, first.commonError() - ratio * second.commonError()) / second.value();
    }

    /**
     * Confidence limits of the ratio, by Fieller’s theorem with Welch’s degrees of freedom to the second order (Fieller 1954,
     * Welch 1947, Aspin 1948; see the classes that implement it for the references).
     *
     * <p>No jar moves away from its surroundings by itself, so the limits lie between zero and infinity. If the second may be
     * zero, the upper limit is infinite: “at least so many times slower”. If both may be, the interval is everything. The
     * {@link #value} lies within, unless it is below zero.
     *
     * @param confidence how often such limits hold the truth, such as 0.95
     * @return the limits, from 0 to infinity at most
     * @throws InvalidInputException if the confidence does not lie between 0 and 1, or one of the two is below zero by more than its
     *     error at that confidence
     */
    public Interval interval(double confidence) {
        return Fieller.interval(first, second, Require.confidence(confidence));
    }

    /**
     * How often chance alone would make two jars that cool alike differ as much as these: the two-sided p value of Welch’s
     * test, on the conservative side.
     *
     * @return p, from 0 to 1; small when they differ
     */
    public double equalityP() {
        return Welch.p(1, first, 1, second);
    }

    /**
     * How far apart the two values would have to be, errors as they are, for {@link #equalityP} to be 5 % or less: beyond it a verdict and a
     * ranking of two find a difference.
     *
     * @return the least difference that is found, in the unit of the values
     */
    public double leastDifference() {
        return Welch.leastDifference(first, second);
    }

    /**
     * How many times slower the first cools than the second.
     *
     * @return the ratio of the second to the first
     */
    public Ratio inverse() {
        return new Ratio(second, first);
    }

    /** Such as {@code 1.500 ± 0.030}. */
    @Override
    public String toString() {
        return isDefined() ? Plain.withError(value(), standardError()) : "not defined";
    }
}
