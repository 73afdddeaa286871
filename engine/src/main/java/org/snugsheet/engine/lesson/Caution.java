package org.snugsheet.engine.lesson;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Temperature;

/**
 * The usual cautions of a lesson with warm water, glass and ice, each one sentence or two.
 *
 * <p>Times are those after which <em>adult</em> skin can burn badly. Sources: 48.9 °C: US Consumer Product
 * Safety Commission, document 5098; 51.7 °C, 54.4 °C and 65.6 °C: Children’s of Alabama, Prevent Scald Burn Injuries; 60 °C:
 * table of the Moritz and Henriques type; 44 °C: Moritz and Henriques, American Journal of Pathology 23 (1947), 695 (from
 * memory); school limit: Building Bulletin 87. Where published tables disagree the shortest time is given.
 */
public enum Caution implements Phrase {
    /** Below 15 °C. */
    COLD_WATER("This water is cold: hands in it ache and grow numb. Let nobody keep a hand in it."),
    /** Up to a child’s bath, 37.8 °C. */
    LUKEWARM(
            "This water is no warmer than a child’s bath, 38 °C (100 °F). Test it with your wrist first all the same."),
    /** Up to the school limit. */
    WARM(
            "This water is warmer than a child’s bath, but within the 43 °C (109 °F) that schools are advised. Test it with your wrist first."),
    /** Above the school limit, below the first scald time. */
    TOO_WARM(
            "Too hot for pupils: schools are advised no more than 43 °C (109 °F). From 44 °C (111 °F) on skin burns with time."),
    /** From 48.9 °C. */
    SCALDS_IN_MINUTES(
            "Too hot for pupils: water of 49 °C (120 °F) burns adult skin badly within 5 minutes. Hotter water, and a child’s skin, sooner."),
    /** From 51.7 °C. */
    SCALDS_IN_A_MINUTE_OR_TWO(
            "Too hot for pupils: water of 52 °C (125 °F) burns adult skin badly within 90 seconds. Hotter water, and a child’s skin, sooner."),
    /** From 54.4 °C. */
    SCALDS_IN_HALF_A_MINUTE(
            "Too hot for pupils: water of 54 °C (130 °F) burns adult skin badly within 30 seconds. Hotter water, and a child’s skin, sooner."),
    /** From 60 °C. */
    SCALDS_IN_SECONDS(
            "Too hot for pupils: water of 60 °C (140 °F) burns adult skin badly within 3 seconds. Hotter water, and a child’s skin, sooner."),
    /** From 65.6 °C. */
    SCALDS_AT_ONCE("Too hot for pupils: water of 66 °C (150 °F) burns badly within a second or two."),
    /** For mixing with water from {@link SafeStart#ADULTS_ONLY} on. */
    HOT_TAP(
            "Water of 60 °C (140 °F) and more burns skin within seconds: an adult mixes it, away from pupils, and hands out only what is mixed."),
    /** Who decides. */
    SCHOOL_RULES("Your school’s policy and local rules come first."),
    /** Who pours. */
    ADULT_POURS("An adult mixes and pours the warm water, and carries it in a jug with a lid."),
    /** What breaks. */
    GLASS(
            "Use plastic or sturdy glass without cracks. Never pour hot water into cold glass. An adult clears up broken glass."),
    /** What to read. */
    THERMOMETER("Use spirit or digital thermometers, none with mercury. They are for reading, not for stirring."),
    /** What lands on the floor. */
    WET_FLOOR("Wipe up spills at once: wet floors are slippery."),
    /** Whose wraps they are not, and what small children do with them; common practice, no source. */
    WRAPS(
            "Ask about allergies first: wool, feathers, fur, hay, latex. Keep bags and film off faces, beads and small parts out of mouths."),
    /** What is offered as a material and is none for children; common practice, no source. */
    NOT_FOR_PUPILS(
            "Glass wool, rock wool, loft insulation: sealed by an adult, or left out; old vermiculite never. No found feathers, raw fur or moldy leaves."),
    /** Where jars stand, and who cuts; common practice, no source. */
    LOW_PLACE(
            "Stand jars low: in a tray of snow on a low table, not on a high or open windowsill. Use blunt scissors, or let an adult cut."),
    /** The limits and their sources are those of {@code winter.Frostbite.ForChildren}. */
    OUTDOORS(
            "Outdoors, children cool faster than adults: from -18 °C (0 °F) of wind chill on bare skin is at risk, from -27 °C (-16 °F) on they stay in."),
    /** First aid; 20 minutes: UK National Health Service, Burns and scalds (from memory). */
    SCALD("A scald: hold it under cool running water at once, for 20 minutes, and call for help."),
    /** What sticks to skin. */
    ICE("Touch ice with gloves or a spoon, and only for moments. Nobody eats it.");

    private static final double COLD = 15;
    private static final double CHILDS_BATH = 37.8;

    private final String english;

    Caution(String english) {
        this.english = english;
    }

    @Override
    public String english() {
        return english;
    }

    /**
     * Those that belong to every lesson, and not to water of one temperature: rules, pouring, glass, thermometers,
     * floors, ice, wraps, places, cold weather and first aid.
     *
     * @return the cautions, in the order to say them
     */
    public static List<Caution> ofEveryLesson() {
        return List.of(
                SCHOOL_RULES,
                ADULT_POURS,
                GLASS,
                THERMOMETER,
                WET_FLOOR,
                ICE,
                WRAPS,
                NOT_FOR_PUPILS,
                LOW_PLACE,
                OUTDOORS,
                SCALD);
    }

    /** What is to be said of water of a temperature. */
    static Caution forWater(Temperature water) {
        double celsius = water.celsius();
        if (celsius < COLD) {
            return COLD_WATER;
        }
        if (celsius <= CHILDS_BATH) {
            return LUKEWARM;
        }
        if (water.compareTo(SafeStart.SCHOOL_LIMIT) <= 0) {
            return WARM;
        }
        // Published limits, each a little rounded down so that the temperature named counts as reached.
        if (celsius < 48.85) {
            return TOO_WARM;
        }
        if (celsius < 51.65) {
            return SCALDS_IN_MINUTES;
        }
        if (celsius < 54.35) {
            return SCALDS_IN_A_MINUTE_OR_TWO;
        }
        if (celsius < 60) {
            return SCALDS_IN_HALF_A_MINUTE;
        }
        return celsius < 65.5 ? SCALDS_IN_SECONDS : SCALDS_AT_ONCE;
    }
}
