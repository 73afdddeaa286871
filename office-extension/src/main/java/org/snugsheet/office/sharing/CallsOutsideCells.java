package org.snugsheet.office.sharing;

import com.sun.star.container.XEnumeration;
import com.sun.star.container.XEnumerationAccess;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XCellFormatRangesSupplier;
import com.sun.star.sheet.XConditionEntry;
import com.sun.star.sheet.XConditionalFormat;
import com.sun.star.sheet.XConditionalFormats;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** What calls Snugsheet functions without being in a cell: names become their values; conditions of formats and of input are left out. */
final class CallsOutsideCells {

    private static final String SCRATCH = "_";

    private CallsOutsideCells() {}

    /**
     * A formula outside of cells.
     *
     * @param where the name it has, or the sheet and the cells
     * @param kind what it is
     * @param formula the formula
     * @param becomes what is told of it
     */
    record Call(String where, Phrase kind, String formula, SharingWords becomes) {

        String told(Language language) {
            return language.words(becomes);
        }
    }

    static List<Call> of(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        List<Call> calls = new ArrayList<>(names(copy));
        for (XSpreadsheet sheet : Uno.sheets(copy)) {
            String name = Uno.as(XNamed.class, sheet).getName();
            List<Call> found = new ArrayList<>();
            // Whether there is anything to do is seen before a protected sheet is opened.
            formats(sheet, name, found, false);
            inputs(sheet, name, found, false);
            if (!found.isEmpty()) {
                calls.addAll(found);
                SheetProtection.change(copy, sheet, () -> {
                    formats(sheet, name, new ArrayList<>(), true);
                    inputs(sheet, name, new ArrayList<>(), true);
                });
            }
        }
        return calls;
    }

    private static List<Call> names(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        List<Call> calls = new ArrayList<>();
        for (Map.Entry<String, XNamedRange> named : DefinedNames.of(copy).entrySet()) {
            String formula = "=" + named.getValue().getContent();
            if (FunctionIndex.in(formula)) {
                calls.add(new Call(named.getKey(), SharingWords.NAME, formula, SharingWords.NAME_BECOMES));
                named.getValue().setContent(value(copy, formula));
            }
        }
        return calls;
    }

    /** What a formula answers, as a formula. */
    private static String value(XSpreadsheetDocument copy, String formula) throws com.sun.star.uno.Exception {
        XSpreadsheets sheets = copy.getSheets();
        String scratch = SCRATCH;
        while (sheets.hasByName(scratch)) {
            scratch += SCRATCH;
        }
        sheets.insertNewByName(scratch, (short) sheets.getElementNames().length);
        try {
            XCell cell = Uno.as(XSpreadsheet.class, sheets.getByName(scratch)).getCellByPosition(0, 0);
            cell.setFormula(formula);
            if (cell.getError() != 0) {
                return "NA()";
            }
            boolean isText = ((Number) Uno.property(cell, "FormulaResultType2")).intValue()
                    == com.sun.star.sheet.FormulaResult.STRING;
            return isText
                    ? "\"" + Uno.as(XText.class, cell).getString().replace("\"", "\"\"") + "\""
                    : String.valueOf(cell.getValue());
        } finally {
            sheets.removeByName(scratch);
        }
    }

    private static void formats(XSpreadsheet sheet, String name, List<Call> calls, boolean take)
            throws com.sun.star.uno.Exception {
        XConditionalFormats all = Uno.as(XConditionalFormats.class, Uno.property(sheet, "ConditionalFormats"));
        for (XConditionalFormat format : all.getConditionalFormats()) {
            XIndexAccess conditions = Uno.as(XIndexAccess.class, format);
            XSheetCellRanges where = Uno.as(XSheetCellRanges.class, Uno.property(format, "Range"));
            for (int i = conditions.getCount() - 1; i >= 0; i--) {
                Object condition = conditions.getByIndex(i);
                if (UnoRuntime.queryInterface(XConditionEntry.class, condition) == null) {
                    continue;
                }
                String formula = formula(condition, "Formula1", "Formula2");
                if (FunctionIndex.in(formula)) {
                    calls.add(new Call(
                            name + " " + where.getRangeAddressesAsString(),
                            SharingWords.FORMAT,
                            formula,
                            SharingWords.FORMAT_LEFT_OUT));
                    if (take) {
                        // The office refuses to take away one condition of several: all of these cells’ go.
                        all.removeByID(((Number) Uno.property(format, "ID")).intValue());
                        break;
                    }
                }
            }
        }
    }

    private static String formula(Object of, String... properties) throws com.sun.star.uno.Exception {
        StringBuilder formula = new StringBuilder();
        for (String property : properties) {
            if (Uno.as(com.sun.star.beans.XPropertySet.class, of)
                    .getPropertySetInfo()
                    .hasPropertyByName(property)) {
                Object value = Uno.property(of, property);
                formula.append(value instanceof String text && !text.isEmpty() ? "=" + text : "");
            }
        }
        return formula.toString();
    }

    private static void inputs(XSpreadsheet sheet, String name, List<Call> calls, boolean take)
            throws com.sun.star.uno.Exception {
        if (!checksInput(sheet)) {
            return;
        }
        // Read as a list first: it changes while validations go. By an index the office would count to each anew.
        List<Object> all = new ArrayList<>();
        XEnumeration ranges = Uno.as(
                        XEnumerationAccess.class,
                        Uno.as(XCellFormatRangesSupplier.class, sheet).getCellFormatRanges())
                .createEnumeration();
        while (ranges.hasMoreElements()) {
            all.add(ranges.nextElement());
        }
        for (Object range : all) {
            Object validation = Uno.property(range, "Validation");
            XSheetCondition condition = Uno.as(XSheetCondition.class, validation);
            String formula = checked(condition);
            if (FunctionIndex.in(formula)) {
                CellRangeAddress at = Uno.as(com.sun.star.sheet.XCellRangeAddressable.class, range)
                        .getRangeAddress();
                calls.add(new Call(
                        name + " " + Area.of(at).cellNames(),
                        SharingWords.INPUT_CHECK,
                        "=" + condition.getFormula1(),
                        SharingWords.INPUT_CHECK_LEFT_OUT));
                if (take) {
                    Uno.set(validation, "Type", ValidationType.ANY);
                    // Newer offices write the formula into .xlsx whatever the type.
                    condition.setFormula1("");
                    condition.setFormula2("");
                    Uno.set(range, "Validation", validation);
                }
            }
        }
    }

    /** Asks once for all cells that look the same and are checked alike: a page has few such kinds, and thousands of ranges. */
    private static boolean checksInput(XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        XIndexAccess kinds =
                Uno.as(XUniqueCellFormatRangesSupplier.class, sheet).getUniqueCellFormatRanges();
        int count = kinds.getCount();
        for (int i = 0; i < count; i++) {
            Object validation = Uno.property(kinds.getByIndex(i), "Validation");
            if (FunctionIndex.in(checked(Uno.as(XSheetCondition.class, validation)))) {
                return true;
            }
        }
        return false;
    }

    private static String checked(XSheetCondition condition) {
        return "=" + condition.getFormula1() + ";" + condition.getFormula2();
    }
}
