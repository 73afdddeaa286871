package org.snugsheet.office.sheets.designawrap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.snugsheet.office.sheets.designawrap.DesignReference.FITS;
import static org.snugsheet.office.sheets.designawrap.DesignReference.FITTED;
import static org.snugsheet.office.sheets.designawrap.DesignReference.PRECISION;
import static org.snugsheet.office.sheets.designawrap.DesignReference.WORKED_OUT;
import static org.snugsheet.office.sheets.designawrap.DesignReference.assertNear;
import static org.snugsheet.office.sheets.designawrap.DesignReference.assertResults;
import static org.snugsheet.office.sheets.designawrap.DesignReference.open;
import static org.snugsheet.office.sheets.designawrap.DesignReference.reference;
import static org.snugsheet.sheets.Opened.failingCells;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.sheets.BuiltSheets;
import org.snugsheet.sheets.Csv;

/**
 * What the worked sheet “design a wrap” calculates, opened in an office that did not build it.
 *
 * @see DesignReference
 */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class DesignAWrapIT {
    @Test
    void noCellFails(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            assertEquals("", failingCells(document));
            assertTrue(document.at("A29").text().startsWith("OK:"));
            assertTrue(document.at("A34").text().startsWith("OK:"));
            assertEquals(4, document.sheetNames().size());
        }
    }

    @Test
    void theSheetBeginsWithWhatTheReferenceWasGiven(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            Map<String, String> cells = Map.of(
                    "volume", "B8", "radius", "B9", "glass", "B10", "start", "B11", "cold", "B12", "lesson", "B14",
                    "mark", "B15");
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
            int minute = 33;
            for (Csv.Row reading : Csv.rows("design-readings.csv")) {
                assertEquals(
                        reading.cells(),
                        document.all("F" + minute + ":H" + minute).get(0).stream()
                                .map(CellResult::shown)
                                .toList());
                minute++;
            }
            assertEquals(40, minute, "all seven readings");
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
            assertResults(document.calculate());
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
    void equallyWarmWaterAndSurroundingsAreExplained(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.number("B12", 40).calculate();
            assertTrue(
                    document.at("A29").text().contains("must differ"),
                    document.at("A29").text());
            assertEquals("–", document.at("M37").text());
        }
    }

    @Test
    void aReadingThatCannotBeLeavesDashesAndTheExpected(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            document.number("H39", -5).calculate();
            assertTrue(document.at("A34").text().startsWith("Wrapped jar: "));
            assertEquals("–", document.at("N33").text());
            assertEquals("–", document.at("N40").text());
            assertEquals(
                    "No answer yet: fix first what the messages above say.",
                    document.at("A40").text());
            assertEquals(reference("wrapped expected R"), document.at("M37").number(), PRECISION);
            assertEquals("", failingCells(document));
        }
    }

    @Test
    void beforeTheLessonOnlyTheExpectedIsShown(Office office, BuiltSheets.Design design) {
        try (CalcDocument document = open(office, design)) {
            for (int row = 33; row <= 39; row++) {
                document.text("G" + row, "").text("H" + row, "");
            }
            document.calculate();
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
            for (int row = 33; row <= 39; row++) {
                for (String column : List.of("G", "H")) {
                    document.number(column + row, fahrenheit(document.at(column + row)));
                }
            }
            document.number("B15", 1.8).calculate();
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
    void theResultsArePrinted(BuiltSheets.Design design) {
        String printed = String.join("\n", design.sheet().lines());
        assertTrue(
                printed.lines().anyMatch(line -> line.startsWith("R-value of the whole jar") && line.contains("0.259")),
                printed);
    }

    private static double fahrenheit(CellResult celsius) {
        return celsius.number() * 1.8 + 32;
    }
}
