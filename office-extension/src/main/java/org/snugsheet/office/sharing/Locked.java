package org.snugsheet.office.sharing;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.util.XProtectable;
import java.util.List;
import java.util.Set;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;

/** Opens a protected sheet for a change and protects it again. */
final class Locked {

    /** A change to a sheet. */
    interface Change {
        void make() throws com.sun.star.uno.Exception;
    }

    private Locked() {}

    /**
     * Looks whether sheets can be changed.
     *
     * @throws Declined if one of them needs a password
     */
    static void check(XSpreadsheetDocument document, Set<Integer> numbers) throws com.sun.star.uno.Exception {
        List<XSpreadsheet> sheets = Uno.sheets(document);
        for (int number : numbers) {
            XSpreadsheet sheet = sheets.get(number);
            change(sheet, Uno.as(XNamed.class, sheet).getName(), () -> {});
        }
    }

    /**
     * Makes a change, however the sheet is protected.
     *
     * @throws Declined if a password is needed
     */
    static void change(XSpreadsheet sheet, String name, Change change) throws com.sun.star.uno.Exception {
        XProtectable protection = Uno.as(XProtectable.class, sheet);
        boolean wasProtected = protection.isProtected();
        if (wasProtected) {
            try {
                protection.unprotect("");
            } catch (com.sun.star.lang.IllegalArgumentException passwordNeeded) {
                throw new Declined(SharingWords.HAS_A_PASSWORD, name);
            }
            if (protection.isProtected()) {
                throw new Declined(SharingWords.HAS_A_PASSWORD, name);
            }
        }
        try {
            change.make();
        } finally {
            if (wasProtected) {
                protection.protect("");
            }
        }
    }
}
