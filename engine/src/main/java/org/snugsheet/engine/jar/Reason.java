package org.snugsheet.engine.jar;

/** Why readings may show another resistance than the layers should give: the usual ones in a classroom. */
public enum Reason {
    /** The wrap is wet: at worst water has taken the place of all the air in it. */
    SOAKED_WRAP,
    /** The wrap is squashed: at worst to half its thickness, which leaves half its resistance. */
    SQUASHED_WRAP,
    /** The lid’s cover has slipped: at worst the lid is bare. */
    GAP_AT_THE_LID,
    /** The surroundings were colder than typed. */
    COLDER_SURROUNDINGS,
    /** The surroundings were warmer than typed, as a bath that warms is. */
    WARMER_SURROUNDINGS,
    /** Air is trapped between the layers: at best a still gap, see {@link org.snugsheet.engine.insulation.AirGap}. */
    AIR_BETWEEN_LAYERS
}
