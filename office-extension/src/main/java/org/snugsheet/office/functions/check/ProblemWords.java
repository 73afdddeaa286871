package org.snugsheet.office.functions.check;

import org.snugsheet.engine.Phrase;

/** Heads and words of CHECK.ALL and CHECK.SHEET; OK is OK everywhere. */
public enum ProblemWords implements Phrase {
    /** A head or a word of the tables. */
    JAR("Jar"),
    /** A head or a word of the tables. */
    ROW("Row"),
    /** A head or a word of the tables. */
    WHAT_IS_WRONG("What is wrong"),
    /** A head or a word of the tables. */
    HOW_SURE("How sure"),
    /** A head or a word of the tables. */
    WHAT_TO_DO("What to do"),
    /** A head or a word of the tables. */
    SURE("sure"),
    /** A head or a word of the tables. */
    VERY_LIKELY("very likely"),
    /** A head or a word of the tables. */
    LIKELY("likely"),
    /** A head or a word of the tables. */
    PERHAPS("perhaps"),
    /** A head or a word of the tables. */
    CAUTION("a caution"),
    /** A head or a word of the tables. */
    CAN_HURT("can hurt"),
    /** A head or a word of the tables. */
    ALL_JARS("all jars");

    private final String english;

    ProblemWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
