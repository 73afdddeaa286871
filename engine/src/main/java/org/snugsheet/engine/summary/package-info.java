/**
 * One jar’s typed readings, looked at once: what everything that shows a jar reads, so that a table, a number, a sentence and a
 * check never disagree about it.
 *
 * <p>{@link org.snugsheet.engine.summary.TypedJar} is what was typed. {@link org.snugsheet.engine.summary.JarFit} is its fit, with one
 * rule each for rate, half-time and start: a value, or the reason why there is none ({@link org.snugsheet.engine.summary.Known}). {@link
 * org.snugsheet.engine.summary.JarSummary} adds what the checks find, and whether the jar is held back because of it. {@link
 * org.snugsheet.engine.summary.SheetSummary} does so for the jars of a block, {@link org.snugsheet.engine.summary.JarRanking} ranks those
 * that can be used.
 */
package org.snugsheet.engine.summary;
