package org.snugsheet.engine.jar;

/** The usual reasons in a classroom why readings show a different resistance from the one expected. */
public enum Reason {
    /** The wrap is wet: at worst, water has replaced all the air in it. */
    SOAKED_WRAP,
    /** The wrap is squashed: at worst, to half its thickness, with half its resistance. */
    SQUASHED_WRAP,
    /** The lid’s cover has slipped: at worst, the lid is bare. */
    GAP_AT_THE_LID,
    /** The surroundings were colder than typed. */
    COLDER_SURROUNDINGS,
    /** The surroundings were warmer than typed, such as a bath that warms. */
    WARMER_SURROUNDINGS,
    /** Air is trapped between the layers: at best, a still gap; see {@link org.snugsheet.engine.insulation.AirGap}. */
    AIR_BETWEEN_LAYERS
}
