package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.comparison.NamedEstimate;
import org.snugsheet.engine.comparison.RankedMaterial;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.office.functions.cooling.VerdictWords;
import org.snugsheet.office.words.Language;

/**
 * What a program worked out of the pages of invented classes, against the engine, whose own checks against handbooks and reference libraries are in
 * its tests: 9 digits, and a refusal where the engine refuses.
 */
final class ClassComparison {

    private static final double DIGITS = 1e-9;

    /** Below it a number counts as compared with this one, so that a misfit of nothing is not asked for 9 digits. */
    private static final double LEAST = 1e-6;

    /** Commons Math’s t, by which the engine goes there, is off by 1e−8 itself (StudentT says so). */
    private static final double MANY = 1e6;

    private static final String REFUSAL = "#N/A";

    private static final System.Logger LOG = System.getLogger(ClassComparison.class.getName());

    private final List<String> differences = new ArrayList<>();
    private int classes;
    private int numbers;
    private int texts;
    private int refusals;
    private double worst;

    /** What a program has in a cell of the page of steps: a number, or what else is shown. */
    private record WorkedOut(ClassPages pages, Function<String, Object> cells) {

        Object at(@Nullable String cell) {
            return cells.apply(String.valueOf(cell));
        }
    }

    /** What differed so far; nothing is a pass. */
    List<String> differences() {
        return List.copyOf(differences);
    }

    int compared() {
        return numbers + texts;
    }

    /** What was compared so far, in one line. */
    String told() {
        return classes + " classes: " + numbers + " numbers, " + texts + " texts, " + refusals
                + " refusals, worst difference " + worst + ", " + differences.size() + " beyond it";
    }

    /**
     * Compares a class.
     *
     * @param pages its pages
     * @param cells what the program has in each cell of the steps: a number as a Double, anything else as it is shown
     */
    void compare(ClassPages pages, Function<String, Object> cells) {
        classes++;
        WorkedOut found = new WorkedOut(pages, cells);
        List<NamedEstimate> estimates = new ArrayList<>();
        List<Optional<CoolingFit>> fits = new ArrayList<>();
        for (int jar = 0; jar < pages.jars().size(); jar++) {
            Optional<CoolingFit> fit = fit(pages.invented(), jar);
            fits.add(fit);
            compareJar(found, jar, fit);
            String wrap = pages.invented().names().get(jar);
            fit.ifPresent(one -> estimates.add(new NamedEstimate(wrap, one.conservativeEstimate())));
        }
        compareVerdict(found, fits.get(0), fits.get(1));
        compareRanking(found, known(() -> Ranking.of(estimates, pages.spread())));
    }

    private static Optional<CoolingFit> fit(InventedClass invented, int jar) {
        Scale scale = Scale.parse(invented.scale());
        List<Entry> minutes = invented.minutes().stream().map(Entry::of).toList();
        List<Entry> readings =
                invented.jars().get(jar).stream().map(ClassComparison::entry).toList();
        return known(() -> CoolingFit.of(
                Readings.ofMinutes(minutes, readings, scale),
                Surroundings.of(List.of(entry(invented.around())), minutes, scale),
                Graduation.of(invented.mark(), scale)));
    }

    private static Entry entry(Object typed) {
        return typed instanceof Double number ? Entry.of(number) : Entry.of(String.valueOf(typed));
    }

    private static <T> Optional<T> known(Supplier<T> answer) {
        try {
            return Optional.of(answer.get());
        } catch (InvalidInputException refusal) {
            return Optional.empty();
        }
    }

    private void compareJar(WorkedOut found, int jar, Optional<CoolingFit> fit) {
        InventedClass invented = found.pages().invented();
        Map<String, String> answers = found.pages().jars().get(jar);
        Scale scale = Scale.parse(invented.scale());
        number(found, answers.get("COOL.RATE"), fit.map(f -> f.constant().perMinute()));
        number(
                found,
                answers.get("COOL.RATE.ERROR"),
                fit.map(f -> f.constantError().perMinute()));
        number(
                found,
                answers.get("COOL.HALFTIME"),
                fit.flatMap(f -> known(f::halfTime)).map(s -> s / 60));
        number(
                found,
                answers.get("COOL.HALFTIME.ERROR"),
                fit.flatMap(f -> known(f::halfTimeError)).map(s -> s / 60));
        number(
                found,
                answers.get("COOL.START"),
                fit.flatMap(f -> known(f::start)).map(t -> t.in(scale)));
        number(found, answers.get("COOL.MISFIT"), fit.map(f -> f.misfit().in(scale)));
        String table = String.valueOf(answers.get(ClassPages.CURVE));
        for (int i = 0; i < 3; i++) {
            double seconds = 60 * (invented.minutes().get(i) + 1);
            Optional<Interval> band = fit.map(f -> f.intervals(0.95).at(seconds));
            number(found, cell(found, table, 0, i), fit.map(f -> f.at(seconds).in(scale)));
            number(found, cell(found, table, 1, i), band.map(b -> new Temperature(b.low()).in(scale)));
            number(found, cell(found, table, 2, i), band.map(b -> new Temperature(b.high()).in(scale)));
        }
    }

