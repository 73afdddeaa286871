package org.snugsheet.office.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;

/** Plans for a lesson. */
class PlanTest {

    private final PlainSheet sheet = new PlainSheet();

    /**
     * Heat balance with equal specific heats, OpenStax College Physics, section 14.2, from which real water differs by its density;
     * melting heat 334 kJ/kg, section 14.3; the rest by hand from e^(−k·t).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PLAN.MIX.HOT(60;10;40;1000) | 600 | 10",
                "PLAN.MIX.COLD(60;10;40;1000) | 400 | 5",
                "COOL.MIXED(PLAN.MIX.HOT(60;10;40;1000);60;PLAN.MIX.COLD(60;10;40;1000);10) | 40 | 1e-9",
                "PLAN.ICE(1000;20;1;0.001;40;0.05;0.001;21) | 250.6 | 1",
                "PLAN.BATH(1000;5;1;250;40;0.05;10000;5;1e-9) | 12 | 0.1",
                "PLAN.LONGEST(0.04;40;5) | 88.883701 | 1e-6",
                "PLAN.TELLAPART(0.04;0.02;40;5;2) | 3.1387355 | 1e-6",
            })
    void theSumsOfTheTextbookAreRightInACell(String formula, double answer, double tolerance) {
        assertEquals(answer, result(formula).number(), tolerance);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PLAN.MIX.HOT(60;10;40;1000) | PLAN.MIX.HOT(140;50;104;1000;\"F\")",
                "PLAN.TELLAPART(0.04;0.02;40;5;2) | PLAN.TELLAPART(0.04;0.02;104;41;3.6;\"F\")",
                "PLAN.CERTAINTY(0.04;40;5;40;5;1;0.4) | PLAN.CERTAINTY(0.04;104;41;40;5;1.8;0.72;\"F\")",
                "PLAN.ICE(4000;5;6;250;40;0.05;30;20) | PLAN.ICE(4000;41;6;250;104;0.05;30;68;;\"F\")",
                "TEMP.CONVERT(PLAN.BATH(4000;5;6;250;40;0.05;30;20);\"C\";\"F\") | PLAN.BATH(4000;41;6;250;104;0.05;30;68;;\"F\")",
            })
    void fahrenheitPlansTheSameLesson(String celsius, String fahrenheit) {
        assertEquals(result(celsius).number(), result(fahrenheit).number(), 1e-9);
    }

    @Test
    void theLessonAgreesWithTheSingleFunctions() {
        sheet.arrayFormula("A1:D40", "PLAN.LESSON(30;250;40;5;0.05;0.03;55;12)");
        List<List<CellResult>> rows = sheet.all("A1:D40");

        assertEquals(40, value(rows, "start"));
        assertEquals(result("PLAN.MIX.HOT(55;12;40;250)").number(), value(rows, "hot water for one jar"), 1e-9);
        double every = agrees(rows, 5);
        int minute = row(rows, "minute");
        CellResult second = rows.get(minute + 2).get(2);
        assertEquals(result("COOL.TEMP(" + every + ";40;5;0.03)").number(), second.number(), 1e-9);
        assertTrue(row(rows, "caution") > minute);
    }

    /** In a tub that ice holds at 0 °C, as typed, the jars cool toward 0 °C. */
    @Test
    void aTubWithIceIsForecastAtFreezing() {
        sheet.arrayFormula("A1:D40", "PLAN.LESSON(30;250;40;0;0.05;0.03;;;4000;6)");
        List<List<CellResult>> rows = sheet.all("A1:D40");

        assertEquals(0, value(rows, "forecasts are for a tub that ends at"));
        double every = agrees(rows, 0);
        assertEquals(
                result("COOL.TEMP(" + every + ";40;0;0.05)").number(),
                rows.get(row(rows, "minute") + 2).get(1).number(),
                1e-9);
    }

