package org.snugsheet.engine.heat;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Temperature;

/** A body with a uniform temperature. */
public sealed interface Body permits WaterBody, DryBody {

    /**
     * Its temperature.
     *
     * @return its temperature
     */
    Temperature temperature();

    /**
     * The heat it gives off when it changes to another temperature.
     *
     * @param end the final temperature
     * @return J, negative if it takes heat up
     * @throws InvalidInputException if it cannot have that temperature, such as liquid water below freezing
     */
    double heatGivenOff(Temperature end);

    /**
     * Its heat capacity at a temperature.
     *
     * @param temperature the temperature
     * @return its heat capacity
     * @throws InvalidInputException if it cannot have that temperature, such as liquid water below freezing
     */
    HeatCapacity heatCapacityAt(Temperature temperature);

    /**
     * Its heat capacity at its own temperature.
     *
     * @return its heat capacity
     */
    default HeatCapacity heatCapacity() {
        return heatCapacityAt(temperature());
    }
}
