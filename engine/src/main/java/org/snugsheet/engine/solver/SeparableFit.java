package org.snugsheet.engine.solver;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * Least squares for a {@link SeparableCurve}, by variable projection: for each k the best A and B follow exactly from linear
 * least squares, so that only k is searched for.
 *
 * <p>Each step is {@code δ = (d⊥·r)/(d⊥·d⊥)}, where r are the residuals at the best A and B and d⊥ is the slope
 * {@code A·∂φ/∂k + ∂g/∂k} with its part along φ (and the level) taken out. Sources: G. H. Golub and V. Pereyra, SIAM J.
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
     * @throws InvalidInputException if A, B and k cannot be told apart ({@link Problem#UNDETERMINED}), or the search does not settle
     *     ({@link Problem#NO_CONVERGENCE})
     */
    public static SeparableFit of(SeparableCurve curve, double[] observed, double guess) {
        double[] own = observed.clone();
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
                if (trial.isDetermined() && trial.sumOfSquares() <= at.sumOfSquares()) {
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

    private static boolean isWorthwhile(double stride, Projection at) {
        return !(Math.abs(stride) <= ENOUGH * Math.abs(at.rate()));
    }

    /**
     * The parameter that bends the curve.
     *
     * @return k
     */
    public double rate() {
        return best.rate();
    }

    /**
     * The size of the shape.
     *
     * @return A
     */
    public double amplitude() {
        return best.amplitude();
    }

    /**
     * The level.
     *
     * @return B; zero if the curve has none
     */
    public double level() {
        return best.level();
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
     * The smallest sum of squares that any A and B reach with another k: the profile of the sum of squares.
     *
     * @param rate k
     * @return SSR(k); infinite where the curve is not defined
     */
    public double sumOfSquaresAt(double rate) {
        return sumOfSquaresAt(curve, observed, rate);
    }

    /**
     * The smallest sum of squares that any A and B reach with a given k.
     *
     * @param curve the family of curves
     * @param observed y, one number for each observation
     * @param rate k
     * @return SSR(k); infinite where the curve is not defined
     */
    public static double sumOfSquaresAt(SeparableCurve curve, double[] observed, double rate) {
        Projection there = new Projection(curve, observed, rate);
        return there.isDefined() ? there.sumOfSquares() : Double.POSITIVE_INFINITY;
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
     * {@code (JᵀJ)⁻¹}, to be multiplied by a variance.
     *
     * @return rows and columns in the order A, k and, if the level is free, B
     */
    public double[][] unscaledCovariance() {
        return best.unscaledCovariance();
    }

    /**
     * How far each parameter moves with each observation, to first order: {@code (JᵀJ)⁻¹·Jᵀ}.
     *
     * @return one row for each parameter, in the order A, k and, if the level is free, B
     */
    public double[][] influence() {
        return best.influence();
    }

    /**
     * Directions at right angles to each other, each of length 1, that span what A, k and B can change to first order.
     *
     * @return one direction for each parameter
     */
    public double[][] basis() {
        return best.basis();
    }

    /**
     * How much each observation pulls the curve towards itself: the diagonal of {@code J·(JᵀJ)⁻¹·Jᵀ}.
     *
     * @return one leverage between 0 and 1 for each observation
     */
    public double[] leverages() {
        return best.leverages();
    }
}
