package org.snugsheet.office.sheets.firstfiveminutes;

import org.snugsheet.engine.Phrase;

/** What stands in the first five minutes; patterns of a MessageFormat where a cell fills them in. */
enum FirstWords implements Phrase {
    /** Tab. */
    PAGE("Start"),
    /** Title. */
    TITLE("Your first five minutes"),
    /** What it is for. */
    PURPOSE(
            "Type what one thermometer read in one jar of warm water, and see how fast it cooled, and how sure you can be."),
    /** What can hurt. */
    CAUTION(
            "warm tap water of about 40 °C (104 °F) is enough, never hot or boiling water. An adult pours. Glass can crack when it goes from warm to icy: carry jars with both hands. Wipe up water at once. Your school’s safety rules come first."),
    /** Section. */
    STEP_READ("1  Type what your thermometer read"),
    /** Head. */
    MINUTES("Minutes"),
    /** Head. */
    THERMOMETER("Thermometer, {0}"),
    /** Beside the first box. */
    HINT_FIRST("← the first reading, when the clock starts"),
    /** Beside the second box. */
    HINT_NEXT("← five minutes later, and so on"),
    /** Beside the boxes. */
    HINT_MISSED("Missed one? Leave its box blank."),
    /** Beside the boxes. */
    HINT_OTHER("Other minutes? Type over them too."),
    /** Beside the boxes. */
    HINT_FIVE("Five readings or more tell a curve well."),
    /** Beside the boxes. */
    HINT_MORE("More readings go into the blank boxes;"),
    /** Beside the boxes. */
    HINT_FEWER("with fewer, clear the boxes left over."),
    /** Section. */
    STEP_HOW("2  Say how it was measured"),
    /** Label. */
    SCALE("Scale of all temperatures, C or F"),
    /** Label. */
    BESIDE("Measured beside the jar, {0}"),
    /** Label. */
    MARK("From one line to the next, {0}"),
    /** Section. */
    STEP_ANSWER("3  Read the answer"),
    /** The answer. */
    HALF("The jar loses half its extra warmth every {0} minutes."),
    /** In the place of the answer. */
    HARDLY("This jar does not cool enough to tell how fast."),
    /** In the place of the answer. */
    COMES("The answer comes here."),
    /** Below the answer. */
    SURE(
            "You can be 95 % sure that it is between {0} and {1} minutes. More readings, or a longer lesson, narrow this down."),
    /** Label. */
    HALF_TIME("Half-time, minutes"),
    /** Label. */
    RATE("Cooling constant, per minute"),
    /** Label. */
    LOST("Lost in the first 10 minutes, {0}"),
    /** Beside it. */
    BY_CURVE("by the curve"),
    /** Section. */
    NEXT("What next?"),
    /** Bold. */
    TRY("Try it out:"),
    /** Behind it. */
    TRY_TEXT(
            "change one reading by a few degrees, and watch the curve and the ±. Swap two digits, 53 for 35: what do the words say?"),
    /** Bold. */
    WHAT("What is a half-time?"),
    /** Behind it. */
    WHAT_TEXT(
            "The jar cools toward what is around it, never below. In each half-time it loses half of its extra warmth. A good wrap makes it long."),
    /** Bold. */
    SEVERAL("Several jars?"),
    /** Behind it. */
    SEVERAL_TEXT("The lesson book in the menu Snugsheet plans the lesson and compares the jars of a whole class."),
    /** Hint. */
    AROUND_HINT("How warm the air, the water or the snow is, not the jar."),
    /** In the properties of the document. */
    SUBJECT("How fast one jar cools, from the readings of one thermometer"),
    /** In the properties of the document. */
    DESCRIPTION(
            "The sheet of Snugsheet to begin with, with invented readings: from the readings of one thermometer to an answer in three steps."),
    /** In the properties of the document. */
    KEYWORD("cooling curve");

    private final String english;

    FirstWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
