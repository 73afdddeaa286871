package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.words.Language;

/** The table that COOL.SHEET answers with: one line for each jar of a block, in the block’s order. */
final class SheetTable {

    private static final double SECONDS_PER_MINUTE = 60;

    private SheetTable() {}

    static Object[][] of(
            Block block, List<Entry> surroundings, @Nullable Object mark, Scale common, Language language) {
        // The surroundings are on the common scale, whatever a jar’s own thermometer shows.
        List<Entry> around =
                surroundings.stream().map(entry -> entry.onScale(common)).toList();
        List<Object[]> rows = new ArrayList<>();
        rows.add(language.row(
                TableWords.JAR,
                TableWords.READINGS,
                TableWords.CONSTANT_PER_MINUTE,
                TableWords.ERROR,
                TableWords.HALF_TIME_MINUTES,
                TableWords.START_READ,
                TableWords.SCALE,
                TableWords.MISFIT_READ,
                TableWords.CAN_IT_BE_USED));
        for (Block.Jar jar : block.jars()) {
            Scale scale = jar.scale().orElse(common);
            try {
                rows.add(line(
                        jar.name(),
                        JarCells.of(block.times(), jar.temperatures(), around, mark, scale)
                                .fit(),
                        scale,
                        language));
            } catch (Refusal refusal) {
                rows.add(new Object[] {
                    jar.name(), "", "", "", "", "", scale.symbol(), "", language.say(refusal.finding())
                });
            }
        }
        return rows.toArray(Object[][]::new);
    }

    private static Object[] line(String name, CoolingFit fit, Scale scale, Language language) {
        double constant = fit.constant().perMinute();
        return new Object[] {
            name,
            (double) fit.readings().size(),
            constant,
            fit.constantError().perMinute(),
            constant > 0
                    ? (Object) (fit.constant().halfTime() / SECONDS_PER_MINUTE)
                    : language.words(TableWords.NO_LIMIT),
            fit.at(0).in(scale),
            scale.symbol(),
            fit.misfit().in(scale),
            "OK"
        };
    }
}
