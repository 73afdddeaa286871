package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * A speed without a direction, such as that of the wind.
 *
 * @param metersPerSecond m/s, finite, zero or more
 */
public record Speed(double metersPerSecond) implements Comparable<Speed> {

    /**
     * A speed in m/s.
     *
     * @throws InvalidInputException if it is negative or not a finite number
     */
    public Speed {
        Require.notNegative(metersPerSecond, QuantityName.SPEED);
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
        return new Speed(Unit.METER_PER_SECOND.from(value, unit));
    }

    /**
     * This speed as a number.
     *
     * @param unit a unit of speed
     * @return how many of that unit
     * @throws InvalidInputException if the unit measures something else
     */
    public double in(Unit unit) {
        return unit.from(metersPerSecond, Unit.METER_PER_SECOND);
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(metersPerSecond, other.metersPerSecond);
    }
}
