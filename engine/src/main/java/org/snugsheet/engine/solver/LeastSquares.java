package org.snugsheet.engine.solver;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;

/**
 * Finds the curve of a family that lies nearest to some observations: the parameters b that make
 *
 * <pre>  S(b) = Σ wᵢ·(yᵢ − fᵢ(b))²</pre>
 *
 * <p>smallest, starting from a guess. The weights w are 1 unless given. It is a search, so it finds the lowest point of
 * the valley that the guess lies in: a sensible guess is the caller’s part.
 *
 * <p>The way: Levenberg–Marquardt steps downhill, then Gauss–Newton steps to the last digits; if that does not end at a
 * least-squares point, once more from the same guess with shorter first steps. See G. A. F. Seber and C. J. Wild,
 * Nonlinear Regression, Wiley 1989, chapters 2 and 14.
 *
 * <p>A value of this class is immutable and may be used by many threads at once. The number of times a curve is asked is
 * always limited.
 *
 * <pre>{@code
 * LeastSquaresFit fit = LeastSquares.fit(jar, temperatures, new double[] {60, 0.01});
 * double rate = fit.parameter(1);
 * double itsError = fit.standardErrors()[1];
 * }</pre>
 */
public final class LeastSquares {

    private static final int DEFAULT_EVALUATIONS = 4000;

    /** The usual 100 first; a first step that lands on a far plateau is taken shorter the next time. */
    private static final double[] FIRST_STRIDES = {100, 1, 0.1};

    private static final LeastSquares STANDARD = new LeastSquares(DEFAULT_EVALUATIONS, new double[0]);

    private final int maxEvaluations;
    private final double[] rootWeights;
    private final Descent descent = new CommonsMathDescent();

    private LeastSquares(int maxEvaluations, double[] rootWeights) {
        this.maxEvaluations = maxEvaluations;
        this.rootWeights = rootWeights;
    }

    /**
     * The nearest curve, every observation counting the same.
     *
     * @param curve the family of curves
     * @param observed y, one number for each observation; in the unit of the curve’s values
     * @param start the guess at b
     * @return the fit
     * @throws InvalidInputException as {@link #solve} does
     */
    public static LeastSquaresFit fit(Curve curve, double[] observed, double[] start) {
        return STANDARD.solve(curve, observed, start);
    }

    /**
     * The usual settings: equal weights, and at most 4000 looks at the curve.
     *
     * @return the settings, to be changed by the {@code with…} methods
     */
    public static LeastSquares standard() {
        return STANDARD;
    }

    /**
     * These settings with another limit.
     *
     * @param limit how often the curve may be asked for its values and slopes, at least once
     * @return the new settings
     */
    public LeastSquares withMaxEvaluations(int limit) {
        if (limit < 1) {
            throw new IllegalArgumentException("limit: " + limit);
        }
        return new LeastSquares(limit, rootWeights);
    }

    /**
     * These settings with weights. An observation of weight 2 counts as much as two of weight 1; with weights 1/σᵢ² the
     * sum of squares is the χ² of observations whose standard deviations σᵢ are known.
     *
     * @param weights w, one for each observation, all more than zero; copied
     * @return the new settings
     * @throws InvalidInputException if a weight is not a number more than zero
     */
    public LeastSquares withWeights(double[] weights) {
        if (weights.length == 0) {
            throw new IllegalArgumentException("no weights");
        }
        double[] roots = new double[weights.length];
        for (int i = 0; i < roots.length; i++) {
            if (!(finite(weights[i]) > 0)) {
                throw InvalidInputException.of(Problem.NOT_POSITIVE, QuantityName.WEIGHT, weights[i]);
            }
            roots[i] = Math.sqrt(weights[i]);
        }
        return new LeastSquares(maxEvaluations, roots);
    }

    /**
     * The nearest curve, by these settings.
     *
     * @param curve the family of curves
     * @param observed y, one number for each observation; in the unit of the curve’s values
     * @param start the guess at b, one number for each parameter; a parameter that rounding alone could move by more than
     *     its guess, if that is not zero, counts as one that cannot be told
     * @return the fit
     * @throws InvalidInputException if an observation is not a number; if there are not more observations than parameters; if the
     *     parameters cannot be told apart ({@link Problem#UNDETERMINED}); or if no least-squares point is found within
     *     the limit, or the curve is not finite at the guess ({@link Problem#NO_CONVERGENCE})
     */
    public LeastSquaresFit solve(Curve curve, double[] observed, double[] start) {
        double[] y = observed.clone();
        double[] guess = start.clone();
        check(y, guess);
        Task task = new Task(curve, y, rootWeights, maxEvaluations);
        Polish.Outcome outcome = search(task, guess);
        if (!outcome.isSettled()) {
            throw InvalidInputException.of(outcome.isSingular() ? Problem.UNDETERMINED : Problem.NO_CONVERGENCE);
        }
        double[][] inverse = outcome.inverseOfNormalMatrix();
        for (int j = 0; j < guess.length; j++) {
            // Readings that never fall fit a fall of 1e-16 at any rate. The guess tells what would be a usual size.
            if (guess[j] != 0 && task.rounding() * Math.sqrt(inverse[j][j]) > Math.abs(guess[j])) {
                throw InvalidInputException.of(Problem.UNDETERMINED);
            }
        }
        return new LeastSquaresFit(
                outcome.point().parameters(),
                unweighted(outcome.point().residuals()),
                outcome.point().sumOfSquares(),
                inverse,
                task.evaluations());
    }

    private void check(double[] observed, double[] start) {
        if (start.length == 0) {
            throw new IllegalArgumentException("a curve without parameters");
        }
        if (rootWeights.length > 0 && rootWeights.length != observed.length) {
            throw new IllegalArgumentException(rootWeights.length + " weights, " + observed.length + " observations");
        }
        if (observed.length <= start.length) {
            throw InvalidInputException.of(Problem.TOO_FEW_READINGS, start.length + 1, observed.length);
        }
        for (double y : observed) {
            finite(y);
        }
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(value));
        }
        return value;
    }

    /** The first settled outcome, or else the lowest of all tries. */
    private Polish.Outcome search(Task task, double[] start) {
        Point first = task.at(start);
        if (!first.isFinite()) {
            throw InvalidInputException.of(Problem.NO_CONVERGENCE);
        }
        Polish.Outcome best = attempt(task, first, 0);
        for (int i = 1; i < FIRST_STRIDES.length && !best.isSettled(); i++) {
            Polish.Outcome next = attempt(task, first, i);
            if (next.isSettled() || next.point().sumOfSquares() < best.point().sumOfSquares()) {
                best = next;
            }
        }
        return best;
    }

    private Polish.Outcome attempt(Task task, Point first, int number) {
        // A try that wanders off must leave the later ones their share.
        int share = task.evaluationsLeft() / (FIRST_STRIDES.length - number);
        int end = task.evaluationsLeft() - share;
        Point low = descent.descend(task, first, FIRST_STRIDES[number], share);
        return Polish.from(task, low, task.evaluationsLeft() - end);
    }

    private double[] unweighted(double[] residuals) {
        double[] plain = residuals.clone();
        for (int i = 0; i < rootWeights.length; i++) {
            plain[i] /= rootWeights[i];
        }
        return plain;
    }
}
