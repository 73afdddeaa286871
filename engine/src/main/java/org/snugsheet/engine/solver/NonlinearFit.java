package org.snugsheet.engine.solver;

import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem.Evaluation;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/**
 * Least squares for curves in which several parameters are nonlinear, by Commons Math: the Levenberg–Marquardt method of MINPACK (J. J.
 * Moré, Lecture Notes in Mathematics 630, Springer 1978, pp. 105–116), then Gauss–Newton steps to the last digits.
 *
 * <p>A sum of squares is flat at its minimum: where its values can no longer be told apart in double precision, the parameters may
 * still be off in the eighth digit. So the last steps are judged by the relative offset of D. M. Bates and D. G. Watts (Technometrics 23
 * (1981), pp. 179–183), {@code (‖Qᵀr‖/√p) / (‖r − QQᵀr‖/√(n − p))}: how far the minimum is, as a share of the standard errors.
 *
 * @param at where the search ended: the parameters, residuals and slopes
 */
public record NonlinearFit(Evaluation at) {

    /** How far the first step may go; one that lands on a distant plateau is tried again, shorter. */
    private static final double[] FIRST_STEPS = {100, 1, 0.1};

    /** When the search may stop. With less, the optimizer reports rounding as failure. */
    private static final double TOLERANCE = 1e-10;

    /** A hundred-billionth of a standard error: nothing is gained beyond it. */
    private static final double NEAR_ENOUGH = 1e-11;

    /** A point farther off than a millionth of a standard error is no minimum. */
    private static final double ACCEPTABLE = 1e-6;

    /** An eighth of a step that still leads away means that only rounding is left. */
    private static final double SHORTEST = 0.1;

    /** A curve at one observation. */
    @FunctionalInterface
    public interface Formula {

        /**
         * The value, and its slopes.
         *
         * @param observation which observation, from 0
         * @param parameters b, to be read only
         * @param slopes to be filled: ∂f/∂b
         * @return f
         */
        double at(int observation, double[] parameters, double[] slopes);
    }

    /**
     * The nearest curve.
     *
     * @param formula the curve
     * @param observed y, one number for each observation, more than there are parameters
     * @param start where to begin
     * @param looks how often each search may ask for the whole curve
     * @return the fit; empty if no search ends at a minimum that fixes every parameter
     */
    public static Optional<NonlinearFit> of(Formula formula, double[] observed, double[] start, int looks) {
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .model(point -> curve(formula, observed.length, point))
                .target(observed)
                .start(start)
                .maxEvaluations(looks)
                .maxIterations(looks)
                .build();
        double rounding = 4 * observed.length * Math.ulp(new ArrayRealVector(observed, false).getNorm());
        for (double firstStep : FIRST_STEPS) {
            try {
                Evaluation found = new LevenbergMarquardtOptimizer(
                                firstStep, TOLERANCE, TOLERANCE, TOLERANCE, Double.MIN_NORMAL)
                        .optimize(problem);
                Optional<NonlinearFit> minimum = minimum(problem, found, rounding);
                if (minimum.isPresent()) {
                    return minimum;
                }
            } catch (MathIllegalStateException | SingularMatrixException leadsNowhere) {
                // The next search begins with a shorter step.
            }
        }
        return Optional.empty();
    }

    private static Pair<RealVector, RealMatrix> curve(Formula formula, int observations, RealVector point) {
        double[] parameters = point.toArray();
        double[] values = new double[observations];
        double[][] slopes = new double[observations][parameters.length];
        for (int i = 0; i < observations; i++) {
            values[i] = formula.at(i, parameters, slopes[i]);
        }
        return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
    }

    /** The minimum near a point; empty if the residuals have more left along the slopes than rounding, or the slopes depend on each other. */
    private static Optional<NonlinearFit> minimum(LeastSquaresProblem problem, Evaluation start, double rounding) {
        Evaluation best = start;
        Distance left = Distance.from(best);
        double share = 1;
        while (left.offset() > NEAR_ENOUGH && share > SHORTEST) {
            RealVector point = best.getPoint().add(left.step().mapMultiply(share));
            Evaluation next = problem.evaluate(point);
            Distance leftThen = Distance.from(next);
            if (leftThen.offset() < left.offset()) {
                best = next;
                left = leftThen;
            } else {
                // Where the curve bends much, a whole step overshoots each time; half a step does not.
                share /= 2;
            }
        }
        boolean isThere = left.offset() <= ACCEPTABLE || left.along() <= rounding;
        return isThere && isDetermined(best.getJacobian()) ? Optional.of(new NonlinearFit(best)) : Optional.empty();
    }

    /**
     * How far the minimum is from a point.
     *
     * @param step the way there if the curve did not bend
     * @param along the length of the residuals’ part along the slopes, ‖Qᵀr‖, which a minimum does not have
     * @param offset the relative offset
     */
    private record Distance(RealVector step, double along, double offset) {

        static Distance from(Evaluation at) {
            RealMatrix slopes = at.getJacobian();
            RealVector residuals = at.getResiduals();
            RealVector step = new QRDecomposition(slopes).getSolver().solve(residuals);
            RealVector along = slopes.operate(step);
            int p = step.getDimension();
            double length = along.getNorm();
            double across = residuals.subtract(along).getNorm();
            double offset = length == 0 ? 0 : length / across * Math.sqrt((residuals.getDimension() - p) / (double) p);
            return new Distance(step, length, offset);
        }
    }

    private static boolean isDetermined(RealMatrix slopes) {
        RealMatrix triangle = new QRDecomposition(slopes).getR();
        double least = slopes.getRowDimension() * Math.ulp(1.0);
        for (int j = 0; j < slopes.getColumnDimension(); j++) {
            if (!(Math.abs(triangle.getEntry(j, j))
                    > least * slopes.getColumnVector(j).getNorm())) {
                return false;
            }
        }
        return true;
    }

    /**
     * A parameter.
     *
     * @param index which one, from 0
     * @return b
     */
    public double parameter(int index) {
        return at.getPoint().getEntry(index);
    }

    /**
     * The sum of the squared residuals.
     *
     * @return SSR
     */
    public double sumOfSquares() {
        return at.getCost() * at.getCost();
    }
}
