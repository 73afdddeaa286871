package org.snugsheet.office.functions.plan;

import org.snugsheet.engine.Phrase;

/** The words of PLAN.LESSON; sentences with values are patterns of a MessageFormat. */
enum LessonWords implements Phrase {
    WHAT("what"),
    VALUE("value"),
    UNIT("unit"),
    IN_WORDS("in words"),
    HOT_WATER("hot water for one jar"),
    HOT_WATER_WHY("Hot water times its fall in temperature is cold water times its rise. An adult mixes and pours."),
    COLD_WATER("cold water for one jar"),
    COLD_WATER_WHY("Stir, read, and correct with a little of either: the jug takes some of the heat."),
    TUB_AT_THE_END("tub at the end, without ice"),
    TUB_WHY("The jars’ heat and the room’s warm it. Read the tub too, or hold it with ice."),
    ICE("ice that melts if it is held at freezing"),
    ICE_WHY(
            "{0,number,0} g for the tub itself, {1,number,0} g for the jars, {2,number,0} g for the room. Take half as much again, and stir."),
    FORECAST("forecasts are for a tub that ends at"),
    FOR_A_TUB_THAT_WARMS(
            "All times, readings and differences below are for the tub without ice, as it warms. Held by ice it stays at freezing: give that as its temperature."),
    FOR_A_TUB_WITH_ICE("All times, readings and differences below are for a tub that ice holds at freezing."),
    START("start"),
    SHOWS_AFTER("the difference shows after"),
    SHOWS("From then on the two jars differ by a mark or more."),
    SHOWS_TOO_LATE(
            "That is after the lesson. Start warmer, but never above 43 °C (109 °F), read for longer, or wrap thicker."),
    FARTHEST_AFTER("farthest apart after"),
    FARTHEST_WHY("Then they differ by {0,number,0.0} {1}."),
    CAN_BE_READ_FOR("the bare jar can be read for"),
    CAN_BE_READ_WHY("After that it is within a mark of its surroundings."),
    READ_EVERY("read every"),
    READ_EVERY_WHY("{0} readings: the bare jar’s cooling constant is then known to {1,number,0.0 %}."),
    JARS_OF_EACH("jars of each wrap"),
    JARS_WHY("So many tell bare from wrapped in four lessons of five, if jars of one wrap differ by a tenth."),
    MINUTE("minute"),
    BARE_JAR("bare jar"),
    WRAPPED_JAR("wrapped jar"),
    DIFFERENCE("difference"),
    CAUTION("caution");

    private final String english;

    LessonWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
