package org.snugsheet.engine.jar;

import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * What a jar loses in the steady state.
 *
 * @param jar the water
 * @param side the way out through the side
 * @param lid the way out through the lid
 * @param base the way out through the base
 */
public record HeatFlow(Jar jar, Path side, Path lid, Path base) {

    /**
     * The heat that goes out each second.
     *
     * @return W, less than zero if it comes in
     */
    public double watts() {
        return side.flux() * jar.sideArea() + (lid.flux() + base.flux()) * jar.endArea();
    }

    /**
     * The resistance of the jar as a whole, paths side by side: {@code A/R = Σ Aᵢ/Rᵢ} (ISO 6946:2017, 6.7.2).
     *
     * @return for each square metre of water’s surface: side, lid and base together
     */
    public ThermalResistance resistance() {
        double conductance = jar.sideArea() / of(side) + jar.endArea() / of(lid) + jar.endArea() / of(base);
        return new ThermalResistance(jar.area() / conductance);
    }

    private static double of(Path path) {
        return path.resistance().squareMetreKelvinsPerWatt();
    }
}
