package org.snugsheet.office.sheets.lessonbook.layout;

/**
 * The names by which formulas of the book find cells, the same in every language. Those that begin with {@code typed} are the boxes a
 * teacher fills; all others are what was understood of them or worked out, on the page behind the others.
 *
 * <p>Of the jars a name stands for a column with one cell each, in the order of the first page: {@code INDEX(words;3)} is the third jar’s.
 */
public final class Names {

    // What was understood of the lesson: always there, with the usual value where nothing was typed.
    /** Scale of the thermometers, C or F; all temperatures below are on it. */
    public static final String SCALE = "scale";
    /** Scale in which answers are shown, C or F. */
    public static final String SHOWN = "shown";
    /** The mark of the thermometers in degrees of their scale. */
    public static final String MARK = "mark";
    /** Where the jars are: 1 tub of cold water, 2 tub of ice water, 3 packed in snow, 4 cold air. */
    public static final String PLACE = "place";
    /** The same as the functions name it. */
    public static final String WHERE = "where";
    /** How cold it is there, a number: as typed or read, otherwise what is usual. For plans and forecasts. */
    public static final String COLD = "cold";
    /** What COOL.* take for surroundings: number, column or “melting ice”; empty as long as nobody typed it. */
    public static final String AROUND = "around";
    /** 1 if the surroundings are known, so that readings can be judged. */
    public static final String AROUND_KNOWN = "around_known";
    /** Warm water at the start. */
    public static final String START = "start";
    /** Milliliters of water in a jar. */
    public static final String VOLUME = "volume";
    /** Minutes from the first planned reading to the last. */
    public static final String LESSON = "lesson";
    /** Minutes from one planned reading to the next. */
    public static final String INTERVAL = "interval";
    /** Hot tap. */
    public static final String HOT_TAP = "hot_tap";
    /** Cold tap. */
    public static final String COLD_TAP = "cold_tap";
    /** Air of the room. */
    public static final String ROOM = "room";
    /** Milliliters of water in the tub. */
    public static final String TUB = "tub";
    /** 1 if the wraps are kept dry in a tub by a plastic bag. */
    public static final String KEPT_DRY = "kept_dry";
    /** 1 if the water at the start is too hot for pupils. */
    public static final String TOO_HOT = "too_hot";
    /** How much jars wrapped alike differ, as a share. */
    public static final String SPREAD = "spread";
    /** The planned times, as many as are in the lesson, then empty texts. */
    public static final String PLANNED = "planned";

    // The readings as the functions take them.
    /** Minutes of the readings, from the plan or from the clock. */
    public static final String TIMES = "times";

    // One cell a jar, below each other.
    /** 1, 2, 3 … */
    public static final String NUMBERS = "numbers";
    /** The wrap as typed; “jar 3” where there is none but readings; empty for a line that is not used. */
    public static final String WRAPS = "wraps";
    /** Millimeters of the wrap: as typed or what is usual; empty if unknown or bare. */
    public static final String THICKNESSES = "thicknesses";
    /** The cooling constant to expect of it, per minute; empty if the wrap is unknown to the functions. */
    public static final String EXPECTED = "expected";
    /** The number of the check: 0 no jar, 1 waiting for readings, 2 OK, 3 held back, 4 too few readings yet, 5 surroundings are missing. */
    public static final String STATES = "states";
    /** One or two words for the state, for a narrow column. */
    public static final String WORDS = "words";
    /** What the check found, in a sentence; empty if nothing. */
    public static final String FINDINGS = "findings";
    /** What can hurt in a jar, in a sentence; empty if nothing. */
    public static final String HURTS = "hurts";
    /** What the cold around a jar can do, in a sentence, where {@link #HURTS} speaks of its hot water; otherwise empty. */
    public static final String ALSO_COLD = "also_cold";
    /** The row of the reading in question among the times; 0 if none. */
    public static final String FOUND_ROWS = "found_rows";
    /** The cooling constant, per minute; empty unless the jar is OK. */
    public static final String RATES = "rates";
    /** Its standard error. */
    public static final String RATE_ERRORS = "rate_errors";
    /** The half-time in minutes. */
    public static final String HALF_TIMES = "half_times";
    /** The standard error of the half-time. */
    public static final String HALF_ERRORS = "half_errors";
    /** The first minus the last reading as they are read, on the shown scale: what children subtract; empty without two. */
    public static final String SUBTRACTED = "subtracted";

    // The ranking, one line for each wrap, the best first; empty below.
    /** Place; equal for those that share it. Empty text where there is none. */
    public static final String PLACES = "places";
    /** Wrap. */
    public static final String RANKED = "ranked";
    /** Number of jars of it that count. */
    public static final String JARS_OF = "jars_of";
    /** Half-time, minutes. */
    public static final String RANKED_HALF = "ranked_half";
    /** The least half-time, 95 % limits. */
    public static final String HALF_FROM = "half_from";
    /** The longest; empty if there is no limit. */
    public static final String HALF_TO = "half_to";
    /** How many times as long as the last one it takes to cool. */
    public static final String TIMES_AS_LONG = "times_as_long";
    /** The others with which it shares, too close to call. */
    public static final String SHARED_WITH = "shared_with";
    /** Degrees, shown scale, that a jar loses in the lesson from the start of all. */
    public static final String LOST = "lost";
    /** The least of it, 95 % limits. */
    public static final String LOST_FROM = "lost_from";
    /** The most of it. */
    public static final String LOST_TO = "lost_to";

    // What the answers and the wall say.
    /** “3 wool”, one cell a jar; empty for a line that is not used. */
    public static final String JAR_LABELS = "jar_labels";
    /** The wraps on the first place, with commas between them. */
    public static final String FIRST_NAMES = "first_names";
    /** The jars that are held back, with commas between them. */
    public static final String HELD_NAMES = "held_names";
    /** The jars of which there are no readings or too few, with commas between them. */
    public static final String WAITING_NAMES = "waiting_names";
    /** How many wraps have a place. */
    public static final String RANKED_COUNT = "ranked_count";
    /** How many have the first. */
    public static final String FIRST_COUNT = "first_count";
    /** The degrees of one box of the bars to color; empty without bars. */
    public static final String BOX_DEGREES = "box_degrees";

    private Names() {}
}
