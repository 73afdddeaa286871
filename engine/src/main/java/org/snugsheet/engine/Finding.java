package org.snugsheet.engine;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Something found wrong, with its location and its numbers: the content of a message to the teacher.
 *
 * @param problem what is wrong
 * @param row the row concerned, counted from 1 within the cells given; empty if it does not concern a single row
 * @param arguments the values for {@code {0}}, {@code {1}}, … of the sentence; with a row, {@code {0}} is its
 *     {@link Location}; a {@link Phrase} among them appears in the language of the sentence, and of another finding the part
 *     that says what is wrong
 */
public record Finding(Problem problem, OptionalInt row, List<Object> arguments) {

    /** A finding; the arguments are copied. */
    public Finding {
        arguments = List.copyOf(arguments);
    }

    /**
     * A finding about the whole of what was given.
     *
     * @param problem what is wrong
     * @param arguments the values for {@code {0}}, {@code {1}}, … of its sentence
     * @return the finding
     */
    public static Finding of(Problem problem, Object... arguments) {
        return new Finding(problem, OptionalInt.empty(), List.of(arguments));
    }

    /**
     * A finding about one row.
     *
     * @param row the row, counted from 1; its {@link Location} becomes {@code {0}} of the sentence
     * @param problem what is wrong
     * @param arguments the values for {@code {1}}, {@code {2}}, … of its sentence
     * @return the finding
     */
    public static Finding atRow(int row, Problem problem, Object... arguments) {
        return numbered(row, Location.ofRow(row), problem, arguments);
    }

    /**
     * A finding about one of several things that are counted, such as the layers of a wrap.
     *
     * @param number which, counted from 1; it becomes {@code {0}} of the sentence
     * @param problem what is wrong
     * @param arguments the values for {@code {1}}, {@code {2}}, … of its sentence
     * @return the finding
     */
    public static Finding atItem(int number, Problem problem, Object... arguments) {
        return numbered(number, number, problem, arguments);
    }

    private static Finding numbered(int number, Object first, Problem problem, Object... arguments) {
        List<Object> all = new ArrayList<>();
        all.add(first);
        all.addAll(List.of(arguments));
        return new Finding(problem, OptionalInt.of(number), all);
    }

    /**
     * The same finding with a more precise location.
     *
     * @param better turns the location into a more precise one
     * @return the finding; unchanged if it has no location
     */
    public Finding located(UnaryOperator<Location> better) {
        if (location().isEmpty()) {
            return this;
        }
        List<Object> all = new ArrayList<>(arguments);
        all.set(0, better.apply(location().get()));
        return new Finding(problem, row, all);
    }

    /**
     * The location of the finding.
     *
     * @return the location; empty if it does not concern a row
     */
    public Optional<Location> location() {
        return !arguments.isEmpty() && arguments.get(0) instanceof Location location
                ? Optional.of(location)
                : Optional.empty();
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
     * @param language the words of each phrase in that language; those of a {@link Problem} are a {@link MessageFormat} pattern
     * @param locale how numbers are written there
     * @return the sentence
     */
    public String sentence(Function<Phrase, String> language, Locale locale) {
        Object[] said = arguments.stream()
                .map(argument -> said(argument, language, locale))
                .toArray();
        String pattern = language.apply(problem);
        MessageFormat format = new MessageFormat(pattern, locale);
        if (!Sentences.canBeWritten(format, said)) {
            return of(Problem.ANSWER_TOO_LARGE).sentence(language, locale);
        }
        String sentence = format.format(said);
        boolean ours = pattern.startsWith("{0}")
                && location().filter(there -> !there.beginsWithAName()).isPresent();
        return ours ? sentence.substring(0, 1).toUpperCase(locale) + sentence.substring(1) : sentence;
    }

    /**
     * The part of a sentence that says what is wrong, without the advice.
     *
     * @param sentence a sentence of a finding, in any language
     * @return the sentence up to its last part
     */
    public static String whatIsWrong(String sentence) {
        int end = sentence.lastIndexOf(". ");
        return end < 0 ? sentence : sentence.substring(0, end + 1);
    }

    /**
     * The advice: the last part of the sentence.
     *
     * @param sentence a sentence of a finding, in any language
     * @return the advice; empty if the sentence has no separate advice
     */
    public static String whatToDo(String sentence) {
        int end = sentence.lastIndexOf(". ");
        return end < 0 ? "" : sentence.substring(end + 2);
    }

    private static Object said(Object argument, Function<Phrase, String> language, Locale locale) {
        if (argument instanceof Phrase phrase) {
            return language.apply(phrase);
        }
        if (argument instanceof Location location) {
            return location.words(language, locale);
        }
        if (argument instanceof Finding other) {
            return whatIsWrong(other.sentence(language, locale));
        }
        if (argument instanceof List<?> several) {
            // Findings are sentences already.
            String between = several.stream().allMatch(Finding.class::isInstance) ? " " : ", ";
            return several.stream()
                    .map(one -> String.valueOf(said(one, language, locale)))
                    .collect(Collectors.joining(between));
        }
        return argument;
    }
}
