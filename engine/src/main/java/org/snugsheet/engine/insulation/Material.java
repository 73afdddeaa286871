package org.snugsheet.engine.insulation;

import java.util.Optional;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;

/**
 * A material in one condition, with what is published about it.
 *
 * <p>Published figures for loose stuff such as wool or paper differ by up to a factor of two, for they depend on how much
 * air is trapped. Hence a range and not one number.
 *
 * @param name the name, in plain English and lower case
 * @param condition how wet it is
 * @param low the least conductivity that a source gives
 * @param typical the middle one, to be used when nothing better is known
 * @param high the greatest
 * @param layer how thick one layer of it usually is, where that makes sense; common practice, no source
 * @param source where the figures were published
 * @param provenance how far the source was seen by those who typed it in
 * @param note what else is worth knowing; may be empty
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
        String note) {

    /** How far a source was seen. */
    public enum Provenance {
        /** Every figure was read from the source or from a public copy of it. */
        RETRIEVED("retrieved"),
        /** At least one figure was written down from memory of its source. */
        FROM_MEMORY("from memory");

        private final String english;

        Provenance(String english) {
            this.english = english;
        }

        /**
         * This provenance in words.
         *
         * @return {@code retrieved} or {@code from memory}
         */
        public String english() {
            return english;
        }
    }
}
