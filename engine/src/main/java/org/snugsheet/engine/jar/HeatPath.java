package org.snugsheet.engine.jar;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.water.Water;

/**
 * One heat path out of a jar in the steady state: the same heat crosses the film inside, every layer, and the film outside.
 *
 * @param flux heat flow per area of the inner surface, W/m²
 * @param resistances those of the film inside, of each layer, and of the film outside, referred to the inner surface
 * @param faces the temperatures of the water, of the innermost surface, between the layers, of the outermost surface, and of
 *     the surroundings: one more than there are resistances
 */
public record HeatPath(double flux, List<ThermalResistance> resistances, List<Temperature> faces) {

    /** Changes smaller than this share of the total resistance are ignored. */
    private static final double SETTLED = 1e-13;

    private static final int MOST_STEPS = 60;

    /** A path. */
    public HeatPath {
        resistances = List.copyOf(resistances);
        faces = List.copyOf(faces);
    }

    /**
     * The total resistance.
     *
     * @return referred to the inner surface
     */
    public ThermalResistance resistance() {
        return resistances.stream().reduce(ThermalResistance.NONE, ThermalResistance::plus);
    }

    /**
     * Iterates film resistances and surface temperatures to a fixed point. Films depend only weakly on the temperature
     * difference, so that a few iterations suffice. Only water near 4 °C, where its buoyancy changes sign, can oscillate;
     * then the balance is bracketed.
     *
     * @param widening how many times larger the outer surface is than the inner
     */
    static HeatPath solveSteadyState(
            Film inside,
            List<ThermalResistance> layers,
            Film outside,
            double widening,
            Temperature water,
            Temperature surroundings) {
        double difference = water.minus(surroundings).kelvins();
        double ofLayers = layers.stream()
                .mapToDouble(ThermalResistance::squareMeterKelvinsPerWatt)
                .sum();
        Temperature middle = new Temperature((water.celsius() + surroundings.celsius()) / 2);
        double within = si(inside.between(water, water));
        double without = si(outside.between(middle, surroundings)) / widening;
        for (int step = 0; step < MOST_STEPS; step++) {
            double total = within + ofLayers + without;
            double flux = difference / total;
            double nextWithin = si(inside.between(liquid(cooler(water, flux * within), water), water));
            double nextWithout = si(outside.between(cooler(surroundings, -flux * without), surroundings)) / widening;
            double change = Math.abs(nextWithin - within) + Math.abs(nextWithout - without);
            within = nextWithin;
            without = nextWithout;
            if (change <= SETTLED * total) {
                // Refuses a surface whose final temperature is below freezing.
                inside.between(cooler(water, flux * within), water);
                return path(within, layers, without, water, surroundings);
            }
        }
        double outermost = new Balance(inside, ofLayers, outside, widening, water, surroundings).outermost();
        without = si(outside.between(new Temperature(outermost), surroundings)) / widening;
        double innermost = outermost + (outermost - surroundings.celsius()) / without * ofLayers;
        return path(si(inside.between(new Temperature(innermost), water)), layers, without, water, surroundings);
    }

    /** The heat that arrives at the outermost surface less the heat that leaves it, for a film with a resistance. */
    private record Balance(
            Film inside, double ofLayers, Film outside, double widening, Temperature water, Temperature surroundings) {

        private static final double CLOSE = 1e-14;

        double outermost() {
            double low = Math.min(surroundings.celsius(), water.celsius());
            double high = Math.max(surroundings.celsius(), water.celsius());
            return new BracketingNthOrderBrentSolver(CLOSE, CLOSE, 5).solve(MOST_STEPS * 10, this::left, low, high);
        }

        /** The surplus of the temperature drop available to the inside film, for a given temperature of the outermost surface. */
        private double left(double surface) {
            double without = si(outside.between(new Temperature(surface), surroundings)) / widening;
            double flux = (surface - surroundings.celsius()) / without;
            double innermost = surface + flux * ofLayers;
            double left = water.celsius() - innermost;
            // A surface as warm as the water is no balance: through its film, which then is at rest, heat would have to
            // go.
            boolean passed = left * (water.celsius() - surroundings.celsius()) < 0;
            return passed ? left : left - flux * si(inside.between(liquid(new Temperature(innermost), water), water));
        }
    }

    private static HeatPath path(
            double within,
            List<ThermalResistance> layers,
            double without,
            Temperature water,
            Temperature surroundings) {
        List<ThermalResistance> all = new ArrayList<>();
        all.add(new ThermalResistance(within));
        all.addAll(layers);
        all.add(new ThermalResistance(without));
        double total = all.stream()
                .mapToDouble(ThermalResistance::squareMeterKelvinsPerWatt)
                .sum();
        double flux = water.minus(surroundings).kelvins() / total;
        List<Temperature> faces = new ArrayList<>();
        faces.add(water);
        double passed = 0;
        for (ThermalResistance each : all.subList(0, all.size() - 1)) {
            passed += each.squareMeterKelvinsPerWatt();
            faces.add(cooler(water, flux * passed));
        }
        faces.add(surroundings);
        return new HeatPath(flux, all, faces);
    }

    /** During the iteration a surface may seem to be below freezing although its final temperature is not. */
    private static Temperature liquid(Temperature surface, Temperature water) {
        return surface.compareTo(Water.FREEZES) < 0 && water.compareTo(Water.FREEZES) >= 0 ? Water.FREEZES : surface;
    }

    private static Temperature cooler(Temperature than, double kelvins) {
        return than.plus(new TemperatureDifference(-kelvins));
    }

    private static double si(ThermalResistance resistance) {
        return resistance.squareMeterKelvinsPerWatt();
    }
}
