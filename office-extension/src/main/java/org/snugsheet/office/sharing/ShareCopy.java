package org.snugsheet.office.sharing;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSheetAnnotations;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.functions.OurFunctions;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;

/** Turns a document, already a copy of somebody’s, into one that shows the same without this extension. */
public final class ShareCopy {

    private static final int ERROR_RESULT = 4;
    private static final int TEXT_RESULT = 2;

    private ShareCopy() {}

    /**
     * Puts the value in the place of each of our formulas, and keeps the formulas.
     *
     * @param copy the document to change; the original is another one
     * @return how many formulas were replaced; 0 leaves the document as it was
     * @throws Declined if it is such a copy already, or a sheet with one of our formulas has a password
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int make(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        if (!KeptFormulas.read(copy).isEmpty()) {
            throw new Declined(SharingWords.IS_A_COPY);
        }
        List<KeptFormula> formulas = FormulaScan.of(copy);
        if (formulas.isEmpty()) {
            return 0;
        }
        // All values are read before the first is written: else a formula would be worked out from its neighbours’
        // changes.
        List<Answers> answers = new ArrayList<>();
        for (KeptFormula formula : formulas) {
            answers.add(Answers.of(range(copy, formula)));
        }
        for (int i = 0; i < formulas.size(); i++) {
            KeptFormula formula = formulas.get(i);
            Answers values = answers.get(i);
            XSpreadsheet sheet = sheet(copy, formula.sheet());
            Locked.change(sheet, formula.sheet(), () -> {
                XCellRange range = sheet.getCellRangeByName(formula.cells());
                if (formula.array()) {
                    Uno.as(XArrayFormulaRange.class, range).setArrayFormula("");
                }
                values.writeTo(range);
                note(sheet, range, noteWith(formula));
            });
        }
        KeptFormulas.write(copy, formulas);
        WorkedOutPage.add(copy, formulas);
        return formulas.size();
    }

    private static String noteWith(KeptFormula formula) {
        String ours = OurFunctions.asTyped(formula.formula());
        return formula.noteBefore().map(before -> before + "\n" + ours).orElse(ours);
    }

    static XSpreadsheet sheet(XSpreadsheetDocument document, String name) throws com.sun.star.uno.Exception {
        if (!document.getSheets().hasByName(name)) {
            throw new Declined(SharingWords.SHEET_IS_GONE, name);
        }
        return Uno.as(XSpreadsheet.class, document.getSheets().getByName(name));
    }

    private static XCellRange range(XSpreadsheetDocument document, KeptFormula formula)
            throws com.sun.star.uno.Exception {
        return sheet(document, formula.sheet()).getCellRangeByName(formula.cells());
    }

    /** Gives the first cell of a range a note, or takes it away for an empty text. */
    static void note(XSpreadsheet sheet, XCellRange range, String text) throws com.sun.star.uno.Exception {
        XCell first = range.getCellByPosition(0, 0);
        CellAddress address = Uno.as(XCellAddressable.class, first).getCellAddress();
        XSheetAnnotations notes = Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
        for (int i = notes.getCount() - 1; i >= 0; i--) {
            CellAddress at = Uno.as(com.sun.star.sheet.XSheetAnnotation.class, notes.getByIndex(i))
                    .getPosition();
            if (at.Column == address.Column && at.Row == address.Row) {
                notes.removeByIndex(i);
            }
        }
        if (!text.isEmpty()) {
            notes.insertNew(address, text);
            Uno.as(XSheetAnnotationAnchor.class, first).getAnnotation().setIsVisible(false);
        }
    }

    /** What the cells of a range show, to be written in the place of what shows it. */
    private record Answers(List<List<Object>> rows) {

        static Answers of(XCellRange range) throws com.sun.star.uno.Exception {
            CellRangeAddress area = Uno.as(XCellRangeAddressable.class, range).getRangeAddress();
            List<List<Object>> rows = new ArrayList<>();
            for (int row = 0; row <= area.EndRow - area.StartRow; row++) {
                List<Object> answers = new ArrayList<>();
                for (int column = 0; column <= area.EndColumn - area.StartColumn; column++) {
                    answers.add(answer(range.getCellByPosition(column, row)));
                }
                rows.add(answers);
            }
            return new Answers(rows);
        }

        private static Object answer(XCell cell) throws com.sun.star.uno.Exception {
            int kind = ((Number) Uno.property(cell, "FormulaResultType2")).intValue();
            if (cell.getError() != 0 || kind == ERROR_RESULT) {
                return NoAnswer.INSTANCE;
            }
            return kind == TEXT_RESULT ? Uno.as(XText.class, cell).getString() : (Object) cell.getValue();
        }

        void writeTo(XCellRange range) throws com.sun.star.uno.Exception {
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < rows.get(row).size(); column++) {
                    XCell cell = range.getCellByPosition(column, row);
                    Object answer = rows.get(row).get(column);
                    if (answer instanceof Double number) {
                        cell.setValue(number);
                    } else if (answer instanceof String text) {
                        Uno.as(XText.class, cell).setString(text);
                    } else {
                        // Still an error, so that totals and charts do not swallow it, and one that every office knows.
                        cell.setFormula("=NA()");
                    }
                }
            }
        }
    }

    private enum NoAnswer {
        INSTANCE
    }
}
