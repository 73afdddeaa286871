package org.snugsheet.office.sharing;

import com.sun.star.document.XUndoAction;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import java.util.LinkedHashMap;
import java.util.Map;
import org.snugsheet.office.uno.Uno;

/** Undoes what the office does not undo by itself: the properties of a document and the words of a note. */
final class KeptAgain extends WeakBase implements XUndoAction {

    private final XSpreadsheetDocument document;
    private final String title;
    private final Map<String, String> properties;
    private final Map<CellAddress, String> before;
    private final Map<CellAddress, String> after = new LinkedHashMap<>();

    /**
     * What is to come again.
     *
     * @param document the document
     * @param title what the step is called
     * @param properties those that were taken away
     * @param notes the words of notes as they were
     */
    KeptAgain(
            XSpreadsheetDocument document, String title, Map<String, String> properties, Map<CellAddress, String> notes)
            throws com.sun.star.uno.Exception {
        this.document = document;
        this.title = title;
        this.properties = properties;
        this.before = notes;
        for (CellAddress at : notes.keySet()) {
            after.put(at, Notes.text(sheet(at).getCellByPosition(at.Column, at.Row)));
        }
    }

    @Override
    public String getTitle() {
        return title;
    }

    @Override
    public void undo() {
        done(() -> {
            KeptFormulas.remember(document, properties);
            write(before);
        });
    }

    @Override
    public void redo() {
        done(() -> {
            KeptFormulas.forget(document);
            write(after);
        });
    }

    private void write(Map<CellAddress, String> notes) throws com.sun.star.uno.Exception {
        for (Map.Entry<CellAddress, String> note : notes.entrySet()) {
            CellAddress at = note.getKey();
            XSpreadsheet sheet = sheet(at);
            Locked.change(
                    sheet,
                    Uno.as(com.sun.star.container.XNamed.class, sheet).getName(),
                    () -> Notes.set(sheet, at, note.getValue()));
        }
    }

    private XSpreadsheet sheet(CellAddress at) throws com.sun.star.uno.Exception {
        return Uno.sheets(document).get(at.Sheet);
    }

    private static void done(Locked.Change change) {
        try {
            change.make();
        } catch (com.sun.star.uno.Exception failed) {
            throw new IllegalStateException(failed);
        }
    }
}
