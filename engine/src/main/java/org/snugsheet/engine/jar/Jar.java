package org.snugsheet.engine.jar;

import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Volume;

/**
 * The water in a jar, as an upright cylinder. The jar’s own wall, if it is to count, is the first layer of its wrap.
 *
 * @param radius of the water
 * @param height of the water
 */
public record Jar(Length radius, Length height) {

    /**
     * A jar with a volume of water.
     *
     * @param volume how much water
     * @param radius of the inside of the jar
     * @return the jar, filled to {@code V/(π·r²)}
     */
    public static Jar holding(Volume volume, Length radius) {
        return new Jar(radius, new Length(volume.cubicMeters() / (Math.PI * radius.meters() * radius.meters())));
    }

    /**
     * The area of its side.
     *
     * @return m²
     */
    public double sideArea() {
        return 2 * Math.PI * radius.meters() * height.meters();
    }

    /**
     * The area of its lid, and of its base.
     *
     * @return m²
     */
    public double endArea() {
        return Math.PI * radius.meters() * radius.meters();
    }

    /**
     * The area of all of it.
     *
     * @return m²
     */
    public double area() {
        return sideArea() + 2 * endArea();
    }
}
