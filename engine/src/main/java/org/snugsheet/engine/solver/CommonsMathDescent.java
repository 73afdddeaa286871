package org.snugsheet.engine.solver;

import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.ConvergenceChecker;
import org.apache.commons.math3.util.Incrementor;
import org.jspecify.annotations.Nullable;

/**
 * The Levenberg–Marquardt method of Commons Math, which follows MINPACK: J. J. Moré, The Levenberg–Marquardt algorithm:
 * implementation and theory, Lecture Notes in Mathematics 630, Springer 1978, pp. 105–116.
 *
 * <p>This is the only class that names Commons Math. Only its way downhill is used: its error bars are not scaled by the
 * residual variance, and its reduced chi-square divides by n − p + 1.
 */
final class CommonsMathDescent implements Descent {

    /**
     * When to stop: relative change of the sum of squares, of the parameters, and the cosine between the residuals and
     * the slopes. Tighter than this, the optimiser reports rounding as failure; what is left to do, Polish does.
     */
    private static final double TOLERANCE = 1e-10;

    @Override
    public Point descend(Task task, Point start, double firstStride, int evaluations) {
        Problem problem = new Problem(task, start, evaluations);
        LevenbergMarquardtOptimizer optimizer =
                new LevenbergMarquardtOptimizer(firstStride, TOLERANCE, TOLERANCE, TOLERANCE, Double.MIN_NORMAL);
        try {
            optimizer.optimize(problem);
        } catch (MathIllegalStateException limitOrStall) {
            // The lowest point so far is kept in any case, and whether it will do is judged elsewhere.
        }
        return problem.lowest;
    }

    @SuppressWarnings("deprecation") // Commons Math still asks for its old counters here
    private static final class Problem implements LeastSquaresProblem {

        private final Task task;
        private final Point start;
        private final Incrementor evaluations;
        private final Incrementor iterations;
        private Point lowest;
        private boolean begun;

        Problem(Task task, Point start, int evaluations) {
            this.task = task;
            this.start = start;
            this.lowest = start;
            // One more, for the start: the optimiser asks for it again, but it is known.
            this.evaluations = new Incrementor(evaluations + 1);
            this.iterations = new Incrementor(evaluations + 1);
        }

        @Override
        public Evaluation evaluate(RealVector parameters) {
            if (!begun) {
                begun = true;
                return new Seen(start);
            }
            Point point = task.at(parameters.toArray());
            if (point.sumOfSquares() < lowest.sumOfSquares()) {
                lowest = point;
            }
            return new Seen(point);
        }

        @Override
        public RealVector getStart() {
            return new ArrayRealVector(start.parameters());
        }

        @Override
        public int getObservationSize() {
            return task.observations();
        }

        @Override
        public int getParameterSize() {
            return start.parameters().length;
        }

        @Override
        public Incrementor getEvaluationCounter() {
            return evaluations;
        }

        @Override
        public Incrementor getIterationCounter() {
            return iterations;
        }

        @Override
        public @Nullable ConvergenceChecker<Evaluation> getConvergenceChecker() {
            return null; // Commons Math’s word for: by the tolerances
        }
    }

    /** A point as Commons Math wants to see it; it copies whatever it changes. */
    private record Seen(Point point) implements LeastSquaresProblem.Evaluation {

        @Override
        public RealVector getPoint() {
            return new ArrayRealVector(point.parameters(), false);
        }

        @Override
        public RealVector getResiduals() {
            return new ArrayRealVector(point.residuals(), false);
        }

        @Override
        public RealMatrix getJacobian() {
            return new Array2DRowRealMatrix(point.slopes(), false);
        }

        @Override
        public double getCost() {
            return Math.sqrt(point.sumOfSquares());
        }

        @Override
        public double getRMS() {
            return getCost() / Math.sqrt(point.residuals().length);
        }

        @Override
        public RealMatrix getCovariances(double threshold) {
            throw new UnsupportedOperationException("see LeastSquaresFit");
        }

        @Override
        public RealVector getSigma(double threshold) {
            throw new UnsupportedOperationException("see LeastSquaresFit");
        }
    }
}
