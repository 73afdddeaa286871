package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;

/** What people do to cells, and what the functions make of it. */
class CellsTest {

    /** Fitted to the readings below by SciPy’s curve_fit: see the engine’s src/test/scipy. Surroundings 10 °C. */
    private static final double RATE = 0.0395946704844;

    private final PlainSheet sheet = new PlainSheet();

    @BeforeEach
    void typeReadings() {
        sheet.numbersDown("A1", 0, 5, 10, 15, 20).numbersDown("B1", 40, 34, 30, 26, 24);
        sheet.number("D1", 10);
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
    void aCoarserMarkGivesALargerError() {
        double fine = result("COOL.RATE.ERROR(A1:A5;B1:B5;D1;0.1)").number();
        double coarse = result("COOL.RATE.ERROR(A1:A5;B1:B5;D1;5)").number();
        assertTrue(coarse > 2 * fine);
    }

    @Test
    void readingsInFahrenheitAgree() {
        for (int row = 1; row <= 5; row++) {
            sheet.formula("C" + row, "B" + row + "*9/5+32");
        }
        sheet.number("D2", 50);

        assertEquals(RATE, result("COOL.RATE(A1:A5;C1:C5;D2;2;\"F\")").number(), 1e-9);
        double celsius = result("COOL.START(A1:A5;B1:B5;D1)").number();
        assertEquals(
                celsius * 9 / 5 + 32,
                result("COOL.START(A1:A5;C1:C5;D2;2;\"F\")").number(),
                1e-9);
        assertEquals(
                result("COOL.MISFIT(A1:A5;B1:B5;D1)").number() * 9 / 5,
                result("COOL.MISFIT(A1:A5;C1:C5;D2;2;\"F\")").number(),
                1e-9);
    }

    @Test
    void aTypedScaleWinsOverTheScaleOfTheSheet() {
        sheet.text("B2", "93,2 °F").text("B3", "30 C").text("D1", "50 F");

        assertEquals(RATE, result("COOL.RATE(A1:A5;B1:B5;D1)").number(), 1e-9);
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
        refused("A1:A5;B1:B5;Z1", "The cell for the surroundings is blank. Type the temperature around the jar there.");
        sheet.number("Z1", 0);
        assertTrue(result("COOL.RATE(A1:A5;B1:B5;Z1)").number() > 0);
    }

    @Test
    void textThatIsNoTemperatureIsRefusedByItsRow() {
        sheet.text("B3", "warm");
        refused(
                "A1:A5;B1:B5;D1",
                "Row 3 (minute 10): “warm” is not a temperature. Type a number, or leave the cell blank.");
    }

    @Test
    void textThatIsNoTimeIsRefusedByItsRow() {
        sheet.text("A4", "late");
        refused("A1:A5;B1:B5;D1", "Row 4: “late” is not a number. Type a plain number there.");
    }

    @Test
    void timesThatDoNotRiseAreRefusedByTheirRow() {
        sheet.number("A3", 5);
        refused(
                "A1:A5;B1:B5;D1",
                "Row 3 (minute 5): the time 5 is out of step, 10 would fit. Look again; if so, type 10.");
    }

    @Test
    void surroundingsThatTheReadingsPassAreRefused() {
        sheet.number("D1", 29);
        refused(
                "A1:A5;B1:B5;D1",
                "The surroundings, 29, look like °F. Look again; if so, type them with their scale: 29 °F.");
    }

    @Test
    void theSentenceSpeaksInTheScaleOfTheSheet() {
        sheet.number("D1", 29);
        assertEquals(
                "All readings look like °C, but °F is the scale here. Type readings and surroundings on one scale, and name it.",
                result("CHECK.READINGS(A1:A5;B1:B5;D1;2;\"F\")").text());
    }

    @Test
    void tooFewReadingsAreRefused() {
        refused("A1:A2;B1:B2;D1", "Only 2 of the readings can be used, and 3 are needed. Take more readings.");
        refused("A1;B1;D1", "Only 1 of the readings can be used, and 3 are needed. Take more readings.");
        refused("Y1:Y5;Z1:Z5;D1", "There are no readings yet. Type times and temperatures.");
    }

    @Test
    void rangesThatDoNotFitAreRefused() {
        refused(
                "A1:A5;B1:B4;D1",
                "There are 5 times but 4 temperatures. Select the same rows for both; leave a missed reading blank.");
        refused("A1:B5;B1:B5;D1", "Give one column or one row of cells here, not a block of 5 by 2.");
        refused(
                "A1:A5;B1:B5;D1:D2",
                "There are 2 temperatures of the surroundings but 5 times. Give one cell, or one for each time.");
    }

    @Test
    void wrongOptionsAreRefused() {
        refused(
                "A1:A5;B1:B5;D1;-1",
                "The smallest mark of the thermometer must be more than zero. Look at its scale and type it.");
        refused("A1:A5;B1:B5;D1;1;\"X\"", "“X” is not a temperature scale. Use C, F or K.");
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

    /** NIST SP 811 (2008), B.8; the water temperatures are common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "212, F, C, 100",
        "-40, F, C, -40",
        "0, K, C, -273.15",
        "40, C, F, 104",
        "20, C, F, 68",
        "98.6, F, K, 310.15"
    })
    void temperaturesConvertBothWays(double value, String from, String to, double expected) {
        assertEquals(
                expected,
                result("TEMP.CONVERT(" + value + ";\"" + from + "\";\"" + to + "\")")
                        .number(),
                1e-9);
        assertEquals(
                value,
                result("TEMP.CONVERT(" + expected + ";\"" + to + "\";\"" + from + "\")")
                        .number(),
                1e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "TEMP.CONVERT(5;Z1;\"C\")",
                "TEMP.CONVERT(\"warm\";\"C\";\"F\")",
                "TEMP.CHANGE(\"5 C\";\"C\";\"F\")",
                "COOL.TEMP(Z1;40;10;0.07)",
                "COOL.TEMP(10;Z1;10;0.07)",
                "COOL.TEMP(10;40;Z1;0.07)",
                "COOL.TEMP(10;40;10;Z1)",
                "COOL.TEMP(A1:A5;40;10;0.07)",
                "COOL.TIME(20;40;10;0)",
                "COOL.TIME(20;40;10;-0.07)",
                "COOL.TIME(10;40;10;0.07)",
                "WRAP.LAYER(Z1;0.04)",
                "WRAP.LAYER(5;Z1)",
                "WRAP.LAYER(0;0.04)",
                "WRAP.LAYER(5;0)",
                "WRAP.LAYER(5;\"unobtainium\")",
                "WRAP.LAYER(5;0.04;\"furlong\")",
                "WRAP.LAYER(5;0.04;\"mm\")",
                "WRAP.FLAT(Z1:Z2;Y1:Y2)",
                "WRAP.FLAT(A2:A3;Z1:Z2)",
                "WRAP.FLAT(A2:A3;{0.04};0.1)",
                "WRAP.FLAT(A2:A3;{0.04;0.05};-0.1)",
            })
    void badInputIsACellErrorAndNeverANumber(String formula) {
        assertEquals(ErrorCodes.INVALID_ARGUMENT, result(formula).error(), formula);
    }

    /** ISO 6946: R = d/λ, added up; 1 US R-value = 0.17611018 m²·K/W (NIST SP 811, B.8), 1 clo = 0.155, 1 tog = 0.1. */
    @ParameterizedTest
    @CsvSource({"SI, 1", "US, 0.17611018368", "clo, 0.155", "tog, 0.1"})
    void resistancesComeInTheUnitAskedFor(String unit, double squareMetreKelvinsPerWatt) {
        double expected = 0.5 / squareMetreKelvinsPerWatt;
        assertEquals(expected, result("WRAP.LAYER(20;0.04;\"" + unit + "\")").number(), 1e-8 * expected);
        assertEquals(
                expected + 0.2,
                result("WRAP.FLAT({10;10};{0.04;0.04};0.1;0.1;\"" + unit + "\")")
                        .number(),
                1e-8 * expected);
    }

    @Test
    void materialsGoByNameAndUnusedRowsStayBlank() {
        sheet.number("F1", 4).text("G1", "Wool").number("F3", 0.5).number("G3", 0.05);

        double wool = result("WRAP.LAYER(4;\"wool\")").number();
        assertTrue(wool > 0);
        assertEquals(wool + 0.01, result("WRAP.FLAT(F1:F4;G1:G4)").number(), 1e-12);
        assertEquals(
                wool + 0.01 + 0.13, result("WRAP.FLAT(F1:F4;G1:G4;0.13;Z1)").number(), 1e-12);
    }

    private CellResult result(String formula) {
        return sheet.result(formula);
    }

    private void refused(String arguments, String sentence) {
        for (String function : new String[] {"RATE", "RATE.ERROR", "HALFTIME", "HALFTIME.ERROR", "START", "MISFIT"}) {
            CellResult result = result("COOL." + function + "(" + arguments + ")");
            assertEquals(ErrorCodes.INVALID_ARGUMENT, result.error(), function);
        }
        assertEquals(sentence, result("CHECK.READINGS(" + arguments + ")").text());
    }
}
