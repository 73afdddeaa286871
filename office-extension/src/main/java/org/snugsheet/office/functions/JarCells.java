package org.snugsheet.office.functions;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.ModelChoice;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.summary.JarFit;
import org.snugsheet.engine.summary.JarSummary;
import org.snugsheet.engine.summary.TypedJar;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.Language;

/**
 * The arguments that all functions of jars’ readings share.
 *
 * @param typed what was typed for a jar
 */
record JarCells(TypedJar typed) {

    /** As many jars as a class has in use at once, and some more. */
    private static final int REMEMBERED = 64;

    private static final FitMemo<TypedJar, JarFit> FITS = new FitMemo<>(REMEMBERED, JarFit::of);
    private static final FitMemo<TypedJar, JarSummary> SUMMARIES = new FitMemo<>(REMEMBERED, JarSummary::of);

    static JarCells of(
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        Scale common = Options.scale(scale);
        return new JarCells(new TypedJar(
                Optional.empty(),
                Cells.line(times),
                Cells.line(temps),
                Cells.line(surroundings),
                Options.mark(mark, common),
                common));
    }

    /** The summaries of the jars of a block; the mark and the surroundings are on the common scale. */
    static List<JarSummary> summaries(
            Block block, String[][] surroundings, @Nullable Object mark, @Nullable Object scale, Language language) {
        Scale common = Options.scale(scale);
        List<Entry> around = Cells.line(surroundings);
        Optional<Graduation> given = Options.degrees(mark).map(degrees -> Graduation.of(degrees, common));
        return TypedJar.of(block, jar -> called(jar, language), around, given, common).stream()
                .map(SUMMARIES::get)
                .toList();
    }

    private static String called(Block.Jar jar, Language language) {
        String name = jar.heading().name();
        return name.isEmpty() ? language.say(TableWords.UNNAMED_JAR, jar.number()) : name;
    }

    CoolingFit fit() {
        return summary(FITS).fit().orRefuse();
    }

    /** The fit with what can be told from it. */
    JarFit known() {
        return summary(FITS);
    }

    JarSummary summary() {
        return summary(SUMMARIES);
    }

    private <V> V summary(FitMemo<TypedJar, V> memo) {
        return memo.get(typed);
    }

    Readings readings() {
        return typed.readings();
    }

    Surroundings surroundings() {
        return typed.around();
    }

    Graduation mark() {
        return typed.mark();
    }

    /** The law these readings support, with no bath to be thought of. */
    ModelChoice law() {
        return ModelChoice.of(readings(), surroundings(), mark(), List.of());
    }
}
