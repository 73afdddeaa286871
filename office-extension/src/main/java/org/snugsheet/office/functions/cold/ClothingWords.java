package org.snugsheet.office.functions.cold;

import org.snugsheet.engine.Phrase;

/** Heads of the tables of garments and coverings. */
enum ClothingWords implements Phrase {
    GARMENT("garment"),
    COVERING("covering");

    private final String english;

    ClothingWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
