package org.snugsheet.engine.surface;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Length;

/**
 * The properties of a surface of a jar that determine its film.
 *
 * @param facing the direction it faces
 * @param height the height of the jar
 * @param diameter the outside diameter
 * @param emissivity the emissivity: {@link #USUAL_EMISSIVITY} for nearly everything, far less for bare metal
 */
public record Face(Orientation facing, Length height, Length diameter, double emissivity) {

    /** The value of ISO 6946:2017 for ordinary surfaces. */
    public static final double USUAL_EMISSIVITY = 0.9;

    /**
     * A surface.
     *
     * @throws InvalidInputException if the emissivity does not lie between 0 and 1
     */
    public Face {
        if (!(emissivity >= 0 && emissivity <= 1)) {
            throw InvalidInputException.of(Problem.NOT_AN_EMISSIVITY, emissivity);
        }
    }

    /**
     * The characteristic length of free convection: the height of a side, or the area divided by the perimeter of a lid or
     * base, a quarter of its diameter.
     */
    double length() {
        return facing == Orientation.SIDE ? height.meters() : diameter.meters() / 4;
    }
}
