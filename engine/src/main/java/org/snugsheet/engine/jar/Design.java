package org.snugsheet.engine.jar;

import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.insulation.Layer;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.RoundWrap;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.surface.Face;
import org.snugsheet.engine.surface.Facing;
import org.snugsheet.engine.surface.Place;
import org.snugsheet.engine.surface.StillWater;

/**
 * How a jar is wrapped and where it stands.
 *
 * <p>Heat leaves on three paths side by side: through the side, whose layers are round; through the lid and through the base,
 * whose layers are flat. Each path has its own films of water inside and of air or water outside. The water in the jar is
 * taken to be equally warm everywhere, stirred by its own free convection, with the film of the side at lid and base too. The
 * edges where the paths meet are left out, as is what evaporates under a lid that does not close.
 *
 * @param jar the water
 * @param side the layers round its side, the jar’s own wall among them if it is to count
 * @param lid the resistance of the lid’s layers without their surfaces; {@link ThermalResistance#NONE} for a thin lid
 * @param base the resistance of the base’s layers, as the lid’s
 * @param place where it stands
 */
public record Design(Jar jar, Layers side, ThermalResistance lid, ThermalResistance base, Place place) {

    /**
     * What the jar loses in the steady state.
     *
     * @param water how warm the water is
     * @param surroundings how warm it is where the jar stands
     * @return the heat flow, less than zero if the jar is the colder
     * @throws Refusal if both are equally warm, or the place cannot be so warm
     */
    public HeatFlow between(Temperature water, Temperature surroundings) {
        RoundWrap wrap = sideWrap();
        Face inside = new Face(Facing.SIDE, jar.height(), diameter(jar.radius()), Face.USUAL_EMISSIVITY);
        Film within = (surface, far) -> new StillWater().resistance(inside, surface, far);

        double widening = wrap.outerRadius().metres() / jar.radius().metres();
        Path sidePath = Path.settle(
                within, wrap.resistances(), outside(Facing.SIDE, wrap, emissivity()), widening, water, surroundings);
        Path lidPath = Path.settle(
                within, List.of(lid), outside(Facing.UP, wrap, Face.USUAL_EMISSIVITY), 1, water, surroundings);
        Path basePath = Path.settle(
                within, List.of(base), outside(Facing.DOWN, wrap, Face.USUAL_EMISSIVITY), 1, water, surroundings);
        return new HeatFlow(jar, sidePath, lidPath, basePath);
    }

    /**
     * The same jar in other layers.
     *
     * @param other the layers round its side
     * @return the design
     */
    public Design withSide(Layers other) {
        return new Design(jar, other, lid, base, place);
    }

    /**
     * The same jar with nothing but its thin lid on.
     *
     * @return the design
     */
    public Design withBareLid() {
        return new Design(jar, side, ThermalResistance.NONE, base, place);
    }

    private RoundWrap sideWrap() {
        // A surface resistance is not known before the temperatures are: only the layers and their radii are asked
        // here.
        return new RoundWrap(jar.radius(), side, new ThermalResistance(1), ThermalResistance.NONE);
    }

    private Film outside(Facing facing, RoundWrap wrap, double emissivity) {
        Face face = new Face(facing, jar.height(), diameter(wrap.outerRadius()), emissivity);
        return (surface, far) -> place.resistance(face, surface, far);
    }

    private double emissivity() {
        List<Layer> layers = side.fromInside();
        return layers.isEmpty()
                ? Face.USUAL_EMISSIVITY
                : layers.get(layers.size() - 1)
                        .material()
                        .map(Material::emissivity)
                        .orElse(Face.USUAL_EMISSIVITY);
    }

    private static Length diameter(Length radius) {
        return new Length(2 * radius.metres());
    }
}
