package org.snugsheet.engine.comparison;

/**
 * Student’s t beyond which a verdict finds a difference, quickly: for thousands of comparisons of which only that is asked. The logarithm of
 * the quantile is a smooth function of 1/ν, and is interpolated by a polynomial through Chebyshev’s points (J. C. Mason and D. C.
 * Handscomb, Chebyshev Polynomials, 2003, section 6.3, from memory); CriticalTTest says how well.
 */
final class CriticalT {

    private static final int POINTS = 20;

    private static final double[] COEFFICIENTS = coefficients();

    private CriticalT() {}

    /**
     * The two-sided quantile at {@link Verdict#CONFIDENCE}.
     *
     * @param degreesOfFreedom 1 or more; infinite for the normal distribution
     */
    static double at(double degreesOfFreedom) {
        if (degreesOfFreedom < 1) {
            return StudentT.quantile(Verdict.CONFIDENCE, degreesOfFreedom);
        }
        // Clenshaw’s sum, on the way from −1 to 1.
        double x = 2 / degreesOfFreedom - 1;
        double one = 0;
        double before = 0;
        for (int i = POINTS - 1; i > 0; i--) {
            double next = COEFFICIENTS[i] + 2 * x * one - before;
            before = one;
            one = next;
        }
        return Math.exp(COEFFICIENTS[0] + x * one - before);
    }

    private static double[] coefficients() {
        double[] coefficients = new double[POINTS];
        for (int point = 0; point < POINTS; point++) {
            double angle = Math.PI * (point + 0.5) / POINTS;
            double value = Math.log(StudentT.quantile(Verdict.CONFIDENCE, 2 / (Math.cos(angle) + 1)));
            for (int i = 0; i < POINTS; i++) {
                coefficients[i] += value * Math.cos(i * angle) * (i == 0 ? 1 : 2) / POINTS;
            }
        }
        return coefficients;
    }
}
