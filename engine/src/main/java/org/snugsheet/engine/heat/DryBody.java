package org.snugsheet.engine.heat;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Temperature;

/**
 * A body without water: an empty jar before warm water is poured in, a stone from the windowsill. Its heat capacity stays the
 * same at all temperatures, so {@code Q = C·(T − T′)}.
 *
 * @param capacity its heat capacity, positive
 * @param temperature its temperature
 */
public record DryBody(HeatCapacity capacity, Temperature temperature) implements Body {

    /**
     * A body without water.
     *
     * @throws InvalidInputException if its heat capacity is not positive
     */
    public DryBody {
        if (!(capacity.joulesPerKelvin() > 0)) {
            throw InvalidInputException.of(
                    Problem.NOT_POSITIVE, QuantityName.HEAT_CAPACITY, capacity.joulesPerKelvin());
        }
    }

    @Override
    public double heatGivenOff(Temperature end) {
        return capacity.joulesPerKelvin() * temperature.minus(end).kelvins();
    }

    @Override
    public HeatCapacity heatCapacityAt(Temperature now) {
        return capacity;
    }
}
