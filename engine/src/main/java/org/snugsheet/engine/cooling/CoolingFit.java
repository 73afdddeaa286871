package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * A {@linkplain OneRateModel model with one cooling constant} fitted to readings by least squares, with the start
 * temperature and the cooling constant free, and the surroundings too if the model says so.
 *
 * <p>The curve is written from the first reading, so that a clock that starts long before cannot spoil the arithmetic;
 * {@link #start()} carries it back to time zero.
 *
 * <p>Standard errors are the square roots of the diagonal of {@code σ²·(JᵀJ)⁻¹} (Bates and Watts, Nonlinear Regression
 * Analysis and Its Applications, 1988, section 2.2.1), where {@code σ²} is the residual variance {@code SSR/(n − p)}, but
 * never less than what rounding to the mark leaves. Given surroundings were read on the same thermometer: what their rounding does to
 * the fit is combined with that (JCGM 100:2008, GUM, 5.1.2). Limits ({@link CoolingIntervals}) count in what else rounding does.
 */
public final class CoolingFit implements ModelFit {

    private static final double SECONDS_PER_MINUTE = 60;

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
     * Fits Newton’s law to readings. Where the surroundings are to be fitted, {@linkplain LawDoubt other laws compete}: what they
     * leave open goes into all errors and limits.
     *
     * @param readings at least three, and at least four if the surroundings are to be fitted
     * @param surroundings what the vessel stood in
     * @param mark the mark of the thermometer
     * @return the fit
     * @throws InvalidInputException if there are too few readings, none differs from the surroundings by more than a mark, one lies beyond
     *     the surroundings by more than a mark and a kelvin, or they move away from the surroundings; if these are to be fitted, also
     *     if the readings tell no useful limits of them, or not which law the vessel follows
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
        CoolingFit result = new CoolingFit(readings, model, mark, curve.fit(), LawDoubt.NONE);
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
     * Readings beyond those that the parameters use up.
     *
     * @return n − p
     */
    public int degreesOfFreedom() {
        return readings.size() - model.parameters();
    }

    /**
     * The variance of a single reading, from the residuals or from the rounding, whichever is more.
     *
     * @return σ² in K²
     */
    public double variance() {
        return errors().variance();
    }

    /**
     * The cooling constant.
     *
     * @return k; it may come out a little below zero for a vessel that does not cool
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
        return new CoolingConstant(errors().of(FitErrors.RATE));
    }

    /**
     * The half-time.
     *
     * @return seconds
     * @throws InvalidInputException if the cooling constant is not above its own standard error: then it may as well be zero, and the
     *     half-time any number
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
        return new Temperature(first.offset() + fit.level());
    }

    /**
     * The standard error of the surroundings.
     *
     * @return its standard error, of fitted surroundings by the fit, of given ones by rounding; zero if they are known exactly
     */
    public TemperatureDifference surroundingsError() {
        return new TemperatureDifference(errors().of(FitErrors.LEVEL));
    }

    /**
     * The temperature on the fitted curve.
     *
     * @param seconds the time
     * @return the temperature then
     * @throws InvalidInputException if that is beyond all bounds
     */
    public Temperature at(double seconds) {
        OneRateModel.At at = atTime(seconds);
        return new Temperature(at.offset() + fit.amplitude() * at.shape() + fit.level());
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
     * What other laws add to the error of the curve, K: nothing amid the readings, which any of them follows, and beyond them what a curve
     * does that goes on from there towards another level.
     */
    double lawErrorAt(double seconds) {
        double first = readings.first().seconds();
        double beyond = Math.max(Math.max(seconds - first - readings.span(), first - seconds), 0);
        return doubt.error() * -Math.expm1(-Math.max(fit.rate(), 0) * beyond);
    }

    double[] gradientAt(double seconds) {
        OneRateModel.At at = atTime(seconds);
        return new double[] {at.shape(), fit.amplitude() * at.shapeSlope() + at.offsetSlope(), 1};
    }

    /** Worked out anew each time: most who ask for a cooling constant want nothing else. */
    FitErrors errors() {
        return new FitErrors(readings, fit, model, mark, doubt.error());
    }

    /** The same if no other law is thought of. */
    FitErrors readErrors() {
        return new FitErrors(readings, fit, model, mark, 0);
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
     * Whether the readings wander together, so that they tell less than as many readings would that each err on their own. All errors and
     * limits count that in.
     *
     * @return whether more than chance makes neighbours err alike
     */
    public boolean isWandering() {
        return errors().isWandering();
    }

    /**
     * The cooling constant as an estimate, to be set against that of another vessel.
     *
     * @return 1/min, with its standard error, degrees of freedom, and what the surroundings do to it as to other jars
     */
    public Estimate estimate() {
        FitErrors errors = errors();
        return new Estimate(
                constant().perMinute(),
                new CoolingConstant(errors.ownOf(FitErrors.RATE)).perMinute(),
                errors.freedom(),
                0,
                new CoolingConstant(errors.commonOf(FitErrors.RATE)).perMinute());
    }

    /**
     * The same with an error that counts in what rounding does, as limits do: for claims, not for show.
     *
     * @return 1/min, with its raised standard error, degrees of freedom, and the error that other jars may share
     */
    public Estimate conservativeEstimate() {
        return RoundingUncertainty.estimate(this);
    }

    /**
     * Within which limits the truth lies.
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
        return fit.amplitude();
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

    private OneRateModel.At atTime(double seconds) {
        double origin = readings.first().seconds();
        return model.at(origin, seconds - origin, fit.rate());
    }

    private void requireReach() {
        if (Math.abs(readings.first().seconds()) > readings.span()) {
            throw InvalidInputException.of(
                    Problem.START_OUT_OF_REACH, readings.first().seconds() / SECONDS_PER_MINUTE);
        }
    }
}
