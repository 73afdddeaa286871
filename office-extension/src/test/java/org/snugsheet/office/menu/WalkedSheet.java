package org.snugsheet.office.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNamed;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.TableSortField;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableRows;
import com.sun.star.util.XProtectable;
import com.sun.star.util.XSortable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** A document that somebody works on: what they do to it, and what it holds. */
record WalkedSheet(Office office, CalcDocument document) {

    /** More than anybody types here, and more than a page of ours fills. */
    private static final String CELLS = "A1:T80";

    private static final int COLUMNS = 20;

    /** The office writes a range on another sheet in either way. */
    private static final Pattern SHEET_TWICE = Pattern.compile("(\\$?(?:\\w+|'[^']+')\\.)(\\$?[A-Z]+\\$?[0-9]+):\\1");

    /** Of a cell that was deleted the office knows its column or its row until the document is opened again. */
    private static final Pattern LOST = Pattern.compile("\\$?[A-Z]{0,3}\\$?#REF!(\\$?[0-9]+)?");

    /** What is in the cells of all sheets, as it would be typed, and which sheets are locked. */
    List<String> held() {
        return office.call("reading all cells", () -> {
            List<String> held = new ArrayList<>();
            XIndexAccess pages = Uno.as(XIndexAccess.class, document.uno().getSheets());
            for (int i = 0; i < pages.getCount(); i++) {
                XSpreadsheet page = Uno.as(XSpreadsheet.class, pages.getByIndex(i));
                held.add(Uno.as(XNamed.class, page).getName()
                        + (Uno.as(XProtectable.class, page).isProtected() ? " locked" : ""));
                for (String[] row : Uno.as(XCellRangeFormula.class, page.getCellRangeByName(CELLS))
                        .getFormulaArray()) {
                    String line = String.join("|", row).replaceAll("\\|+$", "");
                    String once = SHEET_TWICE.matcher(line).replaceAll("$1$2:");
                    held.add(LOST.matcher(once).replaceAll("#REF!"));
                }
            }
            return held;
        });
    }

    /** What is in the cells of some sheets, numbers to twelve digits: a copy to share has fifteen. */
    List<String> shown(List<String> sheets) {
        return office.call("reading all values", () -> {
            List<String> shown = new ArrayList<>();
            for (String name : sheets) {
                XSpreadsheet page =
                        Uno.as(XSpreadsheet.class, document.uno().getSheets().getByName(name));
                Object[][] rows = Uno.as(XCellRangeData.class, page.getCellRangeByName(CELLS))
                        .getDataArray();
                for (int row = 0; row < rows.length; row++) {
                    for (int column = 0; column < COLUMNS; column++) {
                        String value = rounded(rows[row][column]);
                        if (!value.isEmpty()) {
                            shown.add(name + "." + CellName.of(column, row) + " " + value);
                        }
                    }
                }
            }
            return shown;
        });
    }

    private static String rounded(Object value) {
        return value instanceof Double number
                ? new BigDecimal(number).round(new MathContext(12)).toString()
                : String.valueOf(value);
    }

    XSpreadsheet first() {
        return office.call(
                "finding the first sheet", () -> Uno.sheets(document.uno()).get(0));
    }

    boolean isLocked() {
        return office.call(
                "asking for the lock", () -> Uno.as(XProtectable.class, first()).isProtected());
    }

    /** How many steps can be undone. */
    int steps() {
        return Halfway.steps(office, document);
    }

    void select(String cells) {
        office.call("showing the first sheet", () -> {
            Uno.as(XSpreadsheetView.class, Uno.as(XModel.class, document.uno()).getCurrentController())
                    .setActiveSheet(first());
            return true;
        });
        Menu.select(office, document, cells);
    }

    void type(String cell, String text) {
        select(cell);
        call(".uno:EnterString", Uno.named("StringName", text));
    }

    void sort(String cells, int field, boolean ascending) {
        office.call("sorting", () -> {
            TableSortField by = new TableSortField();
            by.Field = field;
            by.IsAscending = ascending;
            Uno.as(XSortable.class, first().getCellRangeByName(cells)).sort(new PropertyValue[] {
                Uno.named("SortFields", new TableSortField[] {by}), Uno.named("IsSortColumns", false)
            });
            return true;
        });
    }

    void copySheet() {
        select("A1");
        call(".uno:DuplicateSheet");
    }

    /** Locks the first sheet, or opens the lock. */
    void lock() {
        office.call("locking", () -> {
            XProtectable page = Uno.as(XProtectable.class, first());
            if (page.isProtected()) {
                page.unprotect("");
            } else {
                page.protect("");
            }
            return true;
        });
    }

    void rename(String name) {
        select("A1");
        call(".uno:RenameTable", Uno.named("Name", name));
    }

    boolean isBlank(String cells) {
        return office.call(
                "looking for contents",
                () -> Arrays.stream(Uno.as(XCellRangeFormula.class, first().getCellRangeByName(cells))
                                .getFormulaArray())
                        .flatMap(Arrays::stream)
                        .allMatch(String::isEmpty));
    }

    void paste(String cells, String to) {
        select(cells);
        call(".uno:Copy");
        select(to);
        call(".uno:Paste");
    }

    void clear(String cells) {
        select(cells);
        call(".uno:ClearContents");
    }

    /** Whether an array formula would be cut in two by a new row at this one, or would lose this one of several rows. */
    boolean cutsAnArray(int row, boolean inserts) {
        return office.call("looking for array formulas", () -> {
            XSpreadsheet page = first();
            for (int column = 0; column < COLUMNS; column++) {
                if (page.getCellByPosition(column, row - 1).getFormula().startsWith("{=")) {
                    XSheetCellCursor array = page.createCursorByRange(Uno.as(
                            XSheetCellRange.class, page.getCellRangeByPosition(column, row - 1, column, row - 1)));
                    array.collapseToCurrentArray();
                    CellRangeAddress place =
                            Uno.as(XCellRangeAddressable.class, array).getRangeAddress();
                    if (place.StartRow < row - 1 || (!inserts && place.EndRow > row - 1)) {
                        return true;
                    }
                }
            }
            return false;
        });
    }

    /** Inserts or deletes a row as a program does, to which the office shows no box. */
    void changeRow(int row, boolean inserts) {
        office.call("changing a row", () -> {
            XTableRows rows = Uno.as(XColumnRowRange.class, first()).getRows();
            if (inserts) {
                rows.insertByIndex(row - 1, 1);
            } else {
                rows.removeByIndex(row - 1, 1);
            }
            return true;
        });
    }

    void call(String address, PropertyValue... arguments) {
        Menu.asAPerson(office, () -> Menu.call(office, document, address, arguments));
    }
}
