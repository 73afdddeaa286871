package org.snugsheet.office.explaining;

import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.ComplexReference;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.ReferenceFlags;
import com.sun.star.sheet.SingleReference;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import java.util.List;
import java.util.Optional;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Looks up what the arguments of a call were given: constants, cells, names, and whatever else by a hidden copy. */
final class Givens {

    private final XSpreadsheetDocument document;
    private final CellAddress cell;
    private final FormulaCalls formula;
    private final HiddenCopy copy;

    Givens(XSpreadsheetDocument document, CellAddress cell, FormulaCalls formula, HiddenCopy copy) {
        this.document = document;
        this.cell = cell;
        this.formula = formula;
        this.copy = copy;
    }

    Given of(List<FormulaToken> argument) throws com.sun.star.uno.Exception {
        String written = formula.written(argument).strip();
        if (written.isEmpty()) {
            return Given.LEFT_OUT;
        }
        List<FormulaToken> tokens = byName(written).orElse(argument);
        if (tokens.size() == 1) {
            Object data = tokens.get(0).Data;
            if (data instanceof SingleReference || data instanceof ComplexReference) {
                return cells(written, place(data));
            }
            if (data instanceof Double || data instanceof String) {
                return Given.of(written, new Object[][] {{data}}, true, Optional.empty());
            }
            if (data instanceof Object[][] rows) {
                return Given.of(written, rows, false, Optional.empty());
            }
        }
        return copy.workedOut(written, formula.written(withSheets(argument)), cell);
    }

    private Optional<List<FormulaToken>> byName(String written) throws com.sun.star.uno.Exception {
        XNameAccess names = Uno.as(XNameAccess.class, Uno.property(document, "NamedRanges"));
        return names.hasByName(written)
                ? Optional.of(List.of(
                        Uno.as(XFormulaTokens.class, names.getByName(written)).getTokens()))
                : Optional.empty();
    }

    private CellRangeAddress place(Object reference) {
        SingleReference from =
                reference instanceof ComplexReference range ? range.Reference1 : (SingleReference) reference;
        SingleReference to = reference instanceof ComplexReference range ? range.Reference2 : from;
        CellRangeAddress place = new CellRangeAddress();
        place.Sheet = (short) sheet(from);
        place.StartColumn = column(from);
        place.StartRow = row(from);
        place.EndColumn = column(to);
        place.EndRow = row(to);
        return place;
    }

    private int column(SingleReference to) {
        return (to.Flags & ReferenceFlags.COLUMN_RELATIVE) != 0 ? cell.Column + to.RelativeColumn : to.Column;
    }

    private int row(SingleReference to) {
        return (to.Flags & ReferenceFlags.ROW_RELATIVE) != 0 ? cell.Row + to.RelativeRow : to.Row;
    }

    private int sheet(SingleReference to) {
        return (to.Flags & ReferenceFlags.SHEET_RELATIVE) != 0 ? cell.Sheet + to.RelativeSheet : to.Sheet;
    }

    private Given cells(String written, CellRangeAddress place) throws com.sun.star.uno.Exception {
        XSpreadsheet sheet = Uno.sheets(document).get(place.Sheet);
        XSheetCellCursor used = sheet.createCursor();
        Uno.as(XUsedAreaCursor.class, used).gotoEndOfUsedArea(false);
        CellRangeAddress end = Uno.as(XCellRangeAddressable.class, used).getRangeAddress();
        // A whole column has a million cells, nearly all blank.
        int lastColumn = Math.max(place.StartColumn, Math.min(place.EndColumn, end.EndColumn));
        int lastRow = Math.max(place.StartRow, Math.min(place.EndRow, end.EndRow));
        XCellRange range = sheet.getCellRangeByPosition(place.StartColumn, place.StartRow, lastColumn, lastRow);
        Object[][] rows = Uno.as(XCellRangeData.class, range).getDataArray();
        boolean oneCell = place.StartColumn == place.EndColumn && place.StartRow == place.EndRow;
        return Given.of(written, rows, oneCell, firstError(range));
    }

    private static Optional<String> firstError(XCellRange range) {
        CellRangeAddress[] errors = Uno.as(XCellRangesQuery.class, Uno.as(XSheetCellRange.class, range))
                .queryFormulaCells((short) FormulaResult.ERROR)
                .getRangeAddresses();
        return errors.length == 0
                ? Optional.empty()
                : Optional.of(CellName.of(errors[0].StartColumn, errors[0].StartRow));
    }

    /** The same tokens with the sheet in each reference, so that they mean the same cells on any sheet. */
    private static List<FormulaToken> withSheets(List<FormulaToken> tokens) {
        return tokens.stream().map(Givens::withSheet).toList();
    }

    private static FormulaToken withSheet(FormulaToken token) {
        if (token.Data instanceof SingleReference one) {
            return new FormulaToken(token.OpCode, withSheet(one));
        }
        if (token.Data instanceof ComplexReference range) {
            return new FormulaToken(
                    token.OpCode, new ComplexReference(withSheet(range.Reference1), withSheet(range.Reference2)));
        }
        return token;
    }

    private static SingleReference withSheet(SingleReference to) {
        return new SingleReference(
                to.Column,
                to.RelativeColumn,
                to.Row,
                to.RelativeRow,
                to.Sheet,
                to.RelativeSheet,
                to.Flags | ReferenceFlags.SHEET_3D);
    }
}
