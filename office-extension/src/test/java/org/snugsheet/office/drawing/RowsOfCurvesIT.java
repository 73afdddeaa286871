package org.snugsheet.office.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableRows;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.FileFormat;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.menu.Menu;
import org.snugsheet.office.menu.MenuItem;
import org.snugsheet.office.uno.Uno;

/** Curves whose readings get more rows or fewer after they were drawn. The readings follow Newton’s law of cooling exactly. */
@ExtendWith(SharedOffice.class)
class RowsOfCurvesIT {

    private static final double[] MINUTES = {0, 3, 6, 9, 12, 15, 18, 21, 24};

    private final Office office;

    RowsOfCurvesIT(Office office) {
        this.office = office;
    }

    /** Somebody finds a reading that was forgotten, and puts its row between the others. */
    @Test
    void aRowPutInBetweenIsDrawnToo(@TempDir Path folder) {
        try (CalcDocument sheet = drawn()) {
            rows(sheet, rows -> rows.insertByIndex(4, 1));
            assertPairs(sheet, 0, 3, 6, 9, 12, 15, 18, 21, 24);
            assertEquals("OK", sheet.at("Curves.B29").text());
            sheet.number("A5", 7.5).number("B5", bare(7.5)).number("C5", wool(7.5));
            assertPairs(sheet, 0, 3, 6, 7.5, 9, 12, 15, 18, 21, 24);
            assertEquals("OK", sheet.at("Curves.B29").text());
            assertEquals(12, sheet.at("Curves.D55").number(), 1e-9);
            assertEquals(bare(12), sheet.at("Curves.E55").number(), 1e-6);
            assertEquals(wool(12), sheet.at("Curves.H55").number() * 1.8 + 32, 1e-6);
            String before = Arrays.deepToString(formulas(sheet));
            try (CalcDocument again = office.open(sheet.saveAs(folder.resolve("curves"), FileFormat.ODS))) {
                assertEquals(before, Arrays.deepToString(formulas(again)));
                assertPairs(again, 0, 3, 6, 7.5, 9, 12, 15, 18, 21, 24);
            }
        }
    }

    @Test
    void aRowTakenAwayIsDrawnNoMore() {
        try (CalcDocument sheet = drawn()) {
            rows(sheet, rows -> rows.removeByIndex(4, 2));
            assertPairs(sheet, 0, 3, 6, 15, 18, 21, 24);
            rows(sheet, rows -> rows.removeByIndex(1, 1));
            assertPairs(sheet, 3, 6, 15, 18, 21, 24);
            assertEquals("OK", sheet.at("Curves.B29").text());
            assertEquals("OK", sheet.at("Curves.B30").text());
        }
    }

    /** No reading is left out without a word. */
    @Test
    void moreRowsThanThereIsRoomForAreTold() {
        try (CalcDocument sheet = drawn()) {
            rows(sheet, rows -> rows.insertByIndex(4, Curves.ROOM));
            assertPairs(sheet, 0, 3, 6, 9, 12, 15, 18, 21, 24);
            assertEquals("OK", sheet.at("Curves.B29").text());
            rows(sheet, rows -> rows.insertByIndex(4, 1));
            assertEquals(DrawingWords.NO_ROOM.english(), sheet.at("Curves.B29").text());
            assertEquals(DrawingWords.NO_ROOM.english(), sheet.at("Curves.B30").text());
        }
    }

    /** A copy that goes on working has the curves as well, and they follow what is typed there. */
    @Test
    void aLivingCopyHasTheCurves(@TempDir Path folder) {
        try (CalcDocument sheet = drawn()) {
            Path copy = folder.resolve("copy.xlsx");
            Menu.shareLiving(office, sheet, copy);
            try (CalcDocument living = office.open(copy)) {
                assertPairs(living, MINUTES);
                assertEquals(bare(12), living.at("Curves.E55").number(), 1e-6);
                assertEquals(wool(12), living.at("Curves.H55").number() * 1.8 + 32, 1e-6);
                for (int i = 0; i < MINUTES.length; i++) {
                    living.number("B" + (2 + i), bare(2 * MINUTES[i]));
                }
                assertEquals(bare(24), living.at("Curves.E55").number(), 1e-6);
                living.text("B4", "warm");
                assertEquals("", living.at("Curves.E55").text());
            }
        }
    }

