package org.snugsheet.engine.cooling;

import java.util.Optional;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.reading.Mark;
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
 * never less than what rounding to the mark leaves. Limits ({@link CoolingIntervals}) count in what else rounding does.
 */
public final class CoolingFit implements ModelFit {

    private static final double SECONDS_PER_MINUTE = 60;

    private static final double[] RATE = {0, 1, 0};
    private static final double[] LEVEL = {0, 0, 1};

    /** Readings that lose a smaller share than this of what is left to lose lie on a straight line: it leads to no level. */
    private static final double STRAIGHT = 1e-4;

    private final Readings readings;
    private final OneRateModel model;
    private final Mark mark;
    private final SeparableFit fit;
    private final ReadingErrors errors;
    private final double[][] influence;

    private CoolingFit(Readings readings, OneRateModel model, Mark mark, SeparableFit fit) {
        this.readings = readings;
        this.model = model;
        this.mark = mark;
        this.fit = fit;
        double[] fitted = new double[readings.size()];
        double[] residuals = fit.residuals();
        for (int i = 0; i < fitted.length; i++) {
            fitted[i] = readings.all().get(i).temperature().celsius() - residuals[i];
        }
        this.errors = ReadingErrors.of(fitted, fit.sumOfSquares() / degreesOfFreedom(), mark);
        this.influence = fit.influence();
    }

    /**
     * Fits Newton’s law to readings.
     *
     * @param readings at least three, and at least four if the surroundings are to be fitted
     * @param surroundings what the vessel stood in
     * @param mark the mark of the thermometer
     * @return the fit
     * @throws Refusal if there are too few readings, none differs from the surroundings by more than a mark, one lies beyond
     *     the surroundings by more than a mark and a kelvin, or they move away from the surroundings
     */
    public static CoolingFit of(Readings readings, Surroundings surroundings, Mark mark) {
        return CoolingModel.newton(surroundings).fit(readings, mark);
    }

    static CoolingFit of(Readings readings, OneRateModel model, Mark mark) {
        JarCurve curve = JarCurve.of(readings, model);
        if (!model.fitsSurroundings()) {
            curve.requireOneSide(mark);
        }
        CoolingFit result = new CoolingFit(readings, model, mark, curve.fit());
        result.requireApproach();
        return result;
    }

    // Readings may drift a little the wrong way by chance; two standard errors are no longer chance.
    private void requireApproach() {
        Scale scale = readings.scale();
        if (constant().perSecond() + 2 * constantError().perSecond() < 0) {
            throw model.fitsSurroundings()
                    ? Refusal.of(Trouble.SURROUNDINGS_OUT_OF_REACH)
                    : Refusal.atRow(
                            readings.first().row(),
                            Trouble.MOVES_AWAY,
                            surroundings().in(scale),
                            scale.symbol());
        }
        if (model.fitsSurroundings() && !(constant().perSecond() * readings.span() > STRAIGHT)) {
            throw Refusal.of(Trouble.SURROUNDINGS_OUT_OF_REACH);
        }
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
        return errors.variance();
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
        return new CoolingConstant(errorOf(RATE));
    }

    /**
     * The half-time.
     *
     * @return seconds
     * @throws Refusal if the cooling constant is not above its own standard error: then it may as well be zero, and the
     *     half-time any number
     */
    public double halfTime() {
        if (!(constant().perSecond() > constantError().perSecond())) {
            throw Refusal.of(Trouble.HARDLY_COOLS);
        }
        return constant().halfTime();
    }

    /**
     * The standard error of the half-time, to first order: {@code s(k)·ln 2/k²}.
     *
     * @return seconds
     * @throws Refusal as {@link #halfTime()} does
     */
    public double halfTimeError() {
        return halfTime() * constantError().perSecond() / constant().perSecond();
    }

    /**
     * The temperature at time zero on the fitted curve.
     *
     * @return the start temperature
     * @throws Refusal if the first reading is later than time zero by more than the readings span
     */
    public Temperature start() {
        requireReach();
        return at(0);
    }

