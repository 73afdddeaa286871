package org.snugsheet.office.sheets.shared;

import org.snugsheet.engine.Phrase;

/** What several worked sheets say alike; patterns of a MessageFormat. */
public enum SharedWords implements Phrase {
    /** What can hurt. */
    CAUTION_WORD("Caution:"),
    /** The sample of a cell to type into. */
    BOXES("a boxed cell"),
    /** Beside it. */
    BOXES_TYPE(
            "is for you to type in. Everything else works itself out and is locked against slips; there is no password."),
    /** Behind a heading, as long as its numbers are those of the example. */
    INVENTED("(invented)"),
    /** Heading of what the example typed. */
    KEPT("What the sheet began with"),
    /** Title of a hint. */
    SCALE("Scale"),
    /** Heading of a list. */
    SCALES("Scales"),
    /** Hint. */
    SCALE_HINT("C for degrees Celsius, F for degrees Fahrenheit."),
    /** Beside surroundings that are bitterly cold. */
    STAY_IN("outdoors too cold for children: stay in"),
    /** Beside surroundings that are very cold. */
    FROSTBITE("outdoors a risk of frostbite for children"),
    /** Label of a box. */
    WATER("Water, milliliters"),
    /** The same where people pour by ounces. */
    WATER_CUPS("Water, milliliters ({0} fl oz)"),
    /** Title of a hint. */
    AROUND_JAR("Around the jar"),
    /** Title of a hint. */
    MARK("Smallest mark"),
    /** Hint. */
    MARK_HINT("Degrees from one line of the thermometer to the next: 1, 2 or 0.5.");

    private final String english;

    SharedWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
