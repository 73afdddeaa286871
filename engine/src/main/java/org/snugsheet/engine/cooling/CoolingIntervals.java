package org.snugsheet.engine.cooling;

import java.util.function.DoubleUnaryOperator;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.StudentT;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.solver.Crossing;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * Confidence limits of the quantities that a fit estimates.
 *
 * <p>The limits of the cooling constant and of fitted surroundings come from the profile of the sum of squares: the values θ
 * for which the best fit of everything else has {@code SSR(θ) ≤ SSR + σ²·t²}, with t the quantile of Student’s distribution
 * for n − p degrees of freedom (Bates and Watts, Nonlinear Regression Analysis and Its Applications, 1988, section 6.1). At
 * least the variance of rounding is counted, with the normal quantile, and more where its errors are correlated
 * ({@link ReadingErrors}). With few readings, or for a vessel that hardly cools, the limits are asymmetric, as they should
 * be; a plain {@code ± t·s} would not be. The uncertainty that {@linkplain LawDoubt other laws} add to fitted surroundings
 * widens their limits, and those of the cooling constant reach at least as far as they would with these surroundings. Where
 * rounding alone explains the readings, the limits of the cooling constant, of the half-time and of fitted surroundings
 * include every curve through all {@linkplain BoundedRoundingLimits bars}, whatever the confidence. The rounding of given
 * surroundings is known in advance and is added to either with the normal quantile, as the root of the sum of squares (JCGM
 * 100:2008, 5.1.2). A vessel does not move away from the temperature of its surroundings, so the cooling constant is cut off
 * at zero. Then the half-time is “longer than” its lower limit, and the upper limit is infinite.
 */
public final class CoolingIntervals {

    /** How far a profile is followed beyond the linear limits; farther out, the readings set no limit. */
    private static final double REACH = 1e4;

    private final CoolingFit fit;
    private final StandardErrors errors;
    private final StandardErrors read;
    private final double student;
    private final double normal;

    CoolingIntervals(CoolingFit fit, double confidence) {
        this.fit = fit;
        this.errors = fit.errors();
        this.read = fit.doubt().equals(LawDoubt.NONE) ? errors : fit.readErrors();
        this.student = StudentT.quantile(confidence, errors.freedom());
        this.normal = StudentT.quantile(confidence, Double.POSITIVE_INFINITY);
    }

    /**
     * Limits of the cooling constant.
     *
     * @return from k to k in 1/s, zero or more; the upper limit is infinite if the readings set none
     */
    public Interval rate() {
        double allowed = allowed(StandardErrors.RATE);
        DoubleUnaryOperator excess = rate -> fit.solution().sumOfSquaresAt(rate) - allowed;
        double rate = fit.constant().perSecond();
        double width = student * errors.ownOf(StandardErrors.RATE);
        double low = rate > 0 ? Math.max(0, edge(excess, rate, -width, 0)) : 0;
        double high = edge(excess, Math.max(rate, 0), width, Double.POSITIVE_INFINITY);
        double common = normal * errors.commonOf(StandardErrors.RATE);
        Interval reached = RoundingUncertainty.reachable(fit)
                .map(rates -> hull(low, high, rates))
                .orElseGet(() -> fit.doubt().equals(LawDoubt.NONE)
                        ? new Interval(low, high)
                        : hull(low, high, ratesOfOtherLaws()));
        return new Interval(
                Math.max(0, rate - Math.hypot(rate - reached.low(), common)),
                rate + Math.hypot(reached.high() - rate, common));
    }

    private static Interval hull(double low, double high, Interval other) {
        return new Interval(Math.min(low, other.low()), Math.max(high, other.high()));
    }

    /** The rates of Newton’s law in the coldest and in the warmest surroundings that the readings allow. */
    private Interval ratesOfOtherLaws() {
        Interval levels = surroundings();
        double one = rateWith(levels.low());
        double other = rateWith(levels.high());
        return new Interval(Math.max(0, Math.min(one, other)), Math.max(one, other));
    }

    private double rateWith(double celsius) {
        try {
            return OneRateProblem.of(fit.readings(), new ConstantSurroundings(new Temperature(celsius), true))
                    .fit()
                    .rate();
        } catch (InvalidInputException refusal) {
            return fit.constant().perSecond();
        }
    }

