package org.snugsheet.engine.cooling;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** A law that a vessel may follow as it cools, with what it takes for given. Each law is a type of its own. */
public sealed interface CoolingModel permits OneRateModel, TwoStage {

    /**
     * The model that goes with surroundings as they were given: constant, measured over time, or to be fitted.
     *
     * @param surroundings what the vessel stood in
     * @return Newton’s law for those surroundings
     */
    static OneRateModel newton(Surroundings surroundings) {
        if (surroundings instanceof Surroundings.Constant constant) {
            return new ConstantSurroundings(constant.temperature(), constant.isExact());
        }
        if (surroundings instanceof Surroundings.Measured measured) {
            return new ChangingSurroundings(measured);
        }
        return new FittedSurroundings();
    }

    /**
     * The model’s name.
     *
     * @return its name, to be said in any language
     */
    CoolingLaw law();

    /**
     * How many numbers the readings have to tell.
     *
     * @return the number of free parameters
     */
    int parameters();

    /**
     * Fits the model to readings by least squares.
     *
     * @param readings more readings than free parameters
     * @param mark the mark of the thermometer
     * @return the fit
     * @throws InvalidInputException if there are too few readings, or they cannot have come from such a vessel
     */
    ModelFit fit(Readings readings, Graduation mark);
}
