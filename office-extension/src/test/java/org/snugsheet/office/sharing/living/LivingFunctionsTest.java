package org.snugsheet.office.sharing.living;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.lesson.Caution;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.lesson.Taps;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.engine.winter.WindChill;
import org.snugsheet.office.functions.cooling.VerdictWords;
import org.snugsheet.office.words.Language;

/**
 * Functions that are one formula or a few steps, recalculated by Apache POI, against the engine, whose own checks against charts and textbooks are
 * in its tests.
 */
class LivingFunctionsTest {

    private static final String SHEET = "jars";
    private static final String STEPS = "steps";
    private static final double DIGITS = 1e-9;

    @Test
    void windChillIsThatOfBothCharts() {
        Random random = new Random(20261127);
        int refused = 0;
        for (int i = 0; i < 400; i++) {
            Scale scale = List.of(Scale.CELSIUS, Scale.FAHRENHEIT, Scale.KELVIN).get(i % 3);
            double celsius = i % 7 == 0 ? 10 : i % 11 == 0 ? -50 : -58 + 75 * random.nextDouble();
            double air = scale == Scale.FAHRENHEIT
                    ? celsius * 9 / 5 + 32
                    : scale == Scale.KELVIN ? celsius + 273.15 : celsius;
            double wind = i % 5 == 0 ? 5 : i % 13 == 0 ? 3 : 110 * random.nextDouble();
            Unit unit = scale == Scale.FAHRENHEIT ? Unit.MILE_PER_HOUR : Unit.KILOMETER_PER_HOUR;
            Optional<Double> expected =
                    known(() -> WindChill.of(Temperature.of(air, scale), Speed.of(wind, unit), scale));
            refused += expected.isEmpty() ? 1 : 0;
            String letter = scale == Scale.CELSIUS ? "C" : scale == Scale.FAHRENHEIT ? "F" : "K";
            assertAnswers(expected, worked("COLD.WINDCHILL(A1;B1;C1)", air, wind, letter), air + " " + wind + letter);
        }
        int all = refused;
        assertTrue(all > 40 && all < 360, () -> all + " of 400 were refused");
    }

    @Test
    void aTemperatureIsRoundedToTheNearestMark() {
        Random random = new Random(20261127);
        for (int i = 0; i < 300; i++) {
            double mark = List.of(0.1, 0.2, 0.5, 1.0, 2.0, 5.0).get(i % 6);
            // Halves of marks among them.
            double typed = i % 3 == 0
                    ? Math.round(random.nextInt(400) * mark * 50 - 1000) / 100.0
                    : Math.round(1000 * (60 * random.nextDouble() - 20)) / 1000.0;
            double expected =
                    Graduation.of(mark, Scale.CELSIUS).nearest(Temperature.of(typed, Scale.CELSIUS), Scale.CELSIUS);
            assertAnswers(Optional.of(expected), worked("TEMP.ROUND(A1;B1)", typed, mark), typed + " at " + mark);
        }
    }

    @ParameterizedTest
    @CsvSource({"36.7,0", "36.7,-1", "-300,0.5", "warm,0.5", "36.7,fine"})
    void roundingIsRefusedAsByTheFunction(String typed, String mark) {
        assertAnswers(Optional.empty(), worked("TEMP.ROUND(A1;B1;\"C\")", cell(typed), cell(mark)), typed + " " + mark);
    }

    @Test
    void everyMaterialIsKnownByItsNames() {
        int compared = 0;
        for (Material material : Materials.all()) {
            String name = Materials.nameIn(material, Language.ENGLISH.locale());
            if (!material.condition().english().equals("dry") || name.matches(".*\\bair\\b.*")) {
                continue;
            }
            double expected = 0.02 / material.typical().wattsPerMeterKelvin();
            assertAnswers(Optional.of(expected), worked("WRAP.LAYER(A1;B1)", 20.0, name), name);
            compared++;
        }
        int all = compared;
        assertTrue(all > 40, () -> all + " materials");
    }

