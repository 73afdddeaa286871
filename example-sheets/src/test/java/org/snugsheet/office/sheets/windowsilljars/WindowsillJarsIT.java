package org.snugsheet.office.sheets.windowsilljars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.sheets.Opened.failingCells;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.sheets.shared.ExampleJar;
import org.snugsheet.sheets.BuiltSheets;
import org.snugsheet.sheets.Csv;

/**
 * What the worked sheet calculates, opened in an office that did not build it.
 *
 * <p>Reference values: {@code windowsill-reference.csv}, fitted by SciPy from the readings as typed, see
 * {@code src/test/scipy/windowsill.py}.
 */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class WindowsillJarsIT {
    private static final String SURE = HowSureAreWe.NAME + ".";
    private static final List<String> PARTS =
            List.of("Jars.A6:J35", "Curves.A5:F46", "Curves.H5:M21", "Curves.Q4:S46", SURE + "A1:H30");
    private static final double PRECISION = 1e-6;

    @Test
    void noCellFails(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            assertEquals("", failingCells(document.calculateAll()));
            assertTrue(document.all("B17:F17").get(0).stream()
                    .allMatch(cell -> cell.text().equals("OK")));
        }
    }

    @Test
    void theReadingsAreThoseOfTheReference(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            List<Csv.Row> rows = Csv.rows("windowsill-readings.csv");
            assertEquals(
                    rows.get(0).names().subList(1, 6),
                    document.all("B7:F7").get(0).stream().map(CellResult::text).toList());
            for (int i = 0; i < rows.size(); i++) {
                assertEquals(
                        rows.get(i).cells(),
                        document.all("A" + (8 + i) + ":F" + (8 + i)).get(0).stream()
                                .map(CellResult::shown)
                                .toList());
            }
            for (Csv.Row given : Csv.rows("windowsill-given.csv")) {
                String cell = switch (given.get("name")) {
                    case "surroundings" -> "J13";
                    case "mark" -> "J14";
                    default -> "J15";
                };
                assertEquals(given.number("value"), document.at(cell).number(), given.get("name"));
            }
            for (Csv.Row wrap : Csv.rows("windowsill-wraps.csv")) {
                int row = document.rowOf(wrap.get("jar"), "H1");
                assertEquals(wrap.get("material"), document.at("I" + row).text());
                assertEquals(wrap.get("thickness_mm"), document.at("J" + row).shown());
            }
        }
    }

    @Test
    void theResultsAreThoseOfSciPy(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            assertResults(document.calculateAll());
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = FileFormat.class,
            names = {"ODS", "FODS", "XLSX"})
    void theSameIsCalculatedFromEveryKindOfFile(
            FileFormat format, Office office, BuiltSheets.Sheet sheet, @TempDir Path folder) {
        Path copy = folder.resolve("copy." + format.extension());
        List<CellResult> before;
        try (CalcDocument document = office.open(sheet.ods())) {
            before = all(document.calculateAll());
            document.saveAs(copy, format);
        }
        try (CalcDocument document = office.open(copy)) {
            // Change what everything depends on and back, so that no stored value can stand in for a calculated one.
            document.calculateAll();
            document.number("J13", 5).calculateAll();
            assertNotEquals(before.toString(), all(document).toString());
            document.number("J13", 2).calculateAll();
            assertSame(before, all(document));
            assertResults(document);
        }
    }

    @Test
    void theFlatFileCalculatesTheSame(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.fods())) {
            assertResults(document.calculateAll());
        }
    }

    @Test
    void aSlipIsNamedWithItsJarAndDoesNotSpreadToOthers(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            document.text("D10", "lukewarm").calculateAll();
            String message = document.at("A18").text();
            assertTrue(message.startsWith("newspaper") && message.contains("lukewarm"), message);
            assertTrue(document.at("D17").text().contains("lukewarm"));
            assertEquals("", failingCells(document));
            for (List<CellResult> row : document.all("B25:F32")) {
                assertEquals("–", row.get(2).text(), "its own column");
                assertTrue(row.get(3).number() > 0, "no other");
            }
            assertEquals("–", document.at("Curves.D6").text());
            document.text("D10", "38 °C").calculateAll();
            assertTrue(document.at("A18").text().startsWith("All readings can be used"));
            assertResults(document);
        }
    }

    @Test
    void aBlankSurroundingsCellIsAskedFor(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            document.text("J13", "").calculateAll();
            assertTrue(document.at("A18").text().startsWith("How warm is it around the jars?"));
            assertTrue(document.all("B25:F25").get(0).stream()
                    .allMatch(cell -> cell.text().equals("–")));
        }
    }

    @Test
    void theRankingHasTheRatesOfTheFirstPage(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            document.calculateAll();
            List<List<CellResult>> ranking = document.all(SURE + "A5:H10");
            assertEquals("Place", ranking.get(0).get(0).text());
            List<String> ranked =
                    ranking.stream().skip(1).map(row -> row.get(1).text()).toList();
            assertEquals(
                    WindowsillJars.JARS.stream().map(ExampleJar::name).sorted().toList(),
                    ranked.stream().sorted().toList());
            for (List<CellResult> row : ranking.subList(1, ranking.size())) {
                String column = columnOf(row.get(1).text());
                double rate = document.at(column + "25").number();
                assertEquals(rate, row.get(3).number(), 1e-12, row.get(1).text());
                assertEquals(document.at(column + "27").number(), row.get(6).number(), 1e-9);
                assertTrue(row.get(4).number() < rate && rate < row.get(5).number());
            }
        }
    }

    @Test
    void jarsOfOneNameShareARowAndLeaveNoErrorBehind(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            document.text("H11", "newspaper").calculateAll();
            assertEquals("", failingCells(document));
            assertEquals("", document.at(SURE + "B10").text());
        }
    }

    @Test
    void theVerdictNamesTheRatioOfTheTwoRates(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            document.calculateAll();
            double times = document.at("B25").number() / document.at("C25").number();
            String verdict = document.at(SURE + "A14").text();
            assertTrue(
                    verdict.startsWith(
                            String.format(Locale.ROOT, "The second jar cools %.2f times slower than the first", times)),
                    verdict);
            assertEquals(
                    "The first jar: bare jar. The second jar: wool sock.",
                    document.at(SURE + "A13").text());
        }
    }

    @Test
    void theReportAndTheCurveAgreeWithTheFirstPage(Office office, BuiltSheets.Sheet sheet) {
        try (CalcDocument document = office.open(sheet.ods())) {
            document.calculateAll();
            String[] ofReport = {"C18", "D18", "C19", "D19", "C20", "D20", "C22"};
            String[] ofFirstPage = {"E25", "E26", "E27", "E28", "E29", "E30", "E31"};
            for (int i = 0; i < ofReport.length; i++) {
                double expected = document.at(ofFirstPage[i]).number();
                assertEquals(expected, document.at(SURE + ofReport[i]).number(), 1e-9 * expected, ofReport[i]);
            }
            assertEquals("fitted", document.at("Curves.Q5").text());
            assertEquals(document.at("E29").number(), document.at("Curves.Q6").number(), 1e-9, "the curve at minute 0");
            assertEquals(
                    document.at(SURE + "E20").number(),
                    document.at("Curves.R6").number(),
                    1e-9,
                    "lower limit of start");
            assertEquals(
                    document.at(SURE + "F20").number(),
                    document.at("Curves.S6").number(),
                    1e-9,
                    "upper limit of start");
        }
    }

    @Test
    void theResultsArePrinted(BuiltSheets.Sheet sheet) {
        String printed = String.join("\n", sheet.lines());
        assertTrue(printed.contains("dry leaves"), printed);
        assertTrue(
                printed.lines().anyMatch(line -> line.startsWith("Half-time, minutes") && line.contains(" 48 ")),
                printed);
    }

    private static void assertResults(CalcDocument document) {
        Map<String, Integer> rows = Map.of(
                "rate",
                25,
                "rate_error",
                26,
                "halftime",
                27,
                "halftime_error",
                28,
                "start",
                29,
                "start_error",
                30,
                "misfit",
                31,
                "later",
                32,
                "r_value",
                33);
        for (Csv.Row reference : Csv.rows("windowsill-reference.csv")) {
            String column = columnOf(reference.get("jar"));
            rows.forEach((name, row) -> {
                CellResult cell = document.at(column + row);
                if (reference.has(name)) {
                    double expected = reference.number(name);
                    assertEquals(expected, cell.number(), PRECISION * expected, reference.get("jar") + " " + name);
                } else {
                    assertEquals("no wrap", cell.text());
                }
            });
        }
    }

    private static String columnOf(String jar) {
        List<String> names = WindowsillJars.JARS.stream().map(ExampleJar::name).toList();
        return WindowsillJars.column(names.indexOf(jar));
    }

    private static List<CellResult> all(CalcDocument document) {
        List<CellResult> cells = new ArrayList<>();
        PARTS.forEach(part -> document.all(part).forEach(cells::addAll));
        return cells;
    }

    private static void assertSame(List<CellResult> expected, List<CellResult> actual) {
        assertEquals(expected.size(), actual.size());
        for (int i = 0; i < expected.size(); i++) {
            if (expected.get(i) instanceof CellResult.OfNumber number) {
                assertEquals(number.number(), actual.get(i).number(), 1e-12 * Math.abs(number.number()));
            } else {
                assertEquals(expected.get(i).shown(), actual.get(i).shown());
            }
        }
    }
}
