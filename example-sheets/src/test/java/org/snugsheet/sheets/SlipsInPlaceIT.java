package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.sheet.XSpreadsheet;
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
import org.snugsheet.office.sheets.readings.ReadWords;
import org.snugsheet.office.sheets.wintercoats.GarmentWords;

/** What somebody who mistypes sees on the sheets of several jars and of a wrap: where the slip is, what to do, what goes on. */
@ExtendWith({SharedOffice.class, BuiltSheets.class})
class SlipsInPlaceIT {

    private static final double NINE = 9 / 24.0;
    private static final double FIVE_MINUTES = 5 / 1440.0;

    @Test
    void aSlipBesideADesignIsNamedAndColored(Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, "design-a-wrap")) {
            double bare = sheet.at("L33").number();
            assertEquals(false, isColored(office, sheet, "H36"));
            sheet.number("H36", 3.65).calculate();
            String said = sheet.at("A34").text();
            assertTrue(said.startsWith("Wrapped jar: Minute 15: 3.65"), said);
            assertEquals("–", sheet.at("N33").text());
            assertEquals(bare, sheet.at("L33").number());
            assertTrue(sheet.at("A40").text().startsWith("No answer yet: fix first"));
            assertEquals(true, isColored(office, sheet, "H36"));
            assertEquals(false, isColored(office, sheet, "H37"));
            assertEquals(false, isColored(office, sheet, "G36"));
        }
    }

    @ParameterizedTest
    @CsvSource({"one-jar-one-curve, B11, A24, 12", "first-five-minutes, C10, F7, 10"})
    void aSlipOfOneJarIsNamedByItsMinute(
            String name, String cell, String message, int minute, Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, name)) {
            sheet.number(cell, 3.65).calculate();
            String said = sheet.at(message).text();
            assertTrue(said.startsWith("Minute " + minute + ": 3.65"), said);
        }
    }

    @Test
    void leavesOfAnyNameAreALayer(Office office, BuiltSheets.All built) throws com.sun.star.uno.Exception {
        try (CalcDocument sheet = open(office, built, "design-a-wrap")) {
            sheet.text("B21", "dry leaves").number("C21", 10).calculate();
            assertTrue(sheet.at("A29").text().startsWith("OK"), sheet.at("A29").text());
            assertTrue(sheet.at("E21").number() > 0.1);
            Object rule = Opened.property(Opened.pages(sheet).get(0).getCellRangeByName("B21"), "Validation");
            assertEquals(false, Opened.property(rule, "ShowErrorMessage"), "a name that the functions know is let in");
        }
    }

    /** Somebody who types clock times over minutes has both for a while. */
    @ParameterizedTest
    @CsvSource({"one-jar-one-curve, A8, A24", "first-five-minutes, B8, F7", "design-a-wrap, F33, A34"})
    void clockTimesAmongMinutesAreToldSo(
            String name, String times, String message, Office office, BuiltSheets.All built) {
        try (CalcDocument sheet = open(office, built, name)) {
            sheet.numbersDown(times, NINE, NINE + FIVE_MINUTES, NINE + 2 * FIVE_MINUTES)
                    .calculate();
            String said = sheet.at(message).text();
            assertTrue(said.endsWith(ReadWords.MIXED_TIMES.english()), said);
        }
    }

    @Test
    void everyGarmentOfTheListIsKnown(Office office) {
        try (CalcDocument document = office.newDocument()) {
            List<String> garments = Arrays.stream(GarmentWords.values())
                    .map(GarmentWords::english)
                    .toList();
            document.formulasDown(
                            "A1",
                            garments.stream()
                                    .map(name -> "=COLD.OUTFIT(\"" + name + "\")")
                                    .toList())
                    .calculate();
            for (int row = 0; row < garments.size(); row++) {
                CellResult warmth = document.at("A" + (row + 1));
                assertTrue(warmth instanceof CellResult.OfNumber, garments.get(row) + ": " + warmth);
                assertTrue(warmth.number() > 0, garments.get(row));
            }
        }
    }

    /** Whether the condition that colors a cell is true, worked out in a free cell of its row. */
    private static boolean isColored(Office office, CalcDocument sheet, String cell) {
        String condition = office.call("looking for the condition of " + cell, () -> {
            XSpreadsheet page = Opened.pages(sheet).get(0);
            Opened.as(XProtectable.class, page).unprotect("");
            Object format = Opened.property(page.getCellRangeByName(cell), "ConditionalFormat");
            XSheetConditionalEntries entries = Opened.as(XSheetConditionalEntries.class, format);
            assertEquals(1, entries.getCount());
            return Opened.as(XSheetCondition.class, entries.getByIndex(0)).getFormula1();
        });
        String free = "R" + cell.substring(1);
        double colored = sheet.formula(free, "=IF(" + condition + ";1;0)")
                .calculate()
                .at(free)
                .number();
        return colored == 1;
    }

    private static CalcDocument open(Office office, BuiltSheets.All built, String name) {
        return office.open(built.named(name).ods());
    }
}
