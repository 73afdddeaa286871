package org.snugsheet.engine.surface;

/** Chooses the correlation of free convection that belongs to a face. */
final class FreeFilm {

    private FreeFilm() {}

    /**
     * The Nusselt number over {@link Face#length()}.
     *
     * @param rises whether the fluid at the face becomes lighter there
     */
    static double nusselt(Face face, double prandtl, double grashof, boolean rises) {
        if (face.facing() == Facing.SIDE) {
            return Convection.uprightCylinder(
                    prandtl, grashof, face.height().metres() / face.diameter().metres());
        }
        boolean leaves = (face.facing() == Facing.UP) == rises;
        double rayleigh = prandtl * grashof;
        // Fluid that does not move still conducts; these correlations alone would fall to nothing with the difference.
        return Math.max(1, leaves ? Convection.free(rayleigh) : Convection.trapped(rayleigh));
    }
}
