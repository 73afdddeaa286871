/**
 * Cooling curves: what a jar does in cold surroundings, found from its readings, with its uncertainty.
 *
 * <p>{@link org.snugsheet.engine.cooling.NewtonCooling} is the law, {@link org.snugsheet.engine.cooling.CoolingConstant} its
 * one number, {@link org.snugsheet.engine.cooling.CoolingFit} the estimate from readings, and
 * {@link org.snugsheet.engine.cooling.Slips} what looks wrong though it can be worked with. {@link
 * org.snugsheet.engine.cooling.HeatLoss} turns the constant into watts. Everything holds for a cold jar in warm surroundings
 * as well: the curve then rises.
 *
 * <p>This package uses {@link org.snugsheet.engine.quantity}, {@link org.snugsheet.engine.heat}, {@link
 * org.snugsheet.engine.reading} and the solver.
 */
package org.snugsheet.engine.cooling;
