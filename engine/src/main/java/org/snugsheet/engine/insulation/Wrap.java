package org.snugsheet.engine.insulation;

import org.snugsheet.engine.quantity.ThermalResistance;

/** Layers wrapped round something, together with the shape of it. */
public sealed interface Wrap permits FlatWrap, RoundWrap {

    /**
     * What the wrap is made of.
     *
     * @return the layers from the inside out
     */
    Layers layers();

    /**
     * The resistance of all of it, with the air or water that clings to its two surfaces.
     *
     * @return the thermal resistance, referred to a square metre of the innermost surface; more than zero
     */
    ThermalResistance resistance();
}