    /** By hand: 0.13 + 0.02/0.04 + 0.01/0.05 + 0.04 = 0.87 m²·K/W; 1 clo is 0.155 of these (ISO 9920). */
    @Test
    void layersAddUp() {
        assertAnswers(
                Optional.of(0.87), worked("WRAP.FLAT(A1:A2;B1:B2;0.13;C1)", 20.0, 0.04, 0.04, 10.0, 0.05), "layers");
        assertAnswers(
                Optional.of(0.7 / 0.155),
                worked("WRAP.FLAT(A1:A2;B1:B2;;;\"clo\")", 20.0, 0.04, "", 10.0, 0.05),
                "layers in clo");
        assertAnswers(Optional.of(0.5), worked("WRAP.FLAT(A1:A2;B1:B2)", 20.0, 0.04, "", "", ""), "one layer");
        assertAnswers(Optional.empty(), worked("WRAP.FLAT(A1:A2;B1:B2)", 20.0, 0.04, "", 10.0, ""), "no material");
        assertAnswers(Optional.empty(), worked("WRAP.FLAT(A1:A2;B1:B2)", 20.0, 0.04, "", "", 0.05), "no thickness");
        assertAnswers(Optional.empty(), worked("WRAP.FLAT(A1:A2;B1:B2)", 20.0, 0.04, "", -10.0, 0.05), "negative");
        assertAnswers(Optional.empty(), worked("WRAP.FLAT(A1:A2;B1:B2)", "", "", "", "", ""), "nothing at all");
    }

    /** On the day of the copy it was wool; a star is no other name for it, and air conducts the more the wider the gap is. */
    @ParameterizedTest
    @CsvSource({"wo*", "woo?", "straw dust of nowhere", "air", "-"})
    void whatIsNotListedIsRefused(String later) {
        assertAnswers(Optional.empty(), worked(Map.of("B1", "wool"), "WRAP.LAYER(A1;B1)", 20.0, later), later);
    }

    @Test
    void howManyTimesSlowerIsTheRatioOfTheConstants() {
        Random random = new Random(20261127);
        int refused = 0;
        for (int i = 0; i < 12; i++) {
            double first = 0.01 + 0.03 * random.nextDouble();
            double second = i % 4 == 0 ? 0.0001 : 0.01 + 0.02 * random.nextDouble();
            Object[] cells = new Object[18];
            double[] minutes = new double[6];
            List<List<Entry>> readings = List.of(new java.util.ArrayList<>(), new java.util.ArrayList<>());
            for (int line = 0; line < 6; line++) {
                minutes[line] = 5.0 * line;
                double noise = random.nextGaussian() * (i % 4 == 0 ? 1.5 : 0.3);
                double one = Math.round(3 + 35 * Math.exp(-first * minutes[line]) + noise);
                double other = Math.round(3 + 35 * Math.exp(-second * minutes[line]) - noise);
                cells[3 * line] = minutes[line];
                cells[3 * line + 1] = one;
                cells[3 * line + 2] = other;
                readings.get(0).add(Entry.of(one));
                readings.get(1).add(Entry.of(other));
            }
            List<Entry> times = Arrays.stream(minutes).mapToObj(Entry::of).toList();
            Optional<Double> expected = known(() -> new Ratio(
                            fit(times, readings.get(0)).estimate(),
                            fit(times, readings.get(1)).estimate())
                    .value());
            refused += expected.isEmpty() ? 1 : 0;
            assertAnswers(expected, worked("COOL.SLOWER(A1:A6;B1:B6;A1:A6;C1:C6;3;1;\"C\")", cells), "lesson " + i);
        }
        int all = refused;
        assertTrue(all > 0 && all < 9, () -> all + " refused");
    }

    /** All sentences from ice to steam, at each limit and beside it. */
    @Test
    void cautionsAreThoseOfTheWater() {
        Set<String> said = new HashSet<>();
        for (int tenths = -10; tenths <= 1010; tenths += tenths % 50 == 0 || (tenths > 360 && tenths < 680) ? 1 : 10) {
            double celsius = tenths / 10.0;
            Optional<String> expected = known(() -> SafeStart.cautions(Temperature.of(celsius, Scale.CELSIUS)).stream()
                    .map(Language.ENGLISH::words)
                    .collect(Collectors.joining(" ")));
            String found = shown("PLAN.SAFE(A1;B1)", celsius, "C");
            assertEquals(expected.orElse("#N/A"), found, () -> celsius + " °C");
            said.add(found);
        }
        assertEquals(10, said.size());
        assertEquals(shown("PLAN.SAFE(A1)", 50.0), shown("PLAN.SAFE(A1;B1)", 122.0, "F"));
        assertEquals("#N/A", shown("PLAN.SAFE(A1)", "warm"));
    }

