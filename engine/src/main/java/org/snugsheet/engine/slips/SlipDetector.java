package org.snugsheet.engine.slips;

import java.util.stream.Stream;

/** Looks for one kind of slip in a column: where could it have happened, and what was meant? */
interface SlipDetector {

    /**
     * Twice the logarithm of the odds against a slip that concerns the column as a whole: one in 150 (common practice, no
     * source).
     */
    double RARE = 10;

    /**
     * The hypotheses of this kind that the column allows.
     *
     * @param column the column
     * @param robust the best fit to it
     * @return the hypotheses, to be compared with each other
     */
    Stream<SlipHypothesis> hypotheses(Column column, RobustFit robust);
}
