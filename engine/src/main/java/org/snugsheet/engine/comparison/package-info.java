/**
 * Comparisons of estimates: how many times slower, whether that is chance, which is best.
 *
 * <p>Nothing here knows how an {@link org.snugsheet.engine.comparison.Estimate} was made; it has a value, a standard error
 * and degrees of freedom, and is assumed to be normally distributed about the truth. The documentation speaks of jars that
 * cool, since that is what the estimates are about: the smaller the value (a cooling constant), the slower the jar, and the
 * better its wrap.
 *
 * <ul>
 *   <li>{@link org.snugsheet.engine.comparison.Estimate}, {@link org.snugsheet.engine.comparison.Interval} – one estimate
 *       and its limits, by Student’s t
 *   <li>{@link org.snugsheet.engine.comparison.Ratio} – two of them: how many times slower, with limits by Fieller’s
 *       theorem, and whether they differ at all, by Welch’s test
 *   <li>{@link org.snugsheet.engine.comparison.ReplicateGroup} – several jars with one wrap combined into one estimate,
 *       including the spread between the jars: one jar is not a material
 *   <li>{@link org.snugsheet.engine.comparison.Verdict} – which of two is slower, or that the readings do not show it
 *   <li>{@link org.snugsheet.engine.comparison.Ranking} – many of them, best first; those that cannot be told apart share
 *       a place, by Holm’s step-down
 * </ul>
 *
 * <p>How often the limits hold the truth, and how often a false difference is claimed, was simulated: see
 * {@code engine/docs/comparison-coverage.md}. The tests repeat a small part of it.
 *
 * <p>This package uses {@link org.snugsheet.engine}, the search for a crossing in {@link org.snugsheet.engine.solver} and the
 * distributions of Commons Math, nothing else.
 */
package org.snugsheet.engine.comparison;
