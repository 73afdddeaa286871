package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * The heat that a body takes up per kelvin of warming (ISO 80000-5:2019, 5-15).
 *
 * @param joulesPerKelvin J/K, finite, zero or more
 */
public record HeatCapacity(double joulesPerKelvin) implements Comparable<HeatCapacity> {

    /** That of a thing too light to count. */
    public static final HeatCapacity NONE = new HeatCapacity(0);

    /**
     * A heat capacity in J/K.
     *
     * @throws InvalidInputException if it is negative or not a finite number
     */
    public HeatCapacity {
        Require.notNegative(joulesPerKelvin, QuantityName.HEAT_CAPACITY);
    }

    /**
     * The heat capacity of two bodies together.
     *
     * @param other that of the other body
     * @return the sum
     */
    public HeatCapacity plus(HeatCapacity other) {
        return new HeatCapacity(joulesPerKelvin + other.joulesPerKelvin);
    }

    @Override
    public int compareTo(HeatCapacity other) {
        return Double.compare(joulesPerKelvin, other.joulesPerKelvin);
    }
}
