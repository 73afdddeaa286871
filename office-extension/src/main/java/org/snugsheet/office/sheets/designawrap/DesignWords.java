package org.snugsheet.office.sheets.designawrap;

import org.snugsheet.engine.Phrase;

/** What stands on the first page of the sheet that designs a wrap; patterns of a MessageFormat where a cell fills them in. */
enum DesignWords implements Phrase {
    /** Tab. */
    PAGE("Design"),
    /** Title. */
    TITLE("Design a wrap"),
    /** What it is for. */
    PURPOSE(
            "Choose layers from the lists: see what each adds, how the jar should cool, and whether the class’s own readings agree."),
    /** What can hurt. */
    CAUTION(
            "warm tap water of about 40 °C (104 °F) is enough, never hot or boiling water. Glass can crack when it goes from warm to icy: carry jars with both hands, and never use a cracked one. Ice and wet floors are slippery, and bare hands get cold in snow and ice. The safety rules of your school come first."),
    /** Section. */
    JAR("1  The jar, and where it stands"),
    /** Label. */
    SCALE("Scale, C or F"),
    /** Beside the box. */
    SCALE_BESIDE("for all temperatures here; type them again if you change it"),
    /** Beside the box for the water. */
    TEACUP("as much as a teacup holds"),
    /** The same where people pour by cups. */
    CUPS("that is {0} fl oz, or {1} cups"),
    /** Label. */
    WATER("Water, milliliters"),
    /** Label. */
    RADIUS("Inside radius, mm"),
    /** Beside the box. */
    RADIUS_BESIDE("half of the way across the inside of the jar"),
    /** Label. */
    GLASS("Empty glass jar, grams"),
    /** Beside the box. */
    GLASS_BESIDE("glass keeps heat too; 0 for a jar that weighs next to nothing"),
    /** Label. */
    START("Water at the start, {0}"),
    /** Beside the box. */
    TOO_HOT("too hot for pupils: never above 43 °C (109 °F)"),
    /** Beside the box. */
    TAP_WATER("warm tap water"),
    /** Label. */
    SURROUNDINGS("Surroundings, {0}"),
    /** Beside the box. */
    SURROUNDINGS_BESIDE("the air over the snow, or the tub of water"),
    /** Label. */
    PLACE("Where it stands"),
    /** Beside the box; the words are those that the functions know. */
    PLACE_BESIDE("contact is packed in snow; for wind, type its speed"),
    /** Label. */
    LESSON("Lesson, minutes"),
    /** Beside the box. */
    HALFWAY("half-way, the wrapped water should be at {0}"),
    /** In its place. */
    SEE_MESSAGE("see the message under the layers"),
    /** Label. */
    MARK("Smallest mark, {0}"),
    /** Beside the box. */
    MARK_BESIDE("from one line of the thermometer to the next"),
    /** Section. */
    WRAP("2  The wrap: the way out through the side, and lid and base"),
    /** Head. */
    FROM_INSIDE("from inside to outside"),
    /** Head, and title of a hint. */
    MATERIAL("material"),
    /** Head. */
    THICKNESS("thickness, mm"),
    /** Head. */
    USUAL("usual layer, mm"),
    /** Head. */
    R_VALUE("R-value, m²·K/W"),
    /** Head. */
    INSIDE("inside, {0}"),
    /** Head. */
    OUTSIDE("outside, {0}"),
    /** Head. */
    SHARE("share of R"),
    /** Label. */
    FILM_WATER("film of water on the inside"),
    /** Label. */
    WALL_LAYER("layer 1: the jar’s own wall"),
    /** Label. */
    LAYER("layer {0}"),
    /** Label. */
    FILM_OUTSIDE("film on the outside"),
    /** Label. */
    SIDE("side, all together"),
    /** Label. */
    LID("over the lid"),
    /** Label. */
    BASE("under the base"),
    /** Beside them. */
    LEFT_BARE("blank: left bare"),
    /** Before what is wrong with it. */
    LID_SAYS("Lid: {0}"),
    /** Before what is wrong with it. */
    BASE_SAYS("Base: {0}"),
    /** Below the layers. */
    JAR_UNUSABLE(
            "The layers can be used, but not the jar or its place above. Water and surroundings must differ, and volume and radius be above zero."),
    /** Below the layers. */
    LAYERS_OK("OK: these layers can be used. A layer that is left blank is left out."),
    /** Section. */
    READ("3  What the class read, {0}"),
    /** Beside the readings. */
    BARE_BESIDE("The bare jar has the same lid and base, but no wrap round its side."),
    /** Head. */
    MINUTES("minutes"),
    /** Head, and a name in charts. */
    BARE("bare jar"),
    /** Head, and a name in charts. */
    WRAPPED("wrapped jar"),
    /** Label. */
    CAN_BE_USED("Can these be used?"),
    /** Before what is found in it. */
    BARE_SAYS("Bare jar: {0}"),
    /** Before what is found in it. */
    WRAPPED_SAYS("Wrapped jar: {0}"),
    /** Nothing is typed. */
    NOTHING_READ("Nothing is read yet. A jar nobody reads stays blank."),
    /** All is well. */
    ALL_USED("All readings can be used. A missed one stays blank."),
    /** Section. */
    RESULTS("4  What is expected, and what the readings show"),
    /** Head. */
    BARE_EXPECTED("bare jar, expected"),
    /** Head. */
    BARE_MEASURED("bare jar, measured"),
    /** Head. */
    WRAPPED_EXPECTED("wrapped jar, expected"),
    /** Head. */
    WRAPPED_MEASURED("wrapped jar, measured"),
    /** Label. */
    RATE("Cooling constant, per minute"),
    /** Label. */
    STANDARD_ERROR("standard error"),
    /** Label. */
    HALF_TIME("Half-time, minutes"),
    /** Label. */
    WHOLE_R("R-value of the whole jar, m²·K/W"),
    /** Label. */
    WRAP_ADDS("What the wrap adds to it, m²·K/W"),
    /** Label. */
    WATTS("Heat lost half-way, watts"),
    /** Section. */
    AGREE("5  Do readings and layers agree? The wrapped jar"),
    /** In the place of the answer. */
    ANSWER_COMES("Type what the class read: the answer comes here."),
    /** In the place of the answer. */
    NO_ANSWER("No answer yet: fix first what the messages above say."),
    /** Title of a hint. */
    WATER_TITLE("Water"),
    /** Hint. */
    WATER_HINT("Milliliters of water in the jar."),
    /** Title of a hint. */
    RADIUS_TITLE("Inside radius"),
    /** Hint. */
    RADIUS_HINT("Millimeters from the middle of the jar to its inside."),
    /** Title of a hint. */
    GLASS_TITLE("Empty glass jar"),
    /** Hint. */
    GLASS_HINT("Grams, as the kitchen scales say."),
    /** Title of a hint. */
    START_TITLE("Water at the start"),
    /** Hint. */
    START_HINT("How warm the water is when the clock starts."),
    /** Title of a hint. */
    SURROUNDINGS_TITLE("Surroundings"),
    /** Hint. */
    SURROUNDINGS_HINT("How warm it is around the jar."),
    /** Hint. */
    PLACE_HINT("Choose from the list, or type for example wind 15 km/h."),
    /** Hint. */
    PLACE_HINT_MPH("Choose from the list, or type for example wind 8 mph."),
    /** Title of a hint. */
    LESSON_TITLE("Lesson"),
    /** Hint. */
    LESSON_HINT("Minutes from the first reading to the last."),
    /** Hint. */
    MATERIAL_HINT(
            "Choose from the list, or type a conductivity in W/(m·K). Blank: no layer here. Glass or rock wool: only sealed in, by an adult."),
    /** Title of a hint. */
    THICKNESS_TITLE("Thickness"),
    /** Hint. */
    THICKNESS_HINT("Millimeters, as thick as it is on the jar. The usual one is beside it."),
    /** Hint. */
    COVER_HINT("Choose from the list. Blank: a thin lid or base, left bare."),
    /** Hint. */
    COVER_THICKNESS_HINT("Millimeters. The usual thickness of one layer is beside it."),
    /** In the properties of the document. */
    SUBJECT("R-values and cooling curves expected from layers, and measured by thermometer"),
    /** In the properties of the document. */
    DESCRIPTION(
            "A worked sheet of Snugsheet with invented readings: choose the layers round a jar of warm water, see what each adds to the R-value and what cooling curve to expect, and hold the class’s readings against it."),
    /** In the properties of the document. */
    KEYWORD("insulation");

    private final String english;

    DesignWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
