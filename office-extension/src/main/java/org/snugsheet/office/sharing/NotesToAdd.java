package org.snugsheet.office.sharing;

import com.sun.star.sheet.XSheetAnnotations;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import org.snugsheet.office.sharing.Notes.CellKey;
import org.snugsheet.office.uno.Uno;
import org.w3c.dom.Document;

/**
 * New notes of one sheet. The office draws each note that it makes, and writes each drawing with a style of its own: with thousands of
 * them, two thirds of all the time that a copy takes. Of many it makes the first, and the others are written into the finished file after
 * its model.
 *
 * @param sheet the place of the sheet, from 0
 * @param all their texts by their cells, row by row
 */
record NotesToAdd(int sheet, SortedMap<CellKey, String> all) {

    private static final Comparator<CellKey> ROW_BY_ROW =
            Comparator.comparingInt(CellKey::row).thenComparingInt(CellKey::column);

    private static final String CONTENT = "content.xml";

    /** Fewer are quickly made by the office. */
    private static final int MANY = 200;

    NotesToAdd {
        all = Collections.unmodifiableSortedMap(all);
    }

    static NotesToAdd of(int sheet, Map<CellKey, String> notes) {
        SortedMap<CellKey, String> sorted = new TreeMap<>(ROW_BY_ROW);
        sorted.putAll(notes);
        return new NotesToAdd(sheet, sorted);
    }

    /** Whether they are to be written into the file. XML has no way to write other control characters than line breaks. */
    boolean areMany() {
        return all.size() >= MANY
                && all.values().stream()
                        .flatMapToInt(String::chars)
                        .noneMatch(letter -> letter < ' ' && letter != '\n');
    }

    /** The cell of the first. */
    CellKey first() {
        return all.firstKey();
    }

    /** All but the first. */
    SortedMap<CellKey, String> others() {
        return all.tailMap(new CellKey(first().column() + 1, first().row()));
    }

    /** Lets the office make all of them. */
    void make(XSpreadsheet page, IntConsumer done) {
        make(page, all, done);
    }

    /** Lets the office make the first. */
    void makeFirst(XSpreadsheet page) {
        make(page, all.headMap(new CellKey(first().column() + 1, first().row())), done -> {});
    }

    /** Lets the office make the others after all. */
    void makeOthers(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        XSpreadsheet page = Uno.sheets(document).get(sheet);
        SheetProtection.change(document, page, () -> make(page, others(), done -> {}));
    }

    private void make(XSpreadsheet page, SortedMap<CellKey, String> some, IntConsumer done) {
        XSheetAnnotations notes = Uno.as(XSheetAnnotationsSupplier.class, page).getAnnotations();
        int count = 0;
        for (Map.Entry<CellKey, String> note : some.entrySet()) {
            CellKey at = note.getKey();
            notes.insertNew(new CellAddress((short) sheet, at.column(), at.row()), note.getValue());
            done.accept(++count);
        }
    }

    /**
     * Adds to a finished file all but the first of each sheet.
     *
     * @throws UnexpectedFileException if the file is not as expected; it must not be written then
     */
    static void add(FileParts parts, List<NotesToAdd> notes) throws UnexpectedFileException {
        if (notes.isEmpty()) {
            return;
        }
        Optional<Document> content = parts.xml(CONTENT);
        if (content.isPresent()) {
            NotesInOdf.add(content.get(), notes);
            parts.replace(CONTENT, content.get());
        } else {
            NotesInXlsx.add(parts, notes);
        }
    }
}
