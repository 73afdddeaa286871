package org.snugsheet.office.words;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.Sentences;

/** A language that the user is spoken to in, with its way of writing numbers. */
public enum Language {
    /** The language of the code. */
    ENGLISH(Locale.ENGLISH),
    /** Spanish. */
    SPANISH(Locale.forLanguageTag("es")),
    /** French. */
    FRENCH(Locale.FRENCH),
    /** German. */
    GERMAN(Locale.GERMAN);

    private static final String PHRASES = "org.snugsheet.office.words.phrases";
    private static final String FUNCTIONS = "org.snugsheet.office.words.functions";

    private static final ResourceBundle.Control EXACT =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final Locale locale;

    Language(Locale locale) {
        this.locale = locale;
    }

    /**
     * The language nearest to a locale.
     *
     * @param tag a language tag such as {@code de-AT}
     * @return that language if it is one of these, otherwise English
     */
    public static Language of(String tag) {
        String wanted = Locale.forLanguageTag(tag).getLanguage();
        for (Language language : values()) {
            if (language.code().equals(wanted)) {
                return language;
            }
        }
        return ENGLISH;
    }

    /**
     * All languages but English, whose words are in the code.
     *
     * @return those that need a translation
     */
    public static List<Language> translated() {
        return List.of(SPANISH, FRENCH, GERMAN);
    }

    /**
     * Its code.
     *
     * @return two letters such as {@code de}
     */
    public String code() {
        return locale.getLanguage();
    }

    /**
     * How it writes numbers.
     *
     * @return its locale
     */
    public Locale locale() {
        return locale;
    }

    /**
     * Words as they are, without values.
     *
     * @param phrase the words
     * @return them in this language
     */
    public String words(Phrase phrase) {
        return found(PHRASES, phrase.key(), phrase.english());
    }

    /**
     * The words of a row of a table.
     *
     * @param phrases one for each cell
     * @return them in this language
     */
    public Object[] row(Phrase... phrases) {
        return Arrays.stream(phrases).map(this::words).toArray();
    }

    /**
     * A sentence with its values.
     *
     * @param pattern a phrase that is a {@link MessageFormat} pattern
     * @param values the values for {@code {0}}, {@code {1}}, …
     * @return the sentence
     * @throws InvalidInputException if a value that the sentence says is no number that can be written
     */
    public String say(Phrase pattern, Object... values) {
        MessageFormat sentence = new MessageFormat(words(pattern), locale);
        if (!Sentences.canBeWritten(sentence, values)) {
            throw InvalidInputException.of(Problem.ANSWER_TOO_LARGE);
        }
        return sentence.format(values);
    }

    /**
     * What the engine found.
     *
     * @param finding what is wrong
     * @return its sentence
     */
    public String say(Finding finding) {
        return finding.sentence(this::words, locale);
    }

    /**
     * The words of a declared function or argument.
     *
     * @param key such as {@code COOL.RATE} or {@code COOL.RATE.times}
     * @param english the words in English
     * @return them in this language
     */
    public String declared(String key, String english) {
        return found(FUNCTIONS, key, english);
    }

    /** English words replace missing ones, which a test does not allow; otherwise a cell would show an error. */
    private String found(String bundle, String key, String english) {
        if (this == ENGLISH) {
            return english;
        }
        try {
            return ResourceBundle.getBundle(bundle, locale, Language.class.getClassLoader(), EXACT)
                    .getString(key);
        } catch (MissingResourceException missing) {
            return english;
        }
    }
}
