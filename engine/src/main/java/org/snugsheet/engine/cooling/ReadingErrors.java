package org.snugsheet.engine.cooling;

import org.snugsheet.engine.reading.Graduation;

/**
 * The errors of a jar’s readings: how large each one is, and how far two of them go together.
 *
 * <p>The variance of a reading is the residual variance, but never less than the rounding, {@code a²/12} for a mark a:
 * readings that happen to fall on one curve are still known to half a mark only (JCGM 100:2008, GUM, 4.3.7).
 *
 * <p>Rounding is not chance, though. Two readings of nearly the same temperature, or of temperatures a whole number of marks
 * apart, are rounded the same way, and no number of them tells more than one. For temperatures that are a whole number of
 * marks and {@code u} apart the errors of rounding correlate as
 * {@code ρ = 1 − 6u + 6u²}, the autocorrelation of a saw-tooth (its Fourier series {@code Σ cos(2πnu)/n²}; Abramowitz and
 * Stegun, 27.8.6). Noise that moves readings across the marks takes the correlation away, by {@code e^(−4π²s²/a²)} for noise
 * of the standard deviation s: each error’s first harmonic shrinks by {@code e^(−2π²s²/a²)} (B. Widrow and I. Kollár,
 * Quantization Noise, 2008, chapter 4). Only readings that go together are counted, never those that cancel.
 *
 * <p>The variance that rounding leaves is known beforehand, that of the residuals is only estimated. So where the rounding is
 * the larger, limits need no more than the normal quantile of it; with Student’s, five readings with noise of one or two
 * roundings would hold the truth 99 % of the time.
 *
 * @param temperatures the fitted temperatures in °C
 * @param residual the residual variance in K²
 * @param mark the mark in kelvins
 * @param together the variance that rounding leaves, as far as noise does not scatter it, in K²
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the package and is never compared
record ReadingErrors(double[] temperatures, double residual, double mark, double together) {

    /** Beyond this distance in marks the correlation is negative, and not counted. */
    private static final double FAR = (3 - Math.sqrt(3)) / 6;

    /** A share of the rounding that is too small to matter. */
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

    /** The same times the square of a quantile: Student’s for the residuals, the normal one for the rounding. */
    double varianceTimesSquared(double student, double normal) {
        return Math.max(residual * student * student, rounding() * normal * normal);
    }

    /** The variance of a sum of the readings’ errors, each times its weight, if no two errors went together. */
    double varianceOf(double[] weights) {
        return variance() * squares(weights);
    }

    /** How many times larger that variance is because some errors do go together; at least 1. */
    double inflationOf(double[] weights) {
        return 1 + together * repeated(weights) / varianceOf(weights);
    }

    /** As much of it as another jar of the same temperatures would show again, since noise does not scatter it. */
    double sharedVarianceOf(double[] weights) {
        return together * (squares(weights) + repeated(weights));
    }

    /** Whether noise has scattered all that rounding leaves, so that neighbours have no reason to err alike. */
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
