package org.snugsheet.office.sharing;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSheetAnnotationShapeSupplier;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XSimpleText;
import com.sun.star.uno.UnoRuntime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.uno.Uno;

/** The notes on cells: the one that somebody wrote, and the formula that a copy keeps below it. */
final class Notes {

    private Notes() {}

    /** The text of a cell’s note; empty if there is none. */
    static String text(XCell cell) {
        XSheetAnnotation note = Uno.as(XSheetAnnotationAnchor.class, cell).getAnnotation();
        String text = Uno.as(XSimpleText.class, note).getString();
        if (text.isEmpty()) {
            // Of a note read from an .xlsx, newer offices know the text only once its shape was asked for.
            XSheetAnnotationShapeSupplier shape = UnoRuntime.queryInterface(XSheetAnnotationShapeSupplier.class, note);
            if (shape != null && shape.getAnnotationShape() != null) {
                text = Uno.as(XSimpleText.class, note).getString();
                if (text.isEmpty()) {
                    XSimpleText drawn = UnoRuntime.queryInterface(XSimpleText.class, shape.getAnnotationShape());
                    text = drawn == null ? "" : drawn.getString();
                }
            }
        }
        return text;
    }

    /** All notes of a sheet by their cells. */
    static Map<CellKey, String> of(XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        Map<CellKey, String> notes = new LinkedHashMap<>();
        for (CellRangeAddress block : annotated(sheet)) {
            for (int column = block.StartColumn; column <= block.EndColumn; column++) {
                for (int row = block.StartRow; row <= block.EndRow; row++) {
                    notes.put(new CellKey(column, row), text(sheet.getCellByPosition(column, row)));
                }
            }
        }
        return notes;
    }

    static CellRangeAddress[] annotated(XSpreadsheet sheet) {
        return Uno.as(XCellRangesQuery.class, sheet)
                .queryContentCells((short) CellFlags.ANNOTATION)
                .getRangeAddresses();
    }

    /** Puts a formula below the note of a cell, or makes a note of it. What is already there keeps author, date and look. */
    static void keep(XSpreadsheet sheet, CellAddress at, Optional<String> before, String formula)
            throws com.sun.star.uno.Exception {
        if (before.isPresent()) {
            set(sheet, at, before.get() + "\n" + formula);
        } else {
            Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations().insertNew(at, formula);
        }
    }

    static void set(XSpreadsheet sheet, CellAddress at, String text) throws com.sun.star.uno.Exception {
        XCell cell = sheet.getCellByPosition(at.Column, at.Row);
        XSheetAnnotation note = Uno.as(XSheetAnnotationAnchor.class, cell).getAnnotation();
        Uno.as(XSimpleText.class, note).setString(text);
    }

    static void remove(XSpreadsheet sheet, CellAddress at) throws com.sun.star.uno.Exception {
        Uno.as(XSheetOperation.class, sheet.getCellRangeByPosition(at.Column, at.Row, at.Column, at.Row))
                .clearContents(CellFlags.ANNOTATION);
    }

    /** Whether a note keeps this formula, alone or among words of somebody’s. */
    static boolean keeps(String note, String formula) {
        return ("\n" + note + "\n").contains("\n" + formula + "\n");
    }

    /** The note without the formula. */
    static String without(String note, String formula) {
        String framed = "\n" + note + "\n";
        int from = framed.lastIndexOf("\n" + formula + "\n");
        String rest = framed.substring(0, from) + framed.substring(from + formula.length() + 1);
        return rest.substring(Math.min(1, rest.length()), Math.max(rest.length() - 1, Math.min(1, rest.length())));
    }

    /**
     * A cell of a sheet.
     *
     * @param column from 0
     * @param row from 0
     */
    record CellKey(int column, int row) {}
}
