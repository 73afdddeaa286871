package org.snugsheet.office.sheets.shared;

import java.util.List;
import java.util.Random;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.insulation.FlatWrap;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;

/**
 * Readings that nobody took: each jar follows Newton’s law with the cooling constant that its wrap would give it, and the
 * thermometer is a little off and is read to a whole mark.
 *
 * <p>The constant is {@code A/(C·R)}, the heat that passes the area of the jar for each kelvin over the heat it holds for each
 * kelvin, with the resistances of wrap and air film in series. Area, heat and film are those of a small jar of jam with a
 * teacup of water in it: invented, as everything here.
 *
 * @param surroundings the temperature around the jars
 * @param start how warm the water is when the clock starts
 * @param mark degrees Celsius from one line of the thermometer to the next
 * @param seed decides the errors of the thermometer, the same on every machine
 */
public record InventedReadings(Temperature surroundings, Temperature start, double mark, long seed) {

    private static final double SQUARE_METRES = 0.018;
    private static final double JOULES_PER_KELVIN = 730;
    private static final ThermalResistance AIR_FILM = new ThermalResistance(0.1);
    private static final double THERMOMETER_ERROR = 0.3;
    private static final double SECONDS_PER_MINUTE = 60;

    /**
     * The readings of one jar.
     *
     * @param jar the jar
     * @param minutes when the thermometer is read
     * @return what it reads, in degrees Celsius
     */
    public double[] of(ExampleJar jar, List<Integer> minutes) {
        Layers layers = jar.wrap()
                .map(wrap -> Layers.NONE.with(wrap.millimeters(), wrap.material()))
                .orElse(Layers.NONE);
        double resistance = new FlatWrap(layers, ThermalResistance.NONE, AIR_FILM)
                .resistance()
                .squareMeterKelvinsPerWatt();
        return of(jar.name(), new CoolingConstant(SQUARE_METRES / (JOULES_PER_KELVIN * resistance)), minutes);
    }

    /**
     * The readings of a jar that cools as it is told.
     *
     * @param name of the jar; it decides the errors too
     * @param constant how fast it cools
     * @param minutes when the thermometer is read
     * @return what it reads, in degrees Celsius
     */
    public double[] of(String name, CoolingConstant constant, List<Integer> minutes) {
        NewtonCooling cooling = new NewtonCooling(start, surroundings, constant);
        // Random, because its series of numbers is written down in its documentation; a seed of its own for each jar,
        // so
        // that one more jar leaves the others as they are.
        Random chance = new Random(seed + name.hashCode());
        return minutes.stream()
                .mapToDouble(
                        minute -> cooling.after(minute * SECONDS_PER_MINUTE).celsius())
                .map(celsius -> celsius + THERMOMETER_ERROR * chance.nextGaussian())
                .map(celsius -> mark * Math.rint(celsius / mark))
                .toArray();
    }
}
