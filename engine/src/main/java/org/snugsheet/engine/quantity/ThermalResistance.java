package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * Thermal resistance of one square meter: how well a layer insulates. In the trade it is called the R-value.
 *
 * <p>ISO 7345:2018 defines it as the temperature difference divided by the density of heat flow in the steady state.
 *
 * @param squareMeterKelvinsPerWatt m²·K/W, finite, zero or more
 */
public record ThermalResistance(double squareMeterKelvinsPerWatt) implements Comparable<ThermalResistance> {

    /** No resistance at all. */
    public static final ThermalResistance NONE = new ThermalResistance(0);

    /**
     * A resistance in m²·K/W.
     *
     * @throws InvalidInputException if it is negative or not a finite number
     */
    public ThermalResistance {
        Require.notNegative(squareMeterKelvinsPerWatt, QuantityName.THERMAL_RESISTANCE);
    }

    /**
     * A resistance in a unit.
     *
     * @param value how many
     * @param unit a unit of thermal resistance
     * @return the resistance
     * @throws InvalidInputException if it is negative, not a finite number, or the unit measures something else
     */
    public static ThermalResistance of(double value, Unit unit) {
        return new ThermalResistance(Unit.SQUARE_METER_KELVIN_PER_WATT.from(value, unit));
    }

    /**
     * This resistance as a number.
     *
     * @param unit a unit of thermal resistance
     * @return how many of that unit
     * @throws InvalidInputException if the unit measures something else
     */
    public double in(Unit unit) {
        return unit.from(squareMeterKelvinsPerWatt, Unit.SQUARE_METER_KELVIN_PER_WATT);
    }

    /**
     * Two layers in series: their resistances add up (ISO 6946:2017, 6.7.1.2).
     *
     * @param other the other layer
     * @return the resistance of both
     */
    public ThermalResistance plus(ThermalResistance other) {
        return new ThermalResistance(squareMeterKelvinsPerWatt + other.squareMeterKelvinsPerWatt);
    }

    @Override
    public int compareTo(ThermalResistance other) {
        return Double.compare(squareMeterKelvinsPerWatt, other.squareMeterKelvinsPerWatt);
    }
}
