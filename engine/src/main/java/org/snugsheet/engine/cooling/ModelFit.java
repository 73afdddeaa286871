package org.snugsheet.engine.cooling;

/** What every fitted model can say of itself, whatever its law. */
public sealed interface ModelFit permits CoolingFit, TwoStageFit {

    /**
     * The law that was fitted.
     *
     * @return the model
     */
    CoolingModel model();

    /**
     * How many readings were used.
     *
     * @return n
     */
    int size();

    /**
     * The sum of squared residuals.
     *
     * @return SSR in K²
     */
    double sumOfSquares();
}
