package org.snugsheet.office.sharing;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import java.util.Locale;
import org.snugsheet.office.uno.DocumentFile;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Declined;

/** Writes a copy to share into a file; the document it is made from is not touched. */
public final class CopyFile {

    private CopyFile() {}

    /**
     * Writes the copy.
     *
     * @param office the office’s context
     * @param document the document to copy
     * @param file the address of the file; its ending says whether .ods, .fods or .xlsx
     * @return how many formulas were replaced
     * @throws Declined if the ending is another, or the document is such a copy itself
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static int of(XComponentContext office, XSpreadsheetDocument document, String file)
            throws com.sun.star.uno.Exception {
        String filter = filter(file);
        DocumentFile.store(document, file, filter);
        XComponent copy = DocumentFile.openHidden(office, file);
        try {
            int formulas = ShareCopy.make(Uno.as(XSpreadsheetDocument.class, copy));
            DocumentFile.store(copy, file, filter);
            return formulas;
        } finally {
            Uno.as(XCloseable.class, copy).close(true);
        }
    }

    private static String filter(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        if (name.endsWith(".ods")) {
            return "calc8";
        }
        if (name.endsWith(".fods")) {
            return "OpenDocument Spreadsheet Flat XML";
        }
        if (name.endsWith(".xlsx")) {
            return "Calc MS Excel 2007 XML";
        }
        throw new Declined(SharingWords.OTHER_ENDING);
    }
}
