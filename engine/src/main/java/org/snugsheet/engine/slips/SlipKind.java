package org.snugsheet.engine.slips;

/** The kinds of problems that can be found in what was typed for a jar. */
public enum SlipKind {
    /** A cell that cannot be read at all, or columns that do not match. */
    UNREADABLE,
    /** Clock times or parts of a day in place of minutes. */
    CLOCK_TIMES,
    /** Seconds in place of minutes. */
    SECONDS_FOR_MINUTES,
    /** The whole column was typed on a different scale from the surroundings. */
    COLUMN_ON_OTHER_SCALE,
    /** Everything was typed on the other scale, the surroundings as well. */
    ALL_ON_OTHER_SCALE,
    /** The surroundings were typed on the other scale. */
    SURROUNDINGS_ON_OTHER_SCALE,
    /** The readings do not change: the thermometer is out of the water. */
    CONSTANT,
    /** One reading was typed on the other scale. */
    READING_ON_OTHER_SCALE,
    /** Two digits of a reading were swapped. */
    DIGITS_SWAPPED,
    /** The decimal point of a reading was lost or misplaced. */
    COMMA_LOST,
    /** A minus sign was added to a reading or left out. */
    SIGN_WRONG,
    /** A reading is ten degrees off. */
    TENS_MISREAD,
    /** Minutes were skipped, so that this and all later times are too late. */
    MINUTES_SKIPPED,
    /** Minutes were repeated, so that this and all later times are too early. */
    MINUTES_REPEATED,
    /** One time is wrong. */
    TIME_WRONG,
    /** The thermometer had not settled in the first reading. */
    NOT_SETTLED,
    /** From here on the readings stay where they are: the thermometer is out of the water or stuck. */
    STUCK,
    /** The jar was stirred or moved: from here on the readings lie higher or lower. */
    STIRRED_OR_MOVED,
    /** A reading beyond the surroundings. */
    BEYOND_SURROUNDINGS,
    /** A reading in the wrong direction: warmer than the one before in a jar that cools. */
    GOES_BACK,
    /** A reading that lies off the curve of the others. */
    OFF_THE_CURVE,
    /** No single slip is found, and still the readings cannot be used as they are. */
    REFUSED,
    /** The water is hotter than pupils may handle. The readings can be used as they are. */
    HOT_WATER,
    /** The surroundings are so cold that bare skin freezes. The readings can be used as they are. */
    BITTER_COLD,
    /** The readings can be used as they are, but there is something to know about them. */
    CAUTION;

    /**
     * Whether a jar is held back from rankings and verdicts until somebody has looked at it.
     *
     * @return true for everything but cautions and dangers
     */
    public boolean holdsBack() {
        return !canHurt() && this != CAUTION;
    }

    /**
     * Whether it warns of something that can hurt somebody.
     *
     * @return true for hot water and bitter cold
     */
    public boolean canHurt() {
        return this == HOT_WATER || this == BITTER_COLD;
    }
}
