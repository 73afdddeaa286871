package org.snugsheet.engine.slips;

import org.snugsheet.engine.Finding;

/**
 * What may have happened: a slip, and the column as it would be without it.
 *
 * @param kind the kind of slip
 * @param finding the message
 * @param weighed the column to be scored, in the units of the typed numbers, so that its score compares with that of the
 *     column as it is
 * @param corrected the column to go on with if the hypothesis is accepted
 * @param cost twice the logarithm of the prior odds against such a slip
 * @param accused the index of the reading if the slip concerns that reading alone; otherwise −1
 */
record SlipHypothesis(SlipKind kind, Finding finding, Column weighed, Column corrected, double cost, int accused) {

    static SlipHypothesis ofColumn(SlipKind kind, Finding finding, Column corrected, double cost) {
        return new SlipHypothesis(kind, finding, corrected, corrected, cost, -1);
    }

    static SlipHypothesis ofReading(SlipKind kind, Finding finding, Column corrected, double cost, int accused) {
        return new SlipHypothesis(kind, finding, corrected, corrected, cost, accused);
    }
}
