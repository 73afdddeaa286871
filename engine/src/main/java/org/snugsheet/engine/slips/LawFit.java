package org.snugsheet.engine.slips;

import org.snugsheet.engine.solver.LinearFit;
import org.snugsheet.engine.solver.Minimum;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * A law fitted by least squares to the trusted readings of a sample. The rate is searched between bounds, starting from the
 * best of a grid of trial rates; at each rate the other parameters follow exactly.
 */
final class LawFit {

    /** A wrap takes up some of the heat at first, not most of it: at most this share of the rest (common practice, no source). */
    private static final double MOST_IN_FIRST_STAGE = 0.5;

    private final Sample sample;
    private final Law law;
    private final LawCurve curve;
    private final double sumOfSquares;
    private final SeparableFit fit;
    private final LawValues values;

    private LawFit(LawGrid grid, LawCurve curve, Minimum best) {
        this.sample = grid.sample();
        this.law = grid.law();
        this.curve = curve;
        this.sumOfSquares = best.value();
        double rate = Math.exp(best.at());
        this.fit = curve.at(rate);
        this.values = grid.at(rate);
    }

    /** The best fit over all rates. */
    static LawFit of(LawGrid grid, boolean[] trusted) {
        LawCurve curve = new LawCurve(grid, trusted);
        Minimum best = new Minimum(LawGrid.slowest(grid.sample()), Double.POSITIVE_INFINITY);
        for (double logRate : grid.logRates()) {
            double squares = squaresAt(grid, curve, logRate);
            if (squares < best.value()) {
                best = new Minimum(logRate, squares);
            }
        }
        if (Double.isFinite(best.value())) {
            double width = LawGrid.width();
            best = Minimum.of(
                    logRate -> squaresAt(grid, curve, logRate), best.at() - width, best.at(), best.at() + width);
        }
        return new LawFit(grid, curve, best);
    }

    /** The sum of squares at a rate; infinite where the law makes no sense. */
    private static double squaresAt(LawGrid grid, LawCurve curve, double logRate) {
        double rate = Math.exp(logRate);
        if (LawGrid.isTooFast(grid.sample(), grid.law(), rate)) {
            return Double.POSITIVE_INFINITY;
        }
        LinearFit there = curve.linearAt(rate);
        if (grid.law().hasTwoStages()
                && !isShareOfFirstStage(there.coefficient(curve.columns() - 1) / there.coefficient(0))) {
            return Double.POSITIVE_INFINITY;
        }
        return there.isDefined() ? there.sumOfSquares() : Double.POSITIVE_INFINITY;
    }

    private static boolean isShareOfFirstStage(double toSecond) {
        return toSecond >= 0 && toSecond <= MOST_IN_FIRST_STAGE;
    }

    Law law() {
        return law;
    }

    /** k per minute. */
    double rate() {
        return fit.rate();
    }

    double sumOfSquares() {
        return sumOfSquares;
    }

    /** The free parameters: an amplitude for each part, the law’s second shape, the rate. */
    int parameters() {
        return curve.columns() + 1;
    }

    /** The fitted temperature at a reading in °C. */
    double fitted(int i) {
        return curve.fitted(values, fit, i);
    }

    double residual(int i) {
        return sample.celsius[i] - fitted(i);
    }

    /** How far the jar was from its surroundings at the first reading, with its sign. */
    double difference() {
        return fitted(0) - values.offset()[0];
    }

    /** How much of each reading’s variance the curve itself has: {@code xᵢᵀ(JᵀJ)⁻¹xᵢ}, also for readings not trusted. */
    double[] leverages() {
        double[] leverages = new double[sample.size()];
        for (int i = 0; i < leverages.length; i++) {
            // Where the readings tell nothing of the rate, the curve is as free as its parameters on average.
            leverages[i] = fit.isDetermined()
                    ? fit.leverageOf(curve.row(values, i), curve.slope(values, fit, i))
                    : parameters() / (double) leverages.length;
        }
        return leverages;
    }
}