    /** Surroundings that were read each time get their row as well. */
    @Test
    void surroundingsReadEachTimeKeepTheirTimes() {
        try (CalcDocument sheet = drawn("D2:D10")) {
            assertEquals("OK", sheet.at("Curves.B29").text());
            assertPairs(sheet, MINUTES);
            rows(sheet, rows -> rows.insertByIndex(4, 1));
            assertEquals("OK", sheet.at("Curves.B29").text());
            sheet.number("A5", 7.5)
                    .number("B5", bare(7.5))
                    .number("C5", wool(7.5))
                    .number("D5", 3);
            assertPairs(sheet, 0, 3, 6, 7.5, 9, 12, 15, 18, 21, 24);
            assertEquals("OK", sheet.at("Curves.B29").text());
            assertEquals("OK", sheet.at("Curves.B30").text());
            assertEquals(bare(12), sheet.at("Curves.E55").number(), 1e-6);
            sheet.number("D5", 9);
            assertEquals(9, sheet.at("Curves.K38").number());
        }
    }

    /** Surroundings elsewhere on the page do not get the row: which belongs to which reading cannot be known. */
    @Test
    void surroundingsThatDoNotGetTheRowAreNotGuessed() {
        try (CalcDocument sheet = drawn("F22:F30")) {
            assertEquals("OK", sheet.at("Curves.B29").text());
            rows(sheet, rows -> rows.insertByIndex(4, 1));
            assertNotEquals("OK", sheet.at("Curves.B29").text());
            assertEquals("", sheet.at("Curves.E55").text());
        }
    }

    private CalcDocument drawn() {
        return drawn("A30");
    }

    private CalcDocument drawn(String surroundings) {
        CalcDocument sheet = office.newDocument()
                .text("A1", "min")
                .text("B1", "bare")
                .text("C1", "wool °F")
                .numbersDown("A2", MINUTES)
                .numbersDown(
                        "B2", Arrays.stream(MINUTES).map(RowsOfCurvesIT::bare).toArray())
                .numbersDown(
                        "C2", Arrays.stream(MINUTES).map(RowsOfCurvesIT::wool).toArray())
                .numbersDown("D2", 3, 3, 3, 3, 3, 3, 3, 3, 3)
                .numbersDown("F22", 3, 3, 3, 3, 3, 3, 3, 3, 3)
                .number("A30", 3);
        Menu.select(office, sheet, "A1:C10");
        Menu.choose(
                office,
                sheet,
                MenuItem.DRAW,
                Menu.QUIET,
                Uno.named("Scale", "C"),
                Uno.named("Mark", "1"),
                Uno.named("Surroundings", surroundings));
        return sheet;
    }

    private static double bare(double minutes) {
        return 3 + 38 * Math.exp(-0.045 * minutes);
    }

    private static double wool(double minutes) {
        return (3 + 38 * Math.exp(-0.02 * minutes)) * 1.8 + 32;
    }

    /** Behind the curves these times stand beside their own readings, and nothing else does. */
    private static void assertPairs(CalcDocument sheet, double... minutes) {
        int row = 0;
        for (List<CellResult> cells : sheet.all("Curves.A35:C" + (34 + MINUTES.length + Curves.ROOM))) {
            if (cells.get(0) instanceof CellResult.OfNumber) {
                double time = cells.get(0).number();
                assertEquals(minutes[row], time, 1e-9);
                assertEquals(bare(time), cells.get(1).number(), 1e-9);
                assertEquals(wool(time), cells.get(2).number() * 1.8 + 32, 1e-9);
                row++;
            } else {
                assertEquals(
                        List.of("", "", ""),
                        cells.stream().map(CellResult::shown).toList());
            }
        }
        assertEquals(minutes.length, row);
    }

    private String[][] formulas(CalcDocument sheet) {
        return office.call(
                "reading formulas",
                () -> Uno.as(
                                XCellRangeFormula.class,
                                Uno.sheets(sheet.uno()).get(1).getCellRangeByName("A28:J90"))
                        .getFormulaArray());
    }

    private void rows(CalcDocument sheet, Consumer<XTableRows> change) {
        office.call("changing rows", () -> {
            change.accept(Uno.as(XColumnRowRange.class, Uno.sheets(sheet.uno()).get(0))
                    .getRows());
            return true;
        });
    }
}
