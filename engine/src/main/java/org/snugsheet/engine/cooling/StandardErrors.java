package org.snugsheet.engine.cooling;

import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.solver.SeparableFit;

/**
 * The standard errors of quantities computed from the parameters of a fit: of amplitude, rate and level, each multiplied by
 * its entry in a gradient, in this order.
 *
 * <p>The rows of {@code (JᵀJ)⁻¹·Jᵀ} say how far each parameter moves with each reading. The errors of the readings
 * ({@link ReadingErrors}) are propagated with them, exactly so far as the curve is linear in its parameters (Bates and Watts,
 * Nonlinear Regression Analysis and Its Applications, 1988, section 2.2.1).
 *
 * <p>Where noise alone moves the readings and they {@linkplain Wander wander together}, they count only for as many
 * independent readings as they are worth.
 *
 * <p>The uncertainty that {@linkplain LawDoubt other laws} add to fitted surroundings is an error of the level, and the other
 * parameters follow it.
 *
 * <p>A shift of given surroundings shifts the whole curve, so it changes the fit just as the opposite shift of all readings
 * would: {@code ∂β/∂Tₛ = −(JᵀJ)⁻¹·Jᵀ·1}, from the normal equations by the implicit function theorem, so far as the curve is
 * linear in its parameters. Their uncertainty is common to everything computed from the fit, and to all jars in the same
 * place, so it is kept separate, with its sign (JCGM 100:2008, GUM, 5.2.2).
 */
final class StandardErrors {

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
     * @param law what other laws add to the standard error of fitted surroundings, in K
     */
    StandardErrors(Readings readings, SeparableFit fit, OneRateModel model, Graduation mark, double law) {
        double[] fitted = new double[readings.size()];
        double[] residuals = fit.residuals();
        for (int i = 0; i < fitted.length; i++) {
            fitted[i] = readings.all().get(i).temperature().celsius() - residuals[i];
        }
        this.errors = ReadingErrors.of(fitted, fit.sumOfSquares() / (readings.size() - model.parameters()), mark);
        double[][] rows = fit.influence();
        this.influence = model.fitsSurroundings() ? new double[][] {rows[1], rows[2], rows[0]} : rows;
        this.wander = errors.isNoise() ? Wander.of(residuals, fit.basis()) : Wander.NONE;
        this.freedom = wander.isThere() ? wander.freedom() : readings.size() - model.parameters();
        this.surroundings = model.surroundingsUncertainty(mark);
        this.law = law;
    }

    /** The variance of one reading in K². */
    double variance() {
        return wander.isThere() ? Math.max(wander.variance(), errors.variance()) : errors.variance();
    }

    /** The degrees of freedom of the variance: those of the residuals, or fewer if the readings wander together. */
    double freedom() {
        return freedom;
    }

    /** Whether the readings wander together. */
    boolean isWandering() {
        return wander.isThere();
    }

    /**
     * How much larger than its minimum the sum of squares may be within the limits of a quantity, in K².
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

    /** The combined standard error. */
    double of(double[] gradient) {
        return Math.hypot(ownOf(gradient), commonOf(gradient));
    }

    /** The standard error from the jar’s own readings and from the doubt about its law. */
    double ownOf(double[] gradient) {
        double[] pull = pull(gradient);
        double doubted = lawOf(pull);
        return Math.sqrt(readSquared(pull) + doubted * doubted);
    }

    /** The variance from the readings. It never gets smaller because they wander. */
    private double readSquared(double[] pull) {
        double plain = errors.varianceOf(pull);
        return wander.isThere() ? Math.max(plain, wander.squareErrorOf(pull)) : plain;
    }

    /** If the surroundings are off by what other laws allow, the best curve follows them along the profile of the level. */
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

    /** The change caused by one standard uncertainty of the surroundings, with its sign. */
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

    /** The same, increased for rounding errors that are correlated. */
    double raisedOf(double[] gradient) {
        return ownOf(gradient) * Math.sqrt(errors.inflationOf(pull(gradient)));
    }

    /** The standard error that other jars at the same temperatures would share, since it comes from rounding. */
    double sharedOf(double[] gradient) {
        return Math.sqrt(errors.sharedVarianceOf(pull(gradient)));
    }

    /** How far the quantity moves with each reading. */
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
