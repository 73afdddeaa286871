package org.snugsheet.engine.solver;

/**
 * A family of curves f(b): for each choice of its parameters b it gives one value for every observation, and the slopes
 * of those values.
 *
 * <p>The places where the observations were made (times, say) are the curve’s own business; the solver only sees
 * numbers in the order of the observations. The values may have any unit, as long as it is that of the observations.
 *
 * <p>A curve keeps no state and does not touch {@code parameters}; then it can be used by many threads at once. Where it
 * is not defined it writes NaN or an infinity, and the solver turns back from there.
 *
 * <pre>{@code
 * // A jar that comes to rest at 5 °C: T(t) = 5 + b₀·exp(−b₁·t)
 * Curve jar = Curve.at(minutes, (t, b, slopes) -> {
 *     double fall = Math.exp(-b[1] * t);
 *     slopes[0] = fall;
 *     slopes[1] = -b[0] * t * fall;
 *     return 5 + b[0] * fall;
 * });
 * }</pre>
 */
@FunctionalInterface
public interface Curve {

    /**
     * Fills in the values and their slopes.
     *
     * @param parameters b, to be read only
     * @param values to be filled: f<sub>i</sub>(b) for every observation i
     * @param slopes to be filled, one row an observation, one column a parameter: ∂f<sub>i</sub>/∂b<sub>j</sub>
     */
    void evaluate(double[] parameters, double[] values, double[][] slopes);

    /**
     * The curve of one formula, at given places.
     *
     * @param places one place for each observation, in their order; copied
     * @param formula what is the same at every place
     * @return the curve
     */
    static Curve at(double[] places, Formula formula) {
        double[] own = places.clone();
        return (parameters, values, slopes) -> {
            for (int i = 0; i < own.length; i++) {
                values[i] = formula.at(own[i], parameters, slopes[i]);
            }
        };
    }

    /** A curve’s formula at one place. */
    @FunctionalInterface
    interface Formula {

        /**
         * The value at one place, and its slopes.
         *
         * @param place where, for instance a time
         * @param parameters b, to be read only
         * @param slopes to be filled: ∂f/∂b<sub>j</sub> at that place
         * @return f at that place
         */
        double at(double place, double[] parameters, double[] slopes);
    }
}
