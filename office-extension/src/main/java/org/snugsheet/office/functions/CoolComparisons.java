package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.summary.JarRanking;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

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
            @Nullable Object scale,
            @Nullable Object spread)
            throws IllegalArgumentException, NoConvergenceException {
        return compared(times, temps, otherTimes, otherTemps, surroundings, mark, scale, (one, other) -> {
            double differ = spread(spread);
            return new Ratio(one.estimate().withSpread(differ), other.estimate().withSpread(differ)).standardError();
        });
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
            @Nullable Object scale,
            @Nullable Object spread)
            throws IllegalArgumentException, NoConvergenceException {
        return compared(times, temps, otherTimes, otherTemps, surroundings, mark, scale, (one, other) -> {
            double differ = spread(spread);
            Verdict verdict = Verdict.of(
                    one.conservativeEstimate().withSpread(differ),
                    other.conservativeEstimate().withSpread(differ));
            return VerdictWords.of(verdict, differ, DocumentLanguage.of(document));
        });
    }

    @Override
    public Object[][] rank(
            XPropertySet document,
            Object[][] times,
            Object[][] block,
            Object[][] names,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale,
            @Nullable Object spread)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Cells.requireFew(block);
            Language language = DocumentLanguage.of(document);
            Block jars = Block.of(Cells.line(times), Cells.line(names), Cells.columns(block));
            return RankTable.of(
                    JarRanking.of(JarCells.summaries(jars, surroundings, mark, scale, language), spread(spread)),
                    language);
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
        return Answer.of(() -> {
            Cells.requireFew(block);
            Language language = DocumentLanguage.of(document);
            Block jars = Block.of(Cells.rows(block));
            return SheetTable.of(JarCells.summaries(jars, surroundings, mark, scale, language), language);
        });
    }

    /** Nothing is the usual spread, so that a blank cell and a typed 0 mean the same. */
    private static double spread(@Nullable Object spread) {
        return Options.number(spread).orElse(0.0);
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