    /** In all scales, with taps and starts that are refused among them, some of them at the very limit. */
    @Test
    void twoTapsGiveWhatTheHeatOfWaterAsksFor() {
        Random random = new Random(20261128);
        int refused = 0;
        for (int i = 0; i < 150; i++) {
            Scale scale = List.of(Scale.CELSIUS, Scale.FAHRENHEIT, Scale.KELVIN).get(i % 3);
            double hot = new Temperature(40 + 33 * random.nextDouble()).in(scale);
            double cold = new Temperature(-1 + 25 * random.nextDouble()).in(scale);
            double start = new Temperature(i % 9 == 0 ? 43 : 20 + 25 * random.nextDouble()).in(scale);
            double milliliters = i % 20 == 0 ? -5 : 5000 * random.nextDouble();
            String letter = scale == Scale.CELSIUS ? "C" : scale == Scale.FAHRENHEIT ? "F" : "K";
            Optional<Taps> expected = known(() -> Taps.mixing(
                    Temperature.of(hot, scale),
                    Temperature.of(cold, scale),
                    Temperature.of(start, scale),
                    Volume.of(milliliters, Unit.MILLILITER)));
            refused += expected.isEmpty() ? 1 : 0;
            Object[] cells = {hot, cold, start, milliliters, letter};
            String which = Arrays.toString(cells);
            assertAnswers(
                    expected.map(taps -> taps.hot().cubicMeters() * 1e6),
                    worked("PLAN.MIX.HOT(A1;B1;C1;A2;B2)", cells),
                    which);
            assertAnswers(
                    expected.map(taps -> taps.cold().cubicMeters() * 1e6),
                    worked("PLAN.MIX.COLD(A1;B1;C1;A2;B2)", cells),
                    which);
        }
        int all = refused;
        assertTrue(all > 15 && all < 100, () -> all + " of 150 were refused");
        assertAnswers(Optional.empty(), worked("PLAN.MIX.HOT(A1;B1;C1;A2)", 55.0, 12.0, "", 1000.0), "no start");
        assertAnswers(Optional.empty(), worked("PLAN.MIX.HOT(A1;B1;C1;A2)", 55.0, 12.0, 40.0, "10 C"), "degrees");
    }

    @Test
    void theTableOfTwoTapsSaysWhatCanHurt() {
        for (double hot : new double[] {55, 60}) {
            Object[] cells = {hot, 12.0, 40.0, 1000.0};
            String table = "INDEX(PLAN.MIX(A1;B1;C1;A2);ROW($A$1:$A$5);COLUMN($A$1:$B$1))";
            assertAnswers(
                    Optional.of(worked("PLAN.MIX.HOT(A1;B1;C1;A2)", cells)),
                    worked("SUM(" + table + ")-PLAN.MIX.COLD(A1;B1;C1;A2)", cells),
                    "hot and cold in the table");
            assertEquals(
                    Language.ENGLISH.words(hot < 60 ? Caution.ADULT_POURS : Caution.HOT_TAP),
                    shown("INDEX(PLAN.MIX(A1;B1;C1;A2);4;2)", cells));
            assertEquals(
                    Language.ENGLISH.words(Caution.SCHOOL_RULES), shown("INDEX(PLAN.MIX(A1;B1;C1;A2);5;2)", cells));
        }
        assertEquals("#N/A", shown("INDEX(PLAN.MIX(A1;B1;C1;A2);4;2)", 55.0, 12.0, 44.0, 1000.0));
    }

    /** Three readings leave one degree of freedom, and each limit throws the next one to the other side; found among random classes. */
    @Test
    void theLimitsOfAVerdictStandStill() {
        List<Entry> times = List.of(Entry.of(0.0), Entry.of(10.0), Entry.of(20.0), Entry.of(30.0));
        List<Entry> one = List.of(Entry.of(36.5), Entry.of(30.0), Entry.of(25.0), Entry.of(20.5));
        List<Entry> other = List.of(Entry.of(36.5), Entry.of(35.0), Entry.of(33.5), Entry.of("-"));
        Verdict verdict = Verdict.of(
                fit(times, one, 9, 0.5).conservativeEstimate(),
                fit(times, other, 9, 0.5).conservativeEstimate());
        assertEquals(
                Language.ENGLISH.say(
                        VerdictWords.SECOND,
                        verdict.ratio().value(),
                        verdict.interval().low(),
                        verdict.interval().high()),
                shown(
                        "COOL.VERDICT(A1:A4;B1:B4;A1:A4;C1:C4;9;0.5;\"C\")",
                        0.0,
                        36.5,
                        36.5,
                        10.0,
                        30.0,
                        35.0,
                        20.0,
                        25.0,
                        33.5,
                        30.0,
                        20.5,
                        "-"));
    }

