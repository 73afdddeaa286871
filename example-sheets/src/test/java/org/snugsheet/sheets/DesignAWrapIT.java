package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.uno.UnoRuntime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;

/**
 * What the worked sheet “design a wrap” calculates, opened in an office that did not build it.
 *
 * <p>Reference values: {@code design-reference.csv}, worked out from the published formulas by a program of its own, see
 * {@code src/test/scipy/design.py}.
 */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class DesignAWrapIT {
    /** The reference takes other publications of water’s properties, which differ by up to 0.3 % in their films. */
    private static final double PRECISION = 2e-4;

    private static final double FITTED = 1e-6;

    /** The film of water alone, m²·K/W: IAPWS SR6-08 and R15-11 differ by 0.3 % in water’s conductivity. */
    private static final double FILM = 1e-5;

    private static final Map<String, String> FITS = Map.of(
            "bare rate", "L33",
            "bare rate error", "L34",
            "bare halftime", "L35",
            "bare halftime error", "L36",
            "wrapped rate", "N33",
            "wrapped rate error", "N34",
            "wrapped halftime", "N35",
            "wrapped halftime error", "N36");

    private static final Map<String, String> WORKED_OUT = worked();

    private static Map<String, String> worked() {
        Map<String, String> cells = new TreeMap<>(Map.of(
                "bare halfway", "Curves.J23",
                "bare expected rate", "K33",
                "bare expected R", "K37",
                "bare watts", "K41",
                "bare R", "L37",
                "bare R error", "L38",
                "wrapped halfway", "Curves.J22",
                "wrapped expected rate", "M33",
                "wrapped expected R", "M37",
                "wrapped watts", "M41"));
        cells.putAll(Map.of(
                "wrapped R", "N37",
                "wrapped R error", "N38",
                "wrap R", "N39",
                "wrap R error", "N40",
                "lid R", "E27",
                "base R", "E28",
                "wrapped expected at the end", "Curves.C36"));
        int[] rows = {18, 19, 20, 21, 22, 25};
        for (int i = 0; i < rows.length; i++) {
            cells.put("way " + i + " R", "E" + rows[i]);
            cells.put("way " + i + " outside", "G" + rows[i]);
        }
        return cells;
    }

    @Test
    void noCellFails(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            assertEquals("", failingCells(document));
            assertTrue(document.at("A29").text().startsWith("OK:"));
            assertTrue(document.at("B37").text().startsWith("OK:"));
            assertEquals(3, document.sheetNames().size());
        }
    }

    @Test
    void theSheetBeginsWithWhatTheReferenceWasGiven(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            Map<String, String> cells = Map.of(
                    "volume", "B8", "radius", "B9", "glass", "B10", "start", "B11", "cold", "B12", "lesson", "B14",
                    "mark", "B36");
            for (Csv.Row given : Csv.rows("design-given.csv")) {
                assertEquals(
                        given.number("value"),
                        document.at(cells.getOrDefault(given.get("name"), "")).number());
            }
            assertEquals("still air", document.at("B13").text());
            int row = 19;
            for (Csv.Row layer : Csv.rows("design-layers.csv")) {
                int here =
                        layer.get("part").equals("lid") ? 27 : layer.get("part").equals("base") ? 28 : row++;
                assertEquals(layer.get("material"), document.at("B" + here).text());
                assertEquals(
                        layer.number("thickness_mm"), document.at("C" + here).number());
            }
            char column = 'B';
            for (Csv.Row reading : Csv.rows("design-readings.csv")) {
                assertEquals(
                        reading.cells(),
                        document.all(column + "33:" + column + "35").stream()
                                .map(cells33 -> cells33.get(0).shown())
                                .toList());
                column++;
            }
            assertEquals('I', column, "all seven readings");
        }
    }

    @Test
    void theResultsAreThoseOfTheReference(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            assertResults(document);
        }
    }

    @Test
    void theFlatFileCalculatesTheSame(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = office.open(design.sheet().fods())) {
            assertResults(document.calculateAll());
        }
    }

    @Test
    void theVerdictIsAboutTheResistanceOfTheWholeJar(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            String verdict = document.at("A40").text();
            assertTrue(verdict.startsWith("The readings show R 0.25"), verdict);
            assertTrue(verdict.endsWith("they agree."), verdict);
        }
    }

    @Test
    void anotherMaterialFromTheListChangesItsResistance(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            double ofWool = document.at("E20").number();
            double whole = document.at("M37").number();
            List<String> list = chosenFrom(document);
            for (String material : List.of("fleece", "soaked wool", "aluminium foil")) {
                assertTrue(list.contains(material), list.toString());
                document.text("B20", material).calculateAll();
                assertEquals("", failingCells(document), material);
                assertNotEquals(ofWool, document.at("E20").number(), 1e-4, material);
                assertNotEquals(whole, document.at("M37").number(), 1e-5, material);
            }
            // 3 mm of fleece from a radius of 38 mm, at 0.05 W/(m·K): 0.035·ln(41/38)/0.05.
            document.text("B20", "fleece").calculateAll();
            assertEquals(0.035 * Math.log(41.0 / 38) / 0.05, document.at("E20").number(), 1e-9);
            assertEquals("2 fleece", document.at("Curves.H30").text());
        }
    }

    @Test
    void theListHasEveryMaterialOfTheFunctionsAndNoBlankAtItsEnd(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            List<String> list = chosenFrom(document);
            assertEquals(Materials.all().size(), list.size());
            list.forEach(Materials::find);
            assertEquals(list.size(), List.copyOf(new java.util.HashSet<>(list)).size(), "no name twice");
            document.formula("P1", "=ROWS(materials)").calculateAll();
            assertEquals(list.size(), document.at("P1").number());
        }
    }

    @Test
    void aBlankRowBetweenLayersIsLeftOut(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            double whole = document.at("M37").number();
            // The bubble wrap two rows farther out: the same layers in the same order.
            document.text("B22", "").text("C22", "");
            document.text("B24", "small bubble wrap").number("C24", 5).calculateAll();
            assertEquals("", failingCells(document));
            assertEquals(whole, document.at("M37").number(), 1e-12);
            assertEquals("", document.at("E22").text());
            assertEquals(reference("way 4 R"), document.at("E24").number(), PRECISION);
            document.text("B24", "").text("C24", "").calculateAll();
            assertEquals("", failingCells(document));
            assertTrue(document.at("M37").number() < whole);
        }
    }

    @Test
    void aBareJarIsADesignToo(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            for (String row : List.of("19", "20", "21", "22", "27", "28")) {
                document.text("B" + row, "").text("C" + row, "");
            }
            document.calculateAll();
            assertEquals("", failingCells(document));
            assertTrue(
                    document.at("A29").text().startsWith("OK:"),
                    document.at("A29").text());
            assertEquals(0, document.at("M39").number(), 1e-12, "a wrap of nothing adds nothing");
            assertEquals(1, document.at("H26").number(), 1e-12);
        }
    }

    @Test
    void aWrongMaterialIsNamedAndGivesNoNumber(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.text("B21", "newspapper").calculateAll();
            assertEquals(
                    "Layer 3: “newspapper” is not a material known here. Did you mean “newspaper”?",
                    document.at("A29").text());
            for (String cell : List.of("E18", "E20", "E21", "E26", "M33", "M35", "M37", "M39", "M41", "A40")) {
                assertNotEquals(0, document.at(cell).error(), cell);
            }
            assertEquals(0, document.at("K37").error(), "the bare jar does not depend on it");
            document.text("B21", "newspaper").text("B27", "felt hat").calculateAll();
            assertTrue(
                    document.at("A29").text().startsWith("Lid: "),
                    document.at("A29").text());
            document.text("B27", "felt").calculateAll();
            assertResults(document);
        }
    }

    @Test
    void aThicknessWithoutAMaterialIsAskedFor(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.number("C23", 3).calculateAll();
            assertTrue(
                    document.at("A29").text().contains("row 5"),
                    document.at("A29").text());
            document.text("C23", "").text("C20", "").calculateAll();
            assertTrue(
                    document.at("A29").text().contains("row 2"),
                    document.at("A29").text());
        }
    }

    @Test
    void equallyWarmWaterAndSurroundingsAreExplained(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.number("B12", 40).calculateAll();
            assertTrue(
                    document.at("A29").text().contains("must differ"),
                    document.at("A29").text());
            assertNotEquals(0, document.at("M37").error());
        }
    }

    @Test
    void beforeTheLessonOnlyTheExpectedIsShown(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            for (char column = 'B'; column <= 'H'; column++) {
                document.text(column + "34", "").text(column + "35", "");
            }
            document.calculateAll();
            assertEquals("", failingCells(document));
            assertEquals("–", document.at("N37").text());
            assertEquals("–", document.at("N39").text());
            assertTrue(document.at("A40").text().startsWith("Type what the class read"));
            assertEquals(reference("wrapped expected R"), document.at("M37").number(), PRECISION);
        }
    }

    @Test
    void inFahrenheitTheResultsAreTheSame(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.text("B7", "F");
            for (String cell : List.of("B11", "B12")) {
                document.number(cell, fahrenheit(document.at(cell)));
            }
            for (char column = 'B'; column <= 'H'; column++) {
                for (String row : List.of("34", "35")) {
                    document.number(column + row, fahrenheit(document.at(column + row)));
                }
            }
            document.number("B36", 1.8).calculateAll();
            assertEquals("", failingCells(document));
            assertEquals("Water at the start, °F", document.at("A11").text());
            FITS.forEach((name, cell) -> assertNear(document, name, cell, FITTED));
            for (String name : List.of("wrapped R", "wrap R", "wrapped expected rate", "wrapped watts", "way 4 R")) {
                assertNear(document, name, WORKED_OUT.getOrDefault(name, ""), PRECISION);
            }
            double celsius = reference("way 3 outside");
            assertEquals(celsius * 1.8 + 32, document.at("G21").number(), 0.01);
        }
    }

    @Test
    void theUsualThicknessStandsBesideWhereOneIsUsual(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            assertEquals(3, document.at("D20").number());
            document.number("B20", 0.05).calculateAll();
            assertEquals("", document.at("D20").text());
            // 3 mm at 0.05 W/(m·K), as above.
            assertEquals(0.035 * Math.log(41.0 / 38) / 0.05, document.at("E20").number(), 1e-9);
            assertEquals("", failingCells(document));
        }
    }

    @Test
    void theResultsArePrinted(BuiltSheets.Design design) {
        String printed = String.join("\n", design.sheet().lines());
        assertTrue(
                printed.lines().anyMatch(line -> line.startsWith("R-value of the whole jar") && line.contains("0.257")),
                printed);
    }

    private static CalcDocument open(Office office, BuiltSheets.Design design) {
        return office.open(design.sheet().ods()).calculateAll();
    }

    private static List<String> chosenFrom(CalcDocument document) {
        return document.all("Materials.A6:A130").stream()
                .map(row -> row.get(0).shown())
                .takeWhile(name -> !name.isEmpty())
                .toList();
    }

    private static void assertResults(CalcDocument document) {
        assertEquals(
                FITS.size() + WORKED_OUT.size(),
                Csv.rows("design-reference.csv").size());
        FITS.forEach((name, cell) -> assertNear(document, name, cell, FITTED));
        WORKED_OUT.forEach((name, cell) -> assertNear(document, name, cell, PRECISION));
    }

    private static void assertNear(CalcDocument document, String name, String cell, double precision) {
        double expected = reference(name);
        double least = name.startsWith("way") ? FILM : 0;
        assertEquals(expected, document.at(cell).number(), Math.max(least, precision * expected), name + ", " + cell);
    }

    private static double reference(String name) {
        return Csv.rows("design-reference.csv").stream()
                .filter(row -> row.get("name").equals(name))
                .findFirst()
                .orElseThrow()
                .number("value");
    }

    private static double fahrenheit(CellResult celsius) {
        return celsius.number() * 1.8 + 32;
    }

    /** The addresses of all cells, on all pages, whose formula gives an error. */
    private static String failingCells(CalcDocument document) {
        return Stream.of("Design", "Curves", "Materials")
                .map(page -> {
                    try {
                        return UnoRuntime.queryInterface(
                                        XCellRangesQuery.class,
                                        document.uno().getSheets().getByName(page))
                                .queryFormulaCells(FormulaResult.ERROR)
                                .getRangeAddressesAsString();
                    } catch (com.sun.star.uno.Exception e) {
                        throw new IllegalStateException(e);
                    }
                })
                .collect(Collectors.joining());
    }
}
