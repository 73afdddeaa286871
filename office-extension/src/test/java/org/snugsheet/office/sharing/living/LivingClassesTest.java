package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
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
 * Random classes in a living copy, recalculated by Apache POI, against the engine, whose own checks against handbooks and reference libraries are
 * in its tests: 9 digits, and a refusal where the engine refuses. {@code -Dliving.classes=1000} for many.
 */
class LivingClassesTest {

    private static final int CLASSES = Integer.getInteger("living.classes", 6);
    private static final long SEED = Long.getLong("living.seed", 20261127);
    private static final double DIGITS = 1e-9;

    /** Commons Math’s t, by which the engine goes there, is off by 1e−8 itself (StudentT says so). */
    private static final double MANY = 1e6;

    private static final String SHEET = "class";
    private static final String STEPS = "steps";

    private static final System.Logger LOG = System.getLogger(LivingClassesTest.class.getName());
    private static final int TOLD = 50;

    private int compared;
    private int refused;
    private double worst;

    @Test
    void aClassIsToldTheSameAsByTheEngine() {
        Random random = new Random(SEED);
        for (int i = 0; i < CLASSES; i++) {
            compare(InventedClass.of(random), random.nextBoolean() ? 0 : 0.1, "class " + i + " of seed " + SEED);
            if ((i + 1) % TOLD == 0) {
                LOG.log(
                        System.Logger.Level.INFO,
                        (i + 1) + " classes: " + compared + " values, " + refused + " refusals, worst difference "
                                + worst);
            }
        }
        assertTrue(compared > 20 * CLASSES, () -> compared + " values were compared, " + refused + " refused");
    }

    private void compare(InventedClass invented, double spread, String name) {
        int n = invented.minutes().size();
        int jars = invented.jars().size();
        PoiBook book = new PoiBook();
        Sheet sheet = book.sheet(SHEET);
        for (int i = 0; i < n; i++) {
            Row row = sheet.createRow(i + 1);
            row.createCell(0).setCellValue(invented.minutes().get(i));
            row.createCell(10).setCellValue(invented.minutes().get(i) + 1);
            for (int jar = 0; jar < jars; jar++) {
                Object typed = invented.jars().get(jar).get(i);
                if (!typed.equals("")) {
                    PoiBook.put(row.createCell(1 + jar), typed);
                }
            }
        }
        Row head = sheet.createRow(0);
        for (int jar = 0; jar < jars; jar++) {
            PoiBook.put(head.createCell(1 + jar), invented.names().get(jar));
        }
        Row options = sheet.createRow(n + 1);
        Object[] given = {invented.around(), invented.mark(), invented.scale(), spread};
        for (int i = 0; i < given.length; i++) {
            PoiBook.put(options.createCell(i), given[i]);
        }
        Map<String, Object> cells = Map.of("$'class'.A" + (n + 2), invented.around());
        StepsPage page = new StepsPage(STEPS, 2);
        Translator translator = new Translator(page, new KnownCells(cells), 0, Language.ENGLISH);
        String rest = ";A" + (n + 2) + ";B" + (n + 2) + ";C" + (n + 2) + ")";
        List<Map<String, String>> answers = new ArrayList<>();
        for (int jar = 0; jar < jars; jar++) {
            String column = String.valueOf((char) ('B' + jar));
            String readings = "A2:A" + (n + 1) + ";" + column + "2:" + column + (n + 1) + rest;
            Map<String, String> own = new HashMap<>();
            for (String function : List.of(
                    "COOL.RATE",
                    "COOL.RATE.ERROR",
                    "COOL.HALFTIME",
                    "COOL.HALFTIME.ERROR",
                    "COOL.START",
                    "COOL.MISFIT")) {
                own.put(function, living(translator, function + "(" + readings));
            }
            own.put(
                    "curve",
                    living(
                            translator,
                            "INDEX(COOL.CURVE(K2:K" + (n + 1) + ";" + readings + ";ROW($A$1:$A$9);COLUMN($A$1:$C$1))"));
            answers.add(own);
        }
        String last = String.valueOf((char) ('A' + jars));
        String ranked = living(
                translator,
                "INDEX(COOL.RANK(A2:A" + (n + 1) + ";B2:" + last + (n + 1) + ";B1:" + last + "1" + rest.replace(")", "")
                        + ";D" + (n + 2) + ");ROW($A$1:$A$9);COLUMN($A$1:$H$1))");
        String verdict = living(
                translator,
                "COOL.VERDICT(A2:A" + (n + 1) + ";B2:B" + (n + 1) + ";A2:A" + (n + 1) + ";C2:C" + (n + 1)
                        + rest.replace(")", "") + ";D" + (n + 2) + ")");
        book.add(page);
        compareVerdict(book, verdict, fit(invented, 0), fit(invented, 1), spread, name);
        List<NamedEstimate> estimates = new ArrayList<>();
        for (int jar = 0; jar < jars; jar++) {
            Optional<CoolingFit> fit = fit(invented, jar);
            String which = name + ", jar " + jar;
            compareJar(book, answers.get(jar), fit, invented, which);
            int at = jar;
            fit.ifPresent(
                    found -> estimates.add(new NamedEstimate(invented.names().get(at), found.conservativeEstimate())));
        }
        compareRanking(book, ranked, known(() -> Ranking.of(estimates, spread)), name);
    }

