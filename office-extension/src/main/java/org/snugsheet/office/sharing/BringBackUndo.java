package org.snugsheet.office.sharing;

import com.sun.star.document.XUndoAction;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.page.UndoPause;
import org.snugsheet.office.uno.Uno;

/**
 * Undoes and does again what the office does not by itself, the properties of a document, the words of a note and array formulas made
 * of parts, or not safely, the page that goes.
 */
final class BringBackUndo extends WeakBase implements XUndoAction {

    private final XSpreadsheetDocument document;
    private final String title;
    private final Map<String, String> properties;
    private final Map<CellAddress, String> before;
    private final Map<CellAddress, String> after = new LinkedHashMap<>();
    private final List<Proposal.Write> arrays;
    private final Optional<PageRemovalStep> page;

    /**
     * What is to come again.
     *
     * @param document the document
     * @param title what the step is called
     * @param properties those that were taken away
     * @param notes the words of notes as they were
     * @param arrays the array formulas, of which the office forgets what they were made of: done again they would be Err:520
     * @param page the page that goes; it is still there
     */
    BringBackUndo(
            XSpreadsheetDocument document,
            String title,
            Map<String, String> properties,
            Map<CellAddress, String> notes,
            List<Proposal.Write> arrays,
            Optional<PageRemovalStep> page)
            throws com.sun.star.uno.Exception {
        this.document = document;
        this.title = title;
        this.properties = properties;
        this.before = notes;
        this.arrays = List.copyOf(arrays);
        this.page = page;
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
            if (page.isPresent()) {
                page.get().bringBack();
            }
            KeptFormulas.remember(document, properties);
            write(before);
        });
    }

    @Override
    public void redo() {
        done(() -> {
            KeptFormulas.forget(document);
            write(after);
            for (Proposal.Write array : arrays) {
                XSpreadsheet sheet = sheet(array.area().first());
                SheetProtection.change(document, sheet, () -> {
                    UndoPause.again(document);
                    BringBack.enter(sheet, array);
                    UndoPause.again(document);
                });
                UndoPause.again(document);
            }
            takePageAway();
        });
    }

    /** For the first time; from then on it goes and comes with the step. */
    void takePageAway() throws com.sun.star.uno.Exception {
        if (page.isPresent()) {
            page.get().remove();
        }
    }

    private void write(Map<CellAddress, String> notes) throws com.sun.star.uno.Exception {
        for (Map.Entry<CellAddress, String> note : notes.entrySet()) {
            CellAddress at = note.getKey();
            XSpreadsheet sheet = sheet(at);
            SheetProtection.change(document, sheet, () -> Notes.set(sheet, at, note.getValue()));
        }
    }

    private XSpreadsheet sheet(CellAddress at) throws com.sun.star.uno.Exception {
        return Uno.sheets(document).get(at.Sheet);
    }

    /** Nothing that is done here is to become a step itself: the list of steps would change while the office goes through it. */
    private void done(SheetProtection.Change change) {
        try {
            XUndoManager undo = Uno.as(XUndoManagerSupplier.class, document).getUndoManager();
            undo.lock();
            try {
                change.make();
            } finally {
                undo.unlock();
            }
        } catch (com.sun.star.uno.Exception failed) {
            throw new IllegalStateException(failed);
        }
    }
}
