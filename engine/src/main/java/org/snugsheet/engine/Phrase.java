package org.snugsheet.engine;

/**
 * Words of the engine that have a name, so that they can be said in any language. The constants of an enum are phrases; English
 * stands beside each, and whoever speaks another language finds its words by {@link #key()}.
 */
public interface Phrase {

    /**
     * The constant’s name.
     *
     * @return such as {@code TOO_FEW_READINGS}
     */
    String name();

    /**
     * The enum it belongs to.
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
     * What the words are called, the same in every language and apart from all other phrases.
     *
     * @return such as {@code Problem.TOO_FEW_READINGS}
     */
    default String key() {
        return getDeclaringClass().getSimpleName() + "." + name();
    }
}
