package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.comparison.NamedEstimate;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;

/** The COOL functions that set jars against each other. */
abstract class CoolComparisons extends CoolFits implements CoolCompare {

    @Override
    public double slower(
            Object[][] times,
            Object[][] temps,
            Object[][] otherTimes,
            Object[][] otherTemps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return compared(
                times,
                temps,
                otherTimes,
                otherTemps,
                surroundings,
                mark,
                scale,
                (one, other) -> new Ratio(one.estimate(), other.estimate()).value());
    }

    @Override
    public double slowerError(
            Object[][] times,
            Object[][] temps,
            Object[][] otherTimes,
            Object[][] otherTemps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return compared(
                times,
                temps,
                otherTimes,
                otherTemps,
                surroundings,
                mark,
                scale,
                (one, other) -> new Ratio(one.estimate(), other.estimate()).standardError());
    }

    @Override
    public String verdict(
            XPropertySet document,
            Object[][] times,
            Object[][] temps,
            Object[][] otherTimes,
            Object[][] otherTemps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return compared(
                times,
                temps,
                otherTimes,
                otherTemps,
                surroundings,
                mark,
                scale,
                (one, other) -> VerdictWords.of(
                        Verdict.of(one.cautiousEstimate(), other.cautiousEstimate()), DocumentLanguage.of(document)));
    }

    @Override
    public Object[][] rank(
            XPropertySet document,
            Object[][] times,
            Object[][] block,
            Object[][] names,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            List<Entry> called = Cells.line(names);
            int jars = block[0].length;
            if (called.size() != jars) {
                throw Refusal.of(Trouble.DIFFERENT_NAMES, called.size(), jars);
            }
            List<Entry> minutes = Cells.line(times);
            List<Entry> around = Cells.line(surroundings);
            Scale common = Options.scale(scale);
            List<NamedEstimate> estimates = new ArrayList<>();
            for (int jar = 0; jar < jars; jar++) {
                List<Entry> temperatures = Cells.line(Cells.column(block, jar));
                CoolingFit fit =
                        JarCells.of(minutes, temperatures, around, mark, common).fit();
                estimates.add(new NamedEstimate(Cells.written(called.get(jar)), fit.cautiousEstimate()));
            }
            return RankTable.of(Ranking.of(estimates), DocumentLanguage.of(document));
        });
    }

    @Override
    public Object[][] sheet(
            XPropertySet document,
            Object[][] block,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> SheetTable.of(
                Block.of(Cells.rows(block)),
                Cells.line(surroundings),
                mark,
                Options.scale(scale),
                DocumentLanguage.of(document)));
    }

    private static <T> T compared(
            Object[][] times,
            Object[][] temps,
            Object[][] otherTimes,
            Object[][] otherTemps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale,
            BiFunction<CoolingFit, CoolingFit, T> answer)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> answer.apply(
                JarCells.of(times, temps, surroundings, mark, scale).fit(),
                JarCells.of(otherTimes, otherTemps, surroundings, mark, scale).fit()));
    }
}
