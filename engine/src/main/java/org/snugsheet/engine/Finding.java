package org.snugsheet.engine;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Something found wrong, where, and with which numbers: what a sentence to the teacher is made of.
 *
 * @param trouble what is wrong
 * @param row the row to blame, counted from 1 within the cells given; empty when it is not one row’s trouble
 * @param arguments the values for {@code {0}}, {@code {1}}, … of the sentence; with a row, the row is {@code {0}};
 *     a {@link Phrase} among them is said in the language of the sentence
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
        return sentence(Phrase::english, Locale.ENGLISH);
    }

    /**
     * The finding as a sentence in another language.
     *
     * @param language the words of each phrase in that language; those of a {@link Trouble} are a {@link MessageFormat} pattern
     * @param locale how numbers are written there
     * @return the sentence
     */
    public String sentence(Function<Phrase, String> language, Locale locale) {
        Object[] said =
                arguments.stream().map(argument -> said(argument, language)).toArray();
        return new MessageFormat(language.apply(trouble), locale).format(said);
    }

    /**
     * What is wrong, without what to do about it.
     *
     * @param sentence a sentence of a finding, in any language
     * @return the sentence up to its last part
     */
    public static String whatIsWrong(String sentence) {
        int end = sentence.lastIndexOf(". ");
        return end < 0 ? sentence : sentence.substring(0, end + 1);
    }

    /**
     * What to do about it: the last part of the sentence.
     *
     * @param sentence a sentence of a finding, in any language
     * @return the advice; empty if the sentence has no part of its own for it
     */
    public static String whatToDo(String sentence) {
        int end = sentence.lastIndexOf(". ");
        return end < 0 ? "" : sentence.substring(end + 2);
    }

    private static Object said(Object argument, Function<Phrase, String> language) {
        if (argument instanceof Phrase phrase) {
            return language.apply(phrase);
        }
        if (argument instanceof List<?> several) {
            return several.stream()
                    .map(one -> String.valueOf(said(one, language)))
                    .collect(Collectors.joining(", "));
        }
        return argument;
    }
}