    /**
     * The heat balances of jar and tub in steps of a second: 250 ml at 40 °C and 4 l at 5 °C with 4.18 and 4.20 J/(g·K) and 0.9922
     * and 1 g/ml (handbook values, from memory), and what the room gives the tub, as PLAN.BATH names it.
     */
    @Test
    void aTubThatWarmsIsForecastWarmer() {
        sheet.arrayFormula("A1:D40", "PLAN.LESSON(30;250;40;5;0.05;0.03;;;4000;6)");
        List<List<CellResult>> rows = sheet.all("A1:D40");
        double end = result("PLAN.BATH(4000;5;6;250;40;0.05;30;21)").number();

        assertEquals(end, value(rows, "tub at the end, without ice"), 1e-9);
        assertEquals(end, value(rows, "forecasts are for a tub that ends at"), 1e-9);
        assertEquals(
                result("PLAN.ICE(4000;5;6;250;40;0.05;30;21)").number(),
                value(rows, "ice that melts if it is held at freezing"),
                1e-9);
        double ofJar = 250 * 0.9922 * 4.18;
        double ofTub = 4000 * 4.20;
        // The room: ISO 6946:2017, Table 7, through a tub as wide as high.
        double room = Math.PI * Math.pow(0.004 / (2 * Math.PI), 2.0 / 3) * (4 / 0.13 + 1 / 0.17 + 1 / 0.10);
        double bare = 40;
        double wrapped = 40;
        double tub = 5;
        int reading = row(rows, "minute") + 1;
        for (int second = 0; second <= 1800; second++) {
            if (rows.get(reading).get(0) instanceof CellResult.OfNumber minute
                    && Math.abs(minute.number() * 60 - second) < 0.5) {
                assertEquals(bare, rows.get(reading).get(1).number(), 0.05);
                assertEquals(wrapped, rows.get(reading).get(2).number(), 0.05);
                reading++;
            }
            double flow = 0.05 / 60 * (bare - tub);
            wrapped -= 0.03 / 60 * (wrapped - tub);
            bare -= flow;
            tub += (6 * ofJar * flow + room * (21 - tub)) / ofTub;
        }
        assertEquals(tub, end, 0.05);
        assertTrue(rows.get(reading - 1).get(1).number() > end, "no jar is colder than the tub it warms");
        assertTrue(value(rows, "the difference shows after")
                > result("PLAN.TELLAPART(0.05;0.03;40;5)").number());
    }

