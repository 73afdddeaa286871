package org.snugsheet.office.sharing;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snugsheet.office.functions.OurFunctions;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Finds our formulas in a document, sheet by sheet, from left to right within each block of cells. */
final class FormulaScan {

    /** Numbers, texts and errors: whatever a formula answers (com.sun.star.sheet.FormulaResult). */
    private static final short ANY_RESULT = 7;

    private FormulaScan() {}

    static List<KeptFormula> of(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        List<KeptFormula> found = new ArrayList<>();
        for (XSpreadsheet sheet : Uno.sheets(document)) {
            String name = Uno.as(XNamed.class, sheet).getName();
            Set<String> arrays = new HashSet<>();
            XCellRangesQuery query = Uno.as(XCellRangesQuery.class, sheet);
            for (CellRangeAddress block : query.queryFormulaCells(ANY_RESULT).getRangeAddresses()) {
                XCellRange range =
                        sheet.getCellRangeByPosition(block.StartColumn, block.StartRow, block.EndColumn, block.EndRow);
                // One call for the block; the cells are asked only where it is worth it.
                String[][] written = Uno.as(XCellRangeFormula.class, range).getFormulaArray();
                for (int row = block.StartRow; row <= block.EndRow; row++) {
                    for (int column = block.StartColumn; column <= block.EndColumn; column++) {
                        if (OurFunctions.in(written[row - block.StartRow][column - block.StartColumn])) {
                            at(sheet, name, column, row, arrays).ifPresent(found::add);
                        }
                    }
                }
            }
        }
        return found;
    }

    private static Optional<KeptFormula> at(XSpreadsheet sheet, String name, int column, int row, Set<String> arrays)
            throws com.sun.star.uno.Exception {
        XCell cell = sheet.getCellByPosition(column, row);
        String formula = cell.getFormula();
        if (!OurFunctions.in(formula)) {
            return Optional.empty();
        }
        if (!formula.startsWith("{")) {
            return Optional.of(KeptFormula.found(name, CellName.of(column, row), false, formula, note(cell)));
        }
        XCellRange one = sheet.getCellRangeByPosition(column, row, column, row);
        XSheetCellCursor whole = sheet.createCursorByRange(Uno.as(com.sun.star.sheet.XSheetCellRange.class, one));
        whole.collapseToCurrentArray();
        CellRangeAddress area = Uno.as(XCellRangeAddressable.class, whole).getRangeAddress();
        String cells = CellName.of(area.StartColumn, area.StartRow) + ":" + CellName.of(area.EndColumn, area.EndRow);
        if (!arrays.add(cells)) {
            return Optional.empty();
        }
        // The cell and not the range is asked: the range answers with commas, which it does not take back.
        String plain = formula.substring(1, formula.length() - 1);
        XCell first = sheet.getCellByPosition(area.StartColumn, area.StartRow);
        return Optional.of(KeptFormula.found(name, cells, true, plain, note(first)));
    }

    private static Optional<String> note(XCell cell) {
        String text = Notes.text(cell);
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
