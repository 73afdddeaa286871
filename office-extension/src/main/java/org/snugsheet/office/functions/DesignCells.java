package org.snugsheet.office.functions;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.jar.Design;
import org.snugsheet.engine.jar.HeatFlow;
import org.snugsheet.engine.jar.Jar;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.surface.Ambient;
import org.snugsheet.engine.surface.KnownSurface;
import org.snugsheet.engine.surface.StillAir;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;

/**
 * The cells that describe a wrapped jar, which many WRAP functions begin with.
 *
 * @param design how it is wrapped and where it stands
 * @param water what is in it
 * @param surroundings how warm the place is
 * @param scale the scale of all temperatures
 */
record DesignCells(Design design, WaterBody water, Temperature surroundings, Scale scale) {

    static DesignCells of(
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object vessel,
            @Nullable Object scale) {
        Scale s = Options.scale(scale);
        Volume held = Volume.of(Cells.number(volume), Unit.MILLILITRE);
        Jar jar = Jar.holding(held, Length.of(Cells.number(radius), Unit.MILLIMETRE));
        Design design = new Design(
                jar,
                layers(Cells.line(thicknesses), Cells.line(materials)),
                Options.resistance(lid, Unit.SQUARE_METRE_KELVIN_PER_WATT),
                Options.resistance(base, Unit.SQUARE_METRE_KELVIN_PER_WATT),
                place(where),
                Options.temperatureNotZero(room, s).orElse(Design.USUAL_ROOM));
        WaterBody water = WaterBody.of(held, Cells.temperature(warm, s)).withVessel(Options.heatCapacity(vessel));
        return new DesignCells(design, water, Cells.temperature(cold, s), s);
    }

    HeatFlow flow() {
        return design.between(water.temperature(), surroundings);
    }

    /**
     * Layers from cells: a row blank on both sides is a layer nobody has chosen yet; on one side, somebody forgot it. A layer is
     * called by its place in the list, blank ones counted too, as the person who types sees it.
     */
    static Layers layers(List<Entry> thicknesses, List<Entry> materials) {
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
        double millimetres = number(thickness, Problem.LAYER_THICKNESS_BLANK);
        return material instanceof Entry.Text text
                ? layers.with(millimetres, text.text())
                : layers.with(millimetres, number(material, Problem.LAYER_MATERIAL_BLANK));
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

    private static Ambient place(@Nullable Object where) {
        return Options.given(where)
                .map(entry -> entry instanceof Entry.Text text
                        ? Ambient.parse(text.text())
                        : new KnownSurface(new ThermalResistance(entry.asNumber(1))))
                .orElseGet(StillAir::new);
    }
}
