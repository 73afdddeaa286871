package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;

/** The functions that answer with a table, as array formulas. */
class TablesTest {

    private final PlainSheet sheet = new PlainSheet();

    @BeforeEach
    void typeReadings() {
        sheet.numbersDown("A1", 0, 5, 10, 15, 20, 25, 30).numbersDown("B1", 40, 31, 24, 19, 16, 14, 12);
        sheet.number("D1", 8);
    }

    @Test
    void theReportAgreesWithTheScalarFunctions() {
        sheet.arrayFormula("F1:K12", "COOL.REPORT(A1:A7;B1:B7;D1)");
        List<List<CellResult>> table = sheet.all("F1:K12");

        assertEquals("Quantity", table.get(0).get(0).text());
        same("COOL.RATE", table.get(1), 1);
        same("COOL.RATE.ERROR", table.get(1), 2);
        same("COOL.HALFTIME", table.get(2), 1);
        same("COOL.HALFTIME.ERROR", table.get(2), 2);
        same("COOL.START", table.get(3), 1);
        same("COOL.START.ERROR", table.get(3), 2);
        same("COOL.MISFIT", table.get(5), 1);
        assertEquals(7, table.get(6).get(1).number());
        assertTrue(table.get(1).get(3).number() < table.get(1).get(1).number());
        assertTrue(table.get(1).get(4).number() > table.get(1).get(1).number());
        String law = result("COOL.MODEL(A1:A7;B1:B7;D1)").text();
        assertEquals("Law supported: " + law, table.get(7).get(0).text());
    }

    @Test
    void theReportSpeaksFahrenheitToo() {
        for (int row = 1; row <= 7; row++) {
            sheet.formula("C" + row, "B" + row + "*9/5+32");
        }
        double celsius = at("COOL.REPORT(A1:A7;B1:B7;D1)", 4, 4).number();
        double fahrenheit = at("COOL.REPORT(A1:A7;C1:C7;46.4;2;\"F\")", 4, 4).number();

        assertEquals(celsius * 9 / 5 + 32, fahrenheit, 0.2);
        assertEquals("°F", at("COOL.REPORT(A1:A7;C1:C7;46.4;2;\"F\")", 4, 6).text());
    }

    @Test
    void aJarThatHardlyCoolsHasAHalfTimeLongerThan() {
        sheet.numbersDown("B1", 40, 40, 40, 40, 40, 40, 39);

        assertEquals("no limit", at("COOL.REPORT(A1:A7;B1:B7;D1)", 3, 5).text());
        assertTrue(at("COOL.REPORT(A1:A7;B1:B7;D1)", 3, 4).number() > 30);
    }

    @Test
    void aBathThatKeepsItsHeatIsALawToTry() {
        boolean found = false;
        sheet.arrayFormula("F1:K14", "COOL.REPORT(A1:A7;B1:B7;D1;1;\"C\";200;500)");
        for (List<CellResult> row : sheet.all("F1:K14")) {
            found |= row.get(0) instanceof CellResult.OfText text
                    && text.text().endsWith("jar and bath meet in the middle");
        }
        assertTrue(found);
        assertEquals(
                ErrorCodes.INVALID_ARGUMENT,
                result("COOL.REPORT(A1:A7;B1:B7;D1;1;\"C\";200)").error());
    }

    @Test
    void theCurveIsTheFittedOneWithItsBand() {
        sheet.numbersDown("E1", 0, 12.5).text("E3", "").number("E4", 30);
        sheet.arrayFormula("F1:H5", "COOL.CURVE(E1:E4;A1:A7;B1:B7;D1)");
        List<List<CellResult>> table = sheet.all("F1:H5");

        assertEquals("fitted", table.get(0).get(0).text());
        same("COOL.START", table.get(1), 0);
        double fitted = result("COOL.TEMP(12.5;COOL.START(A1:A7;B1:B7;D1);D1;COOL.RATE(A1:A7;B1:B7;D1))")
                .number();
        assertEquals(fitted, table.get(2).get(0).number(), 1e-9);
        assertTrue(table.get(2).get(1).number() < fitted
                && fitted < table.get(2).get(2).number());
        assertEquals("", table.get(3).get(0).text());
    }

