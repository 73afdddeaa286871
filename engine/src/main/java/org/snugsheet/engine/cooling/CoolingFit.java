package org.snugsheet.engine.cooling;

import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.reading.Mark;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.solver.Curve;
import org.snugsheet.engine.solver.LeastSquares;
import org.snugsheet.engine.solver.LeastSquaresFit;

/**
 * {@linkplain NewtonCooling Newton’s law} fitted to readings by least squares, with the start temperature and the cooling
 * constant free and the surroundings given.
 *
 * <p>The curve is written from the first reading at t₁, {@code T(t) = Tₛ + A·e^(−k·(t−t₁))}, so that a clock that starts
 * long before cannot spoil the arithmetic; {@link #start()} carries it back to time zero.
 *
 * <p>Standard errors are the square roots of the diagonal of {@code σ²·(JᵀJ)⁻¹} (Bates and Watts, Nonlinear Regression
 * Analysis and Its Applications, 1988, section 2.2.1), where {@code σ²} is the residual variance {@code SSR/(n − 2)}, but
 * never less than what rounding to the mark leaves, {@link Mark#standardUncertainty()}²: readings that happen to fall on one
 * curve are still known to half a mark only.
 */
public final class CoolingFit {

    private static final int PARAMETERS = 2;

    private static final double SECONDS_PER_MINUTE = 60;

    private final Readings readings;
    private final Surroundings surroundings;
    private final double amplitude;
    private final CoolingConstant constant;
    private final double sumOfSquares;
    private final double[][] covariance;

    private CoolingFit(Readings readings, Surroundings surroundings, Mark mark, LeastSquaresFit fit) {
        this.readings = readings;
        this.surroundings = surroundings;
        this.amplitude = fit.parameter(0);
        this.constant = new CoolingConstant(fit.parameter(1));
        this.sumOfSquares = fit.sumOfSquares();
        double rounding = mark.standardUncertainty();
        this.covariance = fit.covariance(Math.max(fit.residualVariance(), rounding * rounding));
    }

    /**
     * Fits readings.
     *
     * @param readings at least three
     * @param surroundings what the vessel stood in
     * @param mark the mark of the thermometer
     * @return the fit
     * @throws Refusal if there are too few readings, none differs from the surroundings by more than a mark, one lies beyond
     *     the surroundings by more than a mark, or they move away from the surroundings
     */
    public static CoolingFit of(Readings readings, Surroundings surroundings, Mark mark) {
        if (readings.size() <= PARAMETERS) {
            throw readings.size() == 0
                    ? Refusal.of(Trouble.NO_READINGS)
                    : Refusal.of(Trouble.TOO_FEW_READINGS, PARAMETERS + 1, readings.size());
        }
        int n = readings.size();
        double[] times = new double[n];
        double[] differences = new double[n];
        for (int i = 0; i < n; i++) {
            Reading reading = readings.all().get(i);
            times[i] = reading.seconds() - readings.first().seconds();
            differences[i] =
                    reading.temperature().minus(surroundings.temperature()).kelvins();
        }
        requireOneSide(readings, surroundings, mark, differences);
        LogLineGuess guess = LogLineGuess.of(times, differences);
        LeastSquaresFit fit = LeastSquares.fit(
                Curve.at(times, CoolingFit::decay), differences, new double[] {guess.amplitude(), guess.rate()});
        CoolingFit result = new CoolingFit(readings, surroundings, mark, fit);
        result.requireApproach();
        return result;
    }

    private static double decay(double time, double[] b, double[] slopes) {
        double left = Math.exp(-b[1] * time);
        slopes[0] = left;
        slopes[1] = -b[0] * time * left;
        return b[0] * left;
    }

