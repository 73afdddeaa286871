package org.snugsheet.engine.slips;

import java.util.stream.IntStream;
import org.snugsheet.engine.solver.LinearFit;
import org.snugsheet.engine.solver.SeparableCurve;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * A law at the trusted readings of a sample, in the form the solver needs: an amplitude for each part of the column, and the
 * second shape if the law has one.
 *
 * <p>Where the surroundings are known, the level is drawn toward zero, as if it had been measured as zero within what two
 * thermometers differ by: one more observation (A. E. Hoerl and R. W. Kennard, Technometrics 12 (1970), 55–67).
 */
final class LawCurve implements SeparableCurve {

    /** How far the surroundings may be off, in kelvins: two thermometers and a draft (common practice, no source). */
    private static final double SURROUNDINGS_OFF = 1.5;

    private final LawGrid grid;
    private final Sample sample;
    private final Law law;
    private final int[] rows;
    private final boolean hasPrior;
    private final double[] observed;

    LawCurve(LawGrid grid, boolean[] trusted) {
        this.grid = grid;
        this.sample = grid.sample();
        this.law = grid.law();
        this.rows = IntStream.range(0, trusted.length).filter(i -> trusted[i]).toArray();
        this.hasPrior = law == Law.LEVEL && sample.known;
        this.observed = new double[observations()];
        for (int r = 0; r < rows.length; r++) {
            observed[r] = sample.celsius[rows[r]];
        }
    }

    @Override
    public int observations() {
        return rows.length + (hasPrior ? 1 : 0);
    }

    @Override
    public int columns() {
        return sample.parts + law.shapes() - 1;
    }

    @Override
    public void evaluate(double rate, double[][] columns, double[][] slopes, double[] offset, double[] offsetSlope) {
        LawValues values = grid.at(rate);
        fill(values, columns, offset);
        int last = columns.length - 1;
        for (int r = 0; r < rows.length; r++) {
            int i = rows[r];
            offsetSlope[r] = values.offsetSlope()[i];
            slopes[sample.part[i]][r] = law.firstSlope(sample, rate, values, i);
            if (law.shapes() > 1) {
                slopes[last][r] = law.secondSlope(sample, values, i);
            }
        }
    }

    @Override
    public void evaluate(double rate, double[][] columns, double[] offset) {
        fill(grid.at(rate), columns, offset);
    }

    private void fill(LawValues values, double[][] columns, double[] offset) {
        int last = columns.length - 1;
        for (int r = 0; r < rows.length; r++) {
            int i = rows[r];
            offset[r] = values.offset()[i];
            columns[sample.part[i]][r] = values.first()[i];
            if (law.shapes() > 1) {
                columns[last][r] = values.second()[i];
            }
        }
        if (hasPrior) {
            columns[last][rows.length] = Math.sqrt(sample.expected()) / SURROUNDINGS_OFF;
        }
    }

    LinearFit linearAt(double rate) {
        return LinearFit.at(this, observed, rate);
    }

    SeparableFit at(double rate) {
        return SeparableFit.at(this, observed, rate);
    }

    /** The row that a reading has, trusted or not, in the columns of this curve. */
    double[] row(LawValues values, int i) {
        double[] row = new double[columns()];
        row[sample.part[i]] = values.first()[i];
        if (law.shapes() > 1) {
            row[row.length - 1] = values.second()[i];
        }
        return row;
    }

    /** The slope by the rate that the fitted curve has at a reading, trusted or not. */
    double slope(LawValues values, SeparableFit fit, int i) {
        double slope = values.offsetSlope()[i]
                + fit.coefficient(sample.part[i]) * law.firstSlope(sample, fit.rate(), values, i);
        return law.shapes() > 1 ? slope + fit.coefficient(columns() - 1) * law.secondSlope(sample, values, i) : slope;
    }

    /** The fitted temperature at a reading, trusted or not, in °C. */
    double fitted(LawValues values, SeparableFit fit, int i) {
        double fitted = values.offset()[i] + fit.coefficient(sample.part[i]) * values.first()[i];
        return law.shapes() > 1 ? fitted + fit.coefficient(columns() - 1) * values.second()[i] : fitted;
    }
}
