package org.snugsheet.engine.solver;

/**
 * A family of curves with one nonlinear parameter k and others that enter linearly: {@code f(k) = g(k) + Σ Aⱼ·φⱼ(k)}.
 *
 * <p>A curve keeps no state and can be used by many threads at once.
 */
public interface SeparableCurve {

    /**
     * How many observations there are.
     *
     * @return their number
     */
    int observations();

    /**
     * How many parameters A enter linearly.
     *
     * @return the number of columns φ, at least one
     */
    int columns();

    /**
     * Fills in the columns and the offset, and their slopes by k. All arrays come filled with zeros.
     *
     * @param rate k
     * @param columns to be filled: φ, one array for each column, with one number for each observation
     * @param columnSlopes to be filled likewise: ∂φ/∂k
     * @param offset to be filled: g, one number for each observation
     * @param offsetSlope to be filled likewise: ∂g/∂k
     */
    void evaluate(double rate, double[][] columns, double[][] columnSlopes, double[] offset, double[] offsetSlope);

    /**
     * Fills in the columns and the offset alone, where nobody asks for slopes. Both come filled with zeros.
     *
     * @param rate k
     * @param columns to be filled: φ, one array for each column, with one number for each observation
     * @param offset to be filled: g, one number for each observation
     */
    default void evaluate(double rate, double[][] columns, double[] offset) {
        evaluate(rate, columns, new double[columns()][observations()], offset, new double[observations()]);
    }
}
