package org.snugsheet.office.sharing;

import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetAnnotation;
import com.sun.star.sheet.XSheetAnnotationAnchor;
import com.sun.star.sheet.XSheetAnnotationShapeSupplier;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetCellRangeContainer;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XSimpleText;
import com.sun.star.uno.UnoRuntime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.uno.Uno;

/** The notes on cells: the one that somebody wrote, and the formula that a copy keeps below it. */
final class Notes {

    private Notes() {}

    /** The text of a cell’s note; empty if there is none. */
    static String text(XCell cell) {
        return text(Uno.as(XSheetAnnotationAnchor.class, cell).getAnnotation());
    }

    private static String text(XSheetAnnotation note) {
        String text = Uno.as(XSimpleText.class, note).getString();
        if (text.isEmpty()) {
            // Of a note read from an .xlsx, newer offices know the text only once its shape was asked for.
            Optional<XSimpleText> drawn = drawn(note);
            text = Uno.as(XSimpleText.class, note).getString();
            if (text.isEmpty()) {
                text = drawn.map(XSimpleText::getString).orElse("");
            }
        }
        return text;
    }

    /** All notes of a sheet by their cells. */
    static Map<CellKey, String> of(XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        Map<CellKey, String> notes = new LinkedHashMap<>();
        XIndexAccess all = Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
        for (int i = 0; i < all.getCount(); i++) {
            XSheetAnnotation note = Uno.as(XSheetAnnotation.class, all.getByIndex(i));
            CellAddress at = note.getPosition();
            notes.put(new CellKey(at.Column, at.Row), text(note));
        }
        return notes;
    }

    /** Has the notes of a document drawn: until they are shown or asked for, 7.4 leaves them out of a .fods. */
    static void draw(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        for (XSpreadsheet sheet : Uno.sheets(document)) {
            XIndexAccess all = Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
            for (int i = 0; i < all.getCount(); i++) {
                XSheetAnnotationShapeSupplier note =
                        UnoRuntime.queryInterface(XSheetAnnotationShapeSupplier.class, all.getByIndex(i));
                if (note != null) {
                    note.getAnnotationShape();
                }
            }
        }
    }

    static CellRangeAddress[] annotated(XSpreadsheet sheet) {
        return Uno.as(XCellRangesQuery.class, sheet)
                .queryContentCells((short) CellFlags.ANNOTATION)
                .getRangeAddresses();
    }

    /** Makes a new note. */
    static void add(XSpreadsheet sheet, CellAddress at, String text) {
        Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations().insertNew(at, text);
    }

    /** Gives a note other words; it keeps author, date and look. */
    static void set(XSpreadsheet sheet, CellAddress at, String text) throws com.sun.star.uno.Exception {
        XCell cell = sheet.getCellByPosition(at.Column, at.Row);
        XSheetAnnotation note = Uno.as(XSheetAnnotationAnchor.class, cell).getAnnotation();
        // The drawing first: newer offices make that of a note from an .xlsx with the words of the file, and store
        // those.
        Optional<XSimpleText> drawn = drawn(note);
        Uno.as(XSimpleText.class, note).setString(text);
        if (drawn.isPresent() && !drawn.get().getString().equals(text)) {
            drawn.get().setString(text);
        }
    }

    private static Optional<XSimpleText> drawn(XSheetAnnotation note) {
        return Optional.ofNullable(UnoRuntime.queryInterface(XSheetAnnotationShapeSupplier.class, note))
                .map(XSheetAnnotationShapeSupplier::getAnnotationShape)
                .map(shape -> UnoRuntime.queryInterface(XSimpleText.class, shape));
    }

    /** Takes the notes of some cells away, all at once. */
    static void remove(XSpreadsheetDocument document, List<CellAddress> cells) throws com.sun.star.uno.Exception {
        if (cells.isEmpty()) {
            return;
        }
        Object ranges = Uno.make(document, "com.sun.star.sheet.SheetCellRanges");
        Uno.as(XSheetCellRangeContainer.class, ranges)
                .addRangeAddresses(
                        cells.stream()
                                .map(at -> new CellRangeAddress(at.Sheet, at.Column, at.Row, at.Column, at.Row))
                                .toArray(CellRangeAddress[]::new),
                        true);
        Uno.as(XSheetOperation.class, ranges).clearContents(CellFlags.ANNOTATION);
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
