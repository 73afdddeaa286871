package org.snugsheet.engine.water;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/** Water vapor: the saturation pressure and the heat of evaporation. */
public final class Vapor {

    private static final double CRITICAL_KELVINS = 647.096;

    private static final double CRITICAL_PASCALS = 22.064e6;

    private static final double[] FACTORS = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};

    private static final double[] POWERS = {1, 1.5, 3, 3.5, 4, 7.5};

    private Vapor() {}

    /**
     * The saturation pressure over liquid water: {@code ln(p/pc) = Tc/T·Σ aᵢ·τ^bᵢ} with {@code τ = 1 − T/Tc}. IAPWS
     * SR1-86(1992), equation (1). Below 0 °C it is that over supercooled water, at −10 °C a tenth more than over ice.
     *
     * @param temperature of the water, or of saturated air
     * @return Pa
     */
    public static double pressure(Temperature temperature) {
        double kelvins = temperature.in(Scale.KELVIN);
        double tau = 1 - kelvins / CRITICAL_KELVINS;
        double sum = 0;
        for (int i = 0; i < FACTORS.length; i++) {
            sum += FACTORS[i] * Math.pow(tau, POWERS[i]);
        }
        return CRITICAL_PASCALS * Math.exp(CRITICAL_KELVINS / kelvins * sum);
    }

    /**
     * The heat of evaporation per kilogram: {@code 2501 − 2.326·t} kJ/kg (ASHRAE Handbook Fundamentals, chapter
     * Psychrometrics, in the equation of the wet bulb; from memory).
     *
     * @param temperature of the water
     * @return J/kg
     */
    public static double heat(Temperature temperature) {
        return 2.501e6 - 2326 * temperature.celsius();
    }
}