    private static String living(Translator translator, String formula) {
        return translator
                .translate(SHEET, "=" + formula, true)
                .orElseThrow(() -> new AssertionError(formula))
                .formula()
                .replaceAll("^=\\$'steps'\\.", "");
    }

    private static Optional<CoolingFit> fit(InventedClass invented, int jar) {
        Scale scale = Scale.parse(invented.scale());
        List<Entry> minutes = invented.minutes().stream().map(Entry::of).toList();
        List<Entry> readings =
                invented.jars().get(jar).stream().map(LivingClassesTest::entry).toList();
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

    private void compareJar(
            PoiBook book, Map<String, String> answers, Optional<CoolingFit> fit, InventedClass invented, String which) {
        Scale scale = Scale.parse(invented.scale());
        same(book, answers.get("COOL.RATE"), fit.map(f -> f.constant().perMinute()), which);
        same(
                book,
                answers.get("COOL.RATE.ERROR"),
                fit.map(f -> f.constantError().perMinute()),
                which);
        same(
                book,
                answers.get("COOL.HALFTIME"),
                fit.flatMap(f -> known(f::halfTime)).map(s -> s / 60),
                which);
        same(
                book,
                answers.get("COOL.HALFTIME.ERROR"),
                fit.flatMap(f -> known(f::halfTimeError)).map(s -> s / 60),
                which);
        same(book, answers.get("COOL.START"), fit.flatMap(f -> known(f::start)).map(t -> t.in(scale)), which);
        same(book, answers.get("COOL.MISFIT"), fit.map(f -> f.misfit().in(scale)), which);
        String table = String.valueOf(answers.get("curve"));
        for (int i = 0; i < 3; i++) {
            double seconds = 60 * (invented.minutes().get(i) + 1);
            Optional<Interval> band = fit.map(f -> f.intervals(0.95).at(seconds));
            same(book, cell(table, 0, i + 1), fit.map(f -> f.at(seconds).in(scale)), which);
            same(book, cell(table, 1, i + 1), band.map(b -> new Temperature(b.low()).in(scale)), which);
            same(book, cell(table, 2, i + 1), band.map(b -> new Temperature(b.high()).in(scale)), which);
        }
    }

    private void compareRanking(PoiBook book, String table, Optional<Ranking> ranking, String name) {
        if (ranking.isEmpty()) {
            same(book, cell(table, 3, 1), Optional.empty(), name);
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
            assertEquals(material.name(), book.text(STEPS, cell(table, 1, i + 1)), name);
            assertEquals(ties, book.text(STEPS, cell(table, 7, i + 1)), name);
            same(book, cell(table, 0, i + 1), Optional.of((double) material.place()), name);
            same(book, cell(table, 3, i + 1), Optional.of(material.estimate().value()), name);
            if (material.estimate().degreesOfFreedom() < MANY) {
                Interval limits = material.estimate().interval(0.95);
                same(book, cell(table, 4, i + 1), Optional.of(Math.max(0, limits.low())), name);
                same(book, cell(table, 5, i + 1), Optional.of(limits.high()), name);
            }
        }
    }

    private void compareVerdict(
            PoiBook book,
            String cell,
            Optional<CoolingFit> one,
            Optional<CoolingFit> other,
            double spread,
            String name) {
        if (one.isEmpty() || other.isEmpty()) {
            assertEquals("#N/A", book.shown(STEPS, cell), name);
            return;
        }
        Optional<Verdict> verdict = known(() -> Verdict.of(
                one.get().conservativeEstimate().withSpread(spread),
                other.get().conservativeEstimate().withSpread(spread)));
        String counted = spread == 0 ? "" : " " + Language.ENGLISH.say(VerdictWords.COUNTED_IN, spread);
        verdict.ifPresent(found -> {
            assertEquals(sentence(found) + counted, book.text(STEPS, cell), name);
            compared++;
        });
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

    private void same(
            PoiBook book, @org.jspecify.annotations.Nullable String cell, Optional<Double> expected, String where) {
        double found = book.number(STEPS, String.valueOf(cell));
        if (expected.isEmpty()) {
            refused++;
            assertTrue(Double.isNaN(found), () -> where + ": " + cell + " is " + found);
        } else {
            compared++;
            double unit = Math.max(Math.abs(expected.get()), 1e-6);
            worst = Math.max(worst, Math.abs(expected.get() - found) / unit);
            assertEquals(expected.get(), found, DIGITS * unit, () -> where + ": " + cell);
        }
    }

    /** A cell of a table, by its first cell. */
    private static String cell(String table, int column, int row) {
        Seen.Cells cells = Formulas.place(table, STEPS).orElseThrow();
        return StepsPage.address(cells.left() + column, cells.top() + row);
    }

    /** A document of which only some cells are known; its tables have heads and nothing else. */
    private record KnownCells(Map<String, Object> cells) implements Seen {

        @Override
        public Optional<Cells> named(String name) {
            return Optional.empty();
        }

        @Override
        public Object[][] answer(String formula) {
            Object known = cells.get(formula);
            return known != null ? new Object[][] {{known}} : new Object[][] {{"a", "b", "c", "d", "e", "f", "g", "h"}};
        }
    }
}
