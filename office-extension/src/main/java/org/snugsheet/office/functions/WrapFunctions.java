package org.snugsheet.office.functions;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.insulation.FlatWrap;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;

/** The WRAP functions. */
public final class WrapFunctions extends FamilyService implements Wrap {

    /** For the office, which makes one for a session. */
    public WrapFunctions() {
        super(Wrap.class);
    }

    @Override
    public double layer(String[][] thickness, String[][] material, @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit wanted = Options.resistanceUnit(unit);
            Layers layers = layers(List.of(Cells.single(thickness)), List.of(Cells.single(material)));
            return FlatWrap.of(layers).resistance().in(wanted);
        });
    }

    @Override
    public double flat(
            Object[][] thicknesses,
            Object[][] materials,
            @Nullable Object inside,
            @Nullable Object outside,
            @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit wanted = Options.resistanceUnit(unit);
            Layers layers = layers(Cells.line(thicknesses), Cells.line(materials));
            return new FlatWrap(layers, Options.resistance(inside, wanted), Options.resistance(outside, wanted))
                    .resistance()
                    .in(wanted);
        });
    }

    // A row that is blank on both sides is a layer nobody has chosen yet; blank on one side, somebody forgot to type.
    private static Layers layers(List<Entry> thicknesses, List<Entry> materials) {
        if (thicknesses.size() != materials.size()) {
            throw Refusal.of(Trouble.DIFFERENT_LAYERS, thicknesses.size(), materials.size());
        }
        Layers layers = Layers.NONE;
        for (int i = 0; i < thicknesses.size(); i++) {
            Entry material = materials.get(i);
            if (material instanceof Entry.Gap && thicknesses.get(i) instanceof Entry.Gap) {
                continue;
            }
            double millimetres = thicknesses.get(i).asNumber(i + 1);
            layers = material instanceof Entry.Text text
                    ? layers.with(millimetres, text.text())
                    : layers.with(millimetres, material.asNumber(i + 1));
        }
        return layers;
    }
}
