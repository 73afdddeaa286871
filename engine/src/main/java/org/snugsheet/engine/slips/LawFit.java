package org.snugsheet.engine.slips;

import org.snugsheet.engine.solver.Minimum;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * A law fitted by least squares to the trusted readings of a sample. The rate is searched between bounds, starting from the
 * best of a grid of trial rates; at each rate the other parameters follow exactly.
 */
final class LawFit {

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
            double squares = curve.squaresAt(Math.exp(logRate));
            if (squares < best.value()) {
                best = new Minimum(logRate, squares);
            }
        }
        if (Double.isFinite(best.value())) {
            double width = LawGrid.width();
            best = Minimum.of(
                    logRate -> curve.squaresAt(Math.exp(logRate)), best.at() - width, best.at(), best.at() + width);
        }
        return new LawFit(grid, curve, best);
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
