package org.snugsheet.office.page;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XProtectable;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;

/** Adds a page to somebody’s document: whole, or not at all. */
public final class NewPage {

    private NewPage() {}

    /** What fills a page. */
    public interface Filling {
        /**
         * Fills it.
         *
         * @param page the empty page
         * @throws com.sun.star.uno.Exception if the office refuses
         */
        void fill(Page page) throws com.sun.star.uno.Exception;
    }

    /**
     * Adds a page behind the others. If that fails, the document is what it was.
     *
     * @param office the office’s context
     * @param document the document
     * @param name the name on its tab; a number is added if it is taken
     * @param printed the cells that are printed
     * @param filling what fills it
     * @return the page
     * @throws DeclinedException if the document lets nobody add a sheet
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Page in(
            XComponentContext office, XSpreadsheetDocument document, String name, String printed, Filling filling)
            throws com.sun.star.uno.Exception {
        if (Uno.as(XProtectable.class, document).isProtected()) {
            throw new DeclinedException(PageWords.NO_MORE_SHEETS);
        }
        ImportedStyles looks = ImportedStyles.into(office, document);
        XUndoManager undo = Uno.as(XUndoManagerSupplier.class, document).getUndoManager();
        PageStep step = new PageStep(document, free(document.getSheets(), name), filling);
        boolean isFilled = false;
        try {
            addForGood(undo, step, printed);
            isFilled = true;
        } finally {
            if (!isFilled) {
                looks.takeAway();
            }
        }
        return step.page();
    }

    /** The office cannot undo a page with a chart, but ends when it is asked to: so neither this nor what was before can be undone. */
    private static void addForGood(XUndoManager undo, PageStep step, String printed) throws com.sun.star.uno.Exception {
        boolean isFilled = false;
        undo.lock();
        try {
            step.insert();
            PrintSetup.print(step.page(), printed);
            step.fill();
            isFilled = true;
        } finally {
            if (!isFilled) {
                step.remove();
            }
            undo.unlock();
            undo.clear();
        }
    }

    private static String free(XSpreadsheets sheets, String name) {
        String free = name;
        for (int number = 2; sheets.hasByName(free); number++) {
            free = name + " " + number;
        }
        return free;
    }
}
