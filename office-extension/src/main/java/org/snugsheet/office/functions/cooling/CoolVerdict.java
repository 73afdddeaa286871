package org.snugsheet.office.functions.cooling;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
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
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.JarCells;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.Language;

/** COOL: jars compared with each other: how many times slower, the verdict on two, the order of all. */
@Family(
        service = "snugsheet.Cool",
        texts = {Texts.class},
        title = "Comparing jars")
public interface CoolVerdict extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(CoolVerdict.class);

    /** COOL.SLOWER. */
    @CellFunction(
            order = 0,
            name = "COOL.SLOWER",
            text = "How many times slower the second jar cools than the first: the ratio of their cooling constants.",
            formula = "k₁/k₂",
            source = Sources.NEWTON + "; " + Sources.FIELLER,
            example = "COOL.SLOWER({0;5;10;15;20};{38;32;26;22;19};{0;5;10;15;20};{38;35;32;29;27};3)",
            answer = "2.088374",
            refused = "COOL.SLOWER({0;5;10};{38;32;26};{0;5;10};{38;38;38};3)",
            because = "the second jar does not cool at all")
    default double slower(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.OTHER_TIMES) Object[][] otherTimes,
            @Argument(Texts.OTHER_TEMPS) Object[][] otherTemps,
            @Argument(Texts.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
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

    /** COOL.SLOWER.ERROR. */
    @CellFunction(
            order = 1,
            name = "COOL.SLOWER.ERROR",
            text = "The standard error of COOL.SLOWER.",
            formula = "s(q) = q·√((s₁/k₁)² + (s₂/k₂)² + (∂ln q/∂Tₛ)²·δ²/12 + 2·v²); q = k₁/k₂",
            source = Sources.ERRORS,
            example = "COOL.SLOWER.ERROR({0;5;10;15;20};{38;32;26;22;19};{0;5;10;15;20};{38;35;32;29;27};3)",
            answer = "0.088195",
            refused = "COOL.SLOWER.ERROR({0;5;10};{38;32;26};{0;5;10};{38;38;38};3)",
            because = "the second jar does not cool at all")
    default double slowerError(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.OTHER_TIMES) Object[][] otherTimes,
            @Argument(Texts.OTHER_TEMPS) Object[][] otherTemps,
            @Argument(Texts.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale,
            @Argument(Texts.SPREAD) @Nullable Object spread)
            throws IllegalArgumentException, NoConvergenceException {
        return compared(times, temps, otherTimes, otherTemps, surroundings, mark, scale, (one, other) -> {
            double differ = spread(spread);
            return new Ratio(one.estimate().withSpread(differ), other.estimate().withSpread(differ)).standardError();
        });
    }

    /** COOL.VERDICT. */
    @CellFunction(
            order = 2,
            name = "COOL.VERDICT",
            text =
                    "One sentence a class can read: which jar cools more slowly and how surely, or that the readings cannot tell. With spread it holds for the wraps.",
            formula = "t = (k₁ − k₂)/√(s₁² + s₂² + (∂(k₁ − k₂)/∂Tₛ)²·δ²/12 + v²·(k₁² + k₂²))",
            source = Sources.WELCH + "; " + Sources.FIELLER,
            example = "COOL.VERDICT({0;5;10;15;20};{38;32;26;22;19};{0;5;10;15;20};{38;35;32;29;27};3)",
            answer =
                    "The second jar takes 2.09 times as long to cool as the first (between 1.88 and 2.33 times, 95 % sure).",
            refused = "COOL.VERDICT({0;5};{38;32};{0;5};{38;35};3)",
            because = "two readings of a jar are too few")
    default String verdict(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.OTHER_TIMES) Object[][] otherTimes,
            @Argument(Texts.OTHER_TEMPS) Object[][] otherTemps,
            @Argument(Texts.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale,
            @Argument(Texts.SPREAD) @Nullable Object spread)
            throws IllegalArgumentException, NoConvergenceException {
        return compared(times, temps, otherTimes, otherTemps, surroundings, mark, scale, (one, other) -> {
            double differ = spread(spread);
            Verdict verdict = Verdict.of(
                    one.conservativeEstimate().withSpread(differ),
                    other.conservativeEstimate().withSpread(differ));
            return VerdictWords.of(verdict, differ, DocumentLanguage.of(document));
        });
    }

    /** COOL.RANK. */
    @CellFunction(
            order = 3,
            name = "COOL.RANK",
            text =
                    "A table of wraps, the best first; those the readings cannot separate share a place. Jars of one name are taken together; one jar alone speaks for its wrap only with spread. Jars that cannot be judged come last, with the reason.",
            formula = "pᵢ·(m − i + 1) ≤ 0.05; i = 1, …, m",
            source = Sources.HOLM + "; " + Sources.WELCH + "; " + Sources.JARS,
            example =
                    "COOL.RANK({0;5;10;15;20};{38;38;38|32;35;35|26;32;31|22;29;29|19;27;27};{\"bare\";\"wool\";\"leaves\"};3)",
            answer = "Place",
            refused = "COOL.RANK({0;5;10;15;20};{38;32;26;22;19};\"bare\";3)",
            because = "one material alone cannot be ranked")
    default Object[][] rank(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.BLOCK) Object[][] block,
            @Argument(Texts.NAMES) Object[][] names,
            @Argument(Texts.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale,
            @Argument(Texts.SPREAD) @Nullable Object spread)
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

    /** COOL.SHEET. */
    @CellFunction(
            order = 4,
            name = "COOL.SHEET",
            text =
                    "A table of all jars of a whole sheet: readings used, cooling constant with its error, half-time, start, misfit, and whether the jar can be used: OK, or why not.",
            formula = "T(t) = Tₛ + A·e^(−k·t); Σ(Tᵢ − T(tᵢ))² → min",
            source = Sources.NEWTON + "; " + Sources.FIT,
            example = "COOL.SHEET({\"min\";\"bare\";\"wool °F\"|0;38;100|5;32;95|10;26;90|15;22;84|20;19;80};3)",
            answer = "Jar",
            refused = "COOL.SHEET({\"min\"|0|5};3)",
            because = "the block has no jar")
    default Object[][] sheet(
            XPropertySet document,
            @Argument(Texts.SHEET) Object[][] block,
            @Argument(Texts.SURROUNDINGS_BOTH) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Cells.requireFew(block);
            Language language = DocumentLanguage.of(document);
            Block jars = Block.of(Cells.rows(block));
            return SheetTable.of(JarCells.summaries(jars, surroundings, mark, scale, language), language);
        });
    }

    /** The default is 0, so a blank cell and a typed 0 mean the same. */
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
