package org.snugsheet.engine.cooling;

import java.util.function.UnaryOperator;

/**
 * Traces of a symmetric matrix A once the directions of a curve are taken out of it, as they are out of residuals: what mean and spread
 * of a quadratic form of them follow from. M takes the directions out.
 *
 * @param once {@code tr(M·A)}
 * @param twice {@code tr(M·A·M·A)}
 */
record Traces(double once, double twice) {

    /**
     * Takes the directions out.
     *
     * @param whole the traces of A and of A², with all directions in
     * @param matrix multiplies a vector by A
     * @param basis the directions, at right angles and each of length 1
     */
    static Traces without(Traces whole, UnaryOperator<double[]> matrix, double[][] basis) {
        double once = whole.once();
        double twice = whole.twice();
        for (double[] one : basis) {
            double[] product = matrix.apply(one);
            once -= Autoregression.dot(one, product);
            twice -= 2 * Autoregression.dot(product, product);
            for (double[] other : basis) {
                double both = Autoregression.dot(other, product);
                twice += both * both;
            }
        }
        return new Traces(once, twice);
    }
}
