package org.snugsheet.engine.surface;

/**
 * Nusselt numbers, the ratio of convection to pure conduction at a surface, each from a published correlation. The arguments
 * are dimensionless too.
 */
final class Convection {

    private Convection() {}

    /**
     * Free convection along a vertical plate, over its height: {@code Nu = (0.825 + 0.387·Ra^(1/6)/(1 +
     * (0.492/Pr)^(9/16))^(8/27))²}. Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975), 1323; good for any Ra up to
     * 10¹².
     */
    static double verticalPlate(double prandtl, double grashof) {
        double rayleigh = prandtl * grashof;
        double ofPrandtl = Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
        double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / ofPrandtl;
        return root * root;
    }

    /**
     * Free convection along an upright cylinder, over its height: that of the plate times {@code 1 + B·(√32·Gr^(−1/4)·H/D)^C}
     * with {@code B = 0.0571322 + 0.20305·Pr^(−0.43)} and {@code C = 0.9165 − 0.0043·√Pr + 0.01333·ln Pr + 0.0004809/Pr}.
     * Popiel, Wojtkowiak and Bober, Exp. Thermal Fluid Sci. 32 (2007), 607.
     *
     * @param heightOverDiameter H/D
     */
    static double uprightCylinder(double prandtl, double grashof, double heightOverDiameter) {
        if (grashof == 0) {
            return verticalPlate(prandtl, grashof);
        }
        double b = 0.0571322 + 0.20305 * Math.pow(prandtl, -0.43);
        double c = 0.9165 - 0.0043 * Math.sqrt(prandtl) + 0.01333 * Math.log(prandtl) + 0.0004809 / prandtl;
        double slenderness = Math.sqrt(32) * Math.pow(grashof, -0.25) * heightOverDiameter;
        return verticalPlate(prandtl, grashof) * (1 + b * Math.pow(slenderness, c));
    }

    /**
     * Free convection where the heated fluid can leave: above a warm surface that faces up, or below a cold one that faces
     * down. {@code Nu = 0.54·Ra^(1/4)} or {@code 0.15·Ra^(1/3)}, over area divided by edge. McAdams, Heat Transmission, 3rd
     * edition, 1954, published for Ra from 10⁴ to 10⁷ and from there to 10¹¹; the larger of the two is taken, so that there
     * is no jump between them.
     */
    static double free(double rayleigh) {
        return Math.max(0.54 * Math.pow(rayleigh, 0.25), 0.15 * Math.cbrt(rayleigh));
    }

    /**
     * Free convection where the heated fluid is trapped: below a warm surface that faces down, or above a cold one that faces
     * up. {@code Nu = 0.27·Ra^(1/4)}, over area divided by edge. McAdams, as above, for Ra from 10⁵ to 10¹⁰.
     */
    static double trapped(double rayleigh) {
        return 0.27 * Math.pow(rayleigh, 0.25);
    }

    /**
     * Flow across a cylinder, over its diameter:
     * {@code Nu = 0.3 + 0.62·Re^(1/2)·Pr^(1/3)/(1 + (0.4/Pr)^(2/3))^(1/4)·(1 + (Re/282000)^(5/8))^(4/5)}. Churchill and
     * Bernstein, J. Heat Transfer 99 (1977), 300.
     */
    static double acrossCylinder(double reynolds, double prandtl) {
        double ofPrandtl = Math.pow(1 + Math.pow(0.4 / prandtl, 2.0 / 3), 0.25);
        double ofReynolds = Math.pow(1 + Math.pow(reynolds / 282_000, 5.0 / 8), 4.0 / 5);
        return 0.3 + 0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl) / ofPrandtl * ofReynolds;
    }
}
