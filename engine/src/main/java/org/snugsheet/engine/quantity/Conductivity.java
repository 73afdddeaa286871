package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * Thermal conductivity of a material: how easily heat passes through it, regardless of thickness (ISO 7345:2018).
 *
 * @param wattsPerMeterKelvin W/(m·K), finite, more than zero
 */
public record Conductivity(double wattsPerMeterKelvin) implements Comparable<Conductivity> {

    /**
     * A conductivity in W/(m·K).
     *
     * @throws InvalidInputException if it is not more than zero
     */
    public Conductivity {
        Require.positive(wattsPerMeterKelvin, QuantityName.CONDUCTIVITY);
    }

    /**
     * A conductivity in a unit.
     *
     * @param value how many
     * @param unit a unit of conductivity
     * @return the conductivity
     * @throws InvalidInputException if it is not more than zero, or the unit measures something else
     */
    public static Conductivity of(double value, Unit unit) {
        return new Conductivity(Unit.WATT_PER_METER_KELVIN.from(value, unit));
    }

    /**
     * The resistance of a flat layer of this material, {@code R = d/λ} (ISO 6946:2017, 6.7.1.1).
     *
     * @param thickness the thickness of the layer
     * @return its thermal resistance
     */
    public ThermalResistance through(Length thickness) {
        return new ThermalResistance(thickness.meters() / wattsPerMeterKelvin);
    }

    @Override
    public int compareTo(Conductivity other) {
        return Double.compare(wattsPerMeterKelvin, other.wattsPerMeterKelvin);
    }
}
