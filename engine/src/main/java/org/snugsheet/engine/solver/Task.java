package org.snugsheet.engine.solver;

/** One curve to be brought near one set of observations; counts how often the curve is asked. */
final class Task {

    private final Curve curve;
    private final double[] observed;
    private final double[] rootWeights;
    private final double rounding;
    private final int limit;
    private int evaluations;

    /**
     * A task at whose curve nobody has looked yet.
     *
     * @param curve f
     * @param observed y
     * @param rootWeights √w for each observation, or none at all when every observation counts the same
     * @param limit how often the curve may be asked
     */
    Task(Curve curve, double[] observed, double[] rootWeights, int limit) {
        this.curve = curve;
        this.observed = observed;
        this.rootWeights = rootWeights;
        this.limit = limit;
        double sum = 0;
        for (int i = 0; i < observed.length; i++) {
            double weighted = weigh(i, observed[i]);
            sum += weighted * weighted;
        }
        this.rounding = 4 * observed.length * Math.ulp(1.0) * Math.sqrt(sum);
    }

    int observations() {
        return observed.length;
    }

    /**
     * What rounding alone may leave of the residuals, from the length of the observations √(Σ w·y²): some units in their
     * last place, since the curve is not worked out exactly either.
     */
    double rounding() {
        return rounding;
    }

    int evaluations() {
        return evaluations;
    }

    int evaluationsLeft() {
        return limit - evaluations;
    }

    /** Asks the curve at the given parameters, which are copied. */
    Point at(double[] parameters) {
        evaluations++;
        int n = observed.length;
        double[] values = new double[n];
        double[][] slopes = new double[n][parameters.length];
        double[] own = parameters.clone();
        curve.evaluate(parameters.clone(), values, slopes);
        double sum = 0;
        // A product with 0 is 0 for a finite number and NaN for any other, so one sum tells about all slopes.
        double slopeCheck = 0;
        for (int i = 0; i < n; i++) {
            double residual = weigh(i, observed[i] - values[i]);
            values[i] = residual;
            sum += residual * residual;
            double[] row = slopes[i];
            for (int j = 0; j < row.length; j++) {
                row[j] = weigh(i, row[j]);
                slopeCheck += 0 * row[j];
            }
        }
        boolean finite = Double.isFinite(sum + slopeCheck);
        return new Point(own, values, slopes, finite ? sum : Double.POSITIVE_INFINITY);
    }

    private double weigh(int i, double value) {
        return rootWeights.length == 0 ? value : rootWeights[i] * value;
    }
}
