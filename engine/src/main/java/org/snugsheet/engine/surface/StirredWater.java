package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * A tub of water, or of slush, that is stirred by hand.
 *
 * <p>The coefficient depends on how it is stirred. {@value #COEFFICIENT} W/(m²·K) is common practice, no source; it lies in
 * the range of forced convection in liquids, 100 to 20 000 W/(m²·K), of Incropera and DeWitt, Table 1.1 (from memory).
 * Compared with any wrap its resistance hardly counts.
 */
public record StirredWater() implements Ambient {

    private static final double COEFFICIENT = 500;

    @Override
    public ThermalResistance resistance(Face face, Temperature surface, Temperature place) {
        return new ThermalResistance(1 / COEFFICIENT);
    }

    @Override
    public boolean isTub() {
        return true;
    }
}
