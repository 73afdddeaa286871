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
 * Layers one on the other, counted from the inside out, whatever the shape they are wrapped round.
 *
 * <p>Numbers as they come from a class are given to {@code with}, which refuses a bad one by the number of its layer:
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
     * @param millimetres its thickness in mm
     * @param wattsPerMetreKelvin its conductivity in W/(m·K)
     * @return all of them
     * @throws InvalidInputException naming the layer, if a number is NaN, infinite, zero or less
     */
    public Layers with(double millimetres, double wattsPerMetreKelvin) {
        Length thickness = thickness(millimetres);
        return with(new Layer(thickness, new Conductivity(positive(wattsPerMetreKelvin, QuantityName.CONDUCTIVITY))));
    }

    /**
     * These layers and one more outside of them, of a material with its typical conductivity, or an {@linkplain AirGap air
     * gap}. A layer of air is one too, whatever the language of its name: it turns over, and heat is radiated through it.
     *
     * @param millimetres its thickness in mm
     * @param material the name of a material, as {@link Materials#find(String)} takes it, or {@code air gap}
     * @return all of them
     * @throws InvalidInputException naming the layer, if the thickness is NaN, infinite, zero or less, or the material is unknown
     */
    public Layers with(double millimetres, String material) {
        Length thickness = thickness(millimetres);
        if (AirGap.isMeantBy(material)) {
            return with(AirGap.upright(thickness));
        }
        Material found = Materials.findForLayer(material, nextNumber());
        return with(AirGap.isMadeOf(found) ? AirGap.upright(thickness) : Layer.of(thickness, found));
    }

    /**
     * Every layer changed in the same way.
     *
     * @param change what becomes of each
     * @return the changed layers, in the same order
     */
    public Layers each(UnaryOperator<Layer> change) {
        return new Layers(fromInside.stream().map(change).toList());
    }

    /**
     * These layers as they are in a tub of water: from the outside in, each that water can enter is soaked, as far as the first
     * that it cannot. The water is taken to find no way round that one, at its seams or from above (common practice, no source).
     * A layer of unnamed conductivity stays as it was typed, and keeps nothing dry.
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
     * How thick they are together.
     *
     * @return metres; zero for no layer
     */
    public double metresThick() {
        return fromInside.stream()
                .mapToDouble(layer -> layer.thickness().metres())
                .sum();
    }

    private Length thickness(double millimetres) {
        return Length.of(positive(millimetres, QuantityName.THICKNESS), Unit.MILLIMETRE);
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
