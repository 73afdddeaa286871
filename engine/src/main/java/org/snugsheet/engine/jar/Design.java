package org.snugsheet.engine.jar;

import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.insulation.Layer;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.RoundWrap;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.surface.Ambient;
import org.snugsheet.engine.surface.Face;
import org.snugsheet.engine.surface.KnownSurface;
import org.snugsheet.engine.surface.Orientation;
import org.snugsheet.engine.surface.StillAir;
import org.snugsheet.engine.surface.StillWater;

/**
 * The wrap of a jar and its place.
 *
 * <p>Heat leaves on three parallel paths: through the side, with round layers, and through lid and base, with flat layers.
 * Each path has its own films of water inside and of air or water outside. The water in the jar is assumed to be at a uniform
 * temperature, stirred by its own free convection, with the film of the side at lid and base too. The edges where the paths
 * meet are neglected, as is evaporation under a lid that does not close.
 *
 * <p>In a tub of water the jar stands up to its neck. Its side faces the water; what the water can enter is soaked
 * ({@link Layers#inWater()}). Its lid faces still air at the temperature of the {@code room}. Its base is on the floor of the
 * tub: a disk on a semi-infinite medium at the temperature of the tub, {@code S = 2·D} (Incropera and DeWitt, Table 4.1, case
 * 10), hence {@code R = π·r/(4·λ)}, with the {@linkplain #TABLE λ of the table} that the tub stands on; water that creeps
 * under a jar is still, because it is warmest at the top.
 *
 * @param jar the water
 * @param side the layers around its side, including the jar’s own wall if it is to count
 * @param lid the resistance of the lid’s layers without their surfaces; {@link ThermalResistance#NONE} for a thin lid
 * @param base the resistance of the base’s layers, like that of the lid
 * @param place the place of the jar
 * @param room the temperature of the air above a tub; not used elsewhere
 */
public record Design(
        Jar jar, Layers side, ThermalResistance lid, ThermalResistance base, Ambient place, Temperature room) {

    /** A heated classroom; common practice, no source. */
    public static final Temperature USUAL_ROOM = new Temperature(21);

    /** Softwood, 500 kg/m³: ISO 10456:2007, Table 3. */
    private static final double TABLE = 0.13;

    /**
     * A design in the usual room.
     *
     * @param jar as above
     * @param side as above
     * @param lid as above
     * @param base as above
     * @param place as above
     */
    public Design(Jar jar, Layers side, ThermalResistance lid, ThermalResistance base, Ambient place) {
        this(jar, side, lid, base, place, USUAL_ROOM);
    }

    /**
     * The heat flow in the steady state.
     *
     * @param water the temperature of the water
     * @param surroundings the temperature of its place
     * @return the heat flow, negative if the jar is colder
     * @throws InvalidInputException if both temperatures are equal, or the place cannot have that temperature
     */
    public HeatFlow between(Temperature water, Temperature surroundings) {
        if (water.equals(surroundings)) {
            throw InvalidInputException.of(Problem.NO_DIFFERENCE);
        }
        RoundWrap wrap = sideWrap();
        Face inside = new Face(Orientation.SIDE, jar.height(), diameter(jar.radius()), Face.USUAL_EMISSIVITY);
        Film within = (surface, far) -> new StillWater().resistance(inside, surface, far);

        double widening = wrap.outerRadius().meters() / jar.radius().meters();
        HeatPath sidePath = HeatPath.solveSteadyState(
                within,
                wrap.resistances(),
                outside(place, Orientation.SIDE, wrap, emissivity()),
                widening,
                water,
                surroundings);
        Ambient above = place.isTub() ? new StillAir() : place;
        Ambient below = place.isTub() ? floor() : place;
        HeatPath lidPath = HeatPath.solveSteadyState(
                within,
                List.of(lid),
                outside(above, Orientation.UP, wrap, Face.USUAL_EMISSIVITY),
                1,
                water,
                place.isTub() ? room : surroundings);
        HeatPath basePath = HeatPath.solveSteadyState(
                within,
                List.of(base),
                outside(below, Orientation.DOWN, wrap, Face.USUAL_EMISSIVITY),
                1,
                water,
                surroundings);
        return new HeatFlow(jar, sidePath, lidPath, basePath);
    }

    /**
     * The layers around the side in the place of the jar: soaked in a tub, as far as water can enter.
     *
     * @return the layers from the inside out
     */
    public Layers sideWhereItStands() {
        return place.isTub() ? side.inWater() : side;
    }

    /**
     * Whether water enters a dry layer in the place of the jar.
     *
     * @return true if some layer is soaked there
     */
    public boolean isSoakedThere() {
        return !sideWhereItStands().equals(side);
    }

    /**
     * The same jar in other layers.
     *
     * @param other the layers round its side
     * @return the design
     */
    public Design withSide(Layers other) {
        return new Design(jar, other, lid, base, place, room);
    }

    /**
     * The same jar with only its thin lid.
     *
     * @return the design
     */
    public Design withBareLid() {
        return new Design(jar, side, ThermalResistance.NONE, base, place, room);
    }

    private RoundWrap sideWrap() {
        // A surface resistance is not known before the temperatures are: only the layers and their radii are asked
        // here.
        return new RoundWrap(jar.radius(), sideWhereItStands(), new ThermalResistance(1), ThermalResistance.NONE);
    }

    private Film outside(Ambient there, Orientation facing, RoundWrap wrap, double emissivity) {
        Face face = new Face(facing, jar.height(), diameter(wrap.outerRadius()), emissivity);
        return (surface, far) -> there.resistance(face, surface, far);
    }

    private Ambient floor() {
        return new KnownSurface(new ThermalResistance(Math.PI * jar.radius().meters() / (4 * TABLE)));
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
        return new Length(2 * radius.meters());
    }
}
