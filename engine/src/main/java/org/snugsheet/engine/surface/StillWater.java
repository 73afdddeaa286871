package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.water.Water;

/** A tub of water that nobody stirs, or the water in the jar itself: free convection from water’s own densities. */
public record StillWater() implements Ambient {

    @Override
    public ThermalResistance resistance(Face face, Temperature surface, Temperature place) {
        Fluid water = Fluid.waterBetween(surface, place);
        double grashof = water.grashof(Fluid.buoyancyOfWater(surface, place), face.length());
        boolean rises = Water.density(surface) <= Water.density(place);
        double nusselt = FreeFilm.nusselt(face, water.prandtl(), grashof, rises);
        return new ThermalResistance(face.length() / (nusselt * water.conductivity()));
    }

    @Override
    public boolean isTub() {
        return true;
    }
}