    @Test
    void surroundingsMayBeMeasuredOrFitted() {
        sheet.numbersDown("D1", 8, 8, 8, 8, 8, 8, 8).number("E1", 8);
        double given = result("COOL.RATE(A1:A7;B1:B7;E1)").number();

        assertEquals(given, result("COOL.RATE(A1:A7;B1:B7;D1:D7)").number(), 1e-9);
        assertEquals(8, result("COOL.SURROUNDINGS(A1:A7;B1:B7;D1:D7)").number(), 1e-9);
        sheet.numbersDown("D1", 8, 8, 9, 9, 10, 10, 10);
        assertTrue(result("COOL.RATE(A1:A7;B1:B7;D1:D7)").number() > given);
        // SciPy 1.10.1: curve_fit(lambda t, a, k, r: r + a*exp(-k*t), ...) gives r = 8.17028925.
        assertEquals(
                8.17028925,
                result("COOL.SURROUNDINGS({0;10;20;30;40;50;60;70;80;90};{40;27;20;15;12;11;10;9;9;8};\"fit\")")
                        .number(),
                1e-6);
        assertEquals(
                "Row 7 (minute 30): the surroundings were not read at that time. Type their temperature in that row.",
                sheet.text("D7", "")
                        .formula("H20", "CHECK.READINGS(A1:A7;B1:B7;D1:D7)")
                        .at("H20")
                        .text());
    }

    /** Half an hour to 12 °C, read to the degree: a room of 8.2 °C by Newton’s law, of 5.0 by that of still air (SciPy). */
    @Test
    void surroundingsThatReadingsCannotTellAreRefusedByAll() {
        String reason = "These readings cannot tell warm surroundings from a jar that loses heat ever more slowly";
        for (String name : List.of(
                "COOL.RATE",
                "COOL.RATE.ERROR",
                "COOL.HALFTIME",
                "COOL.HALFTIME.ERROR",
                "COOL.START",
                "COOL.START.ERROR",
                "COOL.SURROUNDINGS",
                "COOL.SURROUNDINGS.ERROR",
                "COOL.MISFIT",
                "COOL.MODEL",
                "COOL.REPORT",
                "COOL.SENTENCE")) {
            assertTrue(result(name + "(A1:A7;B1:B7;\"fit\")").error() != 0, name);
        }
        assertTrue(result("COOL.CURVE(10;A1:A7;B1:B7;\"fit\")").error() != 0);
        assertTrue(result("COOL.SLOWER(A1:A7;B1:B7;A1:A7;B1:B7;\"fit\")").error() != 0);
        assertTrue(result("COOL.VERDICT(A1:A7;B1:B7;A1:A7;B1:B7;\"fit\")").error() != 0);
        assertTrue(result("CHECK.READINGS(A1:A7;B1:B7;\"fit\")").text().startsWith(reason));
        sheet.arrayFormula("F1:I2", "CHECK.ALL(A1:A7;B1:B7;\"fit\")");
        assertTrue(sheet.all("F1:I2").stream()
                .flatMap(List::stream)
                .anyMatch(cell -> cell.text().startsWith(reason)));
        sheet.arrayFormula("F5:N6", "COOL.SHEET(A1:B7;\"fit\")");
        assertTrue(sheet.all("F5:N6").stream()
                .flatMap(List::stream)
                .anyMatch(cell -> cell.text().contains(reason)));
    }

