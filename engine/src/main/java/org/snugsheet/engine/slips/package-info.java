/**
 * Finds the slips of the pen in what a class typed for a jar, from the numbers alone, and suggests a mend. Data are never changed.
 *
 * <p>Begin at {@link org.snugsheet.engine.slips.SlipFinder}. What was typed is read as far as it can be ({@code TypedColumn}) into a {@code Column}. {@code RobustFit} says how well the best of several {@code Law}s fits a column, whatever a few wild
 * readings say ({@code RobustStart}), and which readings cannot be its own. Each {@code SlipDetector} tells {@code SlipHypothesis}s of what may
 * have happened; the finder believes the one that explains most, mends the column in thought, and looks again.
 *
 * <p>How sure a slip is has a meaning: it is the chance of the story against that of a clean column, from the likelihoods of both and
 * from how rare such slips are. How often the finder errs is measured in {@code engine/docs/slips.md}.
 *
 * <p>This package uses {@link org.snugsheet.engine.quantity}, {@link org.snugsheet.engine.reading} and {@link
 * org.snugsheet.engine.cooling}.
 */
package org.snugsheet.engine.slips;
