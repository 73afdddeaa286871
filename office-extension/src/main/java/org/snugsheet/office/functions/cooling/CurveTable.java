package org.snugsheet.office.functions.cooling;

import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.CoolingIntervals;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.TimeColumn;
import org.snugsheet.office.functions.shared.JarCells;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.words.Language;

/** The table that COOL.CURVE answers with. */
final class CurveTable {

    private CurveTable() {}

    static Object[][] of(List<Entry> wanted, JarCells jar, Language language) {
        refuseTimesOfDay(wanted);
        CoolingFit fit = jar.fit();
        CoolingIntervals limits = fit.intervals(Verdict.CONFIDENCE);
        Scale scale = jar.readings().scale();
        Object[][] table = new Object[wanted.size() + 1][];
        table[0] = language.row(TableWords.FITTED, TableWords.FROM_95, TableWords.TO_95);
        for (int i = 0; i < wanted.size(); i++) {
            table[i + 1] = wanted.get(i) instanceof Entry.Missing
                    ? new Object[] {"", "", ""}
                    : onCurve(fit, limits, wanted.get(i).asNumber(i + 1), scale, language);
        }
        return table;
    }

    private static Object[] onCurve(
            CoolingFit fit, CoolingIntervals limits, double minutes, Scale scale, Language language) {
        double seconds = Minutes.toSeconds(minutes);
        Interval band = limits.at(seconds);
        return new Object[] {
            fit.at(seconds).in(scale),
            ReportTable.degrees(band.low(), scale, language),
            ReportTable.degrees(band.high(), scale, language)
        };
    }

    /** Times for a chart may be as close as it needs, but a clock time such as 9:05 is not a number of minutes. */
    private static void refuseTimesOfDay(List<Entry> wanted) {
        TimeColumn.of(wanted)
                .notMinutes()
                .filter(finding -> finding.problem() == Problem.CLOCK_TIMES)
                .ifPresent(finding -> {
                    throw new InvalidInputException(finding);
                });
    }
}