    private double agrees(List<List<CellResult>> rows, double surroundings) {
        String jar = "40;" + surroundings + ";30";
        double every = result("PLAN.INTERVAL(0.05;" + jar + ")").number();
        assertEquals(every, value(rows, "read every"));
        assertEquals(
                result("PLAN.TELLAPART(0.05;0.03;40;" + surroundings + ")").number(),
                value(rows, "the difference shows after"),
                1e-9);
        assertEquals(
                result("PLAN.REPEATS(0.05;0.03;" + jar + ";" + every + ")").number(), value(rows, "jars of each wrap"));
        return every;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "PLAN.MIX.HOT(60;10;50;1000)",
                "PLAN.BATH(4000;5;6;250;44;0.05;30;21)",
                "PLAN.ICE(4000;5;6;250;44;0.05;30;21)",
                "PLAN.TELLAPART(0.04;0.02;44;5;2)",
                "PLAN.LONGEST(0.04;44;5)",
                "PLAN.INTERVAL(0.04;44;5;40)",
                "PLAN.READINGS(0.04;44;5;40)",
                "PLAN.CERTAINTY(0.04;44;5;40;5)",
                "PLAN.REPEATS(0.05;0.03;44;5;30;3)",
                "PLAN.POWER(4;0.05;0.03;44;5;30;3)",
                "PLAN.LONGEST(0.04;111;41;2;\"F\")",
            })
    void aStartAboveTheSchoolLimitIsRefused(String formula) {
        assertEquals(ErrorCodes.INVALID_ARGUMENT, result(formula).error(), formula);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "PLAN.SAFE(Z1)",
                "PLAN.MIX.HOT(Z1;10;40;1000)",
                "PLAN.MIX.HOT(60;10;40;Z1)",
                "PLAN.MIX.HOT(60;41;40;1000)",
                "PLAN.BATH(4000;5;2.5;250;40;0.05;30;21)",
                "PLAN.BATH(4000;5;6;250;40;Z1;30;21)",
                "PLAN.BATH(4000;-5;6;250;40;0.05;30;21)",
                "PLAN.TELLAPART(0.04;0.04;40;5;2)",
                "PLAN.TELLAPART(0.04;0;40;5;2)",
                "PLAN.INTERVAL(0.04;40;5;40;5)",
                "PLAN.CERTAINTY(0.04;40;5;40;0)",
                "PLAN.CERTAINTY(0.04;40;5;40;5;-1)",
                "PLAN.POWER(2.5;0.05;0.03;40;5;30;3)",
                "PLAN.POWER(21;0.05;0.03;40;5;30;3)",
            })
    void badInputIsACellErrorAndNeverANumber(String formula) {
        assertEquals(ErrorCodes.INVALID_ARGUMENT, result(formula).error(), formula);
    }

    /** Typed as a number, and as text with its unit, in a cell and in the formula, on either scale. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "39 | This water is warmer than a child’s bath",
                "44 | Too hot for pupils: schools",
                "60 | within 3 seconds",
                "95 | within a second",
                "-5 | ",
                "82.2 | within a second",
                "180 | ",
            })
    void hotWaterIsSpokenOfHoweverItIsTyped(double celsius, String caution) {
        double fahrenheit = celsius * 1.8 + 32;
        sheet.text("A1", celsius + " °C").text("A2", fahrenheit + " °F").number("A3", celsius);
        sheet.number("A4", fahrenheit);
        for (String water : List.of(
                "A1",
                "A2",
                "A3",
                "A4;\"F\"",
                "A2;\"C\"",
                "A1;\"F\"",
                "" + celsius,
                "\"" + fahrenheit + " °F\"",
                fahrenheit + ";\"F\"")) {
            CellResult said = result("PLAN.SAFE(" + water + ")");
            if (caution == null) {
                assertEquals(ErrorCodes.INVALID_ARGUMENT, said.error(), water);
            } else {
                assertTrue(said.text().contains(caution), water + ": " + said.text());
                assertTrue(said.text().endsWith("come first."), said.text());
            }
        }
    }

    /** From 60 °C on a tap is for adults, away from pupils; what no tap gives is refused. */
    @Test
    void hotTapsAreForAdults() {
        for (String taps : List.of("60;10;40;1000", "\"140 °F\";10;40;1000", "140;50;104;1000;\"F\"")) {
            sheet.arrayFormula("A1:B5", "PLAN.MIX(" + taps + ")");
            assertTrue(
                    sheet.at("B4").text().contains("away from pupils"),
                    sheet.at("B4").text());
        }
        for (String kettle : List.of("95;10;40;1000", "\"203 °F\";10;40;1000", "203;50;104;1000;\"F\"")) {
            assertEquals(
                    ErrorCodes.INVALID_ARGUMENT,
                    result("PLAN.MIX.HOT(" + kettle + ")").error());
        }
    }

    @Test
    void theTableOfTheMixCarriesItsCautions() {
        sheet.arrayFormula("A1:B5", "PLAN.MIX(55;12;40;1000)");
        assertEquals(
                result("PLAN.MIX.HOT(55;12;40;1000)").number(), sheet.at("B2").number(), 1e-9);
        assertEquals("caution", sheet.at("A4").text());
        assertTrue(sheet.at("B5").text().endsWith("come first."));
    }

    private static double value(List<List<CellResult>> rows, String what) {
        return rows.get(row(rows, what)).get(1).number();
    }

    private static int row(List<List<CellResult>> rows, String what) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).get(0) instanceof CellResult.OfText text && what.equals(text.text())) {
                return i;
            }
        }
        throw new AssertionError("no line " + what);
    }

    private CellResult result(String formula) {
        return sheet.result(formula);
    }
}
