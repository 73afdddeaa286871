package org.snugsheet.engine.solver;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a function passes through zero, by the ITP method of I. F. D. Oliveira and R. H. C. Takahashi (An Enhancement of the Bisection Method
 * Average Performance Preserving Minmax Optimality, ACM Transactions on Mathematical Software 47 (2021), article 5): the place where a
 * straight line between the ends passes through zero, moved a little toward the middle, and never so far from it that bisection would
 * have been done sooner.
 *
 * <p>So a function may jump, or be infinite on either side, as a profile is where a curve ceases to exist: that takes one look more than
 * bisection. The methods of Brent’s kind need many times as many there.
 */
public final class Crossing {

    /** κ₁·(b − a), κ₂ and n₀ as the authors advise. */
    private static final double SHIFT = 0.2;

    private static final int SLACK = 1;

    private Crossing() {}

    /**
     * Finds the place.
     *
     * @param function zero or less at one end, more than zero (or not a number) at the other
     * @param inside the first end
     * @param outside the second end, on either side of the first
     * @param close how near is near enough, above zero
     * @return a place no farther than that from one where the function passes through zero
     */
    public static double of(DoubleUnaryOperator function, double inside, double outside, double close) {
        double from = inside;
        double to = outside;
        double below = function.applyAsDouble(from);
        double above = function.applyAsDouble(to);
        double whole = Math.abs(to - from);
        double reach = Math.scalb(close, Math.max(0, Math.getExponent(whole / (2 * close)) + 1) + SLACK);
        while (Math.abs(to - from) > 2 * close) {
            double half = (to - from) / 2;
            double middle = from + half;
            double shift = SHIFT * 4 * half * half / whole;
            double most = Math.min(Math.abs(half), Math.max(0, reach - Math.abs(half)));
            double at = nearMiddle(middle, onLine(from, below, to, above), shift, most);
            if (at == from || at == to) {
                return at;
            }
            double there = function.applyAsDouble(at);
            if (there <= 0) {
                from = at;
                below = there;
            } else {
                to = at;
                above = there;
            }
            reach /= 2;
        }
        return from + (to - from) / 2;
    }

    /** Where the line from end to end passes through zero; not a number if an end is infinite. */
    private static double onLine(double from, double below, double to, double above) {
        return Double.isInfinite(below) || Double.isInfinite(above)
                ? Double.NaN
                : (above * from - below * to) / (above - below);
    }

    /** The place on the line moved toward the middle, and no farther from it than it may be; the middle where there is no line. */
    private static double nearMiddle(double middle, double line, double shift, double most) {
        double way = line - middle;
        return Math.abs(way) > shift ? middle + Math.copySign(Math.min(Math.abs(way) - shift, most), way) : middle;
    }
}
