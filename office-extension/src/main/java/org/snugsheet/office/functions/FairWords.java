package org.snugsheet.office.functions;

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
    LID_MATTERS("It matters. Give both jars the same lid.");

    private final String english;

    FairWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
