package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/** Radiation from a surface to a room whose walls have the temperature of its air. */
final class Radiation {

    /** W/(m²·K⁴), CODATA 2018 (exact to the digits given). */
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Radiation() {}

    /**
     * The coefficient of radiation, {@code h = ε·σ·(T₁² + T₂²)·(T₁ + T₂)}, which for two equal temperatures is the {@code
     * 4·ε·σ·T³} of ISO 6946:2017, annex C.
     *
     * @return W/(m²·K)
     */
    static double coefficient(Temperature surface, Temperature room, double emissivity) {
        double one = surface.in(Scale.KELVIN);
        double other = room.in(Scale.KELVIN);
        return emissivity * STEFAN_BOLTZMANN * (one * one + other * other) * (one + other);
    }
}
