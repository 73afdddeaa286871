package org.snugsheet.office.functions.check;

import org.snugsheet.engine.Phrase;

/** The words of CHECK.FAIR. */
enum FairWords implements Phrase {
    WHAT("What"),
    FIRST_JAR("first jar"),
    SECOND_JAR("second jar"),
    BIAS("bias of the ratio, %"),
    WHAT_TO_DO("What to do"),
    READINGS("readings"),
    LID("lid"),
    ASK_ABOUT_LID("Numbers cannot tell. Give both jars the same lid, or both none."),
    IF_ONE_STOOD_OPEN(
            "Nobody says. If one jar stood open and the other under a thin lid, the open one would cool about {0} % faster for it. Give both jars the same lid."),
    FAIR_ENOUGH("Fair enough: less than the readings can tell."),
    START("start, degrees"),
    SURROUNDINGS("surroundings, degrees"),
    TIMES("time read, minutes"),
    VOLUME("water, ml"),
    LID_WATTS("lid, watts through it"),
    START_MATTERS("It matters. Start both jars equally warm."),
    SURROUNDINGS_MATTER("It matters. Stand both jars in the same place."),
    TIMES_MATTER("It matters. Compare the same minutes of both jars."),
    VOLUME_MATTERS("It matters. Fill both jars equally."),
    LID_MATTERS("It matters. Give both jars the same lid."),
    IF_SURROUNDINGS_WARM("if the surroundings warmed by 1 {0}: rate, %"),
    IF_THERMOMETER_HIGH("if its thermometer reads 1 {0} high: rate, %"),
    IF_FIRST_TOO_SOON("if its first reading came too soon, 1 {0} off: rate, %"),
    IF_READ_DOWN("if read down to the mark: rate, %"),
    UNSEEN_SURROUNDINGS(
            "No reading shows it, and no ± contains it. Read the surroundings each time, and give the column."),
    UNSEEN_THERMOMETER(
            "No reading shows it, and no ± contains it; the bias holds if the first jar alone has it, and is {0,number,0.0} % if both have. Hold all thermometers in one glass of water first."),
    UNSEEN_FIRST(
            "Seldom do readings show it, and no ± contains it; the bias holds if the first jar alone has it, and is {0,number,0.0} % if both have. Wait until the thermometer stays."),
    UNSEEN_DOWN(
            "No reading shows it, and no ± contains it; the bias holds if the first jar alone has it, and is {0,number,0.0} % if both have. Read to the nearest mark, at eye level.");

    private final String english;

    FairWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
