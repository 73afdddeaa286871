package org.snugsheet.engine.summary;

import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Temperature;

/**
 * The fit of one jar’s readings and what follows from it. Each result is a value or the reason why there is no value, by the
 * same rule wherever it is shown.
 *
 * @param fit the fit
 */
public record JarFit(Known<CoolingFit> fit) {

    /**
     * Fits what was typed for a jar.
     *
     * @param jar what was typed
     * @return its fit, or why it has none
     */
    public static JarFit of(TypedJar jar) {
        return new JarFit(Known.of(() -> jar.located(() -> CoolingFit.of(jar.readings(), jar.around(), jar.mark()))));
    }

    /**
     * The cooling constant.
     *
     * @return the constant, or why the readings cannot be fitted
     */
    public Known<CoolingConstant> rate() {
        return fit.then(CoolingFit::constant);
    }

    /**
     * The half-time.
     *
     * @return seconds, or why it has no half-time, as {@link CoolingFit#halfTime()} says
     */
    public Known<Double> halfTime() {
        return fit.then(CoolingFit::halfTime);
    }

    /**
     * The temperature at minute 0.
     *
     * @return the start, or why it is unknown, as {@link CoolingFit#start()} says
     */
    public Known<Temperature> start() {
        return fit.then(CoolingFit::start);
    }
}
