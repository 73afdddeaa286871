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

    /** A wrap takes up some of the heat at first, not most of it: at most this share of the rest (common practice, no source). */
    private static final double MOST_IN_FIRST_STAGE = 0.5;

    private final LawGrid grid;
    private final Sample sample;
    private final Law law;
    private final int[] rows;
    private final boolean hasPrior;
    private final double[] observed;
    private final double[] residuals;
    private final double[] turned;

    LawCurve(LawGrid grid, boolean[] trusted) {
        this.grid = grid;
        this.sample = grid.sample();
        this.law = grid.law();
        this.rows = IntStream.range(0, trusted.length).filter(i -> trusted[i]).toArray();
        this.hasPrior = law == Law.LEVEL && sample.known;
        this.observed = new double[observations()];
        this.residuals = new double[observed.length];
        this.turned = new double[observed.length];
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
            columns[last][rows.length] = priorWeight();
        }
    }

    /** The sum of squares at a rate; infinite where the law makes no sense. */
    double squaresAt(double rate) {
        if (LawGrid.isTooFast(sample, law, rate)) {
            return Double.POSITIVE_INFINITY;
        }
        if (sample.parts == 1) {
            return squaresOfOnePart(grid.at(rate));
        }
        LinearFit there = LinearFit.at(this, observed, rate);
        return usable(there.sumOfSquares(), there.coefficient(0), there.coefficient(columns() - 1));
    }

    /** The same as by {@link LinearFit}, step by step, but in arrays that are there already: nothing of a search is asked as often. */
    private double squaresOfOnePart(LawValues values) {
        double[] first = values.first();
        double[] offset = values.offset();
        double squared = 0;
        double product = 0;
        for (int r = 0; r < rows.length; r++) {
            double shape = first[rows[r]];
            residuals[r] = observed[r] - offset[rows[r]];
            squared += shape * shape;
            product += shape * residuals[r];
        }
        double share = product / squared;
        for (int r = 0; r < rows.length; r++) {
            residuals[r] -= share * first[rows[r]];
        }
        if (law.shapes() == 1) {
            return usable(sumOfSquares(rows.length), share, share);
        }
        double[] second = values.second();
        double both = 0;
        for (int i : rows) {
            both += first[i] * second[i];
        }
        double along = both / squared;
        double turnedSquared = 0;
        double turnedProduct = 0;
        for (int r = 0; r < rows.length; r++) {
            turned[r] = second[rows[r]] - along * first[rows[r]];
            turnedSquared += turned[r] * turned[r];
            turnedProduct += turned[r] * residuals[r];
        }
        if (hasPrior) {
            turned[rows.length] = priorWeight();
            residuals[rows.length] = 0;
            turnedSquared += turned[rows.length] * turned[rows.length];
        }
        double turnedShare = turnedProduct / turnedSquared;
        for (int r = 0; r < observed.length; r++) {
            residuals[r] -= turnedShare * turned[r];
        }
        return usable(sumOfSquares(observed.length), share - along * turnedShare, turnedShare);
    }

    private double sumOfSquares(int count) {
        double sum = 0;
        for (int r = 0; r < count; r++) {
            sum += residuals[r] * residuals[r];
        }
        return sum;
    }

    private double usable(double squares, double first, double last) {
        double toSecond = last / first;
        boolean isSensible = !law.hasTwoStages() || (toSecond >= 0 && toSecond <= MOST_IN_FIRST_STAGE);
        return isSensible && Double.isFinite(squares) ? squares : Double.POSITIVE_INFINITY;
    }

    private double priorWeight() {
        return Math.sqrt(sample.expected()) / SURROUNDINGS_OFF;
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
