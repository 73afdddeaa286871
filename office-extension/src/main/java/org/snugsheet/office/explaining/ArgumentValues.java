package org.snugsheet.office.explaining;

import com.sun.star.container.XNameAccess;
import com.sun.star.container.XNamed;
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
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Looks up what the arguments of a call were given: constants, cells, names, and anything else by a hidden copy. */
final class ArgumentValues {

    /** Marks that look like quotation marks, with which a word is not quoted in a formula. */
    private static final Pattern QUOTES = Pattern.compile("[\"'“”„‟‘’‚«»‹›]");

    private final XSpreadsheetDocument document;
    private final CellAddress cell;
    private final FormulaCalls formula;
    private final HiddenCopy copy;

    ArgumentValues(XSpreadsheetDocument document, CellAddress cell, FormulaCalls formula, HiddenCopy copy) {
        this.document = document;
        this.cell = cell;
        this.formula = formula;
        this.copy = copy;
    }

    ArgumentValue of(List<FormulaToken> argument) throws com.sun.star.uno.Exception {
        String written = formula.written(argument).strip();
        if (written.isEmpty()) {
            return ArgumentValue.LEFT_OUT;
        }
        String shown = formula.shown(argument).strip();
        Optional<String> word = formula.unknownWord(argument);
        if (word.isPresent()) {
            String bare = QUOTES.matcher(word.get()).replaceAll("");
            // The office writes a word it does not know in small letters; a scale is a capital.
            return ArgumentValue.faulty(
                    shown, ExplainingWords.NEEDS_QUOTES, bare.length() == 1 ? bare.toUpperCase(Locale.ROOT) : bare);
        }
        List<FormulaToken> tokens = byName(written).orElse(argument);
        if (tokens.size() == 1) {
            Object data = tokens.get(0).Data;
            if (data instanceof ComplexReference range && sheet(range.Reference1) != sheet(range.Reference2)) {
                return ArgumentValue.faulty(shown, ExplainingWords.SEVERAL_SHEETS, shown);
            }
            if (data instanceof SingleReference || data instanceof ComplexReference) {
                return cells(shown, place(data));
            }
            if (data instanceof Double || data instanceof String) {
                return ArgumentValue.of(shown, new Object[][] {{data}}, true, Optional.empty());
            }
            if (data instanceof Object[][] rows) {
                return ArgumentValue.of(shown, rows, false, Optional.empty());
            }
        }
        return copy.workedOut(shown, formula.written(withSheets(tokens)), cell);
    }

    /** A name of the cell’s own sheet comes before one of the document. */
    private Optional<List<FormulaToken>> byName(String written) throws com.sun.star.uno.Exception {
        for (Object owner : List.of(Uno.sheets(document).get(cell.Sheet), document)) {
            XNameAccess names = Uno.as(XNameAccess.class, Uno.property(owner, "NamedRanges"));
            for (String name : names.getElementNames()) {
                if (name.equalsIgnoreCase(written)) {
                    return Optional.of(List.of(
                            Uno.as(XFormulaTokens.class, names.getByName(name)).getTokens()));
                }
            }
        }
        return Optional.empty();
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

    private ArgumentValue cells(String written, CellRangeAddress place) throws com.sun.star.uno.Exception {
        XSpreadsheet sheet = Uno.sheets(document).get(place.Sheet);
        XSheetCellCursor used = sheet.createCursor();
        Uno.as(XUsedAreaCursor.class, used).gotoEndOfUsedArea(false);
        CellRangeAddress end = Uno.as(XCellRangeAddressable.class, used).getRangeAddress();
        // A whole column has a million cells, nearly all blank.
        int lastColumn = Math.max(place.StartColumn, Math.min(place.EndColumn, end.EndColumn));
        int lastRow = Math.max(place.StartRow, Math.min(place.EndRow, end.EndRow));
        XCellRange range = sheet.getCellRangeByPosition(place.StartColumn, place.StartRow, lastColumn, lastRow);
        Object[][] rows = Uno.as(XCellRangeData.class, range).getDataArray();
        return ArgumentValue.ofCells(written, rows, place, firstError(range, prefix(sheet, place)));
    }

    /** Names the sheet of a cell on another sheet. */
    private String prefix(XSpreadsheet sheet, CellRangeAddress place) {
        return place.Sheet == cell.Sheet ? "" : Uno.as(XNamed.class, sheet).getName() + ".";
    }

    private static Optional<String> firstError(XCellRange range, String prefix) {
        CellRangeAddress[] errors = Uno.as(XCellRangesQuery.class, Uno.as(XSheetCellRange.class, range))
                .queryFormulaCells((short) FormulaResult.ERROR)
                .getRangeAddresses();
        return errors.length == 0
                ? Optional.empty()
                : Optional.of(prefix + CellName.of(errors[0].StartColumn, errors[0].StartRow));
    }

    /** The same tokens with the sheet in each reference, so that they mean the same cells on any sheet. */
    private static List<FormulaToken> withSheets(List<FormulaToken> tokens) {
        return tokens.stream().map(ArgumentValues::withSheet).toList();
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
