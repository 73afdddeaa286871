package org.snugsheet.office.menu;

import org.snugsheet.engine.Phrase;

/** How a chosen line went, and how the user learns of it. */
sealed interface Outcome {

    /**
     * What was said.
     *
     * @return the words, or the result that a macro is told
     */
    String text();

    /** In a message. */
    record Said(String text) implements Outcome {}

    /**
     * In a window that long texts fit into.
     *
     * @param title what is written above it
     * @param text the words
     */
    record ToRead(Phrase title, String text) implements Outcome {}

    /** By what has happened; nothing more is said. */
    record Seen(String text) implements Outcome {}

    static Outcome said(String sentence) {
        return new Said(sentence);
    }

    static Outcome toRead(Phrase title, String text) {
        return new ToRead(title, text);
    }

    static Outcome seen(String result) {
        return new Seen(result);
    }
}