    /**
     * Limits of the half-time, from those of the cooling constant.
     *
     * @return seconds to seconds; the upper limit is infinite if the vessel may as well not cool
     */
    public Interval halfTime() {
        Interval rate = rate();
        return new Interval(
                Math.log(2) / rate.high(), rate.low() > 0 ? Math.log(2) / rate.low() : Double.POSITIVE_INFINITY);
    }

    /**
     * Limits of the start temperature, {@code ± t·s}: it enters the curve linearly, so this is accurate enough.
     *
     * @return degrees Celsius
     * @throws InvalidInputException as {@link CoolingFit#start()} does
     */
    public Interval start() {
        return around(fit.start().celsius(), 0);
    }

    /**
     * Limits of the fitted curve at one time.
     *
     * @param seconds the time
     * @return degrees Celsius
     */
    public Interval at(double seconds) {
        return around(fit.at(seconds).celsius(), seconds);
    }

    /**
     * Limits of fitted surroundings.
     *
     * @return degrees Celsius; a limit is infinite if the readings set none. given surroundings lie within their rounding,
     *     {@code ± z·u} but no more than half a mark
     */
    public Interval surroundings() {
        double level = fit.surroundings().celsius();
        if (!fit.model().fitsSurroundings()) {
            double half = Math.min(
                    normal * errors.commonOf(StandardErrors.LEVEL),
                    fit.mark().graduation().kelvins() / 2);
            return new Interval(level - half, level + half);
        }
        double width = student * fit.surroundingsError().kelvins();
        double allowed = allowed(StandardErrors.LEVEL);
        DoubleUnaryOperator excess =
                celsius -> isThroughBars(celsius) ? Double.NEGATIVE_INFINITY : sumOfSquaresWith(celsius) - allowed;
        double low = edge(excess, level, -width, Double.NEGATIVE_INFINITY);
        double high = edge(excess, level, width, Double.POSITIVE_INFINITY);
        return new Interval(low - fit.doubt().below(), high + fit.doubt().above());
    }

    /** Readings that allow surroundings down to absolute zero set no limit. */
    private double sumOfSquaresWith(double celsius) {
        if (celsius < Temperature.ABSOLUTE_ZERO) {
            return 0;
        }
        try {
            SeparableFit there = OneRateProblem.of(
                            fit.readings(), new ConstantSurroundings(new Temperature(celsius), true))
                    .fit();
            // A curve that moves away from the surroundings is not that of a vessel in them, however well it fits.
            return there.rate() < 0 ? Double.POSITIVE_INFINITY : there.sumOfSquares();
        } catch (InvalidInputException refusal) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** Surroundings that some curve through all bars approaches cannot be ruled out. */
    private boolean isThroughBars(double celsius) {
        return celsius >= Temperature.ABSOLUTE_ZERO
                && BoundedRoundingLimits.rates(fit.readings(), celsius, fit.amplitude(), fit.mark())
                        .filter(rates -> rates.high() > 0)
                        .isPresent();
    }

    private double allowed(double[] gradient) {
        return fit.sumOfSquares() + errors.allowance(gradient, student, normal);
    }

    private Interval around(double value, double seconds) {
        double[] gradient = fit.gradientAt(seconds);
        double own = Math.hypot(read.raisedOf(gradient), fit.lawErrorAt(seconds));
        double half = Math.hypot(student * own, normal * errors.commonOf(gradient));
        return new Interval(value - half, value + half);
    }

    /**
     * The value at which the profile exceeds what is allowed, found by growing steps from the best value, and between the last two by
     * {@link Crossing}.
     *
     * @param excess the profile less what is allowed
     * @param best where it is below zero
     * @param step the first step, with its direction
     * @param none the answer if it never passes
     */
    private static double edge(DoubleUnaryOperator excess, double best, double step, double none) {
        double inside = best;
        double outside = best + step;
        double grown = step;
        while (excess.applyAsDouble(outside) <= 0) {
            inside = outside;
            grown *= 2;
            outside = best + grown;
            if (!(Math.abs(grown) < REACH * Math.abs(step))) {
                return none;
            }
        }
        return Crossing.of(excess, inside, outside, 5e-10 * Math.abs(outside - best));
    }
}
