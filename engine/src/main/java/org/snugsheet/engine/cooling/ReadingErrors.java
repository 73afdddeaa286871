package org.snugsheet.engine.cooling;

import org.snugsheet.engine.reading.Graduation;

/**
 * The errors of a jar’s readings: the size of each and the correlation between them.
 *
 * <p>The variance of a reading is the residual variance, but never less than that of rounding, {@code a²/12} for a mark a:
 * readings that happen to lie on a curve are still known only to half a mark (JCGM 100:2008, GUM, 4.3.7).
 *
 * <p>But rounding is not random. Two readings at nearly the same temperature, or a whole number of marks apart, are rounded
 * the same way, and any number of them tells no more than one. For temperatures that are a whole number of marks plus a
 * fraction {@code u} apart, the correlation of the rounding errors is {@code ρ = 1 − 6u + 6u²}, the autocorrelation of a
 * sawtooth (its Fourier series {@code Σ cos(2πnu)/n²}; Abramowitz and Stegun, 27.8.6). Noise that moves readings across the
 * marks reduces the correlation, by {@code e^(−4π²s²/a²)} for noise with the standard deviation s: each error’s first
 * harmonic shrinks by {@code e^(−2π²s²/a²)} (B. Widrow and I. Kollár, Quantization Noise, 2008, chapter 4). Only positive
 * correlations are counted, never those that cancel.
 *
 * <p>The variance of rounding is known in advance; that of the residuals is only estimated. So where rounding is larger,
 * limits need only the normal quantile; with Student’s, limits from five readings whose noise is one or two times the
 * rounding would hold the truth 99 % of the time.
 *
 * @param temperatures the fitted temperatures in °C
 * @param residual the residual variance in K²
 * @param mark the mark in kelvins
 * @param together the part of the rounding variance that noise does not scatter, in K²
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package and is never compared
record ReadingErrors(double[] temperatures, double residual, double mark, double together) {

    /** Beyond this distance in marks the correlation is negative and not counted. */
    private static final double FAR = (3 - Math.sqrt(3)) / 6;

    /** A share of the rounding variance that is too small to matter. */
    private static final double NOTHING = 1e-3;

    static ReadingErrors of(double[] temperatures, double residualVariance, Graduation mark) {
        double a = mark.graduation().kelvins();
        double rounding = a * a / 12;
        double noise = Math.max(residualVariance - rounding, 0);
        double kept = Math.exp(-4 * Math.PI * Math.PI * noise / (a * a));
        return new ReadingErrors(temperatures, residualVariance, a, kept > NOTHING ? kept * rounding : 0);
    }

    private double rounding() {
        return mark * mark / 12;
    }

    /** The variance of one reading in K². */
    double variance() {
        return Math.max(residual, rounding());
    }

    /** The same multiplied by the square of a quantile: Student’s for the residuals, the normal one for rounding. */
    double varianceTimesSquared(double student, double normal) {
        return Math.max(residual * student * student, rounding() * normal * normal);
    }

    /** The variance of a weighted sum of the readings’ errors if they were uncorrelated. */
    double varianceOf(double[] weights) {
        return variance() * squares(weights);
    }

    /** How many times larger that variance is because some errors are correlated; at least 1. */
    double inflationOf(double[] weights) {
        return 1 + together * repeated(weights) / varianceOf(weights);
    }

    /** The part of it that another jar at the same temperatures would share, since noise does not scatter it. */
    double sharedVarianceOf(double[] weights) {
        return together * (squares(weights) + repeated(weights));
    }

    /** Whether noise has scattered the rounding completely, so that rounding does not correlate neighbors. */
    boolean isNoise() {
        return together == 0;
    }

    double squaresOf(double[] weights) {
        return squares(weights);
    }

    private static double squares(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight * weight;
        }
        return sum;
    }

    private double repeated(double[] weights) {
        if (together == 0) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            for (int j = 0; j < i; j++) {
                double marks = (temperatures[i] - temperatures[j]) / mark;
                double u = Math.abs(marks - Math.rint(marks));
                if (u < FAR) {
                    sum += 2 * weights[i] * weights[j] * (1 - 6 * u + 6 * u * u);
                }
            }
        }
        return Math.max(0, sum);
    }
}