    private static void requireOneSide(Readings readings, Surroundings surroundings, Mark mark, double[] differences) {
        double oneMark = mark.graduation().kelvins();
        double above = 0;
        double below = 0;
        for (double difference : differences) {
            above = Math.max(above, difference);
            below = Math.max(below, -difference);
        }
        Scale scale = readings.scale();
        double around = surroundings.temperature().in(scale);
        if (Math.max(above, below) <= oneMark) {
            throw Refusal.of(Trouble.ALREADY_AT_SURROUNDINGS, around, scale.symbol());
        }
        if (Math.min(above, below) > oneMark) {
            // The side of the first reading is the right one: a jar starts where it was filled.
            double side = Math.signum(differences[0]);
            for (int i = 1; i < differences.length; i++) {
                if (differences[i] * side < -oneMark) {
                    Reading wrong = readings.all().get(i);
                    throw Refusal.atRow(
                            wrong.row(), Trouble.WRONG_SIDE, wrong.temperature().in(scale), around, scale.symbol());
                }
            }
        }
    }

    // Readings may drift a little the wrong way by chance; two standard errors are no longer chance.
    private void requireApproach() {
        if (constant.perSecond() + 2 * constantError().perSecond() < 0) {
            Scale scale = readings.scale();
            throw Refusal.atRow(
                    readings.first().row(),
                    Trouble.MOVES_AWAY,
                    surroundings.temperature().in(scale),
                    scale.symbol());
        }
    }

    /**
     * The cooling constant.
     *
     * @return k; it may come out a little below zero for a vessel that does not cool
     */
    public CoolingConstant constant() {
        return constant;
    }

    /**
     * The standard error of the cooling constant.
     *
     * @return its standard error
     */
    public CoolingConstant constantError() {
        return new CoolingConstant(Math.sqrt(covariance[1][1]));
    }

    /**
     * The half-time.
     *
     * @return seconds
     * @throws Refusal if the cooling constant is not above its own standard error: then it may as well be zero, and the
     *     half-time any number
     */
    public double halfTime() {
        if (!(constant.perSecond() > constantError().perSecond())) {
            throw Refusal.of(Trouble.HARDLY_COOLS);
        }
        return constant.halfTime();
    }

    /**
     * The standard error of the half-time, to first order: {@code s(k)·ln 2/k²}.
     *
     * @return seconds
     * @throws Refusal as {@link #halfTime()} does
     */
    public double halfTimeError() {
        return halfTime() * constantError().perSecond() / constant.perSecond();
    }

    /**
     * The temperature at time zero on the fitted curve.
     *
     * @return the start temperature
     * @throws Refusal if the first reading is later than time zero by more than the readings span
     */
    public Temperature start() {
        requireReach();
        return new NewtonCooling(firstOnCurve(), surroundings.temperature(), constant)
                .after(-readings.first().seconds());
    }

    /**
     * The standard error of the start temperature, with the covariance of both parameters carried back to time zero.
     *
     * @return its standard error
     * @throws Refusal as {@link #start()} does
     */
    public TemperatureDifference startError() {
        requireReach();
        double earlier = readings.first().seconds();
        double growth = Math.exp(constant.perSecond() * earlier);
        double byAmplitude = growth;
        double byRate = amplitude * earlier * growth;
        double variance = byAmplitude * byAmplitude * covariance[0][0]
                + 2 * byAmplitude * byRate * covariance[0][1]
                + byRate * byRate * covariance[1][1];
        return new TemperatureDifference(Math.sqrt(variance));
    }

    /**
     * How far the readings lie from the curve: the root mean square residual, {@code √(SSR/n)}.
     *
     * @return the misfit
     */
    public TemperatureDifference misfit() {
        return new TemperatureDifference(Math.sqrt(sumOfSquares / readings.size()));
    }

    private Temperature firstOnCurve() {
        return surroundings.temperature().plus(new TemperatureDifference(amplitude));
    }

    private void requireReach() {
        if (Math.abs(readings.first().seconds()) > readings.span()) {
            throw Refusal.of(Trouble.START_OUT_OF_REACH, readings.first().seconds() / SECONDS_PER_MINUTE);
        }
    }
}
