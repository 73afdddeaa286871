package org.snugsheet.office.sheets.lessonbook.answers;

import org.snugsheet.engine.Phrase;

/** What is on the page with the answers; patterns of a MessageFormat. */
enum AnswerWords implements Phrase {
    /** Title. */
    TITLE("Which wrap keeps water warm the longest?"),
    /** While the readings are invented, on the wall, too. */
    INVENTED("(invented)"),
    /** Below the title. */
    PURPOSE("Nothing to type here but two jars to compare, on the second sheet: all follows from {0} and {1}."),
    /** The answer: the wrap, how many times as long, the last wrap. */
    WINNER("In first place: {0}. That jar takes about {1} times as long to cool as the one in last place ({2})."),
    /** The same where it hardly cooled at all. */
    WINNER_BY_FAR("In first place: {0}. That jar hardly cooled at all; the one in last place is {1}."),
    /** The same, with one that is measured too badly to be separated. */
    WINNER_BUT("In first place: {0}, but too close to call with: {1}."),
    /** The answer: wraps that share the place. */
    TIE("Too close to call. These share first place: {0}."),
    /** Goes on: from, to, the last wrap. */
    TIE_TIMES("They take about {0} to {1} times as long to cool as the jar in last place ({2})."),
    /** Goes on, where both numbers would be the same. */
    TIE_TIMES_SAME("They take about {0} times as long to cool as the jar in last place ({1})."),
    /** No answer yet. */
    NO_JARS("No answer yet: name the wraps on the page {0}."),
    /** No answer yet. */
    NO_READINGS("No answer yet: type what the thermometers read on the page {0}."),
    /** No answer yet. */
    NO_COLD("No answer yet: how cold is it around the jars? Type it on the page {0}."),
    /** No answer yet. */
    NONE_USABLE("No answer yet: no jar can be used so far. A comparison needs two."),
    /** No answer yet, with the jar that is ready. */
    ONE_USABLE("No answer yet: only one jar can be used so far ({0}). A comparison needs two."),
    /** No answer yet. */
    ONE_WRAP("No answer yet: the jars that can be used are all wrapped alike. A comparison needs two wraps."),
    /** Which jars are held back. */
    HELD("Held back until somebody has looked at it: {0}."),
    /** Which are still empty. */
    STILL_WAITING("Still waiting for readings: {0}."),
    /** Heading of the table. */
    ORDER("The order"),
    /** Head. */
    PLACE("place"),
    /** Head. */
    WRAP("wrap"),
    /** Head. */
    JARS("jars"),
    /** Head. */
    HALF("loses half its extra warmth every … minutes"),
    /** Head: minutes and unit. */
    LOST("°{1} lost in {0} minutes, all starting at {2}"),
    /** Head. */
    SHARED("too close to call with"),
    /** A number with its limits. */
    RANGE("{0} ({1} to {2})"),
    /** A number with a lower limit only. */
    RANGE_OPEN("{0} ({1} or more)"),
    /** Heading above the chart, with the unit. */
    CURVES("Readings and curves, temperatures in °{0}"),
    /** Title of the chart. */
    CHART("How the jars cooled"),
    /** Axis. */
    MINUTES_AXIS("minutes"),
    /** Axis. */
    TEMPERATURE_AXIS("temperature"),
    /** What the chart shows. */
    CHART_WORDS(
            "The readings of each jar over the minutes, a curve through them, and thin lines above and below where that curve may lie. Jars that are held back are not drawn."),
    /** Beside the chart. */
    CHART_KEY("Thick line: the curve. Thin lines: where it may lie (95 %)."),
    /** Heading. */
    ONE_BY_ONE("The jars one by one"),
    /** Head. */
    JAR("jar"),
    /** Head: the unit. */
    SUBTRACTED("first minus last, °{0}"),
    /** Head. */
    HALF_OF_JAR("loses half its extra warmth every"),
    /** Minutes in a cell. */
    MINUTES("{0} minutes"),
    /** Head: the unit. */
    BAR("bar on the wall, °{0}"),
    /** Head. */
    FOUND("check"),
    /** Heading. */
    HOW_SURE("How sure are we?"),
    /** What a range means. */
    SURE_RANGE(
            "“120 (100 to 150)” means: about 120, and most likely between 100 and 150. In 19 of 20 lessons, such a range holds the true number."),
    /** What the range contains: the share. */
    SURE_SPREAD(
            "Jars wrapped alike still differ by about a tenth ({0} %). For a wrap with one jar this is counted in; where a wrap has two jars or more, their own difference is."),
    /** What the range does not contain. */
    SURE_NOT(
            "Not counted in is what was wrong all the time: a thermometer that reads too high or too low, a first reading taken late, a cold place that gets warmer."),
    /** That it is a result. */
    SURE_CLOSE(
            "“Too close to call” is a result: these readings cannot tell the wraps apart. Three or more jars of each wrap show smaller differences."),
    /** Why numbers differ: start, minutes. */
    SURE_OWN(
            "“First minus last” is what the children subtract. For the bars, every jar starts at {0} and cools for {1} minutes. So the two differ where a jar started warmer or cooler, and because people read whole marks."),
    /** Heading. */
    COMPARE("Compare two jars"),
    /** Label. */
    FIRST_JAR("the first jar"),
    /** Label. */
    SECOND_JAR("the second jar"),
    /** Beside the cursor. */
    COMPARE_HINT("Choose a jar from the list."),
    /** Where nothing is chosen. */
    CHOOSE("Choose two jars from the lists."),
    /** Where one cannot be used. */
    CANNOT("At least one of the two cannot be used yet: see its line above."),
    /** Where one is chosen twice. */
    SAME("Choose two different jars.");

    private final String english;

    AnswerWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
