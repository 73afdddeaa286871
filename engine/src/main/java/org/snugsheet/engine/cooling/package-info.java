/**
 * Cooling curves: what a jar does in cold surroundings, found from its readings, with its uncertainty.
 *
 * <p>{@link org.snugsheet.engine.cooling.NewtonCooling} is the law, {@link org.snugsheet.engine.cooling.CoolingConstant} its
 * one number, and {@link org.snugsheet.engine.cooling.CoolingFit} the estimate from readings. {@link
 * org.snugsheet.engine.cooling.HeatLoss} turns the constant into watts. Each law a vessel may follow is a class of its own
 * behind {@link org.snugsheet.engine.cooling.CoolingModel}; {@link org.snugsheet.engine.cooling.ModelChoice} says which one the
 * readings support, {@link org.snugsheet.engine.cooling.CoolingIntervals} within which limits the truth lies, {@link
 * org.snugsheet.engine.cooling.Outliers} which readings stand out. Where nobody read the surroundings, other laws compete with Newton’s
 * before anything is said of them. Everything holds for a cold jar in warm surroundings
 * as well: the curve then rises.
 *
 * <p>This package uses {@link org.snugsheet.engine.quantity}, {@link org.snugsheet.engine.heat}, {@link
 * org.snugsheet.engine.reading}, {@link org.snugsheet.engine.comparison} and the solver.
 */
package org.snugsheet.engine.cooling;
