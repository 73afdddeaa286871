package org.snugsheet.office.explaining;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import com.sun.star.util.XProtectable;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;

/** Works out parts of formulas in a copy of the document that nobody sees; it is made when first needed. */
final class HiddenCopy implements AutoCloseable {

    /** More values than this say nothing to a reader. */
    private static final int MOST = 1000;

    private final XComponentContext office;
    private final XSpreadsheetDocument document;
    private @Nullable XComponent copy;

    HiddenCopy(XComponentContext office, XSpreadsheetDocument document) {
        this.office = office;
        this.document = document;
    }

    /**
     * What an expression answers.
     *
     * @param written as written in the formula
     * @param expression the same, with the sheet in each reference
     * @param at the cell of the formula: names may mean other cells elsewhere
     */
    ArgumentValue workedOut(String written, String expression, CellAddress at) throws com.sun.star.uno.Exception {
        XSpreadsheet page = page();
        int rows = (int) Math.min(MOST, number(page, at, "=ROWS(" + expression + ")"));
        int columns = (int) Math.min(MOST, number(page, at, "=COLUMNS(" + expression + ")"));
        if (rows < 1 || columns < 1) {
            return ArgumentValue.unknown(written);
        }
        XCellRange range = page.getCellRangeByPosition(at.Column, at.Row, at.Column + columns - 1, at.Row + rows - 1);
        Uno.as(XArrayFormulaRange.class, range).setArrayFormula("=" + expression);
        Object[][] values = Uno.as(XCellRangeData.class, range).getDataArray();
        boolean failed = range.getCellByPosition(0, 0).getError() != 0;
        Uno.as(XArrayFormulaRange.class, range).setArrayFormula("");
        boolean one = rows == 1 && columns == 1;
        ArgumentValue given = ArgumentValue.of(written, values, one, failed ? Optional.of(written) : Optional.empty());
        return !one && number(page, at, "=ISREF(" + expression + ")") == 0 ? given.ofManyAtOnce() : given;
    }

    /**
     * How large the table is that a whole formula answers with.
     *
     * @param formula the formula with the names that are typed, without what makes it a formula
     * @param area the cells of the formula
     * @return rows and columns; one of each if it answers with a single value
     */
    CellRangeAddress sizeOf(String formula, CellRangeAddress area) throws com.sun.star.uno.Exception {
        XSpreadsheet sheet = Uno.sheets(copied()).get(area.Sheet);
        XProtectable protection = Uno.as(XProtectable.class, sheet);
        if (protection.isProtected()) {
            try {
                protection.unprotect("");
            } catch (com.sun.star.lang.IllegalArgumentException passwordNeeded) {
                // The formula’s own cells are open, or nobody would have asked; no others are touched.
            }
        }
        // At its own place, so that what counts from the cell or leaves out the sheet means the same.
        XCellRange own = sheet.getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
        Uno.as(XArrayFormulaRange.class, own).setArrayFormula("");
        CellAddress at = new CellAddress(area.Sheet, area.StartColumn, area.StartRow);
        CellRangeAddress size =
                new CellRangeAddress(area.Sheet, area.StartColumn, area.StartRow, area.StartColumn, area.StartRow);
        size.EndRow += (int) number(sheet, at, "=ROWS(" + formula + ")") - 1;
        size.EndColumn += (int) number(sheet, at, "=COLUMNS(" + formula + ")") - 1;
        return size;
    }

    private static double number(XSpreadsheet page, CellAddress at, String formula) throws com.sun.star.uno.Exception {
        XCellRange one = page.getCellRangeByPosition(at.Column, at.Row, at.Column, at.Row);
        Uno.as(XArrayFormulaRange.class, one).setArrayFormula(formula);
        XCell cell = one.getCellByPosition(0, 0);
        // An expression that is an error has one row and one column too.
        double number = cell.getError() == 0 ? cell.getValue() : 1;
        Uno.as(XArrayFormulaRange.class, one).setArrayFormula("");
        return number;
    }

    private XSpreadsheet page() throws com.sun.star.uno.Exception {
        List<XSpreadsheet> sheets = Uno.sheets(copied());
        return sheets.get(sheets.size() - 1);
    }

    private XSpreadsheetDocument copied() throws com.sun.star.uno.Exception {
        XComponent made = copy;
        if (made == null) {
            made = DocumentFile.twin(office, document);
            copy = made;
            XSpreadsheets sheets = Uno.as(XSpreadsheetDocument.class, made).getSheets();
            sheets.insertNewByName("_", (short) sheets.getElementNames().length);
        }
        return Uno.as(XSpreadsheetDocument.class, made);
    }

    @Override
    public void close() throws com.sun.star.uno.Exception {
        if (copy != null) {
            Uno.as(XCloseable.class, copy).close(true);
        }
    }
}
