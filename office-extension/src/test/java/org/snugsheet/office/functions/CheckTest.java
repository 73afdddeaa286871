package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CellResult;

/** What a class mistypes is found. */
class CheckTest {

    private static final String TIMES = "{0;5;10;15;20;25;30;35}";

    private final PlainSheet sheet = new PlainSheet();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{40;35;30;26;23;20;18;16};8 | OK",
                "{40;35;30;62;23;20;18;16};8 | Row 4 (minute 15): 62, but 26 would fit; two digits may be swapped. Look again; if so, type 26.",
                "{40;35;30;26;73;20;18;16};8 | Row 5 (minute 20): 73 looks like °F among °C. Look again; if so, type it with its scale: 73 °F.",
                "{40;35;30;260;23;20;18;16};8 | Row 4 (minute 15): 260, but 26 would fit; the decimal point may be lost or misplaced. Look again; if so, type 26.",
                "{104;95;86;79;73;68;64;61};8 | All readings look like °F, but °C is the scale here. Type readings and surroundings on one scale, and name it.",
                "{21;21;21;21;21;21;21;21};8 | All readings stay near 21 °C. Check that the thermometer is in the water, and read again.",
            })
    void theFirstTroubleIsSaid(String readings, String words) {
        assertEquals(
                words, result("CHECK.READINGS(" + TIMES + ";" + readings + ")").text());
    }

    @Test
    void allTroublesStandInATableWithTheSurestFirst() {
        sheet.arrayFormula("A1:D5", "CHECK.ALL(" + TIMES + ";{40;53;30;26;23;20;64;16};8)");
        List<List<CellResult>> table = sheet.all("A1:D5");

        assertEquals("Row", table.get(0).get(0).text());
        assertEquals(9, table.get(1).get(0).number() + table.get(2).get(0).number(), "rows 2 and 7");
        assertEquals("sure", table.get(1).get(2).text());
        assertTrue(table.get(1).get(3).text().startsWith("Look again"), table.toString());
    }

    @Test
    void aCleanColumnIsOkInTheTableToo() {
        sheet.arrayFormula("A1:D2", "CHECK.ALL(" + TIMES + ";{40;35;30;26;23;20;18;16};8)");
        assertEquals("OK", sheet.at("B2").text());
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

    /** Jars of one shape: surface by volume goes with the cube root of the volume, so 200 ml cool 7.7 % faster than 250 ml. */
    @Test
    void twoJarsAreToldApartByMoreThanTheirWraps() {
        sheet.arrayFormula(
                "A1:E6", "CHECK.FAIR({0;5;10;15;20};{40;34;30;26;24};10;{0;5;10;15;20};{40;37;35;33;31};10;200;250)");
        List<List<CellResult>> table = sheet.all("A1:E6");
        assertEquals("water, ml", table.get(4).get(0).text());
        assertEquals(100 * (Math.cbrt(250.0 / 200) - 1), table.get(4).get(3).number(), 1e-9);
        assertEquals("lid", table.get(5).get(0).text());
        assertTrue(table.get(5).get(4).text().contains("the open one would cool about"), table.toString());
    }

    /**
     * The sum by hand of the engine’s FairTestTest: 250 ml at 32 °C in 10 °C lose 2.995 W open and 1.093 W under a thin lid of
     * 7.62 W at 0.02 per minute; the ratio is off by 8.571/6.669 = 1.285.
     */
    @Test
    void aJarWithoutALidIsToldByHowMuchItSeemsToCoolFaster() {
        String jar = "{0;9.53;19.05;28.58;38.11};{40;34.79;30.49;26.94;24};10";
        sheet.arrayFormula("A1:E6", "CHECK.FAIR(" + jar + ";" + jar + ";250;250;\"open\";\"bare\")");
        List<CellResult> lid = sheet.all("A1:E6").get(5);
        assertEquals("lid, watts through it", lid.get(0).text());
        assertEquals(2.995, lid.get(1).number(), 0.06);
        assertEquals(1.093, lid.get(2).number(), 0.02);
        assertEquals(28.5, lid.get(3).number(), 1.2);
        assertTrue(lid.get(4).text().startsWith("It matters"), lid.toString());
        sheet.arrayFormula("A11:E16", "CHECK.FAIR(" + jar + ";" + jar + ";250;250;\"open\";\"cork\")");
        assertTrue(sheet.at("E12").text().contains("cork"), sheet.at("E12").text());
    }

    private CellResult result(String formula) {
        return sheet.result(formula);
    }
}
