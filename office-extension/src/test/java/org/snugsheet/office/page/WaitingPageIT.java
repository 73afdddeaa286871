package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.harness.SharedOffice;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** A page that is written in blocks becomes what it would be cell by cell. */
@ExtendWith(SharedOffice.class)
class WaitingPageIT {

    private static final int COLUMNS = 8;
    private static final int ROWS = 10;
    private static final CellStyleName[] LOOKS = {CellStyleName.LABEL, CellStyleName.LARGE, CellStyleName.INPUT};

    private final Office office;

    WaitingPageIT(Office office) {
        this.office = office;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void itsCellsHoldAndLookTheSame(long seed) {
        try (CalcDocument document = office.newDocument()) {
            List<List<String>> read = office.call("filling two pages", () -> {
                StyleSheet.install(document.uno());
                FormulaQueue queue = new FormulaQueue();
                fill(page(document, "at once"), seed);
                fill(page(document, "in blocks").with(queue), seed);
                queue.write();
                return List.of(cells(page(document, "at once")), cells(page(document, "in blocks")));
            });
            assertEquals(read.get(0), read.get(1));
        }
    }

    @Test
    void whatIsRepeatedLooksLikeTheFirst() {
        try (CalcDocument document = office.newDocument()) {
            office.call("repeating", () -> {
                StyleSheet.install(document.uno());
                FormulaQueue queue = new FormulaQueue();
                Page page = page(document, "groups").with(queue);
                page.text("A1", "name").look("A1", CellStyleName.LARGE).text("C2", "below");
                page.repeatBelow("A1:C2", 3);
                page.formula("B1", "=1+1").formula("B5", "=2+2").formula("C5", "=3+3");
                queue.write();
                return true;
            });
            document.calculateAll();
            for (int top : new int[] {1, 3, 5}) {
                assertEquals("name", document.at("groups.A" + top).text());
                assertEquals("below", document.at("groups.C" + (top + 1)).text());
            }
            assertEquals(4, document.at("groups.B5").number());
            assertEquals(6, document.at("groups.C5").number());
        }
    }

    /** Parts of a page that claim the same cell would otherwise show as wrong numbers. */
    @Test
    void twoContentsForACellAreRefused() {
        try (CalcDocument document = office.newDocument()) {
            office.call("filling", () -> {
                Page page = page(document, "claimed").with(new FormulaQueue());
                page.formula("A1", "=1")
                        .formula("A1", "=1")
                        .text("B1", "")
                        .formula("B1", "=2")
                        .table("C1:D2", "=ROW(A1:B2)");
                assertThrows(IllegalStateException.class, () -> page.formula("A1", "=2"));
                assertThrows(IllegalStateException.class, () -> page.number("A1", 2));
                assertThrows(IllegalStateException.class, () -> page.text("D2", "words"));
                assertThrows(IllegalStateException.class, () -> page.formula("C2:C3", "=2"));
                assertThrows(IllegalStateException.class, () -> page.table("A1:A2", "=ROW(A1:A2)"));
                assertThrows(IllegalStateException.class, () -> page.table("D2:E3", "=ROW(A1:B2)"));
                return true;
            });
        }
    }

    private static Page page(CalcDocument document, String name) throws com.sun.star.uno.Exception {
        var sheets = document.uno().getSheets();
        if (!sheets.hasByName(name)) {
            sheets.insertNewByName(name, (short) 0);
        }
        return new Page(document.uno(), Uno.as(XSpreadsheet.class, sheets.getByName(name)), name);
    }

    /** Values on the left, formulas on the right, looks everywhere and to the right of all. */
    private static void fill(Page page, long seed) throws com.sun.star.uno.Exception {
        Random random = new Random(seed);
        for (int step = 0; step < 80; step++) {
            int left = random.nextInt(COLUMNS);
            int top = random.nextInt(ROWS);
            String cell = CellName.of(left, top);
            String cells =
                    cell + ":" + CellName.of(left + random.nextInt(COLUMNS - left), top + random.nextInt(ROWS - top));
            switch (random.nextInt(8)) {
                case 0 -> page.text(CellName.of(left / 2, top), "words " + step);
                case 1 -> page.number(CellName.of(left / 2, top), step);
                case 2 -> page.formula(CellName.of(COLUMNS / 2 + left / 2, top), "=A1&" + top);
                case 3 -> page.look(cells, LOOKS[random.nextInt(LOOKS.length)]);
                case 4 -> page.look(cell, LOOKS[random.nextInt(LOOKS.length)]);
                case 5 -> page.size(cells, 8 + random.nextInt(3));
                case 6 -> page.shrunk(cell);
                default -> page.wrapped(cells);
            }
        }
        page.table(CellName.of(COLUMNS, 0) + ":" + CellName.of(COLUMNS + 1, 1), "=ROW(A1:A2)*COLUMN(A1:B1)");
        page.look("M3", CellStyleName.LABEL).look("M5", CellStyleName.LABEL);
    }

    private static List<String> cells(Page page) throws com.sun.star.uno.Exception {
        List<String> cells = new ArrayList<>();
        var all = page.range("A1:M12");
        for (String[] row : Uno.as(XCellRangeFormula.class, all).getFormulaArray()) {
            cells.addAll(List.of(row));
        }
        for (int row = 0; row < ROWS; row++) {
            for (int column : new int[] {0, 1, 2, 3, 4, 5, 6, 7, 12}) {
                Object cell = all.getCellByPosition(column, row);
                for (String property : new String[] {"CellStyle", "CharHeight", "ShrinkToFit", "IsTextWrapped"}) {
                    cells.add(CellName.of(column, row) + " " + property + " " + Uno.property(cell, property));
                }
            }
        }
        return cells;
    }
}
