package org.snugsheet.office.words;

import com.sun.star.lang.Locale;
import java.util.Set;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.uno.Uno;

/**
 * What is usual where a document comes from. Both lists after the supplemental data of the Unicode CLDR, measurement system for
 * temperature and paper size (from memory).
 */
public final class DocumentRegion {

    private static final Set<String> FAHRENHEIT =
            Set.of("US", "PR", "GU", "VI", "AS", "MP", "UM", "BS", "BZ", "KY", "PW", "LR", "FM", "MH");
    private static final Set<String> LETTER = Set.of(
            "US", "CA", "MX", "PR", "GU", "VI", "AS", "MP", "UM", "BZ", "CL", "CO", "CR", "GT", "NI", "PA", "PH", "SV",
            "VE");

    private final String country;

    private DocumentRegion(String country) {
        this.country = country;
    }

    /**
     * The region of a document.
     *
     * @param document the document
     * @return its region
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static DocumentRegion of(Object document) throws com.sun.star.uno.Exception {
        return new DocumentRegion(((Locale) Uno.property(document, "CharLocale")).Country);
    }

    /**
     * The scale of classroom thermometers.
     *
     * @return degrees Fahrenheit or Celsius
     */
    public Scale scale() {
        return FAHRENHEIT.contains(country) ? Scale.FAHRENHEIT : Scale.CELSIUS;
    }

    /**
     * Whether pages are printed on US Letter.
     *
     * @return true for Letter, false for A4
     */
    public boolean hasLetterPaper() {
        return LETTER.contains(country);
    }
}
