package org.snugsheet.engine.jar;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Temperature;

/** The cooling constant that a design should give. */
public final class ExpectedCooling {

    private ExpectedCooling() {}

    /**
     * The cooling constant of a wrapped jar at one temperature, {@code k = G/C}: its total
     * {@linkplain HeatFlow#conductance() conductance} divided by its heat capacity (Incropera and DeWitt, Fundamentals of
     * Heat and Mass Transfer, section 5.1). The films get thinner with a larger difference, so k decreases slightly as the
     * jar cools: use the mean temperature of the lesson. The heat capacity of the wrap itself is neglected.
     *
     * <p>In a tub the jar cools toward {@link HeatFlow#end()} with this constant. Readings show that constant if this
     * temperature is given as the surroundings; with the temperature of the tub they show {@code k·(T − Tₑ)/(T − Tₛ)} about
     * the mean T, up to a fifth less for a well-wrapped jar.
     *
     * @param design how the jar is wrapped
     * @param water the water in it, at its temperature
     * @param surroundings the temperature of its place
     * @return the cooling constant
     * @throws InvalidInputException if both temperatures are equal, or the place cannot have that temperature
     */
    public static CoolingConstant of(Design design, WaterBody water, Temperature surroundings) {
        double conductance = design.between(water.temperature(), surroundings).conductance();
        return new CoolingConstant(conductance / water.heatCapacity().joulesPerKelvin());
    }
}
