package org.snugsheet.office.dialog;

import java.text.NumberFormat;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.office.words.DeclinedException;
import org.snugsheet.office.words.Language;

/** What was typed into a field. */
public final class TypedValue {

    private TypedValue() {}

    /**
     * A number as a field first shows it.
     *
     * @param number the number
     * @param language the language of the window
     * @return as short as it can be written
     */
    public static String written(double number, Language language) {
        return NumberFormat.getNumberInstance(language.locale()).format(number);
    }

    /**
     * The usual mark of a thermometer as a field first shows it.
     *
     * @param scale the scale of the thermometer
     * @param language the language of the window
     * @return degrees of that scale
     */
    public static String usualMark(Scale scale, Language language) {
        return written(Graduation.usual(scale).graduation().in(scale), language);
    }

    /**
     * A number.
     *
     * @param typed what was typed, with a point or a comma
     * @return the number
     * @throws DeclinedException if it is not one
     */
    public static double number(String typed) {
        try {
            return Entry.of(typed).asNumber(1);
        } catch (InvalidInputException refusal) {
            // The refusal would speak of a row, and a field has none.
            throw new DeclinedException(DialogWords.NOT_A_NUMBER, typed.strip());
        }
    }

    /**
     * A whole number.
     *
     * @param typed what was typed
     * @return the number
     * @throws DeclinedException if it is not one
     */
    public static int whole(String typed) {
        double number = number(typed);
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw new DeclinedException(DialogWords.NOT_WHOLE, typed.strip());
        }
        return (int) number;
    }
}
