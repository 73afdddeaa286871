package org.snugsheet.office.sharing;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Finds Snugsheet formulas in a document, sheet by sheet, from left to right within each block of cells. */
final class FormulaScan {

    /** Numbers, texts and errors: whatever a formula answers (com.sun.star.sheet.FormulaResult). */
    private static final short ANY_RESULT = 7;

    private final XSpreadsheet sheet;
    private final String name;
    private final SheetBlocks cells;
    private final Map<Notes.CellKey, String> notes;
    private final List<Area> arrays = new ArrayList<>();
    private final List<KeptFormula> found;

    private FormulaScan(XSpreadsheet sheet, List<KeptFormula> found) throws com.sun.star.uno.Exception {
        this.sheet = sheet;
        this.name = Uno.as(XNamed.class, sheet).getName();
        this.cells = new SheetBlocks(sheet);
        this.notes = Notes.of(sheet);
        this.found = found;
    }

    static List<KeptFormula> of(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        List<KeptFormula> found = new ArrayList<>();
        for (XSpreadsheet sheet : Uno.sheets(document)) {
            new FormulaScan(sheet, found).scan();
        }
        return found;
    }

    private void scan() throws com.sun.star.uno.Exception {
        XCellRangesQuery query = Uno.as(XCellRangesQuery.class, sheet);
        for (CellRangeAddress block : query.queryFormulaCells(ANY_RESULT).getRangeAddresses()) {
            for (int row = block.StartRow; row <= block.EndRow; row++) {
                for (int column = block.StartColumn; column <= block.EndColumn; column++) {
                    String formula = cells.formula(column, row);
                    if (FunctionIndex.in(formula)) {
                        at(column, row, formula);
                    }
                }
            }
        }
    }

    private void at(int column, int row, String formula) throws com.sun.star.uno.Exception {
        if (!formula.startsWith("{")) {
            found(new Area(0, column, row, column, row), false, formula);
            return;
        }
        Area own = new Area(0, column, row, column, row);
        if (arrays.stream().anyMatch(array -> array.holds(own))) {
            return;
        }
        XCellRange one = sheet.getCellRangeByPosition(column, row, column, row);
        XSheetCellCursor whole = sheet.createCursorByRange(Uno.as(com.sun.star.sheet.XSheetCellRange.class, one));
        whole.collapseToCurrentArray();
        CellRangeAddress area = Uno.as(XCellRangeAddressable.class, whole).getRangeAddress();
        Area array = new Area(0, area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
        arrays.add(array);
        // The cell and not the range is asked: the range answers with commas, which it does not take back.
        String all = sheet.getCellByPosition(column, row).getFormula();
        found(array, true, all.substring(1, all.length() - 1));
    }

    private void found(Area area, boolean array, String formula) throws com.sun.star.uno.Exception {
        String first = CellName.of(area.left(), area.top());
        String whole = array ? first + ":" + CellName.of(area.right(), area.bottom()) : first;
        Optional<String> note = Optional.ofNullable(notes.get(new Notes.CellKey(area.left(), area.top())))
                .filter(text -> !text.isEmpty());
        found.add(KeptFormula.found(name, whole, array, formula, note, ShownValues.of(cells.values(area))));
    }
}
