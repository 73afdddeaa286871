package org.snugsheet.engine;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * Something found wrong, where, and with which numbers: what a sentence to the teacher is made of.
 *
 * @param trouble what is wrong
 * @param row the row to blame, counted from 1 within the cells given; empty when it is not one row’s trouble
 * @param arguments the values for {@code {0}}, {@code {1}}, … of the sentence; with a row, the row is {@code {0}}
 */
public record Finding(Trouble trouble, OptionalInt row, List<Object> arguments) {

    /** A finding; the arguments are copied. */
    public Finding {
        arguments = List.copyOf(arguments);
    }

    /**
     * A finding about the whole of what was given.
     *
     * @param trouble what is wrong
     * @param arguments the values for {@code {0}}, {@code {1}}, … of its sentence
     * @return the finding
     */
    public static Finding of(Trouble trouble, Object... arguments) {
        return new Finding(trouble, OptionalInt.empty(), List.of(arguments));
    }

    /**
     * A finding about one row.
     *
     * @param row the row, counted from 1; it becomes {@code {0}} of the sentence
     * @param trouble what is wrong
     * @param arguments the values for {@code {1}}, {@code {2}}, … of its sentence
     * @return the finding
     */
    public static Finding atRow(int row, Trouble trouble, Object... arguments) {
        Object[] all = new Object[arguments.length + 1];
        all[0] = row;
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return new Finding(trouble, OptionalInt.of(row), List.of(all));
    }

    /**
     * The finding as an English sentence.
     *
     * @return what is wrong, where, and what to do
     */
    public String sentence() {
        return sentence(trouble.english(), Locale.ENGLISH);
    }

    /**
     * What is wrong, without what to do about it.
     *
     * @return the sentence up to its last part
     */
    public String whatIsWrong() {
        String all = sentence();
        int end = all.lastIndexOf(". ");
        return end < 0 ? all : all.substring(0, end + 1);
    }

    /**
     * What to do about it: the last part of the sentence.
     *
     * @return the advice; empty if the sentence has no part of its own for it
     */
    public String whatToDo() {
        String all = sentence();
        int end = all.lastIndexOf(". ");
        return end < 0 ? "" : all.substring(end + 2);
    }

    /**
     * The finding as a sentence in another language.
     *
     * @param pattern the sentence of the trouble in that language, as a {@link MessageFormat} pattern
     * @param locale how numbers are written there
     * @return the sentence
     */
    public String sentence(String pattern, Locale locale) {
        return new MessageFormat(pattern, locale).format(arguments.toArray());
    }
}
