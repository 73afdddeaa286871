package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * A surface whose resistance is known beforehand, such as one of {@link StandardSurface}.
 *
 * @param resistance what it is, whatever the temperatures
 */
public record KnownSurface(ThermalResistance resistance) implements Ambient {

    /** Where the outermost surface touches what is as cold as the place: packed in snow, or against a wet wrap. */
    public static final KnownSurface CONTACT = new KnownSurface(ThermalResistance.NONE);

    @Override
    public ThermalResistance resistance(Face face, Temperature surface, Temperature place) {
        return resistance;
    }
}
