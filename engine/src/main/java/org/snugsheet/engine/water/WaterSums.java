package org.snugsheet.engine.water;

import java.util.List;

/**
 * What the volume of liquid water and the heat in it are summed up from, for whoever works them out by other means; {@link Water} does it itself.
 *
 * <p>With the temperature T in kelvins, {@code α = 10/(593 − T)} and {@code β = 10/(T − 232)} the volume of a kilogram is proportional to
 * {@code volume + Σ (vₐ·αⁿ + v_b·βⁿ)}, and the enthalpy of a kilogram to
 * {@code heat − heatSlope·T/10 + Σ (gₐ·αⁿ·(1 − n·α·T/10) + g_b·βⁿ·(1 + n·β·T/10))}: IAPWS SR6-08(2011), Tables 1 and 2.
 *
 * @param volume what is added to the sum for the volume
 * @param heat what is added to the sum for the heat
 * @param heatSlope what a tenth of each kelvin takes from it
 * @param rows the coefficients of each power
 */
public record WaterSums(double volume, double heat, double heatSlope, List<Row> rows) {

    /** The sums. */
    public WaterSums {
        rows = List.copyOf(rows);
    }

    /**
     * Coefficients of a power.
     *
     * @param power the power, n
     * @param volumeAlpha that of α in the volume
     * @param volumeBeta that of β in the volume
     * @param heatAlpha that of α in the heat
     * @param heatBeta that of β in the heat
     */
    public record Row(int power, double volumeAlpha, double volumeBeta, double heatAlpha, double heatBeta) {}

    /**
     * Those of liquid water at 0.1 MPa.
     *
     * @return the sums
     */
    public static WaterSums ofLiquidWater() {
        return LiquidWater.sums();
    }
}
