package org.snugsheet.engine.cooling;

import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * How sure a fit is of what is made from its parameters: of a sum of the amplitude, the rate and the level, each times what
 * stands in a gradient, in this order.
 *
 * <p>Each parameter moves with each reading by what the rows of {@code (JᵀJ)⁻¹·Jᵀ} say, so that the errors of the readings
 * ({@link ReadingErrors}) are carried through exactly as far as the curve is straight in its parameters (Bates and Watts,
 * Nonlinear Regression Analysis and Its Applications, 1988, section 2.2.1).
 *
 * <p>Where noise alone moves the readings, and they {@linkplain Wander wander together}, they count for as many as they are worth.
 *
 * <p>What {@linkplain LawDoubt other laws} leave open of fitted surroundings is an error of the level that the other parameters follow.
 *
 * <p>Surroundings that were given move the whole curve with them before anything is fitted, so the fit answers to a shift of them as
 * to the opposite shift of all readings: {@code ∂β/∂Tₛ = −(JᵀJ)⁻¹·Jᵀ·1}, from the normal equations by the implicit function
 * theorem, as far as the curve is straight in its parameters. Their uncertainty is one cause for all that is made from the fit,
 * and for all jars that stood there, so it is kept apart with its sign (JCGM 100:2008, GUM, 5.2.2).
 */
final class FitErrors {

    /** The gradient of the rate itself. */
    static final double[] RATE = {0, 1, 0};

    /** The gradient of the level itself. */
    static final double[] LEVEL = {0, 0, 1};

    private final ReadingErrors errors;
    private final double[][] influence;
    private final double surroundings;
    private final double law;
    private final Wander wander;
    private final double freedom;

    /**
     * The errors of a fit.
     *
     * @param law what other laws add to the standard error of fitted surroundings, K
     */
    FitErrors(Readings readings, SeparableFit fit, OneRateModel model, Graduation mark, double law) {
        double[] fitted = new double[readings.size()];
        double[] residuals = fit.residuals();
        for (int i = 0; i < fitted.length; i++) {
            fitted[i] = readings.all().get(i).temperature().celsius() - residuals[i];
        }
        this.errors = ReadingErrors.of(fitted, fit.sumOfSquares() / (readings.size() - model.parameters()), mark);
        this.influence = fit.influence();
        this.wander = errors.isNoise() ? Wander.of(residuals, fit.basis()) : Wander.NONE;
        this.freedom = wander.isThere() ? wander.freedom() : readings.size() - model.parameters();
        this.surroundings = model.surroundingsUncertainty(mark);
        this.law = law;
    }

    /** The variance of one reading in K². */
    double variance() {
        return wander.isThere() ? Math.max(wander.variance(), errors.variance()) : errors.variance();
    }

    /** How well that is known: the spare readings, or as many as they are worth if they wander together. */
    double freedom() {
        return freedom;
    }

    /** Whether the readings wander together. */
    boolean isWandering() {
        return wander.isThere();
    }

    /**
     * How far the sum of squares may grow for what is made so to be within limits; K².
     *
     * @param student Student’s quantile for {@link #freedom()}
     * @param normal the normal one of the same confidence
     */
    double allowance(double[] gradient, double student, double normal) {
        double[] pull = pull(gradient);
        return wander.isThere()
                ? student * student * readSquared(pull) / errors.squaresOf(pull)
                : errors.inflationOf(pull) * errors.varianceTimesSquared(student, normal);
    }

    /** The standard error with all that goes into it. */
    double of(double[] gradient) {
        return Math.hypot(ownOf(gradient), commonOf(gradient));
    }

    /** The standard error that the jar’s own readings leave, and the law that they do not tell. */
    double ownOf(double[] gradient) {
        double[] pull = pull(gradient);
        double doubted = lawOf(pull);
        return Math.sqrt(readSquared(pull) + doubted * doubted);
    }

    /** What the readings leave. It is never less because they wander. */
    private double readSquared(double[] pull) {
        double plain = errors.varianceOf(pull);
        return wander.isThere() ? Math.max(plain, wander.squareErrorOf(pull)) : plain;
    }

    /** Surroundings that are off by what other laws leave open take the best curve with them, along the profile of the level. */
    private double lawOf(double[] pull) {
        if (law == 0) {
            return 0;
        }
        double[] level = pull(LEVEL);
        double together = 0;
        for (int i = 0; i < pull.length; i++) {
            together += pull[i] * level[i];
        }
        return law * together / errors.squaresOf(level);
    }

    /** What one standard uncertainty of the surroundings adds, with its sign. */
    double commonOf(double[] gradient) {
        if (surroundings == 0) {
            return 0;
        }
        double moved = gradient[2];
        for (double reading : pull(gradient)) {
            moved -= reading;
        }
        return moved * surroundings;
    }

    /** The same raised by what rounding leaves because it repeats itself. */
    double raisedOf(double[] gradient) {
        return ownOf(gradient) * Math.sqrt(errors.inflationOf(pull(gradient)));
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
