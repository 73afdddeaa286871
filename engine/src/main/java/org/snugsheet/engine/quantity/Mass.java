package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * A mass.
 *
 * @param kilograms kg, finite, more than zero
 */
public record Mass(double kilograms) implements Comparable<Mass> {

    /**
     * A mass in kg.
     *
     * @throws InvalidInputException if it is not more than zero
     */
    public Mass {
        Require.positive(kilograms, QuantityName.MASS);
    }

    /**
     * A mass in a unit.
     *
     * @param value how many
     * @param unit a unit of mass
     * @return the mass
     * @throws InvalidInputException if it is not more than zero, or the unit measures something else
     */
    public static Mass of(double value, Unit unit) {
        Require.positive(value, QuantityName.MASS);
        return new Mass(Unit.KILOGRAM.from(value, unit));
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
