package org.snugsheet.engine.heat;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Temperature;

/** A thing with one temperature throughout that holds heat. */
public sealed interface Body permits WaterBody, DryBody {

    /**
     * How warm it is.
     *
     * @return its temperature
     */
    Temperature temperature();

    /**
     * The heat it gives off on its way to another temperature.
     *
     * @param end where it ends
     * @return J, negative if it takes heat up
     * @throws InvalidInputException if it cannot be so warm or cold and stay what it is
     */
    double heatGivenOff(Temperature end);

    /**
     * Its heat capacity, once it is as warm as that.
     *
     * @param temperature how warm
     * @return its heat capacity
     * @throws InvalidInputException if it cannot be so warm or cold and stay what it is
     */
    HeatCapacity heatCapacityAt(Temperature temperature);

    /**
     * Its heat capacity as it is now.
     *
     * @return its heat capacity
     */
    default HeatCapacity heatCapacity() {
        return heatCapacityAt(temperature());
    }
}
