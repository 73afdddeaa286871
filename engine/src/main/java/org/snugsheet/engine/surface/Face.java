package org.snugsheet.engine.surface;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Length;

/**
 * One surface of a jar, as far as the film on it depends on it.
 *
 * @param facing which way it looks
 * @param height how high the jar stands
 * @param diameter how wide it is, from outside to outside
 * @param emissivity how well it radiates, as a share of a black body: {@link #USUAL_EMISSIVITY} of nearly everything, far
 *     less of bare metal
 */
public record Face(Orientation facing, Length height, Length diameter, double emissivity) {

    /** What ISO 6946:2017 takes for ordinary surfaces. */
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
     * The length that free convection depends on: the height of a side, the area over the edge of a lid or base, which is a
     * quarter of its diameter.
     */
    double length() {
        return facing == Orientation.SIDE ? height.metres() : diameter.metres() / 4;
    }
}
