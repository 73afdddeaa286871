package org.snugsheet.office.dialog;

import java.text.NumberFormat;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.words.Declined;
import org.snugsheet.office.words.Language;

/** What was typed into a field. */
public final class Typed {

    private Typed() {}

    /**
     * A number as it stands in a field at first.
     *
     * @param number the number
     * @param language the language of the window
     * @return as short as it can be written
     */
    public static String written(double number, Language language) {
        return NumberFormat.getNumberInstance(language.locale()).format(number);
    }

    /**
     * A number.
     *
     * @param typed what was typed, with a point or a comma
     * @return the number
     * @throws Declined if it is none
     */
    public static double number(String typed) {
        try {
            return Entry.of(typed).asNumber(1);
        } catch (Refusal refusal) {
            // The refusal would speak of a row, and a field has none.
            throw new Declined(DialogWords.NOT_A_NUMBER, typed.strip());
        }
    }
}
