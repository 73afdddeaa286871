package org.snugsheet.office.functions.wrap;

import org.snugsheet.engine.Phrase;

/** Heads and words of the tables of layers and materials. */
enum LayerWords implements Phrase {
    FROM_INSIDE("from inside to outside"),
    R_VALUE("R-value, m²·K/W"),
    INSIDE("inside"),
    OUTSIDE("outside"),
    FILM_INSIDE("film of water inside"),
    FILM_OUTSIDE("film outside"),
    LAYER("layer {0}"),
    IN_CONDITION("{0} ({1})"),
    LISTED_MATERIAL("material"),
    CONDITION("condition"),
    USUAL_LAYER("usual layer, mm");

    private final String english;

    LayerWords(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
