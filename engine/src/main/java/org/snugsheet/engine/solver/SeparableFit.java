package org.snugsheet.engine.solver;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * Least squares for a {@link SeparableCurve}, by variable projection: for each k the best A follow exactly from linear
 * least squares, so that only k is searched for.
 *
 * <p>Each step is {@code δ = (d⊥·r)/(d⊥·d⊥)}, where r are the residuals at the best A and d⊥ is the slope
 * {@code ∂g/∂k + Σ A·∂φ/∂k} with its part along the columns φ taken out. Sources: G. H. Golub and V. Pereyra, SIAM J.
 * Numer. Anal. 10, 413–432 (1973); L. Kaufman, BIT 15, 49–57 (1975), for the step. At the minimum {@code 1/(d⊥·d⊥)} is the
 * entry of k in {@code (JᵀJ)⁻¹}, the same as for a search in all parameters together.
 */
public final class SeparableFit {

    private static final int MAX_STEPS = 200;
    private static final int MAX_HALVINGS = 40;
    private static final double ENOUGH = 1e-13;

    private final SeparableCurve curve;
    private final double[] observed;
    private final Projection best;

    private SeparableFit(SeparableCurve curve, double[] observed, Projection best) {
        this.curve = curve;
        this.observed = observed;
        this.best = best;
    }

    /**
     * The nearest curve.
     *
     * @param curve the family of curves
     * @param observed y, one number for each observation
     * @param guess where to begin with k
     * @return the fit
     * @throws InvalidInputException if the parameters are not determined ({@link Problem#UNDETERMINED}), or the search does
     *     not settle ({@link Problem#NO_CONVERGENCE})
     */
    public static SeparableFit of(SeparableCurve curve, double[] observed, double guess) {
        double[] own = observed.clone();
        double rounding = rounding(own);
        Projection at = new Projection(curve, own, guess);
        if (!at.isDetermined()) {
            throw InvalidInputException.of(Problem.UNDETERMINED);
        }
        for (int step = 0; step < MAX_STEPS; step++) {
            Projection next = at;
            double stride = at.step();
            // A step too short to matter is not taken: the nearest curve is here.
            for (int halving = 0; halving < MAX_HALVINGS && isWorthwhile(stride, at); halving++) {
                Projection trial = new Projection(curve, own, at.rate() + stride);
                if (trial.isDetermined() && isNearer(trial, at, rounding)) {
                    next = trial;
                    break;
                }
                stride /= 2;
            }
            // Where no shorter step helps any more, rounding hides the rest of the way.
            if (next == at) {
                return new SeparableFit(curve, own, next);
            }
            at = next;
        }
        throw InvalidInputException.of(Problem.NO_CONVERGENCE);
    }

    /** Near its minimum a sum of squares is flat and its changes are rounding. The step itself passes through zero there. */
    private static boolean isNearer(Projection trial, Projection at, double rounding) {
        double change = trial.sumOfSquares() - at.sumOfSquares();
        return Math.abs(change) <= rounding * (Math.sqrt(at.sumOfSquares()) + rounding)
                ? Math.abs(trial.step()) < Math.abs(at.step()) / 2
                : change < 0;
    }

    /** What rounding may leave of the residuals: a few units in the last place of the observations. */
    private static double rounding(double[] observed) {
        double sum = 0;
        for (double one : observed) {
            sum += one * one;
        }
        return 4 * Math.ulp(Math.sqrt(sum));
    }

    private static boolean isWorthwhile(double stride, Projection at) {
        return !(Math.abs(stride) <= ENOUGH * Math.abs(at.rate()));
    }

    /**
     * The nonlinear parameter.
     *
     * @return k
     */
    public double rate() {
        return best.rate();
    }

    /**
     * A parameter that enters linearly.
     *
     * @param column the number of its column, from 0
     * @return A
     */
    public double coefficient(int column) {
        return best.coefficient(column);
    }

    /**
     * The sum of the squared residuals.
     *
     * @return SSR
     */
    public double sumOfSquares() {
        return best.sumOfSquares();
    }

    /**
     * The smallest sum of squares that any A reach with another k: the profile of the sum of squares.
     *
     * @param rate k
     * @return SSR(k); infinite where the curve is not defined
     */
    public double sumOfSquaresAt(double rate) {
        return sumOfSquaresAt(curve, observed, rate);
    }

    /**
     * The nearest curve with a given k.
     *
     * @param curve the family of curves
     * @param observed y, one number for each observation
     * @param rate k
     * @return the fit, which need not be {@linkplain #isDefined() defined} nor {@linkplain #isDetermined() determined}
     */
    public static SeparableFit at(SeparableCurve curve, double[] observed, double rate) {
        return new SeparableFit(curve, observed, new Projection(curve, observed, rate));
    }

    /**
     * The smallest sum of squares that any A reach with a given k.
     *
     * @param curve the family of curves
     * @param observed y, one number for each observation
     * @param rate k
     * @return SSR(k); infinite where the curve is not defined
     */
    public static double sumOfSquaresAt(SeparableCurve curve, double[] observed, double rate) {
        LinearFit there = LinearFit.at(curve, observed, rate);
        return there.isDefined() ? there.sumOfSquares() : Double.POSITIVE_INFINITY;
    }

    /**
     * Whether the curve is defined here and its columns can be told apart.
     *
     * @return false if the sum of squares is not a finite number
     */
    public boolean isDefined() {
        return best.isDefined();
    }

    /**
     * Whether the observations determine k as well.
     *
     * @return false if the slope by k vanishes beside the columns
     */
    public boolean isDetermined() {
        return best.isDetermined();
    }

    /**
     * Observed minus fitted.
     *
     * @return one residual for each observation
     */
    public double[] residuals() {
        return best.residuals();
    }

    /**
     * How far each parameter moves with each observation, to first order: {@code (JᵀJ)⁻¹·Jᵀ}.
     *
     * @return one row for each parameter, in the order of the columns, then k
     */
    public double[][] influence() {
        return best.influence();
    }

    /**
     * Orthonormal directions that span what the parameters can change to first order.
     *
     * @return one direction for each parameter
     */
    public double[][] basis() {
        return best.basis();
    }

    /**
     * The leverage of each observation: the diagonal of {@code J·(JᵀJ)⁻¹·Jᵀ}.
     *
     * @return one leverage between 0 and 1 for each observation
     */
    public double[] leverages() {
        return best.leverages();
    }

    /**
     * How much the curve varies at a place where nothing was observed: {@code xᵀ·(JᵀJ)⁻¹·x}, to be multiplied by a variance.
     *
     * @param columns φ there
     * @param slope the slope of the fitted curve by k there
     * @return the factor
     */
    public double leverageOf(double[] columns, double slope) {
        return best.leverageOf(columns, slope);
    }

    /**
     * How far rounding in the last place of the observations may move k.
     *
     * @return the error of k, which is far below any standard error unless the observations do not determine k
     */
    public double roundingError() {
        return rounding(observed) / best.lengthAcross();
    }
}
