package org.snugsheet.office.drawing;

import org.snugsheet.engine.Phrase;

/** The words on a chart and beside it; patterns of a MessageFormat. */
public enum DrawingWords implements Phrase {
    /** The name of the tab. */
    PAGE("Curves"),
    /** The title of the chart. */
    TITLE("How warm each jar stays"),
    /** The axis along the bottom. */
    MINUTES_AXIS("minutes since the start"),
    /** The axis at the side. */
    TEMPERATURE_AXIS("temperature, {0}"),
    /** For somebody who cannot see the chart. */
    IN_WORDS(
            "Temperatures of {0} jars against minutes: each reading is a point, each fitted curve a line between two thin lines that hold the true curve with 95 % certainty."),
    /** Over the checks. */
    CHECKS("What the checks say"),
    /** Over the numbers. */
    BEHIND("The numbers behind the curves follow the readings. Nothing is to be typed here."),
    /** Said for each jar once so many rows were put in that not all readings are drawn. */
    NO_ROOM("More rows were put in than this page has room for. Select the readings and draw the curves again."),
    /** Over the times. */
    MINUTES("minutes"),
    /** Said when all is drawn. */
    DRAWN("The curves are on the sheet “{0}”."),
    /** Said when some jars have no curve. */
    DRAWN_BUT("The curves are on the sheet “{0}”. No curve yet: {1}. The reasons are below the chart."),
    /** A block that is too wide. */
    TOO_MANY_JARS("These are {0} jars; more than {1} curves cannot be told apart. Select fewer columns."),
    /** A block without names. */
    NO_NAMES(
            "The first row of the selection holds no names. Select the block with its head: a name over each column, the minutes on the left."),
    /** The selection is not a block of readings. */
    NO_BLOCK("Select the readings first: the names on top, the minutes on the left."),
    /** The title of the window. */
    ASK("Draw the curves"),
    /** What the window says. */
    EXPLAIN_SURROUNDINGS(
            "Surroundings: a number, a cell such as B20, or “fit” if nobody read them. You may also select that cell together with the block."),
    /** What is typed if nobody read them. */
    FIT("fit"),
    /** Field. */
    SURROUNDINGS("S~urroundings"),
    /** Field. */
    MARK("Smallest ~mark, degrees"),
    /** Field. */
    SCALE("~Scale");

    private final String english;

    DrawingWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
