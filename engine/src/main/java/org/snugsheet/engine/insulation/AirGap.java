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
 * <p>Heat crosses the air in a gap by conduction, convection and radiation, so that its resistance hardly grows beyond 15 mm:
 * ISO 6946:2017, Table 8 (Table 2 of the 2007 edition), for ordinary surfaces, with linear interpolation as in the standard.
 * As a layer it has the conductivity that gives the same resistance on the flat, {@code λ = d/R}. The table holds only for a
 * closed gap; air trapped in wool or fur is already included in the figures of those materials.
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

    /** The end of the table, plus a little for the rounding of unit conversions. */
    private static final double WIDEST = 0.3 + 1e-9;

    private record Point(double millimeters, double resistance) {}

    private AirGap() {}

    /**
     * A gap at a vertical wall, which heat crosses horizontally.
     *
     * @param thickness how wide it is, up to the 300 mm of the standard
     * @return the layer
     * @throws InvalidInputException if it is wider, as a room is
     */
    public static Layer upright(Length thickness) {
        if (thickness.meters() > WIDEST) {
            throw InvalidInputException.of(Problem.AIR_GAP_TOO_WIDE, thickness.meters() * 1000);
        }
        return new Layer(thickness, new Conductivity(thickness.meters() / resistance(thickness.meters() * 1000)));
    }

    static boolean isMeantBy(String name) {
        return Names.words(name).equals(List.of("air", "gap"));
    }

    /** Whether a layer of this material is air. */
    static boolean isMadeOf(Material material) {
        return material.name().equals("still air");
    }

    private static double resistance(double millimeters) {
        for (int i = 1; i < PORTRAIT.size(); i++) {
            Point from = PORTRAIT.get(i - 1);
            Point to = PORTRAIT.get(i);
            if (millimeters <= to.millimeters) {
                double share = (millimeters - from.millimeters) / (to.millimeters - from.millimeters);
                return from.resistance + share * (to.resistance - from.resistance);
            }
        }
        return PORTRAIT.get(PORTRAIT.size() - 1).resistance;
    }
}
