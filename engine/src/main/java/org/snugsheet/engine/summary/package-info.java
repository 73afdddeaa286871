/**
 * The summary of one jar’s typed readings. Everything that shows a jar uses it, so that a table, a number, a sentence and a
 * check never disagree.
 *
 * <p>{@link org.snugsheet.engine.summary.TypedJar} holds what was typed. {@link org.snugsheet.engine.summary.JarFit} is its
 * fit, with one rule each for rate, half-time and start: a value, or the reason why it is unknown
 * ({@link org.snugsheet.engine.summary.Known}). {@link org.snugsheet.engine.summary.JarSummary} adds the findings of the
 * checks, and whether they hold the jar back. {@link org.snugsheet.engine.summary.SheetSummary} does the same for the jars of
 * a block, and {@link org.snugsheet.engine.summary.JarRanking} ranks those that can be used.
 */
package org.snugsheet.engine.summary;
