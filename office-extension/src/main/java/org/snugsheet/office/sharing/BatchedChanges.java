package org.snugsheet.office.sharing;

import com.sun.star.document.XActionLockable;
import com.sun.star.sheet.XSpreadsheetDocument;
import org.snugsheet.office.uno.Uno;

/** Groups changes of a document, so that the office updates its windows once and not after each of them. */
final class BatchedChanges {

    private BatchedChanges() {}

    static void change(XSpreadsheetDocument document, SheetProtection.Change changes)
            throws com.sun.star.uno.Exception {
        XActionLockable lock = Uno.as(XActionLockable.class, document);
        lock.addActionLock();
        try {
            changes.make();
        } finally {
            lock.removeActionLock();
        }
    }
}
