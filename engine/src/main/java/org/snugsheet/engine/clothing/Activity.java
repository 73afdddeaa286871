package org.snugsheet.engine.clothing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.table.Keywords;
import org.snugsheet.engine.table.Names;

/**
 * The metabolic rate of an activity per area of skin.
 *
 * @param wattsPerSquareMeter from 58 to 400 W/m², the range of ISO 11079:2007
 */
public record Activity(double wattsPerSquareMeter) {

    /** One met, the heat of a person who sits still (ASHRAE Standard 55). */
    private static final double MET = 58.2;

    private static final double LEAST = 58;
    private static final double MOST = 400;

    /** A plain number up to this is taken for met: nobody makes so few watts, or so many met. */
    private static final double MOST_MET = 10;

    private static final Pattern WITH_UNIT =
            Pattern.compile("(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(met|w/m2|w/m²|w/m\\^2)", Pattern.CASE_INSENSITIVE);

    /**
     * An activity.
     *
     * @throws InvalidInputException if it makes less heat than 58 W/m² or more than 400 W/m²
     */
    public Activity {
        if (!(wattsPerSquareMeter >= LEAST && wattsPerSquareMeter <= MOST)) {
            throw InvalidInputException.of(Problem.ACTIVITY_OUT_OF_RANGE, wattsPerSquareMeter);
        }
    }

    /**
     * Activities with a name.
     *
     * <p>Sources: ASHRAE Standard 55 and Handbook, metabolic rates for typical tasks in W/m², read at
     * https://hvac-eng.com/metabolic-rates-for-typical-tasks; playing and shoveling from the Compendium of Physical
     * Activities (2011), 3.5 and 5.3 times sitting still (from memory). All are for adults.
     */
    public enum Usual {
        /** Seated, quiet: 60. */
        SITTING(60, "sitting", "sitting still", "reading"),
        /** Standing, relaxed: 70. */
        STANDING(70, "standing", "standing still", "waiting", "watching"),
        /** Walking about: 100. */
        WALKING_ABOUT(100, "walking about", "standing and moving about", "looking after jars", "reading thermometers"),
        /** Walking at 0.9 m/s: 115. */
        WALKING_SLOWLY(115, "walking slowly", "strolling", "slow walk"),
        /** Walking at 1.2 m/s: 150. */
        WALKING(150, "walking", "walk"),
        /** Walking at 1.8 m/s: 220. */
        WALKING_FAST(220, "walking fast", "fast walk", "hiking", "brisk walk"),
        /** Playing actively: 3.5 met. */
        PLAYING(3.5 * MET, "playing in the snow", "playing", "playing outside", "building a snowman", "snowball fight"),
        /** Shovelling snow by hand: 5.3 met. */
        SHOVELLING(5.3 * MET, "shovelling snow", "shoveling snow", "shovelling", "shoveling");

        private final double wattsPerSquareMeter;

        @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
        private final List<String> names;

        Usual(double wattsPerSquareMeter, String... names) {
            this.wattsPerSquareMeter = wattsPerSquareMeter;
            this.names = List.of(names);
        }

        /**
         * Its metabolic rate.
         *
         * @return the activity
         */
        public Activity activity() {
            return new Activity(wattsPerSquareMeter);
        }

        /**
         * Its name.
         *
         * @return its name in plain English
         */
        public String english() {
            return names.get(0);
        }
    }

    private static final class Loaded {
        static final Names<Usual> NAMES = names();

        private static Names<Usual> names() {
            Map<Usual, List<String>> names = new EnumMap<>(Usual.class);
            for (Usual usual : Usual.values()) {
                names.put(usual, new ArrayList<>(usual.names));
            }
            return Names.of(names);
        }
    }

    /**
     * The activity for a number.
     *
     * @param number up to 10 in met (1 met = 58.2 W/m²), otherwise in W/m²
     * @return the activity
     * @throws InvalidInputException if it makes less heat than 58 W/m² or more than 400 W/m²
     */
    public static Activity of(double number) {
        return new Activity(Math.abs(number) <= MOST_MET ? number * MET : number);
    }

    /**
     * The activity for what somebody typed.
     *
     * @param text a name such as {@code walking}, or a number with its unit such as {@code 2.6 met} or {@code 145 W/m²}
     * @return the activity
     * @throws InvalidInputException if it is unknown, or out of range
     */
    public static Activity parse(String text) {
        Matcher matcher = WITH_UNIT.matcher(text.strip());
        if (matcher.matches()) {
            double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
            return new Activity(matcher.group(2).equalsIgnoreCase("met") ? number * MET : number);
        }
        return Loaded.NAMES
                .find(Names.words(Keywords.ACTIVITY.english(text)))
                .map(Usual::activity)
                .orElseThrow(() -> InvalidInputException.of(Problem.UNKNOWN_ACTIVITY, text.strip()));
    }
}
