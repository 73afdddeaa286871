package org.snugsheet.office.sheets.lessonbook.pupils;

import org.snugsheet.engine.Phrase;

/** What is on the children’s pages, in words of children; patterns of a MessageFormat. */
enum PupilWords implements Phrase {
    /** Title, as long as nobody typed a wrap. */
    GROUP("Group {0}"),
    /** Title. */
    GROUP_WRAP("Group {0}: {1}"),
    /** Before a line. */
    NAME("My name:"),
    /** Pictures: what to do. */
    DRAW_JAR("✎ Draw your jar."),
    /** Pictures: what to do before the lesson. */
    GUESS("◯ My guess: warm or cold?"),
    /** Pictures: what to do. */
    COLOR("✎ Draw the time. Color the thermometer."),
    /** Pictures: what to do. */
    CIRCLE_FACE("◯ Circle: warm or cold?"),
    /** A word with a picture. */
    WARM("warm"),
    /** A word with a picture. */
    COLD("cold"),
    /** A word with a picture. */
    JAR("jar"),
    /** A word with a picture. */
    THERMOMETER("thermometer"),
    /** A word with a picture. */
    ICE("ice"),
    /** Before a line, which goes on with the next words. */
    THINK("I think the warmest jar will be:"),
    /** Before a line. */
    BECAUSE("because"),
    /** Before what to check off. */
    FAIR("Fair test? Check (✓):"),
    /** To tick. */
    SAME_WATER("☐ same amount of water"),
    /** To tick. */
    SAME_START("☐ same warm start"),
    /** To tick. */
    SAME_PLACE("☐ same place"),
    /** To tick. */
    SAME_TIMES("☐ same times to read"),
    /** To tick. */
    LID("☐ lid on every jar"),
    /** Above the table. */
    WRITE("Write down each reading."),
    /** Above the squared paper. */
    CROSSES("Make a cross (✕) for each reading. Join the crosses."),
    /** Above a line. */
    SAY_NOW("What do you say now? How do you know?"),
    /** Above a line, the last of the lesson. */
    EXIT("Before you go: where did the warmth of the water go?"),
    /** What a drawing is. */
    JAR_TITLE("A jar to draw on"),
    /** What it shows. */
    JAR_ALT("The outline of a jar with a lid and water in it. A child draws the wrap around it."),
    /** What a drawing is. */
    GUESS_TITLE("Two jars to choose from"),
    /** What it shows. */
    GUESS_ALT("Two jars: above the warm one are three waves, above the cold one is a snowflake. A child circles one."),
    /** What a drawing is. */
    CLOCKS_TITLE("Three clock faces"),
    /** What it shows. */
    CLOCKS_ALT("Three clock faces without hands, for the times of the first, the middle and the last reading."),
    /** What a drawing is. */
    THERMOMETERS_TITLE("Three thermometers"),
    /** What it shows. */
    THERMOMETERS_ALT(
            "Three empty thermometers with marks, to color in up to where the thermometer of the group stands."),
    /** What a drawing is. */
    FACES_TITLE("Warm and cold faces"),
    /** What it shows. */
    FACES_ALT("Below each thermometer a smiling, warm face and a shivering, cold face. A child circles one."),
    /** What a drawing is. */
    WORDS_TITLE("Pictures for five words"),
    /** What it shows. */
    WORDS_ALT("Waves for warm, a snowflake for cold, a jar, a thermometer, and two cubes of ice.");

    private final String english;

    PupilWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
