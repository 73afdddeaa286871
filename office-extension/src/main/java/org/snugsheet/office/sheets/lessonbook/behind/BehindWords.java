package org.snugsheet.office.sheets.lessonbook.behind;

import org.snugsheet.engine.Phrase;

/** What stands on the page behind the others and is shown by them; patterns of a MessageFormat. */
enum BehindWords implements Phrase {
    /** Title. */
    TITLE("Behind the pages: nothing to type here"),
    /** A finding with its place as it is seen. */
    AT_MINUTE("minute {0}: {1}"),
    /** In place of a jar’s check, in a narrow column. */
    WAITING("waiting"),
    /** The same. */
    OK("OK"),
    /** The same, with the minute as it is typed. */
    LOOK_AT("look at minute {0}"),
    /** The same. */
    SEE_BELOW("see below"),
    /** The same. */
    MORE("so far OK"),
    /** The same. */
    HOW_COLD("how cold?"),
    /** The sentence of a jar without surroundings. */
    TYPE_COLD("How cold is it around the jars? Type it on the page {0}."),
    /** Times of two kinds. */
    MIXED_TIMES("Some times are clock times, others are minutes: type all of them the same way.");

    private final String english;

    BehindWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