    private static CoolingFit fit(List<Entry> times, List<Entry> readings) {
        return fit(times, readings, 3, 1);
    }

    private static CoolingFit fit(List<Entry> times, List<Entry> readings, double around, double mark) {
        return CoolingFit.of(
                Readings.ofMinutes(times, readings, Scale.CELSIUS),
                Surroundings.of(List.of(Entry.of(around)), times, Scale.CELSIUS),
                Graduation.of(mark, Scale.CELSIUS));
    }

    private static Object cell(String typed) {
        return typed.matches("-?[0-9.]+") ? (Object) Double.valueOf(typed) : typed;
    }

    private static <T> Optional<T> known(java.util.function.Supplier<T> answer) {
        try {
            return Optional.of(answer.get());
        } catch (InvalidInputException refusal) {
            return Optional.empty();
        }
    }

    private static void assertAnswers(Optional<Double> expected, double found, String which) {
        if (expected.isEmpty()) {
            assertTrue(Double.isNaN(found), () -> which + " is " + found);
        } else {
            assertEquals(expected.get(), found, DIGITS * Math.max(1e-3, Math.abs(expected.get())), which);
        }
    }

    /** What a formula answers, with three cells to each row that it may read; NaN is a refusal. */
    private static double worked(String formula, Object... cells) {
        return worked(Map.of(), formula, cells);
    }

    private static double worked(Map<String, Object> onTheDay, String formula, Object... cells) {
        return answered(onTheDay, formula, cells, PoiBook::number);
    }

    private static String shown(String formula, Object... cells) {
        String shown = answered(Map.of(), formula, cells, PoiBook::shown);
        return shown.startsWith("\"") ? shown.substring(1, shown.length() - 1) : shown;
    }

    private interface Read<T> {
        T from(PoiBook book, String sheet, String cell);
    }

    private static <T> T answered(Map<String, Object> onTheDay, String formula, Object[] cells, Read<T> read) {
        PoiBook book = new PoiBook();
        Sheet sheet = book.sheet(SHEET);
        Object[][] typed = new Object[(cells.length + 2) / 3][3];
        for (int i = 0; i < typed.length * 3; i++) {
            typed[i / 3][i % 3] = i < cells.length ? cells[i] : "";
        }
        for (int row = 0; row < typed.length; row++) {
            Row line = sheet.createRow(row);
            for (int column = 0; column < 3; column++) {
                if (!typed[row][column].equals("")) {
                    PoiBook.put(line.createCell(column), typed[row][column]);
                }
            }
        }
        StepsPage page = new StepsPage(STEPS, 0);
        String living = new Translator(
                        page,
                        new TypedCells(Arrays.stream(typed).map(List::of).toList(), onTheDay),
                        0,
                        Language.ENGLISH)
                .translate(SHEET, "=" + formula, false)
                .orElseThrow(() -> new AssertionError(formula))
                .formula();
        book.add(page);
        Row last = sheet.createRow(typed.length);
        PoiBook.put(last.createCell(0), living);
        return read.from(book, SHEET, "A" + (typed.length + 1));
    }

    /** A document of which the cells of one sheet are seen, some as they were on the day of the copy. */
    private record TypedCells(List<List<Object>> typed, Map<String, Object> onTheDay) implements Seen {

        @Override
        public Optional<Cells> named(String name) {
            return Optional.empty();
        }

        @Override
        public Object[][] answer(String formula) {
            Optional<Cells> place = Formulas.place(formula, SHEET);
            if (place.isEmpty()) {
                return new Object[][] {{cell(formula.replace("\"", ""))}};
            }
            Cells cells = place.get();
            Object[][] seen = new Object[cells.rows()][cells.columns()];
            for (int row = 0; row < cells.rows(); row++) {
                for (int column = 0; column < cells.columns(); column++) {
                    String at = org.snugsheet.office.uno.CellName.of(cells.left() + column, cells.top() + row);
                    Object now = typed.get(cells.top() + row).get(cells.left() + column);
                    seen[row][column] = Optional.ofNullable(onTheDay.get(at)).orElse(now);
                }
            }
            return seen;
        }
    }
}
