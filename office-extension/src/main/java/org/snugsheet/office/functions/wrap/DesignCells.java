package org.snugsheet.office.functions.wrap;

import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.heat.WaterBody;
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
import org.snugsheet.office.functions.shared.LayerCells;

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
        Volume held = Volume.of(Cells.number(volume), Unit.MILLILITER);
        Jar jar = Jar.holding(held, Length.of(Cells.number(radius), Unit.MILLIMETER));
        Design design = new Design(
                jar,
                LayerCells.layers(thicknesses, materials),
                Options.resistance(lid, Unit.SQUARE_METER_KELVIN_PER_WATT),
                Options.resistance(base, Unit.SQUARE_METER_KELVIN_PER_WATT),
                place(where),
                Options.temperatureNotZero(room, s).orElse(Design.USUAL_ROOM));
        WaterBody water = WaterBody.of(held, Cells.temperature(warm, s)).withVessel(Options.heatCapacity(vessel));
        return new DesignCells(design, water, Cells.temperature(cold, s), s);
    }

    HeatFlow flow() {
        return design.between(water.temperature(), surroundings);
    }

    private static Ambient place(@Nullable Object where) {
        return Options.given(where)
                .map(entry -> entry instanceof Entry.Text text
                        ? Ambient.parse(text.text())
                        : new KnownSurface(new ThermalResistance(entry.asNumber(1))))
                .orElseGet(StillAir::new);
    }
}
