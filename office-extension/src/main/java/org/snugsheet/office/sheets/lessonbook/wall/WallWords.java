package org.snugsheet.office.sheets.lessonbook.wall;

import org.snugsheet.engine.Phrase;

/** What hangs on the wall; patterns of a MessageFormat. */
enum WallWords implements Phrase {
    /** The sentence: the wrap. */
    WINNER("First place: {0}!"),
    /** The sentence: wraps that share the place. */
    TIE("A tie for first place: {0}. Too close to call!"),
    /** The sentence, where these are many. */
    TIE_OF_MANY("{0} wraps share first place. Too close to call!"),
    /** The sentence, while there is nothing. */
    NOT_YET("Our bars will grow here. We need the readings of two jars first."),
    /** Above the bars: minutes and unit. */
    HEAD("Degrees lost in {0} minutes, °{1} (short is good)"),
    /** Title of the bars. */
    CHART("Degrees lost"),
    /** What the bars show. */
    CHART_WORDS(
            "A bar for each wrap, as long as the degrees that its jar lost in the lesson, the shortest at the top. A thin line at its end shows how much shorter or longer it may be."),
    /** Below the bars: the start of all. */
    WHY(
            "The thin line: the bar may end anywhere on it. Your own first minus last may differ: here all jars start at {0}."),
    /** Title of the second sheet: the unit. */
    COLOR("Color the bars: degrees lost, °{0}"),
    /** A line to write on. */
    NAME("Name:"),
    /** Above the boxes: degrees of a box. */
    BOX("One box is {0}. Color as many boxes as the jar lost."),
    /** Below the boxes: the unit. */
    AXIS("degrees lost, °{0}");

    private final String english;

    WallWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
