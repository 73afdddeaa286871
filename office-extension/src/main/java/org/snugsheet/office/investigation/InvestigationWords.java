package org.snugsheet.office.investigation;

import org.snugsheet.engine.Phrase;

/** The words on the sheet of an investigation and in the window that asks for it; patterns of a MessageFormat. */
public enum InvestigationWords implements Phrase {
    /** The title of the window. */
    ASK("Lay out an investigation"),
    /** Field. */
    JARS("~Jars"),
    /** Field. */
    MATERIALS("~Wraps, one per line"),
    /** Field. */
    MINUTES("Mi~nutes of reading"),
    /** Field. */
    INTERVAL("Minutes ~between readings"),
    /** Field. */
    SCALE("~Scale of the thermometers"),
    /** Field. */
    MARK("Smallest ~mark, degrees"),
    /** Field. */
    SURROUNDINGS("S~urroundings, degrees"),
    /** Below the fields. */
    HELP(
            "With more jars than wraps there are several jars of each; with fewer, the first wraps are used. Leave the surroundings empty to type them on the day, or type “fit” if nobody will read them."),
    /** First wraps. */
    SOME_MATERIALS("no wrap\nwool sock\nnewspaper\nfleece\ndry leaves"),
    /** Refusal. */
    HOW_MANY_JARS("Plan {0} to {1} jars."),
    /** Refusal. */
    NO_MATERIALS("Name one wrap at least, such as “wool sock”."),
    /** Refusal. */
    HOW_MANY_MINUTES("Plan {0} to {1} minutes."),
    /** Refusal. */
    HOW_OFTEN("In {0} minutes, read {1} to {2} times. Type the whole minutes from one reading to the next."),
    /** Said at the end. */
    LAID_OUT_BUT(
            "The investigation is laid out on the sheet “{0}” for {1} jars, with the first {1} of your {2} wraps. Type into the boxed cells."),
    /** Said at the end. */
    LAID_OUT("The investigation is laid out on the sheet “{0}”. Type into the boxed cells."),
    /** The name of the tab. */
    PAGE("Investigation"),
    /** The title on the page. */
    TITLE("Which wrap keeps water warm the longest?"),
    /** What it is for. */
    PURPOSE(
            "Type what the thermometers read into the boxed cells. The checks speak at once; results and curves follow by themselves."),
    /** Section. */
    CAUTIONS("Keep hands safe"),
    /** The school limit. */
    START_LIMIT("Start no warmer than {0} °C ({1} °F)."),
    /** Section. */
    READINGS("What the thermometers read"),
    /** Head of the times. */
    MINUTES_HEAD("minutes"),
    /** Beside the cell. */
    SURROUNDINGS_LABEL("Surroundings, {0}: what the jars stand in; “fit” if nobody reads it"),
    /** Beside the cell, once readings are there. */
    SURROUNDINGS_ASKED("Type here what the jars stand in, or “fit” if nobody reads it. Nothing is worked out before."),
    /** Beside the cell. */
    MARK_LABEL("Smallest mark, {0}: from one line of the thermometer to the next"),
    /** Beside the name of a jar. */
    JAR_LABEL("Jar {0}"),
    /** Label. */
    START_LABEL("Warmest water"),
    /** Below the boxes. */
    READING_HINT("Missed a reading? Leave its box blank."),
    /** Below the boxes. */
    NAME_HINT("Type over the names above. Jars with the same name count as jars of the same wrap."),
    /** Asked when a number is typed over a name. */
    NUMBER_FOR_NAME("Is this number the name of a wrap? Readings go into the boxes further down."),
    /** Section. */
    RESULTS("What the curves say. Fix what the checks find first"),
    /** In the place of a long sentence. */
    SEE_CHECKS("see above"),
    /** Section. */
    RANKING("Which wrap is best, the best first"),
    /** Head of a column. */
    REMARK_HEAD("not told apart from, or why it is left out"),
    /** Below that heading: why a wrap with one jar must be better by more than its readings err. */
    WHY_SPREAD("Jars wrapped alike differ by about {0,number,percent}: that is counted in where a wrap has one jar."),
    /** As long as there is no ranking. */
    NO_RANKING("The order appears here once the jars have their readings.");

    private final String english;

    InvestigationWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
