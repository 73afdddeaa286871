package org.snugsheet.engine.winter;

import java.util.OptionalInt;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;

/**
 * How soon bare skin can freeze, by the bands that Environment Canada publishes with the wind chill index of 2001 (its table
 * of wind chill hazards, as restated at https://almanac.com/content/windchill-chart-canada).
 *
 * <p>Those bands are for adults, and children cool faster. So advice for pupils follows {@link ForChildren}, and a band gives
 * only the minutes. They are cautions, not a promise of safety.
 *
 * @param windChill the index in degrees Celsius, rounded to a whole number as it is published
 * @param band the band it falls into
 * @param strongWind whether the wind is over 50 km/h
 */
public record Frostbite(int windChill, Band band, boolean strongWind) {

    /** Beyond this the index has no meaning, °C. */
    private static final int WARMEST = 10;

    private static final Speed CALM = new Speed(0);

    /** Over this the table says “faster”. */
    private static final double STRONG_KILOMETERS_PER_HOUR = 50;

    /**
     * The risk for children at school, by wind chill.
     *
     * <p>Sources: Child Care Weather Watch (Healthy Child Care Iowa, after the US National Weather Service; read at
     * https://hdfs.missouri.edu/cdl/child-care-weather-watch): 15 °F to 30 °F cold, 0 °F to 15 °F very cold, −20 °F to 0 °F
     * bitter cold with significant risk of frostbite. Canadian Paediatric Society, Winter safety (caringforkids.cps.ca, read
     * in a copy): indoors at −27 °C (−16 °F) or lower, when exposed skin begins to freeze. Each limit belongs to the colder
     * band.
     */
    public enum ForChildren {
        /** Above 10 °C (50 °F), beyond the index: no risk of frost. */
        NO_FROST,
        /** Milder than 15 °F, −9 °C. */
        COLD,
        /** From 15 °F, −9 °C, on: very cold. */
        VERY_COLD,
        /** From 0 °F, −18 °C, on: significant risk of frostbite. */
        RISK,
        /** From −27 °C, −16 °F, on: indoors. */
        INDOORS
    }

    /** A band of the table. */
    public enum Band {
        /** −9 and milder: low risk of frostbite. */
        MILD(-9),
        /** −10 to −27: low risk of frostbite, but cold through and through if outside for a long time. */
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
     * Whether the table says that skin freezes sooner in such a strong wind: it does so only for the bands of 5 to 10 and of
     * 2 to 5 minutes.
     *
     * @return true if it does
     */
    public boolean fasterInThisWind() {
        return strongWind && (band == Band.TEN_MINUTES || band == Band.FIVE_MINUTES);
    }

    /**
     * The risk for children.
     *
     * @return the band for children
     */
    public ForChildren forChildren() {
        if (windChill > WARMEST) {
            return ForChildren.NO_FROST;
        }
        if (windChill > -9) {
            return ForChildren.COLD;
        }
        if (windChill > -18) {
            return ForChildren.VERY_COLD;
        }
        return windChill > -27 ? ForChildren.RISK : ForChildren.INDOORS;
    }

    /**
     * Whether calm air endangers the bare skin of children.
     *
     * @param air its temperature
     * @return true from −18 °C, 0 °F, on: see {@link ForChildren#RISK}
     */
    public static boolean threatensChildren(Temperature air) {
        return of(air, CALM).forChildren().compareTo(ForChildren.RISK) >= 0;
    }

    /**
     * The risk in this weather. In air too calm for a wind chill the air temperature counts.
     *
     * @param air temperature of the air
     * @param wind speed of the wind, 10 m above the ground
     * @return the risk
     */
    public static Frostbite of(Temperature air, Speed wind) {
        double kilometersPerHour = wind.in(Unit.KILOMETER_PER_HOUR);
        // Above the range of the index, wind makes no difference that matters here.
        double index = air.celsius() > WARMEST ? air.celsius() : WindChill.inAnyWind(air.celsius(), kilometersPerHour);
        // The cast of a double stops at the largest number, that of a long begins again below zero.
        int rounded = (int) Math.floor(index + 0.5);
        return new Frostbite(rounded, Band.of(rounded), kilometersPerHour > STRONG_KILOMETERS_PER_HOUR);
    }
}
