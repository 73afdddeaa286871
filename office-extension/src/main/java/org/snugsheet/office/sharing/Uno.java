package org.snugsheet.office.sharing;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.List;

/** What every step on a document needs of the office’s interfaces. */
final class Uno {

    private Uno() {}

    /**
     * The same object by another of its interfaces.
     *
     * @throws IllegalStateException if it has no such interface, which is a fault of this project
     */
    static <T> T as(Class<T> wanted, Object object) {
        T found = UnoRuntime.queryInterface(wanted, object);
        if (found == null) {
            throw new IllegalStateException("no " + wanted.getSimpleName());
        }
        return found;
    }

    static List<XSpreadsheet> sheets(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        XIndexAccess all = as(XIndexAccess.class, document.getSheets());
        List<XSpreadsheet> sheets = new ArrayList<>();
        for (int i = 0; i < all.getCount(); i++) {
            sheets.add(as(XSpreadsheet.class, all.getByIndex(i)));
        }
        return sheets;
    }

    static Object property(Object of, String name) throws com.sun.star.uno.Exception {
        return as(XPropertySet.class, of).getPropertyValue(name);
    }
}
