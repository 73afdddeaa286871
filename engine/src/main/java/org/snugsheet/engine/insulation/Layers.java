package org.snugsheet.engine.insulation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Unit;

/**
 * Layers on top of each other, counted from the inside out, independent of the shape they are wrapped around.
 *
 * <p>Numbers typed by a class are passed to {@code with}, which refuses an invalid one and names its layer:
 *
 * <pre>{@code
 * Layers.NONE.with(3, "wool").with(0.5, "newspaper").with(10, 0.035);
 * Layers.NONE.with(3, "wool").with(-1, "felt"); // refused: layer 2
 * }</pre>
 *
 * @param fromInside the layers, the innermost first
 */
public record Layers(List<Layer> fromInside) {

    /** No layer at all. */
    public static final Layers NONE = new Layers(List.of());

    /** Layers that nobody can change any more. */
    public Layers {
        fromInside = List.copyOf(fromInside);
    }

    /**
     * These layers and one more outside of them.
     *
     * @param layer the new outermost layer
     * @return all of them
     */
    public Layers with(Layer layer) {
        List<Layer> more = new ArrayList<>(fromInside);
        more.add(layer);
        return new Layers(more);
    }

    /**
     * These layers and one more outside of them, of known conductivity.
     *
     * @param millimeters its thickness in mm
     * @param wattsPerMeterKelvin its conductivity in W/(m·K)
     * @return all of them
     * @throws InvalidInputException naming the layer, if a number is NaN, infinite, zero or less
     */
    public Layers with(double millimeters, double wattsPerMeterKelvin) {
        Length thickness = thickness(millimeters);
        return with(new Layer(thickness, new Conductivity(positive(wattsPerMeterKelvin, QuantityName.CONDUCTIVITY))));
    }

    /**
     * These layers and one more outside of them, of a material with its typical conductivity, or an
     * {@linkplain AirGap air gap}. A layer of air is an air gap as well, in any language, because of convection and
     * radiation.
     *
     * @param millimeters its thickness in mm
     * @param material the name of a material, as {@link Materials#find(String)} takes it, or {@code air gap}
     * @return all of them
     * @throws InvalidInputException naming the layer, if the thickness is NaN, infinite, zero or less, or the material is unknown
     */
    public Layers with(double millimeters, String material) {
        Length thickness = thickness(millimeters);
        if (AirGap.isMeantBy(material)) {
            return with(AirGap.upright(thickness));
        }
        Material found = Materials.findForLayer(material, nextNumber());
        return with(AirGap.isMadeOf(found) ? AirGap.upright(thickness) : Layer.of(thickness, found));
    }

    /**
     * The layers after the same change to each.
     *
     * @param change the change
     * @return the changed layers, in the same order
     */
    public Layers each(UnaryOperator<Layer> change) {
        return new Layers(fromInside.stream().map(change).toList());
    }

    /**
     * These layers as they are in a tub of water: from the outside in, each that water can enter is soaked, as far as the
     * first that it cannot. The water is assumed to find no way around that one, at its seams or from above (common practice,
     * no source). A layer of unnamed conductivity stays as it was typed, and keeps nothing dry.
     *
     * @return the layers in water
     */
    public Layers inWater() {
        List<Layer> wet = new ArrayList<>(fromInside);
        for (int i = wet.size() - 1; i >= 0 && !wet.get(i).keepsWaterOut(); i--) {
            wet.set(i, wet.get(i).soaked());
        }
        return new Layers(wet);
    }

    /**
     * Their total thickness.
     *
     * @return meters; zero without layers
     */
    public double metersThick() {
        return fromInside.stream()
                .mapToDouble(layer -> layer.thickness().meters())
                .sum();
    }

    private Length thickness(double millimeters) {
        return Length.of(positive(millimeters, QuantityName.THICKNESS), Unit.MILLIMETER);
    }

    private double positive(double value, QuantityName what) {
        if (!Double.isFinite(value)) {
            throw InvalidInputException.atItem(nextNumber(), Problem.LAYER_NOT_A_NUMBER, what);
        }
        if (value <= 0) {
            throw InvalidInputException.atItem(nextNumber(), Problem.LAYER_NOT_POSITIVE, what, value);
        }
        return value;
    }

    private int nextNumber() {
        return fromInside.size() + 1;
    }
}
