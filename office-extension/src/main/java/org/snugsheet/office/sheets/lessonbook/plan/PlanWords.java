package org.snugsheet.office.sheets.lessonbook.plan;

import org.snugsheet.engine.Phrase;

/** What the plan says; patterns of a MessageFormat. */
enum PlanWords implements Phrase {
    /** Title. */
    TITLE("Plan: what to bring, what to expect"),
    /** Below the title. */
    READY(
            "{0} jars of warm water, {1} at the start, in {2} (about {3}). Read for {4} minutes. Anything else? Change it on the "
                    + "page {5}."),
    /** Instead of it. */
    NOT_YET("Name two wraps or more on the page {0}: then this page says what to bring."),
    /** Instead of it. */
    NO_START("How warm is the water at the start? Type it on the page {0} as a number."),
    /** Instead of it. */
    NOT_WARMER("The warm water must be warmer than what is around the jars: see the page {0}."),
    /** In place of parts of a plan that cannot be made. */
    NO_PLAN("No plan yet: see the words at the top."),
    /** Section. */
    BRING("1  What to bring, for the whole class"),
    /** To bring. */
    JARS("Jars"),
    /** Beside it. */
    JARS_NOTE("all alike, with lids, {0} of water in each; one or two more in case one breaks"),
    /** To bring. */
    THERMOMETERS("Thermometers"),
    /** Beside it. */
    THERMOMETERS_NOTE("one in each jar and one beside the jars; spirit or digital, none with mercury"),
    /** To bring. */
    WRAPS("Wraps"),
    /** To bring. */
    HOT("Hot tap water, to mix"),
    /** Beside it. */
    HOT_NOTE("from a tap of {0}; an adult mixes it with the cold water and checks for {1} with a thermometer"),
    /** Beside it, if it scalds at once. */
    SCALDING_NOTE(
            "{0} burns skin within seconds: an adult mixes it, away from pupils, and hands out only what is mixed to {1}"),
    /** To bring. */
    COLD("Cold tap water, to mix"),
    /** Beside it. */
    COLD_NOTE("from a tap of {0}; keep a little of both to put the mixture right"),
    /** Beside it, if it cannot be mixed. */
    NO_MIX("taps of {0} and {1} do not mix to {2}: see the page {3}"),
    /** Beside it, if a tap cannot be read. */
    NO_TAP("how warm are the taps? Type it as a number on the page {0}"),
    /** Much water, in cups. */
    CUPS("{0} cups"),
    /** To bring. */
    TUB("Water in the tub"),
    /** Beside it. */
    TUB_NOTE("about {0} when the jars go in."),
    /** Beside it, if the cold tap is warmer. */
    TUB_COLDER("Your cold tap gives {0}: chill it with ice or snow, and take out what has not melted."),
    /** Beside it. */
    TUB_ICE_NOTE("from a tap of {0}; the ice cools it"),
    /** To bring. */
    ICE("Ice"),
    /** Beside it. */
    ICE_NOTE("half as much again as will melt is in this already; stir, and some should float to the end"),
    /** To bring. */
    SNOW("Snow"),
    /** How much. */
    SNOW_AMOUNT("plenty"),
    /** Beside it. */
    SNOW_NOTE("in low trays, so that the jars are packed in it up to their necks"),
    /** To bring. */
    BAGS("Plastic bags"),
    /** Beside it. */
    BAGS_NOTE("one around each wrapped jar keeps the wrap dry; bags stay off faces"),
    /** To bring. */
    TOWELS("Also"),
    /** How much. */
    TOWELS_AMOUNT("towels, a clock"),
    /** Beside it. */
    TOWELS_NOTE(
            "a clock everybody can see; a jug with a lid; gloves or spoons for ice and snow; printed pages, pencils"),
    /** Section. */
    WHEN("2  When to read"),
    /** When. */
    READ_AT("{0} readings of each jar, at minutes {1}. Read the thermometer beside the jars each time, too."),
    /** Section. */
    EXPECT("3  What to expect after {0} minutes"),
    /** Head. */
    END_HEAD("At the end"),
    /** Head. */
    HALF_HEAD("The jar loses half its extra warmth every"),
    /** Below it. */
    HALF("{0} minutes"),
    /** Beside a wrap. */
    UNKNOWN("your own words: measured, not forecast"),
    /** Below the wraps. */
    TUB_WARMS("The jars and the room warm the tub from {0} to about {1}; the forecast reckons with that."),
    /** Below the wraps. */
    FORECAST(
            "This is worked out for jars with lids and for wraps as they usually are. Yours will differ, and why is worth asking."),
    /** Section. */
    DIFFERENCE("4  Will the difference show?"),
    /** Instead of it. */
    TOO_FEW_KNOWN(
            "A forecast takes two wraps from the list on the page {0}. Your own words are measured like the others."),
    /** Begins a sentence. */
    WITH_ONE("With 1 jar of each,"),
    /** Begins a sentence. */
    WITH_MORE("With {0} jars of each,"),
    /** Goes on with it. */
    HARDLY_ANY("hardly any lesson shows the difference between {0} and {1}."),
    /** Goes on with it. */
    ONE_IN_TEN("one lesson in ten shows the difference between {0} and {1}."),
    /** Goes on with it. */
    SO_MANY_IN_TEN("{2} lessons in 10 show the difference between {0} and {1}."),
    /** Goes on with it. */
    NEARLY_ALL("nearly every lesson shows the difference between {0} and {1}."),
    /** Behind it. */
    TAKE("For four lessons in five, take {0} jars of each."),
    /** Behind it. */
    NOT_EVEN("Even {0} jars of each would show it in fewer than four lessons in five."),
    /** Behind it. */
    SHOWS_AFTER("After about {0} min they differ by one mark of the thermometer."),
    /** Behind it. */
    SHOWS_TOO_LATE("They differ by one mark of the thermometer only after {0} min, when reading is over."),
    /** Behind it. */
    NEVER_SHOWS("They never differ by one mark of the thermometer."),
    /** Advice. */
    WHAT_TO_DO(
            "If it will not show: more jars of each wrap (groups may wrap alike), a colder place, a longer lesson, finer "
                    + "thermometers, or a thicker wrap. Never hotter water. Each sentence above takes two wraps alone; among many it "
                    + "takes more. “Too close to call” is a result, too."),
    /** Chart. */
    CHART("What to expect"),
    /** Chart. */
    CHART_MINUTES("Time, minutes"),
    /** Chart. */
    CHART_DEGREES("Temperature, degrees"),
    /** Chart. */
    CHART_IN_WORDS(
            "The temperature expected of two jars against time: the full line with circles is the jar that cools the fastest, or "
                    + "the one without a wrap; the dashed line with squares the one that stays warm the longest. All others lie between. The "
                    + "gray line is what is around them."),
    /** Chart. */
    AROUND("around the jars"),
    /** Section. */
    TIMETABLE("5  A timetable for a lesson of {0} minutes"),
    /** Head. */
    MINUTES_HEAD("Minutes"),
    /** Head. */
    STEP_HEAD("What happens"),
    /** Head. */
    CARE_HEAD("Take care"),
    /** When. */
    BEFORE("before"),
    /** Step. */
    BEFORE_DO(
            "Choose a low, cold place. Lay out a jar, a wrap, a thermometer and the printed pages for each group; hold all "
                    + "thermometers in one glass of water: do they agree?"),
    /** Step. */
    ASK_DO("Ask: which wrap keeps water warm the longest, and why? Everybody writes or draws a guess."),
    /** Care. */
    ASK_CARE("Ask about allergies to wool, feathers, fur, hay, latex before a wrap is handed out."),
    /** Step. */
    WRAP_DO("Groups wrap their jars, still empty: all sides alike, not pressed flat, the lid free."),
    /** Care. */
    WRAP_CARE("Blunt scissors, or an adult cuts. Bags and film stay off faces, beads and small parts out of mouths."),
    /** Step. */
    POUR_DO("An adult mixes, pours into every jar and closes the lids. All jars start alike."),
    /** Care. */
    POUR_CARE(
            "Tap water can scald, from 60 °C (140 °F) on within seconds: mix away from pupils, carry it in a jug with a lid. Check "
                    + "the start with a thermometer before a pupil touches a jar: no more than 43 °C (109 °F)."),
    /** Step. */
    READ_DO(
            "All jars into the cold at once: that is minute 0. Groups read at the planned minutes and write it down; an adult or a "
                    + "pupil types it on the page {0}. Between readings: is it cooling as fast as at first? What will come next?"),
    /** Care. */
    READ_CARE(
            "Carry jars with both hands and stand them low: glass can crack when it goes from warm to icy. Ice and snow hurt bare "
                    + "hands: gloves or a spoon, and only for moments. Wet floors are slippery: wipe at once."),
    /** Step. */
    SHARE_DO("Look at the page {1} together: who won, or was it too close to call? What next?"),
    /** Care. */
    SHARE_CARE("Jars stay where they are until an adult collects them."),
    /** When. */
    AFTER("afterwards"),
    /** Step. */
    AFTER_DO("Pour the water away, hang wet wraps up to dry, wipe the floor, wash hands."),
    /** Below. */
    IN_TIME("Asking, wrapping, pouring, reading and talking take {0} minutes in all."),
    /** Below. */
    LONGER(
            "This takes {0} minutes, longer than a lesson of {1}: begin before a break, or read for no more than {2} minutes.");

    private final String english;

    PlanWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
