package org.snugsheet.engine.cooling;

import org.snugsheet.engine.Phrase;

/** The names of the laws that a vessel may follow, one for each {@link CoolingModel}. */
public enum CoolingLaw implements Phrase {
    /** {@link ConstantSurroundings}. */
    SURROUNDINGS_GIVEN("Newton’s law, surroundings given"),
    /** {@link ChangingSurroundings}. */
    SURROUNDINGS_MEASURED("Newton’s law, surroundings measured"),
    /** {@link FittedSurroundings}. */
    SURROUNDINGS_FITTED("Newton’s law, surroundings fitted"),
    /** {@link ClosedPair}. */
    CLOSED_PAIR("jar and bath meet in the middle"),
    /** {@link FreeConvection}. */
    FREE_CONVECTION("free convection in still air"),
    /** {@link TwoStage}. */
    TWO_STAGE("two stages, jar and wrap both store heat");

    private final String english;

    CoolingLaw(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }
}
