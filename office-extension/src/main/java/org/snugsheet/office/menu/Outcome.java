package org.snugsheet.office.menu;

/**
 * How a chosen line went.
 *
 * @param text what is said, or the result that a macro is told
 * @param shown how the user learns of it
 */
record Outcome(String text, Shown shown) {

    /** How the user learns of an outcome. */
    enum Shown {
        /** In a message. */
        SAID,
        /** In a window that long texts fit into. */
        TO_READ,
        /** By what has happened; nothing more is said. */
        SEEN
    }

    static Outcome said(String sentence) {
        return new Outcome(sentence, Shown.SAID);
    }

    static Outcome toRead(String text) {
        return new Outcome(text, Shown.TO_READ);
    }

    static Outcome seen(String result) {
        return new Outcome(result, Shown.SEEN);
    }
}
