package org.snugsheet.office.functions.shared;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.ClosedPair;
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
 * The arguments that every function of a jar’s readings takes.
 *
 * @param typed what was typed for a jar
 */
public record JarCells(TypedJar typed) {

    /** More jars than a class uses at once. */
    private static final int REMEMBERED = 64;

    private static final Memo<JarKey, JarFit> FITS = new Memo<>(REMEMBERED, key -> JarFit.of(key.jar()));
    private static final Memo<JarKey, JarSummary> SUMMARIES = new Memo<>(REMEMBERED, key -> JarSummary.of(key.jar()));

    /**
     * What was typed for one jar.
     *
     * @param times its times
     * @param temps its readings
     * @param surroundings what it stands in
     * @param mark the mark of its thermometer, or left out
     * @param scale its scale, or left out
     * @return the jar
     * @throws InvalidInputException if cells or options cannot be understood
     */
    public static JarCells of(
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

    /**
     * The fit of one jar.
     *
     * @param times its times
     * @param temps its readings
     * @param surroundings what it stands in
     * @param mark the mark of its thermometer, or left out
     * @param scale its scale, or left out
     * @return the fit
     * @throws InvalidInputException if the readings cannot be fitted
     */
    public static CoolingFit fit(
            Object[][] times,
            Object[][] temps,
            String[][] surroundings,
            @Nullable Object mark,
            @Nullable Object scale) {
        return of(times, temps, surroundings, mark, scale).fit();
    }

    /**
     * The summaries of the jars of a block; the mark and the surroundings are on the common scale.
     *
     * @param block the block
     * @param surroundings what all jars stand in
     * @param mark the mark of the thermometers, or left out
     * @param scale the common scale, or left out
     * @param language the language that an unnamed jar is named in
     * @return one for each jar, in the order of the block
     */
    public static List<JarSummary> summaries(
            Block block, String[][] surroundings, @Nullable Object mark, @Nullable Object scale, Language language) {
        Scale common = Options.scale(scale);
        List<Entry> around = Cells.line(surroundings);
        Optional<Graduation> given = Options.degrees(mark).map(degrees -> Graduation.of(degrees, common));
        return TypedJar.of(block, jar -> called(jar, language), around, given, common).stream()
                .map(jar -> SUMMARIES.get(new JarKey(jar)))
                .toList();
    }

    private static String called(Block.Jar jar, Language language) {
        String name = jar.heading().name();
        return name.isEmpty() ? language.say(JarWords.UNNAMED_JAR, jar.number()) : name;
    }

    /**
     * Its fit.
     *
     * @return the fit
     * @throws InvalidInputException if the readings cannot be fitted
     */
    public CoolingFit fit() {
        return FITS.get(new JarKey(typed)).fit().orRefuse();
    }

    /**
     * All that its readings tell.
     *
     * @return the summary
     */
    public JarSummary summary() {
        return SUMMARIES.get(new JarKey(typed));
    }

    /**
     * Its readings.
     *
     * @return the readings
     */
    public Readings readings() {
        return typed.readings();
    }

    /**
     * What it stands in.
     *
     * @return the surroundings
     */
    public Surroundings surroundings() {
        return typed.around();
    }

    /**
     * The mark of its thermometer.
     *
     * @return the mark
     */
    public Graduation mark() {
        return typed.mark();
    }

    /**
     * The law these readings support, with no bath to be considered.
     *
     * @return the law and its rivals
     * @throws InvalidInputException if the readings cannot be fitted
     */
    public ModelChoice law() {
        return law(null, null);
    }

    /**
     * The law these readings support.
     *
     * @param volume milliliters of water in the jar, or left out
     * @param bath milliliters of water in a bath that keeps its heat, or left out
     * @return the law and its rivals
     * @throws InvalidInputException if the readings cannot be fitted
     */
    public ModelChoice law(@Nullable Object volume, @Nullable Object bath) {
        // What cannot be fitted is refused here, with its place.
        CoolingFit fit = fit();
        List<ClosedPair> pair = Options.ratio(volume, bath).stream()
                .map(ratio -> new ClosedPair(fit.surroundings(), ratio))
                .toList();
        return ModelChoice.of(readings(), surroundings(), mark(), pair);
    }
}
