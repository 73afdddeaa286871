package org.snugsheet.office.sheets.lessonbook.notes;

import org.snugsheet.engine.Phrase;

/** What the notes for teachers say. */
enum NoteWords implements Phrase {
    /** Title. */
    TITLE("Notes for the teacher"),
    /** Section. */
    HEAT("What heat does"),
    /** Begins a paragraph. */
    WARM_TO_COLD("From warm to cold."),
    /** Goes on. */
    WARM_TO_COLD_TEXT(
            "Heat goes by itself from the warmer thing to the colder one until both are equally warm. Cold does not go anywhere."),
    /** Begins a paragraph. */
    FASTER("Faster at first."),
    /** Goes on. */
    FASTER_TEXT(
            "The greater the difference, the faster heat goes. So the curve starts steep and grows flat: in each half-time the jar "
                    + "loses half of the extra warmth that is left."),
    /** Begins a paragraph. */
    WAYS("In four ways."),
    /** Goes on. */
    WAYS_TEXT(
            "Through what touches (conduction), with moving air or water (convection), as radiation, and with water that "
                    + "evaporates. A lid stops much of the last. A wrap holds air still: that slows the first two."),
    /** Begins a paragraph. */
    NO_HEAT("A wrap makes no heat."),
    /** Goes on. */
    NO_HEAT_TEXT("It slows heat down, both ways: a sock keeps ice cold as well."),
    /** Section. */
    THINK("What children often think, and what may help"),
    /** Begins a paragraph. */
    SOCK("“A sock makes the jar warm.”"),
    /** Goes on. */
    SOCK_TEXT("Put a thermometer alone into a sock for ten minutes. Does it rise? Then wrap a jar of ice water."),
    /** Begins a paragraph. */
    SNOWMAN("“A coat would melt the snowman.”"),
    /** Goes on. */
    SNOWMAN_TEXT("Wrap one of two equal snowballs, and see which one lasts."),
    /** Begins a paragraph. */
    COMES_IN("“The cold comes in.”"),
    /** Goes on. */
    COMES_IN_TEXT("Ask what moves. The water or snow beside the jar grows warmer: something came out."),
    /** Begins a paragraph. */
    METAL("“Metal is colder than wool.”"),
    /** Goes on. */
    METAL_TEXT(
            "Let them feel, then read: everything in one room is as warm as the room. Metal takes the heat of a hand away faster."),
    /** Begins a paragraph. */
    LAYERS("“More layers are always better.”"),
    /** Goes on. */
    LAYERS_TEXT(
            "Often, but not when they are pressed flat or wet: then there is less still air in them. And the stuff, or the "
                    + "thickness? Compare wraps equally thick."),
    /** Begins a paragraph. */
    MORE_DEGREES("“The jar that lost more degrees has the worse wrap.”"),
    /** Goes on. */
    MORE_DEGREES_TEXT("Not if it began warmer. Start alike, or compare how long half the extra warmth takes to go."),
    /** Section. */
    QUESTIONS("Questions to ask"),
    /** Begins a paragraph. */
    BEFORE("Before:"),
    /** Goes on. */
    BEFORE_TEXT(
            "Which wrap will win, and why do you think so? What must be the same for all jars? What does a jar without a wrap tell "
                    + "us?"),
    /** Begins a paragraph. */
    WHILE("While reading:"),
    /** Goes on. */
    WHILE_TEXT(
            "Is it cooling as fast as at first? What will the next reading be? What do you do with a reading that cannot be right?"),
    /** Begins a paragraph. */
    AFTERWARDS("After:"),
    /** Goes on. */
    AFTERWARDS_TEXT(
            "How sure are we? What do the best wraps have in common? Where do you meet this at home, and which animal does it too?"),
    /** Begins a paragraph. */
    NEXT("What next?"),
    /** Goes on. */
    NEXT_TEXT(
            "Change one thing only: two layers, a wet wrap, wind from a fan, ice water on a warm day. What do you expect?"),
    /** Begins a paragraph. */
    EXIT("Before you go:"),
    /** Goes on. */
    EXIT_TEXT(
            "Your cocoa should stay warm on the way home. What would you wrap around the cup, and why? (Look for: still air, slows "
                    + "heat down, not “makes it warm”.)"),
    /** Section. */
    WORDS("Words with pictures"),
    /** Word. */
    WORD_WARM("warm"),
    /** Word. */
    WORD_COLD("cold"),
    /** Word. */
    WORD_HEAT("heat goes"),
    /** Word. */
    WORD_WRAP("wrap"),
    /** Word. */
    WORD_READ("read"),
    /** Word. */
    WORD_FAIR("fair: alike"),
    /** Of the drawing. */
    WORDS_ALT(
            "Six small drawings, each with its word: a jar with steam, a jar with a snowflake, an arrow from a full circle of rays "
                    + "to a snowflake, a jar with a wrap around it, a thermometer, two equal jars."),
    /** Section. */
    SURE("How sure are we? The range"),
    /** Begins a paragraph. */
    RANGE("One rule everywhere:"),
    /** Goes on. */
    RANGE_TEXT(
            "every ± and every range in this book is a 95 % range. If many classes did the same, about 19 of 20 ranges would hold "
                    + "the true value."),
    /** Begins a paragraph. */
    TIED("Too close to call"),
    /** Goes on. */
    TIED_TEXT(
            "is a result, too: this test was too small for this difference. It does not say that the wraps are equal."),
    /** Begins a paragraph. */
    SMALLER("What makes it smaller?"),
    /** Goes on. */
    SMALLER_TEXT(
            "Above all more jars of the same wrap; then more readings, more time, finer thermometers, a colder place. What no "
                    + "range shows: a thermometer that reads high. Hold all of them in one glass of water first."),
    /** Section. */
    FURTHER("Going further: coats, animals, winter weather"),
    /** Begins a paragraph. */
    CLOTHES("Clothes"),
    /** Goes on. */
    CLOTHES_TEXT(
            "are measured in clo (1 clo: comfortable sitting in a room of 21 °C (70 °F)), duvets in tog (10 tog are about 6.5 clo; "
                    + "both from memory). Fur and feathers hold still air as a wrap does; wind and rain take it away."),
    /** Begins a paragraph. */
    SHEETS("Our worked sheets, in the menu Snugsheet:"),
    /** Section. */
    SAFETY("Safety"),
    /** Begins a paragraph. */
    WATER("Warm water:"),
    /** Goes on. */
    WATER_TEXT("about 40 °C (104 °F) is enough, no more than 43 °C (109 °F) (UK Building Bulletin 87). No kettle."),
    /** Begins a paragraph. */
    THINGS("Glass and thermometers:"),
    /** Begins a paragraph. */
    COLD_THINGS("Ice, snow, floors:"),
    /** Begins a paragraph. */
    STUFF("Wraps:"),
    /** Begins a paragraph. */
    OUTDOORS("Outdoors:"),
    /** Section. */
    STANDARDS("Standards by code (from memory, wording shortened)"),
    /** Begins a paragraph. */
    SCIENCE("Science (NGSS, US):"),
    /** Goes on. */
    SCIENCE_TEXT(
            "K-2-ETS1-3 compare two designs by tests; 2-PS1-2 which material suits a purpose; 3-5-ETS1-1, -2, -3 a design problem, "
                    + "several solutions, fair tests; 4-PS3-2 energy moves from place to place, by heat, too."),
    /** Begins a paragraph. */
    MATHS("Mathematics (CCSS, US):"),
    /** Goes on. */
    MATHS_TEXT(
            "2.MD.D.10 draw a bar graph; 3.MD.B.3 draw a scaled bar graph and ask how many more; 5.G.A.2 graph points in the first "
                    + "quadrant."),
    /** Begins a paragraph. */
    ELSEWHERE("Elsewhere:"),
    /** Goes on. */
    ELSEWHERE_TEXT("look for fair tests, thermal insulators, reading scales and line graphs in your own curriculum.");

    private final String english;

    NoteWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
