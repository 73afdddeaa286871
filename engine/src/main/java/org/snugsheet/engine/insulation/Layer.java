package org.snugsheet.engine.insulation;

import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * One layer of a wrap.
 *
 * @param thickness how thick it is
 * @param conductivity how easily heat goes through its stuff
 */
public record Layer(Length thickness, Conductivity conductivity) {

    /**
     * The resistance of this layer where it lies flat, {@code R = d/λ} (ISO 6946:2017, 6.7.1.1).
     *
     * @return its thermal resistance
     */
    public ThermalResistance resistance() {
        return conductivity.through(thickness);
    }
}
