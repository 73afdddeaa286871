package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;

/**
 * Water that is too hot for pupils is said on every page that takes readings or a start, in front of all else, whatever way it is
 * typed. The limit is that of UK Department for Education, Building Bulletin 87 (2003), 43 °C; the readings follow Newton’s law.
 */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class HotWaterIT {

    private static final int[] STARTS = {39, 44, 60, 85, 95};
    private static final double RATE = 0.03;

    /** Pages with one jar or more, its readings, the cell for the surroundings, that of the message, and one with a rate. */
    @ParameterizedTest
    @CsvSource({
        "first-five-minutes, B8, C8, D20, D21, F7, G15",
        "one-jar-one-curve, A8, B8, C20, C21, A24, E8",
        "which-wrap-wins, A8, B8, L7, L8, A17, ''",
        "four-wrapped-jars, A8, B8, '', J13, A18, B25",
        "type-your-readings, D8, E8, '', B15, D21, E26",
        "design-a-wrap, F33, G33, B7, B12, A34, L33"
    })
    void itIsSaidBesideTheReadings(
            String name,
            String times,
            String readings,
            String scale,
            String surroundings,
            String message,
            String rate,
            Office office,
            BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, name)) {
            for (int row = 0; row < 12; row++) {
                if (row > 6) {
                    sheet.text(below(times, row), "").text(below(readings, row), "");
                } else {
                    sheet.number(below(times, row), 5.0 * row);
                }
            }
            for (Way way : Way.values()) {
                boolean fahrenheit = way == Way.FAHRENHEIT || way == Way.FAHRENHEIT_AS_TEXT;
                if (fahrenheit && scale.isEmpty()) {
                    continue;
                }
                if (!scale.isEmpty()) {
                    sheet.text(scale, fahrenheit ? "F" : "C");
                }
                sheet.number(surroundings, fahrenheit ? 41 : 5);
                for (int start : STARTS) {
                    for (int row = 0; row <= 6; row++) {
                        double celsius = 5 + (start - 5) * Math.exp(-RATE * 5 * row);
                        way.type(sheet, below(readings, row), celsius);
                    }
                    String said = sheet.calculateAll().at(message).text();
                    String where = name + " " + way + " " + start + ": " + said;
                    assertEquals(start > 43, said.contains("too hot for pupils"), where);
                    assertEquals(start > 43, said.contains("no more than 43 °C (109 °F)"), where);
                    int scaleNamed = said.indexOf("Name the scale");
                    assertTrue(scaleNamed < 0 || scaleNamed > said.indexOf("too hot for pupils"), where);
                    if (start <= 60 && !rate.isEmpty()) {
                        assertEquals(RATE, sheet.at(rate).number(), 0.004, where);
                    }
                    assertEquals("", Opened.failingCells(sheet));
                }
            }
        }
    }

    @Test
    void theRankingStays(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "which-wrap-wins")) {
            String before = sheet.at("A25").text();
            for (int row = 8; row <= 14; row++) {
                sheet.number("B" + row, 2 + 50 * Math.exp(-0.05 * 5 * (row - 8)));
            }
            sheet.calculateAll();
            assertEquals("OK", sheet.at("B16").text());
            assertEquals(before, sheet.at("A25").text());
            assertEquals("bare jar", sheet.at("A32").text());
            assertTrue(sheet.at("B32").number() >= 7);
            assertFalse(sheet.at("A19").text().contains("Held back"));
        }
    }

    @Test
    void aDesignSaysItBesideItsStart(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "design-a-wrap")) {
            for (int start : STARTS) {
                for (Way way : Way.values()) {
                    boolean fahrenheit = way == Way.FAHRENHEIT || way == Way.FAHRENHEIT_AS_TEXT;
                    sheet.text("B7", fahrenheit ? "F" : "C").number("B12", fahrenheit ? 41 : 5);
                    way.type(sheet, "B11", start);
                    String said = sheet.calculateAll().at("C11").text();
                    assertEquals(start > 43, said.startsWith("too hot for pupils"), way + " " + start + ": " + said);
                }
            }
        }
    }

    @Test
    void aPlanIsRefusedInWords(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "plan-the-lesson")) {
            for (int start : STARTS) {
                for (Way way : new Way[] {Way.CELSIUS, Way.CELSIUS_AS_TEXT, Way.FAHRENHEIT_AS_TEXT}) {
                    way.type(sheet, "B11", start);
                    String said = sheet.calculateAll().at("A6").text();
                    assertEquals(start > 43, said.startsWith("Too hot for pupils"), way + " " + start + ": " + said);
                    assertEquals(start > 43, sheet.at("F14") instanceof CellResult.OfText);
                }
            }
            sheet.number("B11", 40).number("B13", 62).calculateAll();
            assertTrue(sheet.at("C13").text().contains("away from pupils"));
            for (String cold : new String[] {"-5", "-20", "-30", "-4 °F", "-22 °F"}) {
                sheet.text("B12", cold);
                boolean frost = !cold.equals("-5");
                assertEquals(frost, sheet.calculateAll().at("C12").text().contains("children"), cold);
            }
        }
    }

    private enum Way {
        CELSIUS,
        CELSIUS_AS_TEXT,
        FAHRENHEIT,
        FAHRENHEIT_AS_TEXT;

        void type(CalcDocument sheet, String cell, double celsius) {
            double degrees = this == CELSIUS || this == CELSIUS_AS_TEXT ? celsius : celsius * 1.8 + 32;
            double rounded = Math.rint(degrees * 2) / 2;
            switch (this) {
                case CELSIUS, FAHRENHEIT -> sheet.number(cell, rounded);
                case CELSIUS_AS_TEXT -> sheet.text(cell, rounded + " °C");
                case FAHRENHEIT_AS_TEXT -> sheet.text(cell, rounded + " °F");
            }
        }
    }

    private static String below(String cell, int rows) {
        return cell.charAt(0) + "" + (Integer.parseInt(cell.substring(1)) + rows);
    }

    private static CalcDocument open(Office office, BuiltSheets.All built, String name) {
        return office.open(built.named(name).ods()).calculateAll();
    }
}
