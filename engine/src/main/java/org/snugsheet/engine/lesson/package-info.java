/**
 * Before the lesson: how warm to begin, how much water and ice, how often to read, how many jars, and when a difference shows.
 *
 * <p>{@link org.snugsheet.engine.lesson.SafeStart} comes first: every plan refuses a start temperature above what schools are
 * advised. {@link org.snugsheet.engine.lesson.Taps} mixes it, {@link org.snugsheet.engine.lesson.Bath} says how far a bath
 * warms, {@link org.snugsheet.engine.lesson.Ice} how much ice holds it. A {@link
 * org.snugsheet.engine.lesson.ReadingPlan} knows how well a cooling constant will be known; {@link org.snugsheet.engine.lesson.TimeToDistinguish} when a child can
 * see the difference, and {@link org.snugsheet.engine.lesson.Power} how many jars make it certain.
 *
 * <p>It plans with the same physics and the same statistics that the lesson’s readings meet afterwards: this package uses
 * those for quantities, water, heat, readings, cooling and comparison.
 */
package org.snugsheet.engine.lesson;
