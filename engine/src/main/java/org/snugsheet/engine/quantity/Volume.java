package org.snugsheet.engine.quantity;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.QuantityName;

/**
 * A volume.
 *
 * @param cubicMetres m³, finite, more than zero
 */
public record Volume(double cubicMetres) implements Comparable<Volume> {

    /**
     * A volume in m³.
     *
     * @throws InvalidInputException if it is not more than zero
     */
    public Volume {
        Require.positive(cubicMetres, QuantityName.VOLUME);
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
        return new Volume(Unit.CUBIC_METRE.from(value, unit));
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }
}
