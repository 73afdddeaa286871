package org.snugsheet.office.sheets.builder;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XSpreadsheetDocument;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DocumentLanguage;
import org.snugsheet.office.words.DocumentRegion;
import org.snugsheet.office.words.Language;

/**
 * How a worked sheet is written.
 *
 * @param language its words
 * @param scale the scale that its thermometers begin with
 * @param paper what it is printed on
 */
public record Setting(Language language, Scale scale, Paper paper) {

    /** As the sheets are written that go with a release: English, degrees Celsius, A4. */
    public static final Setting USUAL = new Setting(Language.ENGLISH, Scale.CELSIUS, Paper.A4);

    /**
     * What suits a document: its language, and what is usual in its region.
     *
     * @param document the document
     * @return the setting
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static Setting of(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        DocumentRegion region = DocumentRegion.of(document);
        return new Setting(
                DocumentLanguage.of(Uno.as(XPropertySet.class, document)),
                region.scale(),
                region.hasLetterPaper() ? Paper.LETTER : Paper.A4);
    }

    /**
     * The same with thermometers of a scale.
     *
     * @param other the scale
     * @return the setting
     */
    public Setting on(Scale other) {
        return new Setting(language, other, paper);
    }

    /**
     * The same in another language.
     *
     * @param other the language
     * @return the setting
     */
    public Setting in(Language other) {
        return new Setting(other, scale, paper);
    }
}
