package org.snugsheet.office.page;

import com.sun.star.container.XNamed;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import org.snugsheet.office.uno.Uno;

/** Adds a page of ours to somebody’s document, as one step that can be undone. */
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
     * Adds a page behind the others.
     *
     * @param document the document
     * @param name the name on its tab; a number is added if it is taken
     * @param filling what fills it
     * @return the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Page in(XSpreadsheetDocument document, String name, Filling filling)
            throws com.sun.star.uno.Exception {
        XUndoManager undo = Uno.as(XUndoManagerSupplier.class, document).getUndoManager();
        undo.enterUndoContext(name);
        try {
            XSpreadsheets sheets = document.getSheets();
            String free = name;
            for (int number = 2; sheets.hasByName(free); number++) {
                free = name + " " + number;
            }
            sheets.insertNewByName(free, (short) sheets.getElementNames().length);
            XSpreadsheet sheet = Uno.as(XSpreadsheet.class, sheets.getByName(free));
            Uno.set(sheet, "CellStyle", Looks.installBeside(document));
            Page page = new Page(document, sheet, Uno.as(XNamed.class, sheet).getName());
            filling.fill(page);
            return page;
        } finally {
            undo.leaveUndoContext();
        }
    }
}
