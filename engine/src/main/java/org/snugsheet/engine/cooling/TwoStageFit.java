package org.snugsheet.engine.cooling;

/**
 * The two-stage model fitted to readings.
 *
 * @param model the model
 * @param size how many readings were used
 * @param sumOfSquares the sum of squared residuals in K²
 * @param slow the cooling constant of jar and wrap together, once the wrap is warm
 * @param fast the constant at which the wrap warms
 */
public record TwoStageFit(TwoStage model, int size, double sumOfSquares, CoolingConstant slow, CoolingConstant fast)
        implements ModelFit {}
