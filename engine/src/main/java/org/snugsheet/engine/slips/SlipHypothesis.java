package org.snugsheet.engine.slips;

import org.snugsheet.engine.Finding;

/**
 * What may have happened: a slip, and the column as it would be without it.
 *
 * @param kind the kind of slip
 * @param finding what to say of it
 * @param weighed the column to be weighed, in the units of the typed numbers, so that it compares with the column as it stands
 * @param mended the column to go on with if the story is believed
 * @param cost twice the logarithm of the odds against such a slip before the column is looked at
 * @param accused the place of the reading that the slip is about if it alone is at fault; −1 if it is not one reading
 */
record SlipHypothesis(SlipKind kind, Finding finding, Column weighed, Column mended, double cost, int accused) {

    static SlipHypothesis ofColumn(SlipKind kind, Finding finding, Column mended, double cost) {
        return new SlipHypothesis(kind, finding, mended, mended, cost, -1);
    }

    static SlipHypothesis ofReading(SlipKind kind, Finding finding, Column mended, double cost, int accused) {
        return new SlipHypothesis(kind, finding, mended, mended, cost, accused);
    }
}
