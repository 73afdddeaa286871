package org.snugsheet.engine.jar;

import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.surface.Face;
import org.snugsheet.engine.surface.OpenWater;
import org.snugsheet.engine.surface.Orientation;
import org.snugsheet.engine.surface.StillAir;
import org.snugsheet.engine.surface.StillWater;
import org.snugsheet.engine.table.Keywords;
import org.snugsheet.engine.water.Water;

/** The top of a jar in still air, and the heat lost there. */
public sealed interface Lid {

    /** A thin lid with nothing on it. */
    Lid BARE = new Closed(ThermalResistance.NONE);

    /** No lid: the water lies open to a room. */
    Lid OPEN = new Open();

    /** The relative humidity of a room (common practice, no source). */
    double USUAL_HUMIDITY = 0.5;

    /**
     * The heat lost through it.
     *
     * @param jar the water
     * @param water its temperature
     * @param air the temperature of the room
     * @return W, negative if heat comes in
     * @throws InvalidInputException if both temperatures are equal, or the water would be ice or steam
     */
    double watts(Jar jar, Temperature water, Temperature air);

    /**
     * Finds a lid by its word.
     *
     * @param text {@code open} or {@code none}, {@code bare} or {@code thin}, or a {@linkplain Keywords#LID word of another
     *     language}; case does not matter
     * @return the lid
     * @throws InvalidInputException if it is not one of them
     */
    static Lid parse(String text) {
        return switch (Keywords.LID.plain(text)) {
            case "open", "none", "no", "no lid" -> OPEN;
            case "bare", "thin", "lid", "yes" -> BARE;
            default -> throw InvalidInputException.of(Problem.UNKNOWN_LID, text);
        };
    }

    /**
     * A thin lid with a cover, which lets no vapor out.
     *
     * @param cover the resistance of what covers it, without its surfaces
     */
    record Closed(ThermalResistance cover) implements Lid {

        @Override
        public double watts(Jar jar, Temperature water, Temperature air) {
            Design design = new Design(jar, Layers.NONE, cover, ThermalResistance.NONE, new StillAir());
            return design.between(water, air).lid().flux() * jar.endArea();
        }
    }

    /** Open water, whose surface is slightly colder than the water below: {@link OpenWater}, and a film as at the jar’s side. */
    record Open() implements Lid {

        private static final double CLOSE = 1e-10;

        private static final int MOST_STEPS = 200;

        @Override
        public double watts(Jar jar, Temperature water, Temperature air) {
            if (water.equals(air)) {
                throw InvalidInputException.of(Problem.NO_DIFFERENCE);
            }
            Length diameter = new Length(2 * jar.radius().meters());
            Temperature surface = surface(jar, diameter, water, air).orElse(water);
            return OpenWater.flux(diameter, surface, air, USUAL_HUMIDITY) * jar.endArea();
        }

        /**
         * The surface temperature at which the heat from below equals the heat lost; empty if it is below 0 °C or above that
         * of the water.
         */
        private static Optional<Temperature> surface(Jar jar, Length diameter, Temperature water, Temperature air) {
            Face inside = new Face(Orientation.SIDE, jar.height(), diameter, Face.USUAL_EMISSIVITY);
            UnivariateFunction left = celsius -> {
                Temperature surface = new Temperature(celsius);
                double film =
                        new StillWater().resistance(inside, surface, water).squareMeterKelvinsPerWatt();
                return water.minus(surface).kelvins() - film * OpenWater.flux(diameter, surface, air, USUAL_HUMIDITY);
            };
            double low = Water.FREEZES.celsius();
            double high = water.celsius();
            return left.value(low) * left.value(high) < 0
                    ? Optional.of(new Temperature(
                            new BracketingNthOrderBrentSolver(CLOSE, CLOSE, 5).solve(MOST_STEPS, left, low, high)))
                    : Optional.empty();
        }
    }
}
