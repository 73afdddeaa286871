package org.snugsheet.engine.solver;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * The minimum of a function of one variable, by R. P. Brent’s method (Algorithms for Minimization Without Derivatives, 1973,
 * chapter 5).
 *
 * @param at the place
 * @param value the function there
 */
public record Minimum(double at, double value) {

    /** Close enough: near a minimum the function is then exact to twice as many digits. */
    private static final double RELATIVE = 1e-7;

    private static final double ABSOLUTE = 1e-8;
    private static final int LOOKS = 500;

    /**
     * Finds the minimum.
     *
     * @param function a function with a single minimum
     * @param low where to begin
     * @param guess a place near the minimum
     * @param high where to end
     * @return the minimum between the ends, or the end toward which the function decreases
     */
    public static Minimum of(DoubleUnaryOperator function, double low, double guess, double high) {
        UnivariatePointValuePair found = new BrentOptimizer(RELATIVE, ABSOLUTE)
                .optimize(
                        new MaxEval(LOOKS),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(function::applyAsDouble),
                        new SearchInterval(low, high, guess));
        return new Minimum(found.getPoint(), found.getValue());
    }
}
