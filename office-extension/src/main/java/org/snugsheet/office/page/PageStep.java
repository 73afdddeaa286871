package org.snugsheet.office.page;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import org.snugsheet.office.uno.Uno;

/** A new page: put in, filled, or taken out again. */
final class PageStep {

    private final XSpreadsheetDocument document;
    private final String name;
    private final NewPage.Filling filling;

    PageStep(XSpreadsheetDocument document, String name, NewPage.Filling filling) {
        this.document = document;
        this.name = name;
        this.filling = filling;
    }

    Page page() throws com.sun.star.uno.Exception {
        XSpreadsheet sheet = Uno.as(XSpreadsheet.class, document.getSheets().getByName(name));
        return new Page(document, sheet, Uno.as(XNamed.class, sheet).getName());
    }

    void insert() {
        document.getSheets().insertNewByName(name, (short) document.getSheets().getElementNames().length);
    }

    void remove() throws com.sun.star.uno.Exception {
        if (document.getSheets().hasByName(name)) {
            document.getSheets().removeByName(name);
        }
    }

    void fill() throws com.sun.star.uno.Exception {
        Page page = page();
        Uno.set(page.sheet(), "CellStyle", StyleSheet.OUR_PAPER);
        filling.fill(page);
    }
}
