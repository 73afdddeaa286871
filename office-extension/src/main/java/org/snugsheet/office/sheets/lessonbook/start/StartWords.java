package org.snugsheet.office.sheets.lessonbook.start;

import org.snugsheet.engine.Phrase;

/** What is on the first page; patterns of a MessageFormat. */
public enum StartWords implements Phrase {
    /** Title. */
    TITLE("Which wrap keeps water warm the longest?"),
    /** What the page is for. */
    PURPOSE(
            "Start here: say how you measure, and who wraps what. All other pages follow from this one and from the page Readings."),
    /** What can hurt. */
    CAUTION(
            "an adult mixes and pours the water, no warmer than 43 °C (109 °F). Glass can crack when it goes from warm to icy: use plastic or"
                    + " sturdy jars, carry them with both hands, keep them low. Ice hurts bare hands, and wet floors are slippery: wipe at once."
                    + " Ask about allergies to a wrap. No mercury thermometers. Your school’s policy and local rules come first."),
    /** Beside the sample of a cell to type into. */
    BOXES("a boxed cell"),
    /** Beside it. */
    BOXES_TYPE(
            "is for you to type in. Everything else works itself out and is locked against slips; there is no password."),
    /** Section. */
    LESSON("1  How you measure. A blank box takes the value beside it"),
    /** Section. */
    JARS("2  Who wraps what, one line for each jar"),
    /** Label. */
    SCALE("Our thermometers show"),
    /** Label. */
    MARK("Smallest mark, degrees"),
    /** Label. */
    SHOWN("Show answers in"),
    /** Label. */
    PLACE("The jars are in"),
    /** Label. */
    SURROUNDINGS("How cold it is there"),
    /** Label. */
    START("Warm water at the start"),
    /** Label. */
    VOLUME("Water in a jar, milliliters"),
    /** Label. */
    LESSON_LASTS("Minutes of reading"),
    /** Label. */
    INTERVAL("Minutes between readings"),
    /** Label. */
    HOT_TAP("Hot tap"),
    /** Label. */
    COLD_TAP("Cold tap"),
    /** Label. */
    ROOM("Air of the room"),
    /** Label. */
    TUB_VOLUME("Water in the tub, milliliters"),
    /** Label. */
    KEPT_DRY("A bag keeps the wraps dry"),
    /** Choice. */
    TUB("a tub of cold water"),
    /** Choice. */
    ICE_TUB("a tub of water with ice"),
    /** Choice. */
    SNOW("a tray, packed in snow"),
    /** Choice. */
    COLD_AIR("cold air"),
    /** Choice. */
    YES("yes"),
    /** Choice. */
    NO("no"),
    /** Beside the surroundings. */
    ICE_IS_ZERO("water with ice in it: {0}"),
    /** Beside the surroundings. */
    TYPE_ON_THE_DAY("type it on the day; planned with {0}"),
    /** Beside the surroundings. */
    READ_OVER_TIME("read on the page Readings: {0} on average"),
    /** Beside the surroundings. */
    FROSTBITE("{0}: outdoors a risk of frostbite for children"),
    /** Beside the surroundings. */
    STAY_IN("{0}: outdoors too cold for children, stay in"),
    /** Beside a box. */
    NOT_READ("this cannot be read: type a number such as {0}"),
    /** Beside the start. */
    TOO_HOT("Too hot for pupils: no more than {0}."),
    /** Beside the hot tap. */
    ADULTS_ONLY("{0}: an adult mixes it, away from pupils"),
    /** Beside a box. */
    MEASURED("{0}, measured by an adult"),
    /** Beside the volume. */
    CUPS("{0} ml, that is {1} fl oz"),
    /** Beside the tub. */
    NO_TUB("only for a tub"),
    /** Beside the interval. */
    TOO_MANY("There is room for {0} readings: read less often, or start a new book."),
    /** Beside the interval. */
    READ_AT("{0} readings, at minutes {1}"),
    /** Head. */
    JAR_HEAD("Jar"),
    /** Head. */
    WRAP_HEAD("Wrap"),
    /** Head. */
    THICK_HEAD("Thickness, mm"),
    /** Head. */
    OWN_HEAD("Thermometer"),
    /** Head. */
    EXPECT_HEAD("What to expect"),
    /** What is expected of a jar: what it reads at the end. */
    ENDS_AT("about {0} after {1} minutes"),
    /** The wrap is not known to the functions. */
    UNKNOWN("own words: only measured"),
    /** Below the jars. */
    NEXT(
            "Next: the page Plan says what to bring, the pages for pupils are ready to print, and readings go on the page Readings."),
    /** Below the jars. */
    NAME_TWO(
            "Name two wraps or more: choose from the list, or use your own words. The same wrap twice is two jars of it."),
    /** Hint. */
    SCALE_HINT("What the scale of most thermometers says. A jar may have its own, further right."),
    /** Hint. */
    MARK_HINT("Degrees from one line to the next, such as 1, 2 or 0.5."),
    /** Hint. */
    SHOWN_HINT("Turns all answers to the other scale. Nothing has to be typed again."),
    /** Hint. */
    PLACE_HINT(
            "In water a jar is in up to its neck. In cold air it is outdoors, on the windowsill or in a refrigerator."),
    /** Hint. */
    SURROUNDINGS_HINT("What a thermometer beside the jars reads. 36 °F or 2 °C is read with its own scale."),
    /** Hint. */
    START_HINT("Warm tap water is enough, never hot or boiling water."),
    /** Hint. */
    VOLUME_HINT("The same in each jar, or the test is not fair."),
    /** Hint. */
    LESSON_HINT("From the first reading to the last."),
    /** Hint. */
    INTERVAL_HINT("Whole minutes that the groups can follow on a clock."),
    /** Hint. */
    TAP_HINT("Measured by an adult. Let it run first."),
    /** Hint. */
    ROOM_HINT("The air around the tub."),
    /** Hint. */
    TUB_HINT("All the water that the jars stand in."),
    /** Hint. */
    DRY_HINT("A wet wrap keeps less warm. With a plastic bag around it the wrap stays dry."),
    /** Hint. */
    WRAP_HINT("Choose, or use your own words. Jars of the same name count together."),
    /** Hint. */
    THICK_HINT("Measured with a ruler, all layers together. Blank: what is usual for one layer."),
    /** Hint. */
    OWN_HINT("Only if it differs from the others.");

    private final String english;

    StartWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
