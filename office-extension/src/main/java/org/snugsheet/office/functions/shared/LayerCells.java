package org.snugsheet.office.functions.shared;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.insulation.FlatWrap;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;

/** The cells that describe layers. */
public final class LayerCells {

    /** More than anybody can wrap around a jar; a whole column has a million. Common practice, no source. */
    private static final int MOST = 1000;

    private LayerCells() {}

    /**
     * Flat layers and the films on them.
     *
     * @param thicknesses in millimeters, from inside to outside
     * @param materials names or conductivities
     * @param inside resistance of the inside surface, or left out
     * @param outside resistance of the outside surface, or left out
     * @param unit the unit of both resistances, or left out
     * @return the wrap
     */
    public static FlatWrap flat(
            Object[][] thicknesses,
            Object[][] materials,
            @Nullable Object inside,
            @Nullable Object outside,
            @Nullable Object unit) {
        Unit wanted = Options.resistanceUnit(unit);
        return new FlatWrap(
                layers(thicknesses, materials),
                Options.resistance(inside, wanted),
                Options.resistance(outside, wanted));
    }

    /**
     * Layers from cells, as for {@link #layers(List, List)}.
     *
     * @param thicknesses in millimeters, from inside to outside
     * @param materials names or conductivities, one for each thickness
     * @return the layers
     * @throws InvalidInputException if more than {@value #MOST} cells of either are filled, there is not one material for each
     *     thickness, or a layer cannot be understood
     */
    public static Layers layers(Object[][] thicknesses, Object[][] materials) {
        return layers(Cells.line(thicknesses, MOST), Cells.line(materials, MOST));
    }

    /**
     * Layers from cells. A row with both cells blank is skipped; a row with one blank cell is refused. Refusals count the layers as
     * the person who types sees them: blank rows included.
     *
     * @param thicknesses in millimeters, from inside to outside
     * @param materials names or conductivities, one for each thickness
     * @return the layers
     * @throws InvalidInputException if there is not one material for each thickness, or a layer cannot be understood
     */
    public static Layers layers(List<Entry> thicknesses, List<Entry> materials) {
        if (thicknesses.size() != materials.size()) {
            throw InvalidInputException.of(Problem.DIFFERENT_LAYERS, thicknesses.size(), materials.size());
        }
        Layers layers = Layers.NONE;
        for (int i = 0; i < thicknesses.size(); i++) {
            Entry thickness = thicknesses.get(i);
            Entry material = materials.get(i);
            if (!(material instanceof Entry.Missing && thickness instanceof Entry.Missing)) {
                try {
                    layers = withOneMore(layers, thickness, material);
                } catch (InvalidInputException refusal) {
                    throw atLayer(i + 1, refusal);
                }
            }
        }
        return layers;
    }

    private static Layers withOneMore(Layers layers, Entry thickness, Entry material) {
        double millimeters = number(thickness, Problem.LAYER_THICKNESS_BLANK);
        return material instanceof Entry.Text text
                ? layers.with(millimeters, text.text())
                : layers.with(millimeters, number(material, Problem.LAYER_MATERIAL_BLANK));
    }

    private static double number(Entry entry, Problem ifBlank) {
        if (entry instanceof Entry.Missing) {
            throw InvalidInputException.atItem(1, ifBlank);
        }
        try {
            return entry.asNumber(1);
        } catch (InvalidInputException refusal) {
            throw InvalidInputException.atItem(1, Problem.LAYER_SAYS_NO_NUMBER, entry.written());
        }
    }

    private static InvalidInputException atLayer(int layer, InvalidInputException refusal) {
        List<Object> arguments = refusal.finding().arguments();
        return refusal.row().isPresent()
                ? InvalidInputException.atItem(
                        layer,
                        refusal.problem(),
                        arguments.subList(1, arguments.size()).toArray())
                : refusal;
    }
}
