package org.snugsheet.engine.insulation;

import org.snugsheet.engine.quantity.ThermalResistance;

/** Layers together with the shape they are wrapped around. */
public sealed interface Wrap permits FlatWrap, RoundWrap {

    /**
     * The layers of the wrap.
     *
     * @return the layers from the inside out
     */
    Layers layers();

    /**
     * The total resistance, including the films of air or water on its two surfaces.
     *
     * @return the thermal resistance, referred to the innermost surface; positive
     */
    ThermalResistance resistance();
}
