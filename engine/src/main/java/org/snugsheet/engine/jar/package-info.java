/**
 * A whole jar: water inside, layers round it, a lid, a base, and the place it stands in.
 *
 * <p>A {@link org.snugsheet.engine.jar.Design} says what is wrapped how. {@link org.snugsheet.engine.jar.HeatFlow} is what
 * goes out of it in the steady state, with the temperatures between the layers; {@link
 * org.snugsheet.engine.jar.ExpectedCooling} turns that into the cooling constant to expect. The other way round, {@link
 * org.snugsheet.engine.jar.MeasuredResistance} turns cooling constants into the resistance that the readings show, and
 * {@link org.snugsheet.engine.jar.Agreement} holds the two against each other.
 *
 * <p>This package is where insulation and cooling meet. It uses the packages for quantities, water, heat, insulation,
 * surfaces, cooling and comparison.
 */
package org.snugsheet.engine.jar;
