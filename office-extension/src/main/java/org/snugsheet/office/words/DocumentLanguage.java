package org.snugsheet.office.words;

import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.lang.WrappedTargetException;

/** The language a document is written in, which its cells speak. */
public final class DocumentLanguage {

    private static final String LOCALE = "CharLocale";

    private DocumentLanguage() {}

    /**
     * The language of a spreadsheet document.
     *
     * @param document the document, as the office hands it to a cell function
     * @return the language of its default cell style if it is one of these, otherwise English
     */
    public static Language of(XPropertySet document) {
        try {
            return document.getPropertyValue(LOCALE) instanceof Locale locale
                    ? Language.of(locale.Language)
                    : Language.ENGLISH;
        } catch (UnknownPropertyException | WrappedTargetException noLocale) {
            // Every document of Calc has one; any other caller is answered in English.
            return Language.ENGLISH;
        }
    }

    /**
     * Writes a document in a language.
     *
     * @param document the document
     * @param tag a language tag such as {@code es-US}, of which the region says which scale and paper are usual
     */
    public static void set(XPropertySet document, String tag) {
        java.util.Locale wanted = java.util.Locale.forLanguageTag(tag);
        try {
            document.setPropertyValue(LOCALE, new Locale(wanted.getLanguage(), wanted.getCountry(), ""));
        } catch (com.sun.star.uno.Exception refused) {
            throw new IllegalStateException(tag, refused);
        }
    }
}
