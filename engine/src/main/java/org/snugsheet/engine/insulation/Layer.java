package org.snugsheet.engine.insulation;

import java.util.Optional;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * One layer of a wrap.
 *
 * @param thickness its thickness
 * @param conductivity its thermal conductivity
 * @param material its material, where it has a name
 */
public record Layer(Length thickness, Conductivity conductivity, Optional<Material> material) {

    /**
     * A layer of an unnamed material.
     *
     * @param thickness its thickness
     * @param conductivity its thermal conductivity
     */
    public Layer(Length thickness, Conductivity conductivity) {
        this(thickness, conductivity, Optional.empty());
    }

    /**
     * A layer of a material, with its typical conductivity.
     *
     * @param thickness its thickness
     * @param material what it is made of
     * @return the layer
     */
    public static Layer of(Length thickness, Material material) {
        return new Layer(thickness, material.typical(), Optional.of(material));
    }

    /**
     * The resistance of this layer when flat, {@code R = d/λ} (ISO 6946:2017, 6.7.1.1).
     *
     * @return its thermal resistance
     */
    public ThermalResistance resistance() {
        return conductivity.through(thickness);
    }

    /**
     * This layer at its worst, with the greatest published conductivity.
     *
     * @return the layer with the greatest published conductivity; itself if its material has no name
     */
    public Layer atWorst() {
        return material.map(stuff -> withConductivity(stuff.high())).orElse(this);
    }

    /**
     * This layer at its best, with the least published conductivity.
     *
     * @return the layer with the least published conductivity; itself if its material has no name
     */
    public Layer atBest() {
        return material.map(stuff -> withConductivity(stuff.low())).orElse(this);
    }

    /**
     * This layer with water in place of all its air.
     *
     * @return the soaked layer; itself if water cannot enter the material or already fills it, or if it has no name
     */
    public Layer soaked() {
        return material.filter(stuff -> stuff.soaks() && stuff.condition() != Condition.SOAKED)
                .map(stuff -> Layer.of(thickness, Materials.soaked(stuff)))
                .orElse(this);
    }

    /** Whether it keeps the layers inside it dry: a known material that water cannot enter. */
    boolean keepsWaterOut() {
        return material.filter(stuff -> !stuff.soaks()).isPresent();
    }

    /**
     * The same layer with another conductivity.
     *
     * @param other its thermal conductivity
     * @return the layer
     */
    public Layer withConductivity(Conductivity other) {
        return new Layer(thickness, other, material);
    }

    /**
     * The same material with another thickness.
     *
     * @param other its thickness
     * @return the layer
     */
    public Layer withThickness(Length other) {
        return new Layer(other, conductivity, material);
    }
}
