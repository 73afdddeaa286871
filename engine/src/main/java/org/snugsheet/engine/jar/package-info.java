/**
 * A whole jar: the water, the layers around it, lid, base, and its place.
 *
 * <p>A {@link org.snugsheet.engine.jar.Design} describes the wrap. {@link org.snugsheet.engine.jar.HeatFlow} is the heat flow
 * in the steady state, with the temperatures between the layers; {@link org.snugsheet.engine.jar.ExpectedCooling} turns that
 * into the cooling constant to expect. Conversely, {@link org.snugsheet.engine.jar.MeasuredResistance} turns cooling
 * constants into the resistance that the readings show, and {@link org.snugsheet.engine.jar.Agreement} compares the two.
 *
 * <p>This package connects insulation and cooling. It uses the packages for quantities, water, heat, insulation, surfaces,
 * cooling and comparison.
 */
package org.snugsheet.engine.jar;
