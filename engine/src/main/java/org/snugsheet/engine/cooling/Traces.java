package org.snugsheet.engine.cooling;

import java.util.function.UnaryOperator;

/**
 * Traces of a symmetric matrix A after the directions of a curve have been projected out, as they are from residuals. The
 * mean and variance of a quadratic form of the residuals follow from them. M is the projection.
 *
 * @param once {@code tr(M·A)}
 * @param twice {@code tr(M·A·M·A)}
 */
record Traces(double once, double twice) {

    /**
     * Projects the directions out.
     *
     * @param whole the traces of A and of A² before the projection
     * @param matrix multiplies a vector by A
     * @param basis the directions, orthonormal
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
