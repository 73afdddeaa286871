package org.snugsheet.office.page;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.util.NotLockedException;
import org.snugsheet.office.uno.Uno;

/** Keeps the office from recording each small change of a page as a step to undo. */
public final class UndoPause {

    private UndoPause() {}

    /**
     * The office, told to record nothing, does so again once it has counted the sheets of paper of a page: after a break, a print
     * range, a page style or the width of a column. Then it must be told again. Nothing happens where nobody told it.
     *
     * @param document the document
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static void again(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        XUndoManager undo = Uno.as(XUndoManagerSupplier.class, document).getUndoManager();
        try {
            undo.unlock();
        } catch (NotLockedException recordsAnyway) {
            return;
        }
        undo.lock();
    }
}
