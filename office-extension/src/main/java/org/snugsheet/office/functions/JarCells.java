package org.snugsheet.office.functions;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Mark;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;

/**
 * The arguments that all functions of one jar’s readings share.
 *
 * @param readings the readings
 * @param surroundings what the jar stands in
 * @param mark the mark of the thermometer
 */
record JarCells(Readings readings, Surroundings surroundings, Mark mark) {

    /** As many jars as a class has in use at once, and some more. */
    private static final FitMemo<JarCells, CoolingFit> FITS =
            new FitMemo<>(64, jar -> CoolingFit.of(jar.readings, jar.surroundings, jar.mark));

    static JarCells of(
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        return of(Cells.line(times), Cells.line(temps), Cells.line(surroundings), mark, Options.scale(scale));
    }

    static JarCells of(
            List<Entry> minutes,
            List<Entry> temperatures,
            List<Entry> surroundings,
            @Nullable Object mark,
            Scale scale) {
        return new JarCells(
                Readings.ofMinutes(minutes, temperatures, scale),
                Surroundings.of(surroundings, minutes, scale),
                Options.mark(mark, scale));
    }

    CoolingFit fit() {
        return FITS.get(this);
    }
}
