package org.snugsheet.office.words;

import org.snugsheet.engine.Phrase;

/** Says in plain words why something that was chosen cannot be done. */
public final class DeclinedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Phrase reason;
    private final transient Object[] values;

    /**
     * A reason.
     *
     * @param reason a sentence that says what to do, a pattern of a {@link java.text.MessageFormat}
     * @param values the values for {@code {0}}, {@code {1}}, …
     */
    public DeclinedException(Phrase reason, Object... values) {
        super(Language.ENGLISH.say(reason, values));
        this.reason = reason;
        this.values = values.clone();
    }

    /**
     * The reason in a language.
     *
     * @param language the language to say it in
     * @return a sentence that says what to do
     */
    public String sentence(Language language) {
        return language.say(reason, values);
    }
}
