package org.snugsheet.engine.insulation;

import java.util.Optional;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * One layer of a wrap.
 *
 * @param thickness how thick it is
 * @param conductivity how easily heat goes through its stuff
 * @param material what it is made of, where that is known by name
 */
public record Layer(Length thickness, Conductivity conductivity, Optional<Material> material) {

    /**
     * A layer of unnamed stuff.
     *
     * @param thickness how thick it is
     * @param conductivity how easily heat goes through it
     */
    public Layer(Length thickness, Conductivity conductivity) {
        this(thickness, conductivity, Optional.empty());
    }

    /**
     * A layer of a material, with its typical conductivity.
     *
     * @param thickness how thick it is
     * @param material what it is made of
     * @return the layer
     */
    public static Layer of(Length thickness, Material material) {
        return new Layer(thickness, material.typical(), Optional.of(material));
    }

    /**
     * The resistance of this layer where it lies flat, {@code R = d/λ} (ISO 6946:2017, 6.7.1.1).
     *
     * @return its thermal resistance
     */
    public ThermalResistance resistance() {
        return conductivity.through(thickness);
    }

    /**
     * This layer at its worst: as conductive as any source says.
     *
     * @return the layer with the greatest published conductivity; itself if its stuff has no name
     */
    public Layer atWorst() {
        return material.map(stuff -> withConductivity(stuff.high())).orElse(this);
    }

    /**
     * This layer at its best: as little conductive as any source says.
     *
     * @return the layer with the least published conductivity; itself if its stuff has no name
     */
    public Layer atBest() {
        return material.map(stuff -> withConductivity(stuff.low())).orElse(this);
    }

    /**
     * This layer with water in place of all its air.
     *
     * @return the soaked layer; itself if water cannot enter its stuff, fills it already, or it has no name
     */
    public Layer soaked() {
        return material.filter(stuff -> stuff.soaks() && stuff.condition() != Condition.SOAKED)
                .map(stuff -> Layer.of(thickness, Materials.soaked(stuff)))
                .orElse(this);
    }

    /** Whether it keeps water from what lies within it: known stuff that water cannot enter. */
    boolean keepsWaterOut() {
        return material.filter(stuff -> !stuff.soaks()).isPresent();
    }

    /**
     * The same layer of stuff that conducts otherwise.
     *
     * @param other how easily heat goes through it
     * @return the layer
     */
    public Layer withConductivity(Conductivity other) {
        return new Layer(thickness, other, material);
    }

    /**
     * The same stuff, but thicker or thinner.
     *
     * @param other how thick it is
     * @return the layer
     */
    public Layer withThickness(Length other) {
        return new Layer(other, conductivity, material);
    }
}
