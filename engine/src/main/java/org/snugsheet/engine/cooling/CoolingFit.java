package org.snugsheet.engine.cooling;

import java.util.Locale;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Time;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * A {@linkplain OneRateModel model with one cooling constant} fitted to readings by least squares, with the start
 * temperature and the cooling constant free, and the surroundings too if the model says so.
 *
 * <p>The time of the curve starts at the first reading, so that a clock that starts long before does not affect the
 * arithmetic; {@link #start()} extrapolates back to time zero.
 *
 * <p>Standard errors are the square roots of the diagonal of {@code σ²·(JᵀJ)⁻¹} (Bates and Watts, Nonlinear Regression
 * Analysis and Its Applications, 1988, section 2.2.1), where {@code σ²} is the residual variance {@code SSR/(n − p)}, but
 * never less than the variance of rounding to the mark. Given surroundings were read on the same thermometer, so the effect
 * of their rounding is combined with that (JCGM 100:2008, GUM, 5.1.2). Limits ({@link CoolingIntervals}) include other
 * effects of rounding.
 */
public final class CoolingFit implements ModelFit {

    private final Readings readings;
    private final OneRateModel model;
    private final Graduation mark;
    private final SeparableFit fit;
    private final LawDoubt doubt;

    private CoolingFit(Readings readings, OneRateModel model, Graduation mark, SeparableFit fit, LawDoubt doubt) {
        this.readings = readings;
        this.model = model;
        this.mark = mark;
        this.fit = fit;
        this.doubt = doubt;
    }

    /**
     * Fits Newton’s law to readings. Where the surroundings are to be fitted, {@linkplain LawDoubt other laws are tried too};
     * the uncertainty they add is part of all errors and limits.
     *
     * @param readings at least three, and at least four if the surroundings are to be fitted
     * @param surroundings the surroundings of the vessel
     * @param mark the mark of the thermometer
     * @return the fit
     * @throws InvalidInputException if there are too few readings, none differs from the surroundings by more than a mark,
     *     one lies beyond the surroundings by more than a mark and a kelvin, they move away from the surroundings, or the jar
     *     had settled before the second reading; for fitted surroundings, also if the readings set no useful limits for them
     *     or do not show which law the vessel follows
     */
    public static CoolingFit of(Readings readings, Surroundings surroundings, Graduation mark) {
        CoolingFit fit = CoolingModel.newton(surroundings).fit(readings, mark);
        return fit.model.fitsSurroundings()
                ? new CoolingFit(readings, fit.model, mark, fit.fit, LawDoubt.of(fit))
                : fit;
    }

    static CoolingFit of(Readings readings, OneRateModel model, Graduation mark) {
        OneRateProblem curve = OneRateProblem.of(readings, model);
        if (!model.fitsSurroundings()) {
            curve.requireOneSide(mark);
        }
        SeparableFit fit = curve.fit();
        curve.requireRate(fit);
        CoolingFit result = new CoolingFit(readings, model, mark, fit, LawDoubt.NONE);
        curve.requireApproach(result);
        return result;
    }

    @Override
    public OneRateModel model() {
        return model;
    }

    @Override
    public int size() {
        return readings.size();
    }

    @Override
    public double sumOfSquares() {
        return fit.sumOfSquares();
    }

    /**
     * The degrees of freedom of the residuals.
     *
     * @return n − p
     */
    public int degreesOfFreedom() {
        return readings.size() - model.parameters();
    }

    /**
     * The variance of a single reading, from the residuals or from rounding, whichever is larger.
     *
     * @return σ² in K²
     */
    public double variance() {
        return errors().variance();
    }

    /**
     * The cooling constant.
     *
     * @return k; it may be slightly negative for a vessel that does not cool
     */
    public CoolingConstant constant() {
        return new CoolingConstant(fit.rate());
    }

    /**
     * The standard error of the cooling constant.
     *
     * @return its standard error
     */
    public CoolingConstant constantError() {
        return new CoolingConstant(errors().of(StandardErrors.RATE));
    }

    /**
     * The half-time.
     *
     * @return seconds
     * @throws InvalidInputException if the cooling constant is not above its own standard error, so that it could be zero and
     *     the half-time anything
     */
    public double halfTime() {
        return constant().halfTime(constantError());
    }

    /**
     * The standard error of the half-time, to first order: {@code s(k)·ln 2/k²}.
     *
     * @return seconds
     * @throws InvalidInputException as {@link #halfTime()} does
     */
    public double halfTimeError() {
        return halfTime() * constantError().perSecond() / constant().perSecond();
    }

    /**
     * The temperature at time zero on the fitted curve.
     *
     * @return the start temperature
     * @throws InvalidInputException if the first reading is later than time zero by more than the readings span
     */
    public Temperature start() {
        requireReach();
        return at(0);
    }

    /**
     * The standard error of the start temperature.
     *
     * @return its standard error
     * @throws InvalidInputException as {@link #start()} does
     */
    public TemperatureDifference startError() {
        requireReach();
        return errorAt(0);
    }

    /**
     * The temperature of the surroundings: given, measured at the first reading, or fitted.
     *
     * @return Tₛ
     */
    public Temperature surroundings() {
        OneRateModel.At first = model.at(readings.first().seconds(), 0, fit.rate());
        return new Temperature(first.offset() + level());
    }

    /**
     * The standard error of the surroundings.
     *
     * @return its standard error, from the fit for fitted surroundings, from rounding for given ones; zero if they are known
     *     exactly
     */
    public TemperatureDifference surroundingsError() {
        return new TemperatureDifference(errors().of(StandardErrors.LEVEL));
    }

    /**
     * The temperature on the fitted curve.
     *
     * @param seconds the time
     * @return the temperature then
     * @throws InvalidInputException if it is out of range
     */
    public Temperature at(double seconds) {
        OneRateModel.At at = atTime(seconds);
        return new Temperature(at.offset() + amplitude() * at.shape() + level());
    }

    /**
     * The standard error of the fitted curve, {@code √(gᵀ·C·g)} with the gradient g of the curve by its parameters and their
     * covariance C.
     *
     * @param seconds the time
     * @return the standard error of {@link #at} there
     */
    public TemperatureDifference errorAt(double seconds) {
        return new TemperatureDifference(Math.hypot(readErrors().of(gradientAt(seconds)), lawErrorAt(seconds)));
    }

    /**
     * What other laws add to the error of the curve, K: nothing within the readings, which all laws follow, and beyond them
     * the deviation of a curve toward another level.
     */
    double lawErrorAt(double seconds) {
        double first = readings.first().seconds();
        double beyond = Math.max(Math.max(seconds - first - readings.span(), first - seconds), 0);
        return doubt.error() * -Math.expm1(-Math.max(fit.rate(), 0) * beyond);
    }

    double[] gradientAt(double seconds) {
        OneRateModel.At at = atTime(seconds);
        return new double[] {at.shape(), amplitude() * at.shapeSlope() + at.offsetSlope(), 1};
    }

    /** Computed on each call: most callers want only the cooling constant. */
    StandardErrors errors() {
        return new StandardErrors(readings, fit, model, mark, doubt.error());
    }

    /** The same without the doubt about the law. */
    StandardErrors readErrors() {
        return new StandardErrors(readings, fit, model, mark, 0);
    }

    /**
     * How far the readings lie from the curve: the root mean square residual, {@code √(SSR/n)}.
     *
     * @return the misfit
     */
    public TemperatureDifference misfit() {
        return new TemperatureDifference(Math.sqrt(fit.sumOfSquares() / readings.size()));
    }

    /**
     * Whether the readings wander together, so that they tell less than as many independent readings. All errors and limits
     * take that into account.
     *
     * @return whether the errors of neighbors are correlated more than by chance
     */
    public boolean isWandering() {
        return errors().isWandering();
    }

    /**
     * The cooling constant as an estimate, to be compared with that of another vessel.
     *
     * @return 1/min, with its standard error, its degrees of freedom, and the effect of the surroundings that it shares with
     *     other jars
     */
    public Estimate estimate() {
        StandardErrors errors = errors();
        return new Estimate(
                constant().perMinute(),
                new CoolingConstant(errors.ownOf(StandardErrors.RATE)).perMinute(),
                errors.freedom(),
                0,
                new CoolingConstant(errors.commonOf(StandardErrors.RATE)).perMinute());
    }

    /**
     * The same with an error that includes rounding as limits do: for comparisons, not for display.
     *
     * @return 1/min, with its increased standard error, its degrees of freedom, and the error that other jars may share
     */
    public Estimate conservativeEstimate() {
        return RoundingUncertainty.estimate(this);
    }

    /**
     * The confidence limits.
     *
     * @param confidence such as 0.95
     * @return the limits
     */
    public CoolingIntervals intervals(double confidence) {
        return new CoolingIntervals(this, confidence);
    }

    /**
     * The readings that were fitted.
     *
     * @return the readings
     */
    public Readings readings() {
        return readings;
    }

    /**
     * The difference to the surroundings at the first reading, on the fitted curve.
     *
     * @return A in kelvins
     */
    double amplitude() {
        return fit.coefficient(model.fitsSurroundings() ? 1 : 0);
    }

    /** The free level in °C; zero if the surroundings are given. */
    private double level() {
        return model.fitsSurroundings() ? fit.coefficient(0) : 0;
    }

    Graduation mark() {
        return mark;
    }

    LawDoubt doubt() {
        return doubt;
    }

    SeparableFit solution() {
        return fit;
    }

    /** Such as {@code k = 0.03000 ± 0.00040 /min, surroundings given: 8.000 °C, misfit 0.1500 K, 12 readings}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "k = %s /min, %s: %.4g °C, misfit %.4g K, %d readings",
                estimate(),
                model.law().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                surroundings().celsius(),
                misfit().kelvins(),
                size());
    }

    private OneRateModel.At atTime(double seconds) {
        double origin = readings.first().seconds();
        return model.at(origin, seconds - origin, fit.rate());
    }

    private void requireReach() {
        if (Math.abs(readings.first().seconds()) > readings.span()) {
            throw InvalidInputException.of(
                    Problem.START_OUT_OF_REACH, readings.first().seconds() / Time.SECONDS_PER_MINUTE);
        }
    }
}
