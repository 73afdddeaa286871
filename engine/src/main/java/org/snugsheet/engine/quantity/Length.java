package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * A length, such as a thickness or a radius.
 *
 * @param meters meters, finite, more than zero
 */
public record Length(double meters) implements Comparable<Length> {

    /**
     * A length in meters.
     *
     * @throws InvalidInputException if it is not more than zero
     */
    public Length {
        Require.positive(meters, QuantityName.LENGTH);
    }

    /**
     * A length in a unit.
     *
     * @param value how many
     * @param unit a unit of length
     * @return the length
     * @throws InvalidInputException if it is not more than zero, or the unit measures something else
     */
    public static Length of(double value, Unit unit) {
        return new Length(Unit.METER.from(value, unit));
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(meters, other.meters);
    }
}
