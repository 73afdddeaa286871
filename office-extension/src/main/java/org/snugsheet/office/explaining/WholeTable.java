package org.snugsheet.office.explaining;

import com.sun.star.container.XNamed;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.uno.ArrayFormula;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;

/** Puts the whole table of a formula into the sheet, where the cell shows only its first head. */
public final class WholeTable {

    /** As many cells in the way as are named. */
    private static final int NAMED = 5;

    private final XSpreadsheet sheet;
    private final CellRangeAddress area;
    private final String name;

    private WholeTable(XSpreadsheet sheet, CellRangeAddress area) {
        this.sheet = sheet;
        this.area = area;
        this.name = CellName.of(area.StartColumn, area.StartRow);
    }

    /**
     * Turns the formula of a cell into an array formula over as many cells as its table has.
     *
     * @param office the office’s context
     * @param document the document
     * @param at the cell, or any cell of a table that is to have its right size
     * @param undo what the user takes back with one Undo
     * @return the cells of the table
     * @throws DeclinedException if there is no table, no room for it, or nothing may be changed
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static CellRangeAddress show(
            XComponentContext office, XSpreadsheetDocument document, CellAddress at, String undo)
            throws com.sun.star.uno.Exception {
        XSpreadsheet sheet = Uno.sheets(document).get(at.Sheet);
        WholeTable table = new WholeTable(sheet, area(document, at));
        String formula = table.formula(document);
        if (Uno.as(XStorable.class, document).isReadonly()) {
            throw new DeclinedException(WholeTableWords.READ_ONLY);
        }
        table.requireUnlocked(table.area);
        CellRangeAddress wanted;
        try (HiddenCopy copy = new HiddenCopy(office, document)) {
            wanted = copy.sizeOf(formula, table.area);
        }
        table.require(wanted);
        table.write(document, formula, wanted, undo);
        return wanted;
    }

    /**
     * The cells that a formula fills.
     *
     * @return the whole of an array formula, otherwise the one cell
     * @throws com.sun.star.uno.Exception if the office fails
     */
    static CellRangeAddress area(XSpreadsheetDocument document, CellAddress at) throws com.sun.star.uno.Exception {
        XSpreadsheet sheet = Uno.sheets(document).get(at.Sheet);
        XCellRange one = sheet.getCellRangeByPosition(at.Column, at.Row, at.Column, at.Row);
        if (!one.getCellByPosition(0, 0).getFormula().startsWith("{")) {
            return Uno.as(XCellRangeAddressable.class, one).getRangeAddress();
        }
        XSheetCellCursor whole = sheet.createCursorByRange(Uno.as(XSheetCellRange.class, one));
        whole.collapseToCurrentArray();
        return Uno.as(XCellRangeAddressable.class, whole).getRangeAddress();
    }

    /** The formula as it is typed, without what makes it a formula. */
    private String formula(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        XCell cell = sheet.getCellByPosition(area.StartColumn, area.StartRow);
        String typed = FunctionIndex.asTyped(cell.getFormula());
        boolean table =
                FormulaCalls.in(document, new CellAddress(area.Sheet, area.StartColumn, area.StartRow))
                        .of(typed)
                        .stream()
                        .anyMatch(call -> call.function().isTable());
        if (!table) {
            throw new DeclinedException(WholeTableWords.NO_TABLE, name);
        }
        if (cell.getError() != 0) {
            throw new DeclinedException(WholeTableWords.NO_ANSWER, name);
        }
        return typed.replaceFirst("^\\{?=", "").replaceFirst(typed.startsWith("{") ? "}$" : "$", "");
    }

    private void require(CellRangeAddress wanted) throws com.sun.star.uno.Exception {
        CellRangeAddress all = Uno.as(XCellRangeAddressable.class, sheet).getRangeAddress();
        if (wanted.EndRow > all.EndRow || wanted.EndColumn > all.EndColumn) {
            throw new DeclinedException(WholeTableWords.NO_ROOM, name);
        }
        if (wanted.EndRow == area.StartRow && wanted.EndColumn == area.StartColumn) {
            throw new DeclinedException(WholeTableWords.ONE_VALUE, name);
        }
        if (wanted.EndRow == area.EndRow && wanted.EndColumn == area.EndColumn) {
            throw new DeclinedException(WholeTableWords.IS_WHOLE, written(wanted));
        }
        requireUnlocked(wanted);
        if (Uno.as(XMergeable.class, range(wanted)).getIsMerged()) {
            throw new DeclinedException(WholeTableWords.MERGED, written(wanted));
        }
        List<String> inTheWay = new ArrayList<>();
        for (int row = wanted.StartRow; row <= wanted.EndRow; row++) {
            for (int column = wanted.StartColumn; column <= wanted.EndColumn; column++) {
                boolean own = row <= area.EndRow && column <= area.EndColumn;
                if (!own && sheet.getCellByPosition(column, row).getType() != CellContentType.EMPTY) {
                    inTheWay.add(CellName.of(column, row));
                }
            }
        }
        if (!inTheWay.isEmpty()) {
            int more = Math.max(0, inTheWay.size() - NAMED);
            String named = String.join(", ", inTheWay.subList(0, inTheWay.size() - more));
            throw more == 0
                    ? new DeclinedException(WholeTableWords.IN_THE_WAY, written(wanted), named)
                    : new DeclinedException(WholeTableWords.MANY_IN_THE_WAY, written(wanted), named, more);
        }
    }

    private void requireUnlocked(CellRangeAddress cells) throws com.sun.star.uno.Exception {
        if (!Uno.as(XProtectable.class, sheet).isProtected()) {
            return;
        }
        for (int row = cells.StartRow; row <= cells.EndRow; row++) {
            for (int column = cells.StartColumn; column <= cells.EndColumn; column++) {
                Object protection = Uno.property(sheet.getCellByPosition(column, row), "CellProtection");
                if (((CellProtection) protection).IsLocked) {
                    throw new DeclinedException(
                            WholeTableWords.LOCKED, Uno.as(XNamed.class, sheet).getName());
                }
            }
        }
    }

    private void write(XSpreadsheetDocument document, String formula, CellRangeAddress wanted, String undo)
            throws com.sun.star.uno.Exception {
        XUndoManager steps = Uno.as(XUndoManagerSupplier.class, document).getUndoManager();
        steps.enterUndoContext(undo);
        try {
            // An array formula cannot be changed in part, and a smaller one would leave the rest of it behind.
            ArrayFormula.takeAway(range(area));
            Uno.as(XArrayFormulaRange.class, range(wanted)).setArrayFormula("=" + formula);
            ReadableTable.make(document, range(wanted));
        } finally {
            steps.leaveUndoContext();
        }
    }

    private XCellRange range(CellRangeAddress cells) throws com.sun.star.uno.Exception {
        return sheet.getCellRangeByPosition(cells.StartColumn, cells.StartRow, cells.EndColumn, cells.EndRow);
    }

    /**
     * Cells as they are written.
     *
     * @param cells the cells
     * @return such as {@code D1:I9}
     */
    public static String written(CellRangeAddress cells) {
        return CellName.of(cells.StartColumn, cells.StartRow) + ":" + CellName.of(cells.EndColumn, cells.EndRow);
    }
}