    private void compareRanking(WorkedOut found, Optional<Ranking> ranking) {
        String table = found.pages().ranked();
        if (ranking.isEmpty()) {
            number(found, cell(found, table, 3, 0), Optional.empty());
            return;
        }
        List<RankedMaterial> materials = ranking.get().materials();
        for (int i = 0; i < materials.size(); i++) {
            RankedMaterial material = materials.get(i);
            String ties = String.join(
                    ", ",
                    ranking.get().notToldApartFrom(i).stream()
                            .map(RankedMaterial::name)
                            .toList());
            text(found, cell(found, table, 1, i), material.name());
            text(found, cell(found, table, 7, i), ties);
            number(found, cell(found, table, 0, i), Optional.of((double) material.place()));
            number(
                    found,
                    cell(found, table, 3, i),
                    Optional.of(material.estimate().value()));
            if (material.estimate().degreesOfFreedom() < MANY) {
                Interval limits = material.estimate().interval(0.95);
                number(found, cell(found, table, 4, i), Optional.of(Math.max(0, limits.low())));
                number(found, cell(found, table, 5, i), Optional.of(limits.high()));
            }
        }
    }

    private void compareVerdict(WorkedOut found, Optional<CoolingFit> one, Optional<CoolingFit> other) {
        String cell = found.pages().verdict();
        double spread = found.pages().spread();
        if (one.isEmpty() || other.isEmpty()) {
            number(found, cell, Optional.empty());
            return;
        }
        Optional<Verdict> verdict = known(() -> Verdict.of(
                one.get().conservativeEstimate().withSpread(spread),
                other.get().conservativeEstimate().withSpread(spread)));
        String counted = spread == 0 ? "" : " " + Language.ENGLISH.say(VerdictWords.COUNTED_IN, spread);
        verdict.ifPresentOrElse(
                told -> text(found, cell, sentence(told) + counted), () -> number(found, cell, Optional.empty()));
    }

    private static String sentence(Verdict verdict) {
        if (verdict instanceof Verdict.CannotTell) {
            return Language.ENGLISH.words(VerdictWords.CANNOT_TELL);
        }
        boolean isSecond = verdict instanceof Verdict.SecondSlower;
        Interval limits = verdict.interval();
        if (!verdict.ratio().isDefined()) {
            return Language.ENGLISH.say(
                    isSecond ? VerdictWords.SECOND_HARDLY : VerdictWords.FIRST_HARDLY, limits.low());
        }
        VerdictWords bounded = isSecond ? VerdictWords.SECOND : VerdictWords.FIRST;
        VerdictWords atLeast = isSecond ? VerdictWords.SECOND_AT_LEAST : VerdictWords.FIRST_AT_LEAST;
        return Language.ENGLISH.say(
                limits.isBounded() ? bounded : atLeast, verdict.ratio().value(), limits.low(), limits.high());
    }

    /** A cell of a table, in a row below its heads. */
    private static String cell(WorkedOut found, String table, int column, int row) {
        return found.pages().cell(table, column, row + 1);
    }

    private void number(WorkedOut found, @Nullable String cell, Optional<Double> expected) {
        Object seen = found.at(cell);
        if (expected.isEmpty()) {
            refusals++;
            same(seen.equals(REFUSAL), found, cell, seen, REFUSAL);
            return;
        }
        numbers++;
        double unit = Math.max(Math.abs(expected.get()), LEAST);
        double difference =
                seen instanceof Double number ? Math.abs(expected.get() - number) / unit : Double.POSITIVE_INFINITY;
        boolean isSame = difference <= DIGITS;
        worst = isSame ? Math.max(worst, difference) : worst;
        same(isSame, found, cell, seen, expected.get());
    }

    private void text(WorkedOut found, @Nullable String cell, String expected) {
        texts++;
        Object seen = found.at(cell);
        same(seen.equals(expected), found, cell, seen, expected);
    }

    private void same(boolean isSame, WorkedOut found, @Nullable String cell, Object seen, Object expected) {
        if (!isSame) {
            String difference = found.pages().name() + ": " + cell + " is " + seen + " instead of " + expected;
            differences.add(difference);
            // Of a thousand classes somebody wants to know before the last one.
            LOG.log(System.Logger.Level.WARNING, difference);
        }
    }
}
