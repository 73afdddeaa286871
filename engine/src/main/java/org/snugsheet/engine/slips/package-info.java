/**
 * Finds slips in what a class typed for a jar, from the numbers alone, and suggests corrections. Data are never changed.
 *
 * <p>Begin at {@link org.snugsheet.engine.slips.SlipFinder}. What was typed is read as far as possible ({@code TypedColumn})
 * into a {@code Column}. {@code RobustFit} finds the {@code Law} that fits a column best in spite of a few wild readings
 * ({@code RobustStart}), and the readings that do not belong to it. Each {@code SlipDetector} offers hypotheses about what
 * happened ({@code SlipHypothesis}); the finder accepts the one that explains most, corrects a copy of the column, and looks
 * again.
 *
 * <p>The certainty of a slip is the probability of the hypothesis against that of a clean column, from the likelihoods of
 * both and from how rare such slips are. How often the finder errs is measured in {@code engine/docs/slips.md}.
 *
 * <p>This package uses {@link org.snugsheet.engine.quantity}, {@link org.snugsheet.engine.reading}, {@link
 * org.snugsheet.engine.cooling} and the solver.
 */
package org.snugsheet.engine.slips;
