/**
 * Cooling curves: how a jar cools in cold surroundings, estimated from its readings, with the uncertainty.
 *
 * <p>{@link org.snugsheet.engine.cooling.NewtonCooling} is the law, {@link org.snugsheet.engine.cooling.CoolingConstant} its
 * one number, and {@link org.snugsheet.engine.cooling.CoolingFit} the estimate from readings.
 * {@link org.snugsheet.engine.cooling.HeatLoss} turns the constant into watts. Each law that a vessel may follow is a class
 * that implements {@link org.snugsheet.engine.cooling.CoolingModel}; {@link org.snugsheet.engine.cooling.ModelChoice} says
 * which one the readings support, {@link org.snugsheet.engine.cooling.CoolingIntervals} within which limits the truth lies,
 * {@link org.snugsheet.engine.cooling.Outliers} which readings stand out. Where the surroundings were not read, other laws
 * are tried as well before the surroundings are reported. Everything also holds for a cold jar in warm surroundings, whose
 * curve rises.
 *
 * <p>This package uses {@link org.snugsheet.engine.quantity}, {@link org.snugsheet.engine.heat}, {@link
 * org.snugsheet.engine.reading}, {@link org.snugsheet.engine.comparison} and the solver.
 */
package org.snugsheet.engine.cooling;
