package org.snugsheet.engine.lesson;

/**
 * What least squares make of errors in the readings of a plan, where the curve is straight in its start and its constant ({@link
 * ReadingPlan}).
 */
final class StraightFit {

    private final double[] start;
    private final double[] constant;
    private final double squares;

    /**
     * The fit of a plan.
     *
     * @param byStart the slopes of the curve by the start
     * @param byConstant those by the constant
     */
    StraightFit(double[] byStart, double[] byConstant) {
        start = byStart.clone();
        constant = byConstant.clone();
        divide(start, Math.sqrt(dot(start, start)));
        double along = dot(start, constant);
        for (int i = 0; i < constant.length; i++) {
            constant[i] -= along * start[i];
        }
        squares = dot(constant, constant);
        divide(constant, Math.sqrt(squares));
    }

    /** By how much the constant comes out too large, 1/s for errors in K. */
    double movedBy(double[] errors) {
        return dot(constant, errors) / Math.sqrt(squares);
    }

    /** The sum of the squares that the fit leaves of them. */
    double left(double[] errors) {
        double along = dot(start, errors);
        double across = dot(constant, errors);
        return Math.max(0, dot(errors, errors) - along * along - across * across);
    }

    private static void divide(double[] values, double by) {
        for (int i = 0; i < values.length; i++) {
            values[i] /= by;
        }
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
