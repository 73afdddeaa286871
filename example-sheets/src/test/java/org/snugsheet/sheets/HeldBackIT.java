package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.util.XProtectable;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.sheets.whichwrapwins.ClassDisplay;
import org.snugsheet.office.sheets.whichwrapwins.Ranked;

/** A jar that cannot be used is held back from all that is claimed, on every page, and takes nothing from the others. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class HeldBackIT {
    private static final double[] CLOCK = {9, 9 + 5 / 60.0, 9 + 10 / 60.0, 9.25, 9 + 20 / 60.0, 9 + 25 / 60.0, 9.5};

    @Test
    void aSlipTakesAPlaceFromNobodyElse(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "which-wrap-wins")) {
            List<String> before = column(sheet, "A25:A32");
            // The fifth reading of the best wrap, 3.65 for 36.5.
            sheet.number("I12", 3.65).calculateAll();
            assertEquals("", Opened.failingCells(sheet));
            assertTrue(
                    sheet.at("A17").text().startsWith("feathers"),
                    sheet.at("A17").text());
            assertTrue(sheet.at("A17").text().contains("3.65"), sheet.at("A17").text());
            assertEquals("The winner: dry leaves. It lets out the least heat. Held back: feathers.", winner(sheet));
            assertEquals(before.get(1), sheet.at("A25").text());
            assertEquals(1, sheet.at("B25").number());
            assertEquals("feathers", sheet.at("A32").text());
            assertEquals("", sheet.at("B32").text());
            assertEquals("", sheet.at("E32").text());
            assertTrue(sheet.at("G32").text().contains("3.65"), sheet.at("G32").text());
            // Neither a bar nor a name on the wall, but the words that it is held back.
            assertFalse(column(sheet, Ranked.NAME + ".J6:J13").contains("feathers"));
            assertEquals(winner(sheet), sheet.at(ClassDisplay.NAME + ".A2").text());
            sheet.text("L22", "feathers").calculateAll();
            assertEquals("No verdict: feathers is held back.", sheet.at("K23").text());
        }
    }

    /** Three jars held back make the longest sentence that a class is likely to see. */
    @Test
    void theSentenceOnTheWallIsNotCut(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "which-wrap-wins")) {
            sheet.number("B12", 3.05).number("D10", 3.65).number("F9", 3.9).calculateAll();
            assertTrue(winner(sheet).contains("Held back: bare jar, wool sock, bubble wrap"), winner(sheet));
            office.call("measuring the sentence", () -> {
                XSpreadsheet wall = Opened.pages(sheet).get(1);
                Opened.as(XProtectable.class, wall).unprotect("");
                Object row = Opened.as(XColumnRowRange.class, wall).getRows().getByIndex(1);
                int given = (Integer) Opened.property(row, "Height");
                Opened.as(XPropertySet.class, row).setPropertyValue("OptimalHeight", true);
                int needed = (Integer) Opened.property(row, "Height");
                assertTrue(needed <= given, needed + " of " + given);
                return true;
            });
        }
    }

    @Test
    void aJarWithoutReadingsWaits(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "which-wrap-wins")) {
            for (int row = 8; row <= 15; row++) {
                sheet.text("C" + row, "");
            }
            sheet.calculateAll();
            assertEquals("waiting", sheet.at("C16").text());
            assertTrue(sheet.at("A17").text().startsWith("All readings can be used"));
            assertEquals("feathers", sheet.at("A25").text());
            assertEquals("cardboard", sheet.at("A32").text());
            assertEquals("", sheet.at("B32").text());
        }
    }

    @Test
    void nothingIsFoundBeforeAnythingIsTyped(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "which-wrap-wins")) {
            for (char column = 'B'; column <= 'I'; column++) {
                for (int row = 8; row <= 15; row++) {
                    sheet.text(column + "" + row, "");
                }
            }
            sheet.text("L8", "").calculateAll();
            assertEquals("Type what the thermometers read.", sheet.at("A17").text());
            assertTrue(winner(sheet).startsWith("No ranking yet"), winner(sheet));
            assertFalse(sheet.at("A6").text().contains("invented"));
            sheet.number("B8", 40).calculateAll();
            assertTrue(sheet.at("A17").text().startsWith("How warm is it around the jars?"));
            assertEquals("", sheet.at("B16").text(), "asked once, not once a jar");
        }
    }

    /** The cells of a clock hold parts of a day. */
    @ParameterizedTest
    @CsvSource({
        "which-wrap-wins, A8, Ranking.D6",
        "first-five-minutes, B8, G15",
        "one-jar-one-curve, A8, E8",
        "type-your-readings, D8, E27",
        "four-wrapped-jars, A8, B25",
        "design-a-wrap, F33, L33"
    })
    void clockTimesAreMinutes(String name, String times, String answer, Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, name)) {
            for (int row = 7; row < 12; row++) {
                // What is left of the example would go on in minutes.
                clearBelow(sheet, times, row);
            }
            sheet.numbersDown(times, 0, 5, 10, 15, 20, 25, 30).calculateAll();
            double before = sheet.at(answer).number();
            double[] parts = Arrays.stream(CLOCK).map(hour -> hour / 24).toArray();
            sheet.numbersDown(times, parts).calculateAll();
            assertTrue(before > 0);
            assertEquals(before, sheet.at(answer).number(), 1e-9 * before);
            assertEquals("", Opened.failingCells(sheet));
        }
    }

    @Test
    void aJarsOwnScaleIsObeyed(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "which-wrap-wins")) {
            double before = rate(sheet, "bubble wrap");
            String compared =
                    sheet.text("L22", "bubble wrap").calculateAll().at("K23").text();
            for (int row = 8; row <= 14; row++) {
                sheet.number("F" + row, sheet.at("F" + row).number() * 1.8 + 32);
            }
            sheet.text("L16", "bubble wrap °F").text("L22", "bubble wrap °F").calculateAll();
            assertEquals("OK", sheet.at("F16").text());
            assertEquals(before, rate(sheet, "bubble wrap"), 0.02 * before);
            assertEquals(compared, sheet.at("K23").text());
        }
    }

    private static double rate(CalcDocument sheet, String wrap) {
        for (List<CellResult> row : sheet.all(Ranked.NAME + ".A6:G13")) {
            if (row.get(1).text().equals(wrap)) {
                return row.get(3).number();
            }
        }
        throw new AssertionError(wrap + " is not ranked");
    }

    private static void clearBelow(CalcDocument sheet, String times, int row) {
        sheet.text(times.charAt(0) + "" + (Integer.parseInt(times.substring(1)) + row), "");
    }

    private static String winner(CalcDocument sheet) {
        return sheet.at("A19").text();
    }

    private static CalcDocument open(Office office, BuiltSheets.All built, String name) {
        return office.open(built.named(name).ods()).calculateAll();
    }

    private static List<String> column(CalcDocument sheet, String cells) {
        return sheet.all(cells).stream().map(row -> row.get(0).text()).toList();
    }
}
