package org.snugsheet.office.sheets.readings;

import org.snugsheet.engine.Phrase;

/** What is said of readings that were typed, and on the pages behind them; patterns of a MessageFormat. */
public enum ReadWords implements Phrase {
    /** Tab. */
    AS_READ_PAGE("As read"),
    /** Title. */
    AS_READ_TITLE("As the functions read it"),
    /** What the page is for; {0} are cells. */
    AS_READ_PURPOSE(
            "Nothing to type here: what was typed on the first page, at the same cells ({0}), with clock times as minutes; below it, what the checks find."),
    /** Foot of the page. */
    BEHIND_READINGS("Behind the readings"),
    /** Label. */
    CAN_BE_USED("Can they be used?"),
    /** Head. */
    MINUTES("minutes"),
    /** In the legend of the chart: the lower limit of the curve. */
    BAND_FROM("at least"),
    /** In the legend of the chart: the upper limit of the curve. */
    BAND_TO("at most"),
    /** Section. */
    READINGS("Readings"),
    /** Head, and a name in the legend of a chart. */
    READINGS_HEAD("readings"),
    /** Section. */
    SURROUNDINGS("Surroundings"),
    /** Head, and a name in the legend of a chart. */
    SURROUNDINGS_HEAD("surroundings"),
    /** Tab. */
    CURVE_PAGE("Curve"),
    /** Title. */
    BEHIND_CHART("Behind the chart"),
    /** What the page is for. */
    CURVE_PURPOSE("Nothing to type here: the chart on the first page draws these cells."),
    /** Section. */
    CURVE_BAND("Curve and its 95 % band"),
    /** Title of the chart. */
    CHART("How the jar cools"),
    /** Across the chart. */
    MINUTES_AXIS("Time, minutes"),
    /** Up the chart. */
    TEMPERATURE_AXIS("Temperature, degrees"),
    /** For somebody who cannot see the chart; {0} is a page. */
    CHART_WORDS(
            "Temperature of one jar against time. Circles are the readings, the full line is the fitted curve. The lowest dashed line is the surroundings. The values are on the page {0}."),
    /** The same with a band. */
    CHART_WORDS_BAND(
            "Temperature of one jar against time. Circles are the readings, the full line is the fitted curve, two thin dashed lines beside it are the limits between which the curve lies with 95 % certainty. The lowest dashed line is the surroundings. The values are on the page {0}."),
    /** Where some times are those of a clock and others minutes, as while somebody types over them. */
    MIXED_TIMES("Some times are clock times, others are minutes: type all of them the same way."),
    /** Nothing is read yet. */
    TYPE("Type what your thermometer read."),
    /** The surroundings are missing. */
    TYPE_COLD("How warm is it around the jar? Type it into its box."),
    /** All is well. */
    OK("OK: these readings can be used."),
    /** Behind a caution. */
    USED_ALL_THE_SAME("These readings can be used.");

    private final String english;

    ReadWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
