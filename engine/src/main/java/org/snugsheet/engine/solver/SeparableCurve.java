package org.snugsheet.engine.solver;

/**
 * A family of curves with one parameter k that bends them and others that enter straight:
 * {@code f(k) = g(k) + A·φ(k)}, or {@code f(k) = g(k) + A·φ(k) + B} with a free level B.
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
     * Whether the level B is free.
     *
     * @return true if it is to be found, false if there is none
     */
    boolean hasLevel();

    /**
     * Fills in shape and offset, and their slopes by k, one number for each observation.
     *
     * @param rate k
     * @param shape to be filled: φ
     * @param shapeSlope to be filled: ∂φ/∂k
     * @param offset to be filled: g
     * @param offsetSlope to be filled: ∂g/∂k
     */
    void evaluate(double rate, double[] shape, double[] shapeSlope, double[] offset, double[] offsetSlope);
}
