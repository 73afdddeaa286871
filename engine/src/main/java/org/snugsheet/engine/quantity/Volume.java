package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * A volume.
 *
 * @param cubicMeters m³, finite, more than zero
 */
public record Volume(double cubicMeters) implements Comparable<Volume> {

    /**
     * A volume in m³.
     *
     * @throws InvalidInputException if it is not more than zero
     */
    public Volume {
        Require.positive(cubicMeters, QuantityName.VOLUME);
    }

    /**
     * A volume in a unit.
     *
     * @param value how many
     * @param unit a unit of volume
     * @return the volume
     * @throws InvalidInputException if it is not more than zero, or the unit measures something else
     */
    public static Volume of(double value, Unit unit) {
        Require.positive(value, QuantityName.VOLUME);
        return new Volume(Unit.CUBIC_METER.from(value, unit));
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMeters, other.cubicMeters);
    }
}
