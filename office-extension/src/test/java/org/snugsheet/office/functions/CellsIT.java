package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;

/**
 * What a real office hands over for what people do to cells: blanks, ranges, errors, options left out, whole tables. All that follows
 * from there runs in plain Java: see {@code CellsTest} and its neighbors.
 */
@ExtendWith(SharedOffice.class)
class CellsIT {

    /** Fitted to the readings below by SciPy’s curve_fit: see the engine’s src/test/scipy. Surroundings 10 °C. */
    private static final double RATE = 0.0395946704844;

    private final CalcDocument sheet;

    CellsIT(Office office) {
        sheet = office.newDocument();
    }

    @BeforeEach
    void typeReadings() {
        sheet.numbersDown("A1", 0, 5, 10, 15, 20).numbersDown("B1", 40, 34, 30, 26, 24);
        sheet.number("D1", 10);
    }

    @AfterEach
    void close() {
        sheet.close();
    }

    @Test
    void aColumnOfReadingsGivesItsRate() {
        assertEquals(RATE, result("COOL.RATE(A1:A5;B1:B5;D1)").number(), 1e-9);
        assertEquals("OK", result("CHECK.READINGS(A1:A5;B1:B5;D1)").text());
    }

    @Test
    void optionsMayBeLeftOutInEveryWay() {
        assertEquals(RATE, result("COOL.RATE(A1:A5;B1:B5;D1;;)").number(), 1e-9);
        assertEquals(RATE, result("COOL.RATE(A1:A5;B1:B5;D1;;\"C\")").number(), 1e-9);
        assertEquals(RATE, result("COOL.RATE(A1:A5;B1:B5;D1;1)").number(), 1e-9);
        assertEquals(RATE, result("COOL.RATE(A1:A5;B1:B5;D1;Z1;Z2)").number(), 1e-9);
    }

    @Test
    void rowsOfCellsServeAsWellAsColumns() {
        for (int i = 0; i < 5; i++) {
            char column = (char) ('A' + i);
            sheet.formula(column + "8", "A" + (i + 1)).formula(column + "9", "B" + (i + 1));
        }
        assertEquals(RATE, result("COOL.RATE(A8:E8;A9:E9;D1)").number(), 1e-9);
        assertEquals(
                RATE, result("COOL.RATE({0;5;10;15;20};{40;34;30;26;24};10)").number(), 1e-9);
    }

    @Test
    void aMissedReadingIsLeftOutAndNotTakenForZero() {
        sheet.numbersDown("A6", 25, 30).text("B6", "-");
        assertEquals(RATE, result("COOL.RATE(A1:A7;B1:B7;D1)").number(), 1e-9);
        assertEquals("OK", result("CHECK.READINGS(A1:A7;B1:B7;D1)").text());
    }

    @Test
    void blankSurroundingsAreRefusedAndNotTakenForZero() {
        assertEquals(
                ErrorCodes.INVALID_ARGUMENT, result("COOL.RATE(A1:A5;B1:B5;Z1)").error());
        assertEquals(
                ErrorCodes.INVALID_ARGUMENT, result("COOL.TEMP(Z1;40;10;0.07)").error());
        assertEquals(
                "The cell for the surroundings is blank. Type the temperature around the jar there.",
                result("CHECK.READINGS(A1:A5;B1:B5;Z1)").text());
        sheet.number("Z1", 0);
        assertTrue(result("COOL.RATE(A1:A5;B1:B5;Z1)").number() > 0);
    }

    @Test
    void anErrorInACellStaysAnError() {
        sheet.formula("B3", "1/0");
        assertEquals(
                ErrorCodes.PARAMETER_LIST, result("COOL.RATE(A1:A5;B1:B5;D1)").error());
        sheet.number("B3", 30).formula("D1", "1/0");
        assertTrue(result("COOL.RATE(A1:A5;B1:B5;D1)").error() != 0);
        assertTrue(result("COOL.TEMP(D1;40;10;0.07)").error() != 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"COOL.RATE(A1:A5;B1:B5)", "COOL.RATE(A1:A5;B1:B5;D1;1;\"C\";1)", "TEMP.CONVERT(5;\"C\")"})
    void aWrongNumberOfArgumentsIsAnError(String formula) {
        assertEquals(ErrorCodes.PARAMETER_LIST, result(formula).error());
    }

    @Test
    void aBlankTemperatureConvertsToABlank() {
        assertEquals("", result("TEMP.CONVERT(Z1;\"C\";\"F\")").text());
        assertEquals("", result("TEMP.CHANGE(Z1;\"C\";\"F\")").text());
    }

