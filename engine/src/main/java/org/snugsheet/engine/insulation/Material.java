package org.snugsheet.engine.insulation;

import java.util.Locale;
import java.util.Optional;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;

/**
 * A material in one condition, with its published figures.
 *
 * <p>Published figures for loose materials such as wool or paper differ by up to a factor of two, because they depend on how
 * much air is trapped. Hence a range instead of a single number.
 *
 * @param name the name, in plain English and lower case
 * @param condition how wet it is
 * @param low the lowest conductivity of any source
 * @param typical the middle one, for use when nothing better is known
 * @param high the highest
 * @param layer how thick one layer of it usually is, where that makes sense; common practice, no source
 * @param source where the figures were published
 * @param provenance whether the source was seen
 * @param note other remarks; may be empty
 * @param soaks whether water can fill its pores; common practice, no source
 */
public record Material(
        String name,
        Condition condition,
        Conductivity low,
        Conductivity typical,
        Conductivity high,
        Optional<Length> layer,
        String source,
        Provenance provenance,
        String note,
        boolean soaks) {

    /** The value of ISO 6946:2017 for ordinary surfaces. */
    private static final double OF_NEARLY_ALL = 0.9;

    /**
     * Bright aluminum foil: 0.05, ISO 6946:2007 and ASHRAE Handbook Fundamentals, chapter 26, Table 10, give films for it.
     * Used for any bare metal.
     */
    private static final double OF_BARE_METAL = 0.05;

    /**
     * The emissivity of its surface.
     *
     * @return {@value #OF_BARE_METAL} for shiny foil, otherwise {@value #OF_NEARLY_ALL}
     */
    public double emissivity() {
        return conductivityOfMetal() ? OF_BARE_METAL : OF_NEARLY_ALL;
    }

    /**
     * One of its published conductivities.
     *
     * @param figure which
     * @return that conductivity
     */
    public Conductivity conductivity(Figure figure) {
        return switch (figure) {
            case LOW -> low;
            case TYPICAL -> typical;
            case HIGH -> high;
        };
    }

    /** This material with water in all its pores, which then conducts as that does. */
    Material filledWith(Conductivity water) {
        return new Material(
                name,
                Condition.SOAKED,
                water,
                water,
                water,
                layer,
                "DIN EN 12524:2000 (now ISO 10456), water at 10 degC",
                Provenance.RETRIEVED,
                "as water, which has taken the place of its air",
                soaks);
    }

    /** Metals conduct better than anything else here by a factor of ten, and their bare faces shine. */
    private boolean conductivityOfMetal() {
        return typical.wattsPerMeterKelvin() > 10;
    }

    /** How far a source was seen. */
    public enum Provenance implements Phrase {
        /** Every figure was read from the source or from a public copy of it. */
        RETRIEVED("retrieved"),
        /** At least one figure was written down from memory of its source. */
        FROM_MEMORY("from memory");

        private final String english;

        Provenance(String english) {
            this.english = english;
        }

        /**
         * Reads a provenance as a data file states it.
         *
         * @param text {@code retrieved} or {@code from memory}
         * @return the provenance
         */
        public static Provenance parse(String text) {
            return valueOf(text.toUpperCase(Locale.ROOT).replace(' ', '_'));
        }

        @Override
        public String english() {
            return english;
        }
    }
}
