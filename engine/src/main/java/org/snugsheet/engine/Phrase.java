package org.snugsheet.engine;

/**
 * Words of the engine with a key, so that they can be translated. The constants of an enum are phrases; each has its English
 * text, and translations are found by {@link #key()}.
 */
public interface Phrase {

    /**
     * The constant’s name.
     *
     * @return such as {@code TOO_FEW_READINGS}
     */
    String name();

    /**
     * The enum that the constant belongs to.
     *
     * @return its class
     */
    Class<?> getDeclaringClass();

    /**
     * The words in English.
     *
     * @return plain words, or a {@link java.text.MessageFormat} pattern where the enum says so
     */
    String english();

    /**
     * The unique key of the phrase, the same in every language.
     *
     * @return such as {@code Problem.TOO_FEW_READINGS}
     */
    default String key() {
        return getDeclaringClass().getSimpleName() + "." + name();
    }
}
