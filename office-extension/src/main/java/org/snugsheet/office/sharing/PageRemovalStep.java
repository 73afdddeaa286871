package org.snugsheet.office.sharing;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import java.util.Arrays;
import org.snugsheet.office.page.UndoPause;
import org.snugsheet.office.uno.Uno;

/**
 * The page “How this was worked out”, taken away and brought back as a step of the extension’s own. The office’s own step ends the whole
 * office when a deletion is done once more while no window of this document is the current one. The caller keeps the office from
 * recording steps meanwhile.
 */
final class PageRemovalStep {

    private final XSpreadsheetDocument document;
    private final String name;
    private final short place;
    private final Object[][] values;
    private final String[][] formulas;
    private final WorkedOutLook.OnPaper paper;

    PageRemovalStep(XSpreadsheetDocument document, XSpreadsheet page) throws com.sun.star.uno.Exception {
        this.document = document;
        this.name = Uno.as(XNamed.class, page).getName();
        this.place = Uno.as(XCellRangeAddressable.class, page).getRangeAddress().Sheet;
        Area used = FollowedCells.used(page);
        XCellRange all = page.getCellRangeByPosition(0, 0, used.right(), used.bottom());
        // A text such as =COOL.RATE(…) would be taken for a formula: so texts come back as
        // values.
        this.values = Uno.as(XCellRangeData.class, all).getDataArray();
        this.formulas = Uno.as(XCellRangeFormula.class, all).getFormulaArray();
        this.paper = WorkedOutLook.OnPaper.of(page);
    }

    void remove() throws com.sun.star.uno.Exception {
        UndoPause.again(document);
        SheetProtection.structure(document, () -> {
            document.getSheets().removeByName(name);
            UndoPause.again(document);
        });
        UndoPause.again(document);
    }

    /** Makes the page again, as it was. */
    void bringBack() throws com.sun.star.uno.Exception {
        SheetProtection.structure(document, () -> {
            document.getSheets().insertNewByName(name, place);
            UndoPause.again(document);
        });
        UndoPause.again(document);
        XSpreadsheet page = Uno.as(XSpreadsheet.class, document.getSheets().getByName(name));
        // Widths first: how high a row is follows from them.
        WorkedOutLook.look(document, page, columns(), lastRow());
        int right = values[0].length - 1;
        int bottom = values.length - 1;
        Uno.as(XCellRangeData.class, page.getCellRangeByPosition(0, 0, right, bottom))
                .setDataArray(values);
        UndoPause.again(document);
        int from = FollowedCells.DIFFERENT;
        if (right >= FollowedCells.NUMBER) {
            String[][] hidden = Arrays.stream(formulas)
                    .map(row -> Arrays.copyOfRange(row, from, FollowedCells.NUMBER + 1))
                    .toArray(String[][]::new);
            Uno.as(XCellRangeFormula.class, page.getCellRangeByPosition(from, 0, FollowedCells.NUMBER, bottom))
                    .setFormulaArray(hidden);
            UndoPause.again(document);
            XCell warning = page.getCellByPosition(0, WorkedOutPage.WARNING_ROW);
            warning.setFormula(formulas[WorkedOutPage.WARNING_ROW][0]);
            UndoPause.again(document);
            Warning.look(warning, false);
            UndoPause.again(document);
        }
        FollowedCells.hide(page, right);
        UndoPause.again(document);
        XCellRange table = page.getCellRangeByPosition(0, WorkedOutPage.HEAD_ROW, 0, bottom);
        Uno.set(Uno.as(XColumnRowRange.class, table).getRows(), "OptimalHeight", true);
        UndoPause.again(document);
        paper.giveTo(document, page);
    }

    /** A copy that goes on working has one more. */
    private int columns() {
        int state = WorkedOutLook.STATE_COLUMN;
        String[] heads = formulas[Math.min(WorkedOutPage.HEAD_ROW, formulas.length - 1)];
        return heads.length > state && !heads[state].isEmpty() ? WorkedOutLook.COLUMNS : state;
    }

    /** The last row that is not hidden columns only. */
    private int lastRow() {
        for (int row = formulas.length - 1; row > 0; row--) {
            if (Arrays.stream(formulas[row]).limit(FollowedCells.DIFFERENT).anyMatch(cell -> !cell.isEmpty())) {
                return row;
            }
        }
        return 0;
    }
}
