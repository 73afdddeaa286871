package org.snugsheet.office.functions;

import org.snugsheet.engine.Phrase;

/** Heads and words of CHECK.ALL and CHECK.SHEET; OK is OK everywhere. */
enum TroubleWords implements Phrase {
    JAR("Jar"),
    ROW("Row"),
    WHAT_IS_WRONG("What is wrong"),
    HOW_SURE("How sure"),
    WHAT_TO_DO("What to do"),
    SURE("sure"),
    VERY_LIKELY("very likely"),
    LIKELY("likely"),
    PERHAPS("perhaps"),
    CAUTION("a caution"),
    ALL_JARS("all jars");

    private final String english;

    TroubleWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
