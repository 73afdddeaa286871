/**
 * What every part of the engine shares: how it refuses, and its words.
 *
 * <p>The engine is physics and statistics of things that cool down. It knows no office, no file and no clock. Its values
 * are immutable, its functions pure and safe for threads, its units SI inside (temperatures in degrees Celsius, which is
 * an SI unit; see {@link org.snugsheet.engine.quantity}), and {@code null} is never passed or returned. A question that
 * cannot be answered is met with one exception, {@link org.snugsheet.engine.InvalidInputException}, never with a wrong number.
 *
 * <p>Where things live:
 *
 * <ul>
 *   <li>{@link org.snugsheet.engine.quantity} – temperatures, resistances, units
 *   <li>{@link org.snugsheet.engine.water} – density and specific heat of liquid water
 *   <li>{@link org.snugsheet.engine.heat} – heat given off, and bodies that share it
 *   <li>{@link org.snugsheet.engine.reading} – what a class wrote down, and what is wrong with it
 *   <li>{@link org.snugsheet.engine.solver} – least squares; the only package that sees Commons Math’s optimisers
 *   <li>{@link org.snugsheet.engine.cooling} – cooling curves, their fit and its uncertainty
 *   <li>{@link org.snugsheet.engine.comparison} – estimates set against each other: ratio, verdict, ranking
 *   <li>{@link org.snugsheet.engine.insulation} – layers, materials, surfaces
 * </ul>
 *
 * <p>Verbs: {@code of} makes a value and refuses bad input, {@code parse} reads text, {@code in} gives a plain number in a
 * unit, {@code with} gives a changed copy, {@code fit} estimates from readings.
 */
package org.snugsheet.engine;
