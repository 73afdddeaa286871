package org.snugsheet.office.sheets.lessonbook.layout;

import org.snugsheet.engine.Phrase;

/** What all pages of the lesson book share: tabs, the words of cautions and boxes; patterns of a MessageFormat. */
public enum BookWords implements Phrase {
    /** In the list of worked sheets. */
    MENU("Lesson book – one class, from plan to wall"),
    /** In the list of worked sheets. */
    EXAMPLE_MENU("Example of a lesson book – a class that is invented"),
    /** The title of the document. */
    TITLE("Lesson book"),
    /** What the document is about. */
    SUBJECT("Which wrap keeps water warm the longest? Plan, pages for pupils, readings, answers"),
    /** What the document is. */
    DESCRIPTION(
            "A lesson book of Snugsheet: what is typed on two pages makes the plan, pages to print, answers and a page for the wall."),
    /** Tab. */
    START_PAGE("Start"),
    /** Tab. */
    PLAN_PAGE("Plan"),
    /** Tab. */
    PICTURES_PAGE("Pupils, pictures"),
    /** Tab. */
    NUMBERS_PAGE("Pupils, numbers"),
    /** Tab. */
    READINGS_PAGE("Readings"),
    /** Tab. */
    ANSWERS_PAGE("Answers"),
    /** Tab. */
    WALL_PAGE("Wall"),
    /** Tab. */
    NOTES_PAGE("Notes"),
    /** Tab. */
    BEHIND_PAGE("Behind"),
    /** What can hurt. */
    CAUTION_WORD("Caution:"),
    /** A jar without a wrap, in the list of wraps. */
    BARE("no wrap"),
    /** A jar that nobody named. */
    JAR("jar {0}"),
    /** The title of the window. */
    ASK("Start a lesson book"),
    /** Field. */
    JARS("~Jars of the class"),
    /** Field. */
    MINUTES("Mi~nutes of reading"),
    /** Field. */
    INTERVAL("Minutes ~between readings"),
    /** Below the fields. */
    HELP(
            "The book opens as a new document and has room for so many jars and readings. Wraps, scale and where the jars are: type them there."),
    /** A plan that does not fit. */
    HOW_MANY_JARS("Plan {0} to {1} jars."),
    /** A plan that does not fit. */
    HOW_MANY_MINUTES("Plan {0} to {1} minutes."),
    /** A plan that does not fit. */
    HOW_OFTEN("In {0} minutes, read {1} to {2} times. Type the whole minutes from one reading to the next.");

    private final String english;

    BookWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
