/**
 * What all parts of the engine share: the exception for invalid input, and the phrases.
 *
 * <p>The engine is physics and statistics of things that cool down. It knows no office, no file and no clock. Its values are
 * immutable, its functions pure and thread-safe, its internal units SI (temperatures in degrees Celsius, which is an SI unit;
 * see {@link org.snugsheet.engine.quantity}), and {@code null} is never passed or returned. A question that cannot be
 * answered raises a single type of exception, {@link org.snugsheet.engine.InvalidInputException}; it never gives a wrong
 * number.
 *
 * <p>Where things live:
 *
 * <ul>
 *   <li>{@link org.snugsheet.engine.quantity} – temperatures, resistances, units
 *   <li>{@link org.snugsheet.engine.water} – density and specific heat of liquid water
 *   <li>{@link org.snugsheet.engine.heat} – heat given off, and bodies that share it
 *   <li>{@link org.snugsheet.engine.reading} – what a class wrote down, and what is wrong with it
 *   <li>{@code org.snugsheet.engine.solver} – least squares; the only package that uses Commons Math’s optimizers
 *   <li>{@link org.snugsheet.engine.cooling} – cooling curves, their fit and its uncertainty
 *   <li>{@link org.snugsheet.engine.comparison} – comparisons of estimates: ratio, verdict, ranking
 *   <li>{@link org.snugsheet.engine.insulation} – layers, materials, surfaces
 * </ul>
 *
 * <p>Verbs: {@code of} makes a value and refuses bad input, {@code parse} reads text, {@code in} gives a plain number in a
 * unit, {@code with} gives a changed copy, {@code fit} estimates from readings.
 */
package org.snugsheet.engine;
