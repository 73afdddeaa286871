package org.snugsheet.office.functions.cooling;

import org.snugsheet.engine.Phrase;

/** Heads and words of the tables that COOL functions answer with. */
enum TableWords implements Phrase {
    QUANTITY("Quantity"),
    VALUE("value"),
    ERROR("error"),
    FROM_95("95 % from"),
    TO_95("95 % to"),
    UNIT("unit"),
    STANDS_OUT("Stands out: row {0}"),
    AT_MINUTE("at minute"),
    COOLING_CONSTANT("Cooling constant"),
    PER_MINUTE("per minute"),
    SURROUNDINGS("Surroundings"),
    MISFIT("Misfit"),
    READINGS_USED("Readings used"),
    LONGER_THAN("longer than"),
    HALF_TIME("Half-time"),
    MINUTES("minutes"),
    START("Start"),
    OUT_OF_REACH("out of reach"),
    HARDLY_COOLS("hardly cools"),
    TO_CHECK("To be checked"),
    WAITING("waiting for readings"),
    LAW_SUPPORTED("Law supported: {0}"),
    LAW_TRIED("Law tried: {0}"),
    AICC_BEHIND("AICc behind"),
    TOO_FEW_READINGS("too few readings"),
    NO_LIMIT("no limit"),
    FITTED("fitted"),
    PLACE("Place"),
    MATERIAL("Material"),
    MATERIAL_OR_JAR("Material, or its one jar"),
    JARS("jars"),
    CONSTANT_PER_MINUTE("constant, 1/min"),
    HALF_TIME_MINUTES("half-time, min"),
    NOT_TOLD_APART_FROM("not told apart from"),
    JAR("Jar"),
    READINGS("readings"),
    START_READ("start"),
    SCALE("scale"),
    MISFIT_READ("misfit"),
    CAN_IT_BE_USED("can it be used?");

    private final String english;

    TableWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
