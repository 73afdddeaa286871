package org.snugsheet.engine.cooling;

import java.util.function.DoubleUnaryOperator;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.StudentT;

/**
 * How much more uncertain than by Newton’s law fitted surroundings are, because other laws fit the readings too. A jar in
 * still air or without a lid loses heat more and more slowly as it cools, which looks just like Newton’s law in a warm room.
 *
 * <p>The laws are those of {@link FallingRate} with an exponent m from 0, Newton’s, to {@value #STEEPEST}. Newton’s own
 * answer is given only if no other exponent is better by more than happens by chance in one lesson in twenty, and all laws
 * that fit so well determine the limits together: the exponent has a profile of its own (D. M. Bates and D. G. Watts,
 * Nonlinear Regression Analysis and Its Applications, 1988, section 6.1), {@code SSR(m) ≤ SSR + σ²·t²} with n − 4 degrees of
 * freedom. Every exponent that is not ruled out at {@value #SURE} counts. With the same limit as for Newton’s law, lessons
 * that happen to look like it would be answered, and answered wrongly.
 *
 * <p>Where the limits are farther away than {@value #USEFUL} of what the jar lost while it was read, the readings do not
 * determine the surroundings, and none are reported (common practice, no source; tried out, see engine/NOTES.md).
 *
 * @param below how far the lower limit lies below that of Newton’s law, K
 * @param above how far the upper limit lies above it, K
 * @param error what that adds to the standard error of the surroundings, K
 */
record LawDoubt(double below, double above, double error) {

    /** No doubt: the surroundings were typed. */
    static final LawDoubt NONE = new LawDoubt(0, 0, 0);

    /** The exponent of open water at 40 °C in air at 5 °C, by evaporation; free convection has 0.25 to 0.33. */
    private static final double STEEPEST = 0.42;

    private static final double SURE = 0.9973;
    private static final double CONFIDENCE = 0.95;
    private static final double USEFUL = 0.25;
    private static final int TRIALS = 6;
    private static final int HALVINGS = 12;

    /**
     * Compares the laws.
     *
     * @param fit Newton’s law with fitted surroundings
     * @return the uncertainty that the other laws add
     * @throws InvalidInputException if Newton’s law alone sets no useful limit, another law is better, or the laws do not agree
     */
    static LawDoubt of(CoolingFit fit) {
        double level = fit.surroundings().celsius();
        double first = fit.readings().first().seconds();
        double lost = fit.at(first).minus(fit.at(first + fit.readings().span())).kelvins();
        double useful = USEFUL * Math.abs(lost);
        FallingRate laws = new FallingRate(fit.readings(), fit.constant().perSecond());
        StandardErrors errors = fit.errors();
        double steepest = steepest(laws, fit, errors);
        Interval own = fit.intervals(CONFIDENCE).surroundings();
        if (!(reach(own, level) <= useful)) {
            throw InvalidInputException.of(Problem.SURROUNDINGS_OUT_OF_REACH);
        }
        double freedom = errors.freedom();
        double student = StudentT.quantile(CONFIDENCE, freedom);
        double residual = laws.sumOfSquares(steepest) / fit.degreesOfFreedom();
        Interval other = laws.levels(
                steepest,
                Math.max(
                        errors.allowance(
                                StandardErrors.LEVEL, student, StudentT.quantile(CONFIDENCE, Double.POSITIVE_INFINITY)),
                        residual * student * student));
        Interval all = new Interval(Math.min(own.low(), other.low()), Math.max(own.high(), other.high()));
        if (!(reach(all, level) <= useful)) {
            throw InvalidInputException.of(Problem.SURROUNDINGS_OR_LAW);
        }
        double wider = Math.max((level - all.low()) / (level - own.low()), (all.high() - level) / (own.high() - level));
        return new LawDoubt(
                own.low() - all.low(),
                all.high() - own.high(),
                errors.of(StandardErrors.LEVEL) * Math.sqrt(Math.max(wider * wider - 1, 0)));
    }

    private static double reach(Interval limits, double level) {
        return Math.max(level - limits.low(), limits.high() - level);
    }

    /** The largest exponent that the readings do not rule out. */
    private static double steepest(FallingRate laws, CoolingFit fit, StandardErrors errors) {
        double best = fit.sumOfSquares();
        double bestExponent = 0;
        for (int i = 1; i <= TRIALS; i++) {
            double exponent = STEEPEST * i / TRIALS;
            double ssr = laws.sumOfSquares(exponent);
            if (ssr < best) {
                best = ssr;
                bestExponent = exponent;
            }
        }
        double freedom = Math.min(errors.freedom(), fit.degreesOfFreedom()) - 1;
        if (!(freedom >= 1)) {
            return STEEPEST;
        }
        // Readings that wander may do so because the law is another one. So that is no excuse for Newton’s law, but it
        // is for the others.
        double scatter = Math.max(best / (fit.degreesOfFreedom() - 1), errors.allowance(StandardErrors.LEVEL, 0, 1));
        double plain = square(StudentT.quantile(CONFIDENCE, fit.degreesOfFreedom() - 1));
        if (fit.sumOfSquares() - best > scatter * plain) {
            throw InvalidInputException.of(Problem.SURROUNDINGS_OR_LAW);
        }
        double allowed = best
                + Math.max(scatter, errors.allowance(StandardErrors.LEVEL, 1, 0))
                        * square(StudentT.quantile(SURE, freedom));
        DoubleUnaryOperator excess = exponent -> laws.sumOfSquares(exponent) - allowed;
        if (excess.applyAsDouble(STEEPEST) <= 0) {
            return STEEPEST;
        }
        double within = bestExponent;
        double beyond = STEEPEST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (within + beyond) / 2;
            if (excess.applyAsDouble(middle) <= 0) {
                within = middle;
            } else {
                beyond = middle;
            }
        }
        return within;
    }

    private static double square(double value) {
        return value * value;
    }
}