    @Test
    void aWholeColumnConvertsAtOnceAndKeepsItsBlanks() {
        sheet.text("B3", "86 F").text("B4", "");
        sheet.arrayFormula("F1:F5", "TEMP.CONVERT(B1:B5;\"C\";\"F\")");

        assertEquals(104, sheet.at("F1").number(), 1e-9);
        assertEquals(86, sheet.at("F3").number(), 1e-9);
        assertEquals("", sheet.at("F4").text());
        assertEquals(75.2, sheet.at("F5").number(), 1e-9);
    }

    /** Property, as the head of functions.md says it: what a single cell holds as an error, the answer is too. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "COLD.NEEDED(A1;\"walking\")",
                "COLD.NEEDED(0;A1)",
                "COLD.NEEDED(0;90;A1)",
                "COLD.WINDCHILL(A1;30)",
                "COLD.WINDCHILL(-10;A1)",
                "COOL.TEMP(40;A1;10;0.07)",
                "WRAP.LAYER(A1;\"wool\")",
            })
    void anErrorInASingleCellIsPassedOn(String formula) {
        sheet.formula("A1", "1/0");
        assertEquals(ErrorCodes.DIVISION_BY_ZERO, result(formula).error(), formula);
        sheet.formula("A1", "NA()");
        assertEquals(ErrorCodes.NOT_AVAILABLE, result(formula).error(), formula);
    }

    /** One jar in °C and one in °F, whose header says so, in one block; the surroundings in °C. */
    @Test
    void aWholeSheetOfBothScalesIsReadAtOnce() {
        sheet.text("A1", "min").text("B1", "bare").text("C1", "wool °F").text("D1", "leaves");
        sheet.numbersDown("A2", 0, 5, 10, 15, 20, 25, 30, 35);
        sheet.numbersDown("B2", 40, 35, 30, 26, 23, 20, 18, 16);
        sheet.numbersDown("C2", 104, 98, 93, 88, 84, 80, 77, 74);
        sheet.numbersDown("D2", 40, 37, 43, 32, 30, 28, 26, 25);
        sheet.arrayFormula("F1:J6", "CHECK.SHEET(A1:D9;8)").arrayFormula("L1:T4", "COOL.SHEET(A1:D9;8)");

        List<List<CellResult>> slips = sheet.all("F1:J6");
        assertEquals("bare", slips.get(1).get(0).text());
        assertEquals("OK", slips.get(1).get(2).text());
        assertEquals("wool", slips.get(2).get(0).text());
        assertEquals("OK", slips.get(2).get(2).text());
        assertEquals("leaves", slips.get(3).get(0).text());
        assertEquals(3, slips.get(3).get(1).number());

        List<List<CellResult>> jars = sheet.all("L1:T4");
        assertEquals(
                result("COOL.RATE(A2:A9;B2:B9;8)").number(), jars.get(1).get(2).number(), 1e-12);
        assertEquals(
                result("COOL.RATE(A2:A9;C2:C9;46.4;2;\"F\")").number(),
                jars.get(2).get(2).number(),
                1e-12);
        assertEquals(
                result("COOL.HALFTIME(A2:A9;C2:C9;46.4;2;\"F\")").number(),
                jars.get(2).get(4).number(),
                1e-9);
        assertEquals("°F", jars.get(2).get(6).text());
    }

    @Test
    void clockTimesServeAsMinutes() {
        for (int row = 1; row <= 5; row++) {
            sheet.formula("E" + row, "TIME(23;50+5*" + (row - 1) + ";0)");
        }
        // Past midnight, as time cells and as typed text.
        assertEquals(RATE, result("COOL.RATE(COOL.MINUTES(E1:E5);B1:B5;D1)").number(), 1e-9);
        sheet.text("F1", "12:50")
                .text("F2", "12:55")
                .text("F3", "1:00")
                .text("F4", "1.05")
                .text("F5", "");
        sheet.arrayFormula("G1:G5", "COOL.MINUTES(F1:F5)");
        assertEquals(10, sheet.at("G3").number());
        assertEquals(15, sheet.at("G4").number());
        assertEquals("", sheet.at("G5").text());
    }

    /** A single value may be taken out of a table. */
    @Test
    void aTableIsAsGoodAsItsScalarFunctions() {
        assertEquals(RATE, result("INDEX(COOL.REPORT(A1:A5;B1:B5;D1);2;2)").number(), 1e-9);
        assertEquals("Quantity", result("COOL.REPORT(A1:A5;B1:B5;D1)").text());
    }

    private CellResult result(String formula) {
        return sheet.formula("H20", formula).at("H20");
    }
}
