package org.snugsheet.office.sheets.onejar;

import org.snugsheet.engine.Phrase;

/** What stands in the sheet about one jar; patterns of a MessageFormat where a cell fills them in. */
enum OneJarWords implements Phrase {
    /** Tab. */
    PAGE("Jar"),
    /** Title. */
    TITLE("One jar, one curve"),
    /** What it is for. */
    PURPOSE(
            "What one jar’s readings tell you: how fast it cools, how sure that is, when half its extra warmth is gone, and what comes next."),
    /** What can hurt. */
    CAUTION(
            "warm tap water of about 40 °C (104 °F) is enough, never hot or boiling water. An adult pours. Glass can crack when it goes from warm to icy: carry jars with both hands. Do not hold snow or ice in bare hands for long. Your school’s safety rules come first."),
    /** Section. */
    READINGS("1  The readings"),
    /** Head. */
    MINUTES("Minutes"),
    /** Head. */
    READING("reading, {0}"),
    /** Label. */
    SCALE("Scale, C or F"),
    /** Label. */
    AROUND("Around the jar, {0}"),
    /** Label. */
    MARK("Smallest mark, {0}"),
    /** Section. */
    CURVE("2  What the curve says"),
    /** Label. */
    HALF_TIME("Half-time, minutes"),
    /** Label. */
    RATE("Cooling constant, per minute"),
    /** Label. */
    START("At minute 0, {0}"),
    /** Label. */
    SURROUNDINGS("Surroundings, {0}"),
    /** Label. */
    MISFIT("Readings off the curve by, {0}"),
    /** Beside it. */
    MISFIT_GOOD("below a mark is good"),
    /** Label. */
    HEAT("Heat given off so far, kilojoules"),
    /** Beside it. */
    HEAT_IN("in {0} minutes"),
    /** Label. */
    POWER("Heat lost at the start, watts"),
    /** Beside it. */
    POWER_IN("joules each second"),
    /** Label. */
    LAW("Law that the readings support"),
    /** Section. */
    HALVES("3  Half, and half, and half again"),
    /** Head. */
    AFTER("after"),
    /** Head. */
    AFTER_MINUTES("minutes"),
    /** Head. */
    WARMER_BY("warmer by, {0}"),
    /** Label. */
    HALVES_0("the start"),
    /** Label. */
    HALVES_1("one half-time"),
    /** Label. */
    HALVES_2("two half-times"),
    /** Label. */
    HALVES_3("three half-times"),
    /** Label. */
    HALVES_4("four half-times"),
    /** Section. */
    ASK("4  Ask the curve"),
    /** Label. */
    HOW_WARM("How warm after … minutes?"),
    /** Label. */
    WHEN("When is it down to … {0}?"),
    /** An answer. */
    IN_MINUTES("{0} minutes"),
    /** An answer. */
    NEVER("never"),
    /** Below. */
    FORECAST(
            "Beyond the last reading this is a forecast: it holds if nothing changes. “Never”: the jar does not get as cold, or is colder from the start."),
    /** Section. */
    LOOK_FOR("What to look for"),
    /** Bold. */
    FLAT("Why does the curve flatten out?"),
    /** Behind it. */
    FLAT_TEXT("The closer the jar is to its surroundings, the less heat leaves it each minute."),
    /** Bold. */
    PLUS_MINUS("What does ± mean?"),
    /** Behind it. */
    PLUS_MINUS_TEXT(
            "Do the same again, and the answer will be within ± of the true one about two times in three. It leaves out what no reading shows, such as a thermometer that reads high."),
    /** Bold. */
    NOT_READ("Nobody read the surroundings?"),
    /** Behind it; the word is one that the functions know. */
    NOT_READ_TEXT("Type fit in their box; the ± grows."),
    /** Hint. */
    AROUND_HINT("How cold it is around the jar. Nobody read it? Type fit."),
    /** Title of a hint. */
    WATER("Water"),
    /** Hint. */
    WATER_HINT("Milliliters of water in the jar."),
    /** Hint. */
    MINUTES_HINT("Minutes since the first reading."),
    /** Title of a hint. */
    TEMPERATURE("Temperature"),
    /** Hint. */
    TEMPERATURE_HINT("A temperature between the start and the surroundings."),
    /** In the properties of the document. */
    SUBJECT("Cooling constant, half-time and heat of one jar, with their uncertainties"),
    /** In the properties of the document. */
    DESCRIPTION(
            "A worked sheet of Snugsheet with invented readings: one jar in the snow, its curve, its half-times, the heat it gives off, and questions to the curve."),
    /** In the properties of the document. */
    KEYWORD("cooling curve");

    private final String english;

    OneJarWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