    @Test
    void clockTimesServeAsMinutes() {
        double rate = result("COOL.RATE(A1:A7;B1:B7;D1)").number();
        for (int row = 1; row <= 7; row++) {
            sheet.formula("E" + row, "TIME(23;50+5*" + (row - 1) + ";0)");
        }
        // Past midnight, as time cells and as typed text.
        assertEquals(rate, result("COOL.RATE(COOL.MINUTES(E1:E7);B1:B7;D1)").number(), 1e-9);
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

    @Test
    void theVesselTakesItsShareOfTheHeat() {
        double water = result("COOL.HEAT(200;40;20)").number();
        assertEquals(water + 100 * 20, result("COOL.HEAT(200;40;20;100)").number(), 1e-6);
        assertEquals(water, result("COOL.HEAT(200;104;68;Z1;\"F\")").number(), 1e-6);
        assertTrue(result("COOL.MIXED(200;40;800;5;100)").number()
                > result("COOL.MIXED(200;40;800;5)").number());
        assertEquals(ErrorCodes.INVALID_ARGUMENT, result("COOL.HEAT(200;Z1;20)").error());
    }

    @Test
    void theRankingPutsTheBestWrapFirstAndTiesTogether() {
        sheet.text("L1", "bare").text("M1", "wool").text("N1", "fleece");
        for (int row = 2; row <= 8; row++) {
            sheet.formula("L" + row, "B" + (row - 1));
        }
        sheet.numbersDown("M2", 40, 37, 35, 33, 31, 29, 28).numbersDown("N2", 40, 37, 35, 32, 31, 29, 28);
        sheet.arrayFormula("P1:W4", "COOL.RANK(A1:A7;L2:N8;L1:N1;D1)");
        List<List<CellResult>> table = sheet.all("P1:W4");

        assertEquals("Place", table.get(0).get(0).text());
        assertEquals(1, table.get(1).get(0).number());
        assertEquals(1, table.get(2).get(0).number());
        assertEquals(3, table.get(3).get(0).number());
        assertEquals("bare", table.get(3).get(1).text());
        assertEquals("", table.get(3).get(7).text());
        assertEquals(table.get(2).get(1).text(), table.get(1).get(7).text());
        assertEquals(
                result("COOL.RATE(A1:A7;L2:L8;D1)").number(),
                table.get(3).get(3).number(),
                1e-12);
        assertEquals(
                "These readings cannot tell which jar cools more slowly. Take more readings, or fill more jars.",
                result("COOL.VERDICT(A1:A7;M2:M8;A1:A7;N2:N8;D1)").text());
        String slower = result("COOL.VERDICT(A1:A7;M2:M8;A1:A7;L2:L8;D1)").text();
        String faster = result("COOL.VERDICT(A1:A7;L2:L8;A1:A7;M2:M8;D1)").text();
        assertTrue(slower.startsWith("The first jar takes "), slower);
        assertEquals(
                faster,
                slower.replace("first", "third").replace("second", "first").replace("third", "second"));
        assertEquals(
                1,
                result("COOL.SLOWER(A1:A7;M2:M8;A1:A7;L2:L8;D1)*COOL.SLOWER(A1:A7;L2:L8;A1:A7;M2:M8;D1)")
                        .number(),
                1e-9);
    }

    /** A jar that surely cools more slowly, and may as well cool hardly: there is no upper limit, and none is said. */
    @Test
    void aVerdictWithoutAnUpperLimitSaysTheLowerOne() {
        sheet.numbersDown("M2", 40, 40, 39, 40, 39, 39, 39);
        String second = result("COOL.VERDICT(A1:A7;B1:B7;A1:A7;M2:M8;D1)").text();
        String first = result("COOL.VERDICT(A1:A7;M2:M8;A1:A7;B1:B7;D1)").text();

        assertTrue(
                second.matches(
                        "The second jar takes [0-9.]+ times as long to cool as the first \\([0-9.]+ times or more, 95 % sure\\)\\."),
                second);
        assertTrue(first.startsWith("The first jar takes "), first);
        assertTrue(first.endsWith(" times or more, 95 % sure)."), first);
    }

    @Test
    void aJarThatDoesNotCoolAtAllIsSlowerByNoNumberOfTimes() {
        sheet.numbersDown("M2", 40, 40, 40, 40, 40, 40, 40);
        String verdict = result("COOL.VERDICT(A1:A7;B1:B7;A1:A7;M2:M8;D1)").text();

        assertTrue(verdict.startsWith("The second jar hardly cools: "), verdict);
        assertTrue(verdict.endsWith(" times as long as the first, or longer still (95 % sure)."), verdict);
        assertEquals(
                ErrorCodes.INVALID_ARGUMENT,
                result("COOL.SLOWER(A1:A7;B1:B7;A1:A7;M2:M8;D1)").error());
    }

    @Test
    void jarsOfOneMaterialAreTakenTogether() {
        sheet.text("L1", "wool").text("M1", "Wool").text("N1", "bare");
        for (int row = 2; row <= 8; row++) {
            sheet.formula("N" + row, "B" + (row - 1));
        }
        sheet.numbersDown("L2", 40, 37, 35, 33, 31, 29, 28).numbersDown("M2", 40, 37, 35, 32, 31, 29, 28);
        sheet.arrayFormula("P1:W3", "COOL.RANK(A1:A7;L2:N8;L1:N1;D1)");

        assertEquals("wool", sheet.at("Q2").text());
        assertEquals(2, sheet.at("R2").number());
        assertEquals(
                ErrorCodes.INVALID_ARGUMENT,
                result("COOL.RANK(A1:A7;L2:N8;L1:M1;D1)").error());
        assertEquals(
                ErrorCodes.INVALID_ARGUMENT,
                result("COOL.RANK(A1:A7;L2:M8;L1:M1;D1)").error());
    }

    private void same(String function, List<CellResult> row, int column) {
        assertEquals(
                result(function + "(A1:A7;B1:B7;D1)").number(), row.get(column).number(), 1e-9, function);
    }

    private CellResult at(String formula, int row, int column) {
        return result("INDEX(" + formula + ";" + row + ";" + column + ")");
    }

    private CellResult result(String formula) {
        return sheet.result(formula);
    }
}
