package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.container.XNamed;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import java.util.Arrays;
import java.util.List;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.sheets.readings.ReadWords;

/** Those of the {@link HouseRulesIT house rules} that say what can be seen, in a window and on paper. */
final class PageRules {
    private PageRules() {}

    /** A cell into which somebody types 9:05 shows 09:05:00 AM, in ten points some 21 mm wide; less room is shown as ###. */
    static void clockTimesFit(CalcDocument document) throws com.sun.star.uno.Exception {
        XNamedRanges names = Opened.as(XNamedRanges.class, Opened.property(document.uno(), "NamedRanges"));
        if (names.hasByName("typed_times")) {
            Object times = Opened.as(XCellRangeReferrer.class, names.getByName("typed_times"))
                    .getReferredCells();
            assertTrue(((Size) Opened.property(times, "Size")).Width >= 2150, "too narrow for clock times");
        }
    }

    /**
     * The office prints no sheet of paper on which it sees nothing, and sees nothing in a cell that another one covers. So on a
     * page that is shrunk until it is one sheet high, the last row must hold something itself, or it is cut off.
     */
    static void nothingIsCutOffOnPaper(List<XSpreadsheet> pages) throws com.sun.star.uno.Exception {
        for (XSpreadsheet page : pages) {
            for (CellRangeAddress area : Opened.as(XPrintAreas.class, page).getPrintAreas()) {
                Object all = page.getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
                Object last = page.getCellRangeByPosition(area.StartColumn, area.EndRow, area.EndColumn, area.EndRow);
                Size size = (Size) Opened.property(all, "Size");
                int top = ((Point) Opened.property(last, "Position")).Y;
                // A formula that shows nothing is seen all the same.
                boolean filled = Arrays.stream(
                                Opened.as(XCellRangeFormula.class, last).getFormulaArray()[0])
                        .anyMatch(formula -> !formula.isEmpty());
                // What is left of A4 lying within the margins, above the line at the bottom, in mm.
                boolean isWide = 180.0 * size.Width >= 277.0 * size.Height;
                assertTrue(
                        filled || isWide || reachesBelow(page, top),
                        Opened.as(XNamed.class, page).getName() + " is cut off in row " + (area.EndRow + 1));
            }
        }
    }

    private static boolean reachesBelow(XSpreadsheet page, int top) throws com.sun.star.uno.Exception {
        var shapes = Opened.as(XDrawPageSupplier.class, page).getDrawPage();
        for (int i = 0; i < shapes.getCount(); i++) {
            var shape = Opened.as(XShape.class, shapes.getByIndex(i));
            if (shape.getPosition().Y + shape.getSize().Height > top) {
                return true;
            }
        }
        return false;
    }

    static void whatNobodyTypesOnComesLast(List<XSpreadsheet> pages) {
        List<String> tabs = pages.stream()
                .map(page -> Opened.as(XNamed.class, page).getName())
                .toList();
        String behind = ReadWords.AS_READ_PAGE.english();
        assertTrue(!tabs.contains(behind) || tabs.indexOf(behind) == tabs.size() - 1, tabs.toString());
    }

    /** Sentences that promise to follow bear a style by which a shared copy finds them. */
    static void promisesAreStyled(List<XSpreadsheet> pages) throws com.sun.star.uno.Exception {
        for (XSpreadsheet page : pages) {
            String[][] cells = Opened.formulas(page);
            for (int row = 0; row < cells.length; row++) {
                for (int column = 0; column < cells[row].length; column++) {
                    if (cells[row][column].matches("(?s).*(works? itself out|by themselves).*")) {
                        Object cell = page.getCellByPosition(column, row);
                        assertEquals(
                                CellStyleName.FOLLOWS.styleName(),
                                Opened.property(cell, "CellStyle"),
                                cells[row][column]);
                    }
                }
            }
        }
    }
}
