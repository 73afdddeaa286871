package org.snugsheet.sheets;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.snugsheet.office.harness.CalcDocument;

/** Looks at a document that is open in an office, page by page, in few calls. */
public final class Opened {

    private static final int ROWS_AT_ONCE = 10;

    private Opened() {}

    public static <T> T as(Class<T> type, Object object) {
        return UnoRuntime.queryInterface(type, object);
    }

    public static Object property(Object object, String name) throws com.sun.star.uno.Exception {
        return as(XPropertySet.class, object).getPropertyValue(name);
    }

    public static List<XSpreadsheet> pages(CalcDocument document) throws com.sun.star.uno.Exception {
        XIndexAccess all = as(XIndexAccess.class, document.uno().getSheets());
        List<XSpreadsheet> pages = new ArrayList<>();
        for (int i = 0; i < all.getCount(); i++) {
            pages.add(as(XSpreadsheet.class, all.getByIndex(i)));
        }
        return pages;
    }

    /** The cells of all pages that show an error, as addresses; "" if there is none. */
    public static String failingCells(CalcDocument document) {
        XSpreadsheets pages = document.uno().getSheets();
        return Arrays.stream(pages.getElementNames())
                .map(page -> {
                    try {
                        return failingCells(as(XSpreadsheet.class, pages.getByName(page)));
                    } catch (com.sun.star.uno.Exception e) {
                        throw new IllegalStateException(e);
                    }
                })
                .collect(Collectors.joining());
    }

    /** The cells that show an error, as addresses; "" if there is none. */
    public static String failingCells(XSpreadsheet page) {
        return as(XCellRangesQuery.class, page)
                .queryFormulaCells(FormulaResult.ERROR)
                .getRangeAddressesAsString();
    }

    /** All cells from A1 to the last that is filled. */
    public static XCellRange used(XSpreadsheet page) throws com.sun.star.uno.Exception {
        XSheetCellCursor cursor = page.createCursor();
        as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
        CellRangeAddress last = as(XCellRangeAddressable.class, cursor).getRangeAddress();
        return page.getCellRangeByPosition(0, 0, last.EndColumn, last.EndRow);
    }

    /** What all cells of a page hold, numbers rounded to 12 digits, without the empty cells; the page’s charts at the end. */
    public static List<String> contents(XSpreadsheet page) throws com.sun.star.uno.Exception {
        List<String> contents = new ArrayList<>();
        Object[][] rows = as(XCellRangeData.class, used(page)).getDataArray();
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < rows[row].length; column++) {
                String value = rows[row][column] instanceof Double number
                        ? String.format(java.util.Locale.ROOT, "%.9e", number)
                        : String.valueOf(rows[row][column]);
                if (!value.isEmpty()) {
                    contents.add((row + 1) + "/" + (column + 1) + " " + value);
                }
            }
        }
        for (Map<String, String> shape : shapes(page)) {
            contents.add(shape.toString());
        }
        return contents;
    }

    /** Title and description of all charts and drawings of a page. */
    public static List<Map<String, String>> shapes(XSpreadsheet page) throws com.sun.star.uno.Exception {
        XIndexAccess all = as(XDrawPageSupplier.class, page).getDrawPage();
        List<Map<String, String>> shapes = new ArrayList<>();
        for (int i = 0; i < all.getCount(); i++) {
            Map<String, String> words = new TreeMap<>();
            for (String name : Arrays.asList("Title", "Description")) {
                words.put(name, property(all.getByIndex(i), name).toString());
            }
            shapes.add(words);
        }
        return shapes;
    }

    /**
     * What the cells of a page hold, as formulas. A few rows at a time: the bridge to the office ends on an answer of many megabytes.
     */
    static String[][] formulas(XSpreadsheet page) throws com.sun.star.uno.Exception {
        CellRangeAddress all =
                as(com.sun.star.sheet.XCellRangeAddressable.class, used(page)).getRangeAddress();
        String[][] formulas = new String[all.EndRow + 1][];
        for (int row = 0; row <= all.EndRow; row += ROWS_AT_ONCE) {
            int last = Math.min(all.EndRow, row + ROWS_AT_ONCE - 1);
            String[][] some = as(
                            com.sun.star.sheet.XCellRangeFormula.class,
                            page.getCellRangeByPosition(0, row, all.EndColumn, last))
                    .getFormulaArray();
            System.arraycopy(some, 0, formulas, row, some.length);
        }
        return formulas;
    }
}
