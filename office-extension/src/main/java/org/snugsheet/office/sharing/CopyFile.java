package org.snugsheet.office.sharing;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import java.util.Locale;
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
        PropertyValue filter = property("FilterName", filter(file));
        UnoRuntime.queryInterface(XStorable.class, document)
                .storeToURL(file, new PropertyValue[] {filter, property("Overwrite", true)});
        Object desktop = office.getServiceManager().createInstanceWithContext("com.sun.star.frame.Desktop", office);
        XComponent copy = UnoRuntime.queryInterface(XComponentLoader.class, desktop)
                .loadComponentFromURL(file, "_blank", 0, new PropertyValue[] {property("Hidden", true)});
        try {
            int formulas = ShareCopy.make(UnoRuntime.queryInterface(XSpreadsheetDocument.class, copy));
            UnoRuntime.queryInterface(XStorable.class, copy)
                    .storeToURL(file, new PropertyValue[] {filter, property("Overwrite", true)});
            return formulas;
        } finally {
            UnoRuntime.queryInterface(XCloseable.class, copy).close(true);
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

    private static PropertyValue property(String name, Object value) {
        PropertyValue property = new PropertyValue();
        property.Name = name;
        property.Value = value;
        return property;
    }
}
