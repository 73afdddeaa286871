package org.snugsheet.engine.insulation;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * Layers around a cylinder: the side of a jar, a pipe, an arm.
 *
 * <p>A layer from radius r₁ to r₂ has the resistance {@code r·ln(r₂/r₁)/λ} for each square meter at the radius r, and that of
 * a surface at r₂ is multiplied by {@code r/r₂}, because its area is larger. Source: ISO 12241:2008, 4.1.2 (from memory), and
 * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 3.3.1. All resistances here are referred to the
 * innermost surface.
 *
 * <pre>{@code
 * RoundWrap wrap = RoundWrap.of(Length.of(40, Unit.MILLIMETER), Layers.NONE.with(10, "wool"));
 * wrap.resistance();     // less than that of the same layer lying flat
 * wrap.outerRadius();    // 50 mm
 * }</pre>
 *
 * @param radius of the innermost surface
 * @param layers the layers from the inside out
 * @param inside the resistance of the inside surface
 * @param outside the resistance of the outside surface, for each square meter of the outermost surface
 */
public record RoundWrap(Length radius, Layers layers, ThermalResistance inside, ThermalResistance outside)
        implements Wrap {

    /**
     * A wrap around a cylinder.
     *
     * @throws InvalidInputException if there is neither a layer nor a surface resistance: nothing would keep heat in
     */
    public RoundWrap {
        if (layers.fromInside().isEmpty()
                && inside.equals(ThermalResistance.NONE)
                && outside.equals(ThermalResistance.NONE)) {
            throw InvalidInputException.of(Problem.NO_LAYERS);
        }
    }

    /**
     * Layers from face to face, with no surface resistance.
     *
     * @param radius of the innermost surface
     * @param layers the layers
     * @return the wrap
     * @throws InvalidInputException if there is no layer
     */
    public static RoundWrap of(Length radius, Layers layers) {
        return new RoundWrap(radius, layers, ThermalResistance.NONE, ThermalResistance.NONE);
    }

    @Override
    public ThermalResistance resistance() {
        ThermalResistance sum = inside;
        for (ThermalResistance each : resistances()) {
            sum = sum.plus(each);
        }
        return sum.plus(new ThermalResistance(outside.squareMeterKelvinsPerWatt()
                * radius.meters()
                / outerRadius().meters()));
    }

    /**
     * The resistance of each layer alone.
     *
     * @return one for each layer, the innermost first, referred to the innermost surface; the surfaces are not among them
     */
    public List<ThermalResistance> resistances() {
        List<ThermalResistance> resistances = new ArrayList<>();
        double from = radius.meters();
        for (Layer layer : layers.fromInside()) {
            double thickness = layer.thickness().meters();
            resistances.add(new ThermalResistance(radius.meters()
                    * Math.log1p(thickness / from)
                    / layer.conductivity().wattsPerMeterKelvin()));
            from += thickness;
        }
        return List.copyOf(resistances);
    }

    /**
     * The outer radius of the wrap.
     *
     * @return the radius of its outermost surface
     */
    public Length outerRadius() {
        return new Length(radius.meters() + layers.metersThick());
    }

    /**
     * The heat that one meter of the cylinder loses in the steady state, {@code q = 2·π·r·(T₁ − T₂)/R}.
     *
     * @param kelvins the temperature difference, inside less outside
     * @return W/m
     */
    public double heatFlowPerMeter(double kelvins) {
        return 2 * Math.PI * radius.meters() * kelvins / resistance().squareMeterKelvinsPerWatt();
    }
}
