package org.snugsheet.engine.winter;

import java.util.OptionalInt;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;

/**
 * How soon bare skin can freeze, by the bands that Environment Canada publishes with the wind chill index of 2001 (its table
 * of wind chill hazards, as restated at https://almanac.com/content/windchill-chart-canada).
 *
 * <p>The bands are made for adults: children cool faster. They are cautions and no promise that all is well.
 *
 * @param windChill the index in degrees Celsius, rounded to a whole number as it is published
 * @param band the band it falls into
 * @param strongWind whether the wind is over 50 km/h
 */
public record Frostbite(int windChill, Band band, boolean strongWind) {

    /** Over this the table says “faster”. */
    private static final double STRONG_KILOMETRES_PER_HOUR = 50;

    /** A band of the table. */
    public enum Band {
        /** −9 and milder: low risk of frostbite. */
        MILD(-9),
        /** −10 to −27: low risk of frostbite, but cold through and through if outside for long. */
        LOW(-27),
        /** −28 to −39: exposed skin can freeze in 10 to 30 minutes. */
        HALF_AN_HOUR(-39, 10, 30),
        /** −40 to −47: in 5 to 10 minutes. */
        TEN_MINUTES(-47, 5, 10),
        /** −48 to −54: in 2 to 5 minutes. */
        FIVE_MINUTES(-54, 2, 5),
        /** −55 and colder: in less than 2 minutes. */
        TWO_MINUTES(Integer.MIN_VALUE, 0, 2);

        private final int coldest;
        private final int soonest;
        private final int latest;

        Band(int coldest) {
            this(coldest, -1, -1);
        }

        Band(int coldest, int soonest, int latest) {
            this.coldest = coldest;
            this.soonest = soonest;
            this.latest = latest;
        }

        /**
         * The fewest minutes in which exposed skin can freeze.
         *
         * @return minutes; 0 if the table only says in less than {@link #latest()}; empty if the risk is low
         */
        public OptionalInt soonest() {
            return soonest < 0 ? OptionalInt.empty() : OptionalInt.of(soonest);
        }

        /**
         * The most minutes in which exposed skin can freeze.
         *
         * @return minutes; empty if the risk is low
         */
        public OptionalInt latest() {
            return latest < 0 ? OptionalInt.empty() : OptionalInt.of(latest);
        }

        static Band of(int windChill) {
            for (Band band : values()) {
                if (windChill >= band.coldest) {
                    return band;
                }
            }
            throw new AssertionError("the last band has no end");
        }
    }

    /**
     * Whether the table says that skin freezes sooner in so strong a wind: it does for the bands of 5 to 10 and of 2 to 5
     * minutes only.
     *
     * @return whether to say so
     */
    public boolean fasterInThisWind() {
        return strongWind && (band == Band.TEN_MINUTES || band == Band.FIVE_MINUTES);
    }

    /**
     * The risk in this weather. In air too calm for a wind chill the cold of the air itself counts.
     *
     * @param air temperature of the air
     * @param wind speed of the wind, 10 m above the ground
     * @return the risk
     */
    public static Frostbite of(Temperature air, Speed wind) {
        double kilometresPerHour = wind.in(Unit.KILOMETRE_PER_HOUR);
        // Warmer than the index reaches, wind makes no difference that matters here.
        double index = air.celsius() > 10 ? air.celsius() : WindChill.inAnyWind(air.celsius(), kilometresPerHour);
        int rounded = (int) Math.round(index);
        return new Frostbite(rounded, Band.of(rounded), kilometresPerHour > STRONG_KILOMETRES_PER_HOUR);
    }
}
