package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;

/** A room, or a windowsill on a calm day: free convection and radiation in parallel. */
public record StillAir() implements Ambient {

    @Override
    public ThermalResistance resistance(Face face, Temperature surface, Temperature place) {
        return new ThermalResistance(
                1 / (convection(face, surface, place) + Radiation.coefficient(surface, place, face.emissivity())));
    }

    /** The convective part alone, W/(m²·K). */
    static double convection(Face face, Temperature surface, Temperature place) {
        Fluid air = Fluid.airBetween(surface, place);
        double grashof = air.grashof(Fluid.buoyancyOfAir(surface, place), face.length());
        boolean risesFromFace = surface.compareTo(place) >= 0;
        return FreeFilm.nusselt(face, air.prandtl(), grashof, risesFromFace) * air.conductivity() / face.length();
    }
}
