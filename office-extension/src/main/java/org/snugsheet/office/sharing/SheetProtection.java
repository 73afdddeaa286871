package org.snugsheet.office.sharing;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.util.XProtectable;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.snugsheet.office.page.UndoPause;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;

/** Opens a protected sheet, or the protected order of the sheets, for a change and protects it again. */
final class SheetProtection {

    /** A change to a sheet. */
    interface Change {
        void make() throws com.sun.star.uno.Exception;
    }

    private SheetProtection() {}

    /**
     * Looks whether sheets can be changed.
     *
     * @throws DeclinedException if one of them needs a password
     */
    static void check(XSpreadsheetDocument document, Set<Integer> numbers) throws com.sun.star.uno.Exception {
        List<XSpreadsheet> sheets = Uno.sheets(document);
        for (int number : numbers) {
            XSpreadsheet sheet = sheets.get(number);
            change(document, sheet, () -> {});
        }
    }

    /**
     * Makes a change, however the sheet is protected.
     *
     * @throws DeclinedException if a password is needed
     */
    static void change(XSpreadsheetDocument document, XSpreadsheet sheet, Change change)
            throws com.sun.star.uno.Exception {
        change(
                document,
                Uno.as(XProtectable.class, sheet),
                () -> new DeclinedException(
                        SharingWords.HAS_A_PASSWORD, Uno.as(XNamed.class, sheet).getName()),
                change);
    }

    /**
     * Adds a sheet or takes one away, however the document’s structure is protected.
     *
     * @throws DeclinedException if a password is needed
     */
    static void structure(XSpreadsheetDocument document, Change change) throws com.sun.star.uno.Exception {
        change(
                document,
                Uno.as(XProtectable.class, document),
                () -> new DeclinedException(SharingWords.STRUCTURE_HAS_A_PASSWORD),
                change);
    }

    private static void change(
            XSpreadsheetDocument document, XProtectable protection, Supplier<DeclinedException> refusal, Change change)
            throws com.sun.star.uno.Exception {
        if (!protection.isProtected()) {
            change.make();
            return;
        }
        try {
            protection.unprotect("");
        } catch (com.sun.star.lang.IllegalArgumentException passwordNeeded) {
            throw refusal.get();
        }
        if (protection.isProtected()) {
            throw refusal.get();
        }
        // Opening and closing a sheet repaints it, after which the office records steps again, whatever it was told.
        UndoPause.again(document);
        try {
            change.make();
        } finally {
            UndoPause.again(document);
            protection.protect("");
            UndoPause.again(document);
        }
    }
}
