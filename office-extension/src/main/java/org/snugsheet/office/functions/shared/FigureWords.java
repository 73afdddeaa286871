package org.snugsheet.office.functions.shared;

import org.snugsheet.engine.Phrase;

/** Heads of tables with published figures. */
public enum FigureWords implements Phrase {
    /** The words. */
    LOW("low, W/(m·K)"),
    /** The words. */
    TYPICAL("typical, W/(m·K)"),
    /** The words. */
    HIGH("high, W/(m·K)"),
    /** The words. */
    FIGURES("figures"),
    /** The words. */
    SOURCE("source");

    private final String english;

    FigureWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
