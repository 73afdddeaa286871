package org.snugsheet.engine.jar;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Temperature;

/** The cooling constant that a design should give. */
public final class ExpectedCooling {

    private ExpectedCooling() {}

    /**
     * The cooling constant of a wrapped jar at one temperature, {@code k = G/C}: its {@linkplain HeatFlow#conductance()
     * conductance}, all paths side by side, over heat capacity (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer,
     * section 5.1). The films grow thinner with the difference, so k falls a little as the jar cools: ask at the mean temperature
     * of the lesson. What the wrap itself holds of heat is left out.
     *
     * <p>In a tub the jar cools toward {@link HeatFlow#end()} with this constant. Readings show it if that is given as their
     * surroundings; with the tub’s own temperature in its place they show {@code k·(T − Tₑ)/(T − Tₛ)} about the mean T, up to a
     * fifth less for a jar that is wrapped well.
     *
     * @param design how the jar is wrapped
     * @param water what is in it, as warm as it is
     * @param surroundings how warm it is where the jar stands
     * @return the cooling constant
     * @throws InvalidInputException if both are equally warm, or the place cannot be so warm
     */
    public static CoolingConstant of(Design design, WaterBody water, Temperature surroundings) {
        double conductance = design.between(water.temperature(), surroundings).conductance();
        return new CoolingConstant(conductance / water.heatCapacity().joulesPerKelvin());
    }
}
