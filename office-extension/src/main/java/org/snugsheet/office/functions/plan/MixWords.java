package org.snugsheet.office.functions.plan;

import org.snugsheet.engine.Phrase;

/** Heads and words of the table of PLAN.MIX. */
public enum MixWords implements Phrase {
    /** Head of the column that says which water. */
    WATER("water"),
    /** Head of the column of volumes. */
    MILLILITRES("milliliters"),
    /** From the hot tap. */
    HOT("hot"),
    /** From the cold tap. */
    COLD("cold"),
    /** In front of a caution. */
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