    /**
     * The standard error of the start temperature.
     *
     * @return its standard error
     * @throws Refusal as {@link #start()} does
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
     * @return its standard error; zero if they were not fitted
     */
    public TemperatureDifference surroundingsError() {
        return new TemperatureDifference(model.fitsSurroundings() ? errorOf(LEVEL) : 0);
    }

    /**
     * The temperature on the fitted curve.
     *
     * @param seconds the time
     * @return the temperature then
     * @throws Refusal if that is beyond all bounds
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
        return new TemperatureDifference(errorOf(gradientAt(seconds)));
    }

    /** How much more than independent errors of the readings would leave, rounding leaves in the curve at one time. */
    double inflationAt(double seconds) {
        return errors.inflationOf(pull(gradientAt(seconds)));
    }

    private double[] gradientAt(double seconds) {
        OneRateModel.At at = atTime(seconds);
        return new double[] {at.shape(), fit.amplitude() * at.shapeSlope() + at.offsetSlope(), 1};
    }

    /** The standard error of what the gradient says how to make from the parameters. */
    private double errorOf(double[] gradient) {
        return Math.sqrt(errors.varianceOf(pull(gradient)));
    }

    /** How far that moves with each reading. */
    private double[] pull(double[] gradient) {
        double[] pull = new double[readings.size()];
        for (int i = 0; i < influence.length; i++) {
            for (int j = 0; j < pull.length; j++) {
                pull[j] += gradient[i] * influence[i][j];
            }
        }
        return pull;
    }

    /** How much more than independent errors of the readings would leave, rounding leaves in the rate. */
    double inflationOfRate() {
        return errors.inflationOf(influence[1]);
    }

    /** The same for fitted surroundings. */
    double inflationOfLevel() {
        return errors.inflationOf(influence[2]);
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
     * The cooling constant as an estimate, to be set against that of another vessel.
     *
     * @return 1/min, with its standard error and degrees of freedom
     */
    public Estimate estimate() {
        return new Estimate(constant().perMinute(), constantError().perMinute(), degreesOfFreedom());
    }

    /**
     * The same with an error that counts in what rounding does, as limits do: for claims, not for show. It is raised where
     * rounding repeats itself, and where a curve through all {@linkplain RoundingBars bars} lies beyond the 95 % limits, up
     * to that.
     *
     * @return 1/min, with its raised standard error and degrees of freedom
     */
    public Estimate cautiousEstimate() {
        double raised = constantError().perSecond() * Math.sqrt(inflationOfRate());
        double rate = constant().perSecond();
        double reach = roundedRates()
                .map(rates -> Math.max(rate - rates.low(), Double.isFinite(rates.high()) ? rates.high() - rate : 0))
                .orElse(0.0);
        double quantile = CoolingIntervals.quantile(Verdict.CONFIDENCE, degreesOfFreedom());
        double error = Math.max(raised, reach / quantile);
        return new Estimate(constant().perMinute(), error * SECONDS_PER_MINUTE, degreesOfFreedom());
    }

    /** The cooling constants that rounding alone leaves possible; only for surroundings that are given and constant. */
    Optional<Interval> roundedRates() {
        return model instanceof ConstantSurroundings constant
                ? RoundingBars.rates(readings, constant.surroundings().celsius(), fit.amplitude(), mark)
                : Optional.empty();
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

    SeparableFit solution() {
        return fit;
    }

    private OneRateModel.At atTime(double seconds) {
        double origin = readings.first().seconds();
        return model.at(origin, seconds - origin, fit.rate());
    }

    private void requireReach() {
        if (Math.abs(readings.first().seconds()) > readings.span()) {
            throw Refusal.of(Trouble.START_OUT_OF_REACH, readings.first().seconds() / SECONDS_PER_MINUTE);
        }
    }
}
