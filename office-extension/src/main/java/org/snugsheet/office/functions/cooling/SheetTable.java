package org.snugsheet.office.functions.cooling;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.summary.JarSummary;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.words.Language;

/**
 * The table that COOL.SHEET answers with: one line for each jar of a block, in the block’s order. The last column says OK of a jar
 * that can be used; a jar that cannot has no numbers, and there the reason.
 */
final class SheetTable {

    private SheetTable() {}

    static Object[][] of(List<JarSummary> jars, Language language) {
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
        for (JarSummary jar : jars) {
            rows.add(jar.isUsable() ? usable(jar, language) : heldBack(jar, language));
        }
        return rows.toArray(Object[][]::new);
    }

    private static Object[] usable(JarSummary jar, Language language) {
        CoolingFit fit = jar.fit().fit().orRefuse();
        Scale scale = jar.typed().scale();
        return new Object[] {
            name(jar),
            (double) fit.readings().size(),
            fit.constant().perMinute(),
            fit.constantError().perMinute(),
            jar.fit()
                    .halfTime()
                    .found()
                    .map(seconds -> (Object) Minutes.of(seconds))
                    .orElseGet(() -> language.words(TableWords.HARDLY_COOLS)),
            jar.fit()
                    .start()
                    .found()
                    .map(start -> (Object) start.in(scale))
                    .orElseGet(() -> language.words(TableWords.OUT_OF_REACH)),
            scale.symbol(),
            fit.misfit().in(scale),
            Answer.OK
        };
    }

    private static Object[] heldBack(JarSummary jar, Language language) {
        String reason = jar.isWaiting()
                ? language.words(TableWords.WAITING)
                : language.say(jar.heldBackBecause().orElseThrow());
        return new Object[] {name(jar), "", "", "", "", "", jar.typed().scale().symbol(), "", reason};
    }

    static String name(JarSummary jar) {
        return jar.typed().name().orElse("");
    }
}
