package org.snugsheet.office.sheets.lessonbook.readings;

import org.snugsheet.engine.Phrase;

/** What is on the page for readings; patterns of a MessageFormat. */
public enum ReadingWords implements Phrase {
    /** Title. */
    TITLE("What the thermometers read"),
    /** Below the title. */
    HINT(
            "Enter goes down a column and on to the next jar. Missed a reading? Leave it blank. 98 °F is taken as it comes."),
    /** Below the title. */
    OTHER_HINT(
            "Not read at these minutes? Type the clock, such as 9:05. The last column is for a cold place that is read over and over."),
    /** Head. */
    MINUTE("minute"),
    /** Head. */
    CLOCK("or clock"),
    /** Head of the column for the surroundings. */
    AROUND("the cold place,"),
    /** Label. */
    CHECK("check"),
    /** Below the grid. */
    EMPTY("Type what the thermometers read. The page Answers follows."),
    /** Below the grid. */
    ALL_WELL("All readings so far can be used: see the page Answers."),
    /** Below the grid. */
    NAMED("Jar {0} ({1}) – {2}"),
    /** Below the grid. */
    MORE("There is one more jar to look at."),
    /** Below the grid. */
    MANY_MORE("There are {0} more jars to look at.");
    /** Hint. */
    private final String english;

    ReadingWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
