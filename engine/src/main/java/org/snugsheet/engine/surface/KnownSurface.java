package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * A surface whose resistance is known in advance, such as one of {@code StandardSurface}.
 *
 * @param resistance the resistance at any temperatures
 */
public record KnownSurface(ThermalResistance resistance) implements Ambient {

    /** No film: the outermost surface touches something at the temperature of the place: packed in snow, or against a wet wrap. */
    public static final KnownSurface CONTACT = new KnownSurface(ThermalResistance.NONE);

    @Override
    public ThermalResistance resistance(Face face, Temperature surface, Temperature place) {
        return resistance;
    }
}
