package org.snugsheet.office.functions.plan;

import org.snugsheet.engine.Phrase;

/** Heads and words of the table of PLAN.MIX. */
enum MixWords implements Phrase {
    WATER("water"),
    MILLILITRES("milliliters"),
    HOT("hot"),
    COLD("cold"),
    CAUTION("caution");

    private final String english;

    MixWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
