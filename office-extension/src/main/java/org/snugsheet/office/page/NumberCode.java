package org.snugsheet.office.page;

import com.sun.star.lang.Locale;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.util.XNumberFormats;
import com.sun.star.util.XNumberFormatsSupplier;
import org.snugsheet.office.uno.Uno;

/** Looks up how numbers are to be written. */
public final class NumberCode {
    /** No language: the number is written with the reader’s own decimal sign. */
    private static final Locale READERS = new Locale();

    /** The language of the codes; where a decimal comma is usual, their point would separate thousands. */
    private static final Locale CODES = new Locale("en", "US", "");

    private NumberCode() {}

    /**
     * Looks a code up, and adds it to the document where it is missing.
     *
     * @param document the document
     * @param code the code as it is written in English, such as {@code 0.00}
     * @return its key in the document
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static int key(XSpreadsheetDocument document, String code) throws com.sun.star.uno.Exception {
        XNumberFormats formats = Uno.as(XNumberFormatsSupplier.class, document).getNumberFormats();
        return formats.addNewConverted(code, CODES, READERS);
    }
}
