package org.snugsheet.engine.slips;

import java.util.stream.Stream;

/** One kind of slip, as a question put to a column: where could it have happened, and what would have been meant? */
interface SlipDetector {

    /** Twice the logarithm of the odds against a slip of the column as a whole: one in 150 (common practice, no source). */
    double RARE = 10;

    /**
     * The stories of this kind that could be told of the column.
     *
     * @param column the column
     * @param clues what the best law says of it
     * @return the stories, to be weighed against each other
     */
    Stream<SlipHypothesis> stories(Column column, RobustFit clues);
}
