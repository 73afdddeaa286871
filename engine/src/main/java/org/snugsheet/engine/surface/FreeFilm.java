package org.snugsheet.engine.surface;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/** Chooses the correlation of free convection for a surface. */
final class FreeFilm {

    /** The greatest Rayleigh numbers of the three correlations, as {@link Convection} names them. */
    private static final double MOST_AT_SIDE = 1e12;

    private static final double MOST_LEAVING = 1e11;
    private static final double MOST_TRAPPED = 1e10;

    private FreeFilm() {}

    /**
     * The Nusselt number over {@link Face#length()}.
     *
     * @param rises whether the fluid at the face becomes lighter there
     * @throws InvalidInputException if the surface or the difference is too large for the correlations
     */
    static double nusselt(Face face, double prandtl, double grashof, boolean rises) {
        if (face.facing() == Orientation.SIDE) {
            require(prandtl * grashof, MOST_AT_SIDE);
            return Convection.uprightCylinder(
                    prandtl, grashof, face.height().meters() / face.diameter().meters());
        }
        boolean leaves = (face.facing() == Orientation.UP) == rises;
        double rayleigh = prandtl * grashof;
        require(rayleigh, leaves ? MOST_LEAVING : MOST_TRAPPED);
        // A fluid at rest still conducts; the correlations alone would approach zero with the difference.
        return Math.max(1, leaves ? Convection.free(rayleigh) : Convection.trapped(rayleigh));
    }

    private static void require(double rayleigh, double most) {
        if (rayleigh > most) {
            throw InvalidInputException.of(Problem.SURFACE_TOO_LARGE);
        }
    }
}
