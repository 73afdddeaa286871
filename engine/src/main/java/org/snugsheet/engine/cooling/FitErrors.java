package org.snugsheet.engine.cooling;

import org.snugsheet.engine.reading.Mark;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * How sure a fit is of what is made from its parameters: of a sum of the amplitude, the rate and the level, each times what
 * stands in a gradient, in this order.
 *
 * <p>Each parameter moves with each reading by what the rows of {@code (JᵀJ)⁻¹·Jᵀ} say, so that the errors of the readings
 * ({@link ReadingErrors}) are carried through exactly as far as the curve is straight in its parameters (Bates and Watts,
 * Nonlinear Regression Analysis and Its Applications, 1988, section 2.2.1).
 */
final class FitErrors {

    /** The gradient of the rate itself. */
    static final double[] RATE = {0, 1, 0};

    /** The gradient of the level itself. */
    static final double[] LEVEL = {0, 0, 1};

    private final ReadingErrors errors;
    private final double[][] influence;

    FitErrors(Readings readings, SeparableFit fit, Mark mark, int degreesOfFreedom) {
        double[] fitted = new double[readings.size()];
        double[] residuals = fit.residuals();
        for (int i = 0; i < fitted.length; i++) {
            fitted[i] = readings.all().get(i).temperature().celsius() - residuals[i];
        }
        this.errors = ReadingErrors.of(fitted, fit.sumOfSquares() / degreesOfFreedom, mark);
        this.influence = fit.influence();
    }

    /** The variance of one reading in K². */
    double variance() {
        return errors.variance();
    }

    /**
     * How far the sum of squares may grow for one parameter to be within limits, if no two errors went together; K².
     *
     * @param student Student’s quantile for the degrees of freedom of the fit
     * @param normal the normal one of the same confidence
     */
    double allowance(double student, double normal) {
        return errors.varianceTimesSquared(student, normal);
    }

    /** The standard error. */
    double of(double[] gradient) {
        return Math.sqrt(errors.varianceOf(pull(gradient)));
    }

    /** How many times more than that, squared, rounding leaves because it repeats itself. */
    double inflationOf(double[] gradient) {
        return errors.inflationOf(pull(gradient));
    }

    /** The standard error that other jars of the same temperatures would share, since it comes from rounding. */
    double sharedOf(double[] gradient) {
        return Math.sqrt(errors.sharedVarianceOf(pull(gradient)));
    }

    /** How far that moves with each reading. */
    private double[] pull(double[] gradient) {
        double[] pull = new double[influence[0].length];
        for (int i = 0; i < influence.length; i++) {
            for (int j = 0; j < pull.length; j++) {
                pull[j] += gradient[i] * influence[i][j];
            }
        }
        return pull;
    }
}
