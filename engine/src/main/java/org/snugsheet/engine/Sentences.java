package org.snugsheet.engine;

import java.text.AttributedCharacterIterator;
import java.text.MessageFormat;
import java.util.Arrays;

/** What may stand in a sentence that a person reads. */
public final class Sentences {

    private Sentences() {}

    /**
     * Whether all numbers that a sentence says can be written: nobody typed “∞”, and no cell can hold it. A value that the
     * sentence does not say, such as a limit that is not there, may be what it will.
     *
     * @param pattern the sentence with places for values
     * @param values the values for {@code {0}}, {@code {1}}, …
     * @return false if one that is said is infinite, even as a percentage, or not a number
     */
    public static boolean canBeWritten(MessageFormat pattern, Object... values) {
        return Arrays.stream(values).noneMatch(Sentences::isUnwritable) || saysOnlyFinite(pattern, values);
    }

    private static boolean saysOnlyFinite(MessageFormat pattern, Object[] values) {
        AttributedCharacterIterator text = pattern.formatToCharacterIterator(values);
        for (char c = text.first(); c != AttributedCharacterIterator.DONE; c = text.setIndex(text.getRunLimit())) {
            if (text.getAttribute(MessageFormat.Field.ARGUMENT) instanceof Integer said && isUnwritable(values[said])) {
                return false;
            }
        }
        return true;
    }

    /** A percentage is written a hundred times as large. */
    private static boolean isUnwritable(Object value) {
        return value instanceof Double number && !Double.isFinite(100 * number);
    }
}
