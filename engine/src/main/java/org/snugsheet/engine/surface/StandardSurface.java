package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * The conventional surface resistances of ISO 6946:2017, Table 7 (Table 1 of the 2007 edition): what builders use without
 * measurements. They are meant for rooms and walls; the film on a small jar is thinner, see {@link StillAir}.
 */
enum StandardSurface {
    /** Inside, heat flowing up. */
    INSIDE_UPWARDS(0.10),
    /** Inside, heat flowing sideways. */
    INSIDE_HORIZONTAL(0.13),
    /** Inside, heat flowing down. */
    INSIDE_DOWNWARDS(0.17),
    /** Outside, in the wind of 4 m/s that the standard assumes. */
    OUTSIDE(0.04);

    private final double squareMeterKelvinsPerWatt;

    StandardSurface(double squareMeterKelvinsPerWatt) {
        this.squareMeterKelvinsPerWatt = squareMeterKelvinsPerWatt;
    }

    /**
     * Its resistance.
     *
     * @return the surface resistance
     */
    public ThermalResistance resistance() {
        return new ThermalResistance(squareMeterKelvinsPerWatt);
    }
}
