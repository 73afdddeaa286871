package org.snugsheet.engine.solver;

/**
 * The last stretch to a least-squares point, by Gauss–Newton steps.
 *
 * <p>A sum of squares is flat at its lowest point: where its values can no longer be told apart in double precision, the
 * parameters may still be off in the eighth digit. The projection of the residuals on the slopes, Qᵀr, is not flat there
 * but passes through zero, so steps judged by it reach further.
 *
 * <p>The measure is the relative offset of D. M. Bates and D. G. Watts, A relative offset orthogonality convergence
 * criterion for nonlinear least squares, Technometrics 23 (1981), pp. 179–183:
 *
 * <pre>  offset = (‖Qᵀr‖/√p) / (‖r − QQᵀr‖/√(n − p))</pre>
 *
 * <p>It tells how far the least-squares point still is, as a share of the standard errors. It has no unit and does not
 * depend on how the parameters are written.
 */
final class Polish {

    /** Nearer than this nothing is gained: a hundred-billionth of a standard error. */
    private static final double NEAR_ENOUGH = 1e-11;

    /** A point further off than this, a millionth of a standard error, is not called a least-squares point. */
    private static final double ACCEPTABLE = 1e-6;

    /** An eighth of a step that still leads away means that only rounding is left. */
    private static final int MOST_HALVINGS = 3;

    private Polish() {}

    /**
     * Steps on from a point as long as that brings it nearer.
     *
     * @param task what to fit
     * @param start a point where the curve is finite
     * @param evaluations how often the curve may be asked
     * @return the nearest point seen
     */
    static Outcome from(Task task, Point start, int evaluations) {
        Outcome best = new Outcome(task, start);
        int halvings = 0;
        for (int i = 0; i < evaluations && halvings <= MOST_HALVINGS && best.canGetNearer(); i++) {
            Point point = task.at(best.stepped(halvings));
            Outcome next = point.isFinite() ? new Outcome(task, point) : best;
            if (next.offset < best.offset) {
                best = next;
            } else {
                // Where the curve bends much a whole step overshoots each time; half a step then does not.
                halvings++;
            }
        }
        return best;
    }

    /** A point, and how near the least-squares point it is. */
    static final class Outcome {

        private final Point point;
        private final ScaledQr decomposition;
        private final double[] projection;
        private final double offset;
        private final boolean settled;

        private Outcome(Task task, Point point) {
            this.point = point;
            this.decomposition = ScaledQr.of(point.slopes());
            this.projection = decomposition.project(point.residuals());
            double reachable = 0;
            for (double x : projection) {
                reachable += x * x;
            }
            int p = projection.length;
            int n = point.residuals().length;
            double beyond = Math.max(0, point.sumOfSquares() - reachable);
            this.offset = reachable == 0 ? 0 : Math.sqrt(reachable / p / (beyond / (n - p)));
            // Observations that lie on a curve leave residuals of pure rounding, whose direction tells nothing.
            this.settled = !isSingular() && (offset <= ACCEPTABLE || Math.sqrt(reachable) <= task.rounding());
        }

        Point point() {
            return point;
        }

        /** Whether this is a least-squares point, and the only one nearby. */
        boolean isSettled() {
            return settled;
        }

        boolean isSingular() {
            return decomposition.isSingular();
        }

        /** (JᵀJ)⁻¹, with the weights in J. */
        double[][] inverseOfNormalMatrix() {
            return decomposition.inverseOfNormalMatrix();
        }

        private boolean canGetNearer() {
            return offset > NEAR_ENOUGH && !isSingular();
        }

        private double[] stepped(int halvings) {
            double[] step = decomposition.solve(projection);
            double[] parameters = point.parameters().clone();
            for (int j = 0; j < parameters.length; j++) {
                parameters[j] += Math.scalb(step[j], -halvings);
            }
            return parameters;
        }
    }
}
