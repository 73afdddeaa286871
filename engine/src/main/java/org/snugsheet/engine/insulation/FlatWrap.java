package org.snugsheet.engine.insulation;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * Flat layers with the same area everywhere, so that their resistances add up (ISO 6946:2017, 6.7.1.2).
 *
 * <p>It is used for lids and bases, and for the side of a jar if the wrap is thin compared with the jar’s radius.
 *
 * <pre>{@code
 * FlatWrap.of(Layers.NONE.with(4, "wool").with(1, "newspaper")).resistance().in(Unit.CLO);
 * }</pre>
 *
 * @param layers the layers from the inside out
 * @param inside the resistance of the surface inside; {@link ThermalResistance#NONE} where the layer itself is touched
 * @param outside the resistance of the surface outside, as {@code inside}
 */
public record FlatWrap(Layers layers, ThermalResistance inside, ThermalResistance outside) implements Wrap {

    /**
     * A flat wrap.
     *
     * @throws InvalidInputException if there is neither a layer nor a surface resistance: nothing would keep heat in
     */
    public FlatWrap {
        if (layers.fromInside().isEmpty()
                && inside.equals(ThermalResistance.NONE)
                && outside.equals(ThermalResistance.NONE)) {
            throw InvalidInputException.of(Problem.NO_LAYERS);
        }
    }

    /**
     * Layers from face to face, with no surface resistance.
     *
     * @param layers the layers
     * @return the wrap
     * @throws InvalidInputException if there is no layer
     */
    public static FlatWrap of(Layers layers) {
        return new FlatWrap(layers, ThermalResistance.NONE, ThermalResistance.NONE);
    }

    /**
     * Layers with the resistance of their two surfaces.
     *
     * @param fromInside the layers, the innermost first
     * @param inside the resistance of the surface inside
     * @param outside the resistance of the surface outside
     * @return the wrap
     * @throws InvalidInputException if there is neither a layer nor a surface resistance
     */
    public static FlatWrap of(List<Layer> fromInside, ThermalResistance inside, ThermalResistance outside) {
        return new FlatWrap(new Layers(fromInside), inside, outside);
    }

    /**
     * This wrap with one more layer around it.
     *
     * @param layer the new outermost layer
     * @return the thicker wrap
     */
    public FlatWrap withLayer(Layer layer) {
        return new FlatWrap(layers.with(layer), inside, outside);
    }

    @Override
    public ThermalResistance resistance() {
        ThermalResistance sum = inside;
        for (ThermalResistance each : resistances()) {
            sum = sum.plus(each);
        }
        return sum.plus(outside);
    }

    /**
     * The resistance of each layer alone.
     *
     * @return one resistance for each layer, the innermost first; the surfaces are not among them
     */
    public List<ThermalResistance> resistances() {
        return layers.fromInside().stream().map(Layer::resistance).toList();
    }

    /**
     * The transmittance of the whole wrap, {@code U = 1/R}, known in the trade as the U-value (ISO 6946:2017, 6.4).
     *
     * @return U in W/(m²·K)
     */
    public double transmittance() {
        return 1 / resistance().squareMeterKelvinsPerWatt();
    }

    /**
     * The density of heat flow in the steady state: {@code q = (T₁ − T₂)/R} (ISO 7345:2018).
     *
     * @param warm the temperature inside
     * @param cold the temperature outside
     * @return the density of heat flow outwards in W/m²; less than zero if it is colder inside
     */
    public double heatFlux(Temperature warm, Temperature cold) {
        return warm.minus(cold).kelvins() / resistance().squareMeterKelvinsPerWatt();
    }

    /**
     * The temperatures of all faces in the steady state, from the inside out. Across each layer the temperature falls in
     * proportion to that layer’s share of the whole resistance.
     *
     * @param warm the temperature inside, before its surface resistance
     * @param cold the temperature outside, beyond its surface resistance
     * @return one temperature more than there are layers: the innermost face, those between the layers, the outermost face
     */
    public List<Temperature> faces(Temperature warm, Temperature cold) {
        double flux = heatFlux(warm, cold);
        List<Temperature> faces = new ArrayList<>();
        ThermalResistance passed = inside;
        faces.add(after(passed, warm, flux));
        for (ThermalResistance each : resistances()) {
            passed = passed.plus(each);
            faces.add(after(passed, warm, flux));
        }
        return List.copyOf(faces);
    }

    private static Temperature after(ThermalResistance passed, Temperature warm, double flux) {
        return warm.plus(new TemperatureDifference(-flux * passed.squareMeterKelvinsPerWatt()));
    }
}
