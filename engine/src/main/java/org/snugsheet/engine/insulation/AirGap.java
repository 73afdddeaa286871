package org.snugsheet.engine.insulation;

import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.table.Names;

/**
 * An unventilated gap of air between two layers.
 *
 * <p>Air in a gap conducts, turns over and is radiated through, so that its resistance hardly grows beyond 15 mm: ISO
 * 6946:2017, Table 8 (Table 2 of the 2007 edition), for ordinary surfaces, linear in between as the standard says. As a layer
 * it is given the conductivity that comes to the same on the flat, {@code λ = d/R}. A gap is as the table says only where it
 * is closed; air trapped in wool or fur is in the figures of those materials already.
 */
public final class AirGap {

    private static final List<Point> PORTRAIT = List.of(
            new Point(0, 0),
            new Point(5, 0.11),
            new Point(7, 0.13),
            new Point(10, 0.15),
            new Point(15, 0.17),
            new Point(25, 0.18),
            new Point(300, 0.18));

    /** As far as the table goes; a hair more for what a change of units leaves. */
    private static final double WIDEST = 0.3 + 1e-9;

    private record Point(double millimetres, double resistance) {}

    private AirGap() {}

    /**
     * A gap beside an upright wall, through which heat flows sideways.
     *
     * @param thickness how wide it is, up to the 300 mm of the standard
     * @return the layer
     * @throws InvalidInputException if it is wider: that is a room
     */
    public static Layer upright(Length thickness) {
        if (thickness.metres() > WIDEST) {
            throw InvalidInputException.of(Problem.AIR_GAP_TOO_WIDE, thickness.metres() * 1000);
        }
        return new Layer(thickness, new Conductivity(thickness.metres() / resistance(thickness.metres() * 1000)));
    }

    static boolean isMeantBy(String name) {
        return Names.words(name).equals(List.of("air", "gap"));
    }

    /** Whether a layer of this material would be nothing but air. */
    static boolean isMadeOf(Material material) {
        return material.name().equals("still air");
    }

    private static double resistance(double millimetres) {
        for (int i = 1; i < PORTRAIT.size(); i++) {
            Point from = PORTRAIT.get(i - 1);
            Point to = PORTRAIT.get(i);
            if (millimetres <= to.millimetres) {
                double share = (millimetres - from.millimetres) / (to.millimetres - from.millimetres);
                return from.resistance + share * (to.resistance - from.resistance);
            }
        }
        return PORTRAIT.get(PORTRAIT.size() - 1).resistance;
    }
}
