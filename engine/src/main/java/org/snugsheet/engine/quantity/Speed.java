package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * A speed without a direction, such as that of the wind.
 *
 * @param metresPerSecond m/s, finite, zero or more
 */
public record Speed(double metresPerSecond) implements Comparable<Speed> {

    /**
     * A speed in m/s.
     *
     * @throws InvalidInputException if it is negative or not a finite number
     */
    public Speed {
        Require.notNegative(metresPerSecond, QuantityName.SPEED);
    }

    /**
     * A speed in a unit.
     *
     * @param value how many
     * @param unit a unit of speed
     * @return the speed
     * @throws InvalidInputException if it is negative, not a finite number, or the unit measures something else
     */
    public static Speed of(double value, Unit unit) {
        Require.notNegative(value, QuantityName.SPEED);
        return new Speed(Unit.METRE_PER_SECOND.from(value, unit));
    }

    /**
     * This speed as a number.
     *
     * @param unit a unit of speed
     * @return how many of that unit
     * @throws InvalidInputException if the unit measures something else
     */
    public double in(Unit unit) {
        return unit.from(metresPerSecond, Unit.METRE_PER_SECOND);
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }
}
