package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.solver.SeparableCurve;
import org.snugsheet.engine.solver.SeparableFit;

/** A one-rate model at the times of a jar’s readings, in the form the solver needs, and the start of its search. */
final class OneRateProblem implements SeparableCurve {

    /** How many rates to try first where the surroundings are unknown, from a nearly straight curve to a steep one. */
    private static final int TRIAL_RATES = 24;

    private static final double SLOWEST = 0.02;
    private static final double FASTEST = 40;

    /** Two good thermometers may differ by a kelvin (common practice, no source). */
    private static final double TWO_THERMOMETERS = 1;

    /** Deviations larger than this are not scatter but slips. */
    private static final double MOST_SCATTER = 3;

    /** Readings that lose a smaller share than this of the difference lie on a straight line, which does not lead to a level. */
    private static final double STRAIGHT = 1e-4;

    private final Readings readings;
    private final OneRateModel model;
    private final double[] times;
    private final double[] temperatures;

    private OneRateProblem(Readings readings, OneRateModel model) {
        this.readings = readings;
        this.model = model;
        int n = readings.size();
        times = new double[n];
        temperatures = new double[n];
        for (int i = 0; i < n; i++) {
            Reading reading = readings.all().get(i);
            times[i] = reading.seconds() - readings.first().seconds();
            temperatures[i] = reading.temperature().celsius();
        }
    }

    static OneRateProblem of(Readings readings, OneRateModel model) {
        int needed = model.parameters() + 1;
        if (readings.size() < needed) {
            throw readings.size() == 0
                    ? InvalidInputException.of(Problem.NO_READINGS)
                    : InvalidInputException.of(Problem.TOO_FEW_READINGS, needed, readings.size());
        }
        return new OneRateProblem(readings, model);
    }

    @Override
    public int observations() {
        return times.length;
    }

    /** The shape, preceded by a constant where the level is free. */
    @Override
    public int columns() {
        return model.fitsSurroundings() ? 2 : 1;
    }

    @Override
    public void evaluate(double rate, double[][] columns, double[][] slopes, double[] offset, double[] offsetSlope) {
        double origin = readings.first().seconds();
        int shape = columns.length - 1;
        for (int i = 0; i < times.length; i++) {
            OneRateModel.At at = model.at(origin, times[i], rate);
            columns[0][i] = 1;
            columns[shape][i] = at.shape();
            slopes[shape][i] = at.shapeSlope();
            offset[i] = at.offset();
            offsetSlope[i] = at.offsetSlope();
        }
    }

    SeparableFit fit() {
        return SeparableFit.of(this, temperatures, guess());
    }

    /** The rate to start from: by logarithms where the surroundings are known, otherwise the best of several trials. */
    private double guess() {
        if (!model.fitsSurroundings()) {
            return LogLineGuess.of(times, differences()).rate();
        }
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TRIAL_RATES; i++) {
            double rate = SLOWEST * Math.pow(FASTEST / SLOWEST, i / (TRIAL_RATES - 1.0)) / readings.span();
            double ssr = SeparableFit.sumOfSquaresAt(this, temperatures, rate);
            if (ssr < least) {
                least = ssr;
                best = rate;
            }
        }
        return best;
    }

    /** The difference of each reading to the surroundings at its time. */
    private double[] differences() {
        double[] differences = new double[times.length];
        double origin = readings.first().seconds();
        for (int i = 0; i < times.length; i++) {
            differences[i] = temperatures[i] - model.around(origin + times[i]);
        }
        return differences;
    }

    void requireOneSide(Graduation mark) {
        double oneMark = mark.graduation().kelvins();
        double[] differences = differences();
        double above = 0;
        double below = 0;
        for (double difference : differences) {
            above = Math.max(above, difference);
            below = Math.max(below, -difference);
        }
        Scale scale = readings.scale();
        if (Math.max(above, below) <= oneMark) {
            throw InvalidInputException.of(Problem.ALREADY_AT_SURROUNDINGS, around(0, differences), scale.symbol());
        }
        if (Math.min(above, below) <= Math.max(oneMark, TWO_THERMOMETERS)) {
            return;
        }
        double slack = Math.max(oneMark, scatter(mark));
        // The first reading tells the right side: a jar starts at the temperature it was filled with.
        double side = Math.signum(differences[0]);
        for (int i = 1; i < differences.length; i++) {
            if (differences[i] * side < -slack) {
                Reading wrong = readings.all().get(i);
                throw InvalidInputException.atRow(
                        wrong.row(),
                        Problem.WRONG_SIDE,
                        wrong.temperature().in(scale),
                        around(i, differences),
                        scale.symbol());
            }
        }
    }

    /** If a jar has settled before its second reading, any fast rate fits. */
    void requireRate(SeparableFit fit) {
        if (fit.roundingError() * readings.span() > 1) {
            throw InvalidInputException.of(Problem.UNDETERMINED);
        }
    }

    // By chance readings may drift a little the wrong way; two standard errors are more than chance.
    void requireApproach(CoolingFit fit) {
        Scale scale = readings.scale();
        double rate = fit.constant().perSecond();
        if (rate < 0 && rate + 2 * fit.constantError().perSecond() < 0) {
            throw model.fitsSurroundings()
                    ? InvalidInputException.of(Problem.SURROUNDINGS_OUT_OF_REACH)
                    : InvalidInputException.atRow(
                            readings.first().row(),
                            Problem.MOVES_AWAY,
                            fit.surroundings().in(scale),
                            scale.symbol());
        }
        if (model.fitsSurroundings() && !(rate * readings.span() > STRAIGHT)) {
            throw InvalidInputException.of(Problem.SURROUNDINGS_OUT_OF_REACH);
        }
    }

    /** How far beyond the surroundings a reading may be by chance: three times the scatter of the readings about a fitted curve. */
    private double scatter(Graduation mark) {
        try {
            CoolingFit free = new FittedSurroundings().fit(readings, mark);
            double deviation = Math.sqrt(free.sumOfSquares() / free.degreesOfFreedom());
            return Math.min(Math.max(3 * deviation, TWO_THERMOMETERS), MOST_SCATTER);
        } catch (InvalidInputException refusal) {
            return TWO_THERMOMETERS;
        }
    }

    private double around(int i, double[] differences) {
        return new Temperature(temperatures[i] - differences[i]).in(readings.scale());
    }
}
