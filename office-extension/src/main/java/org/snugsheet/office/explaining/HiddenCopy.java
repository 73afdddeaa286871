package org.snugsheet.office.explaining;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
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
     * @param written how it stands in the formula
     * @param expression the same, with the sheet in each reference
     * @param at the cell it stands in: names may mean other cells elsewhere
     */
    Given workedOut(String written, String expression, CellAddress at) throws com.sun.star.uno.Exception {
        XSpreadsheet page = page();
        int rows = (int) Math.min(MOST, number(page, at, "=ROWS(" + expression + ")"));
        int columns = (int) Math.min(MOST, number(page, at, "=COLUMNS(" + expression + ")"));
        if (rows < 1 || columns < 1) {
            return new Given(written, List.of(), true, Optional.empty());
        }
        XCellRange range = page.getCellRangeByPosition(at.Column, at.Row, at.Column + columns - 1, at.Row + rows - 1);
        Uno.as(XArrayFormulaRange.class, range).setArrayFormula("=" + expression);
        Object[][] values = Uno.as(XCellRangeData.class, range).getDataArray();
        boolean failed = range.getCellByPosition(0, 0).getError() != 0;
        Uno.as(XArrayFormulaRange.class, range).setArrayFormula("");
        return Given.of(written, values, rows == 1 && columns == 1, failed ? Optional.of(written) : Optional.empty());
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
        if (copy == null) {
            copy = DocumentFile.twin(office, document);
            XSpreadsheets sheets = Uno.as(XSpreadsheetDocument.class, copy).getSheets();
            sheets.insertNewByName("_", (short) sheets.getElementNames().length);
        }
        List<XSpreadsheet> sheets = Uno.sheets(Uno.as(XSpreadsheetDocument.class, copy));
        return sheets.get(sheets.size() - 1);
    }

    @Override
    public void close() throws com.sun.star.uno.Exception {
        if (copy != null) {
            Uno.as(XCloseable.class, copy).close(true);
        }
    }
}
