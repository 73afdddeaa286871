package org.snugsheet.engine.jar;

import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Temperature;

/** The cooling constant that a design should give. */
public final class ExpectedCooling {

    private ExpectedCooling() {}

    /**
     * The cooling constant of a wrapped jar at one temperature, {@code k = P/(C·(T − Tₛ))}: heat loss over heat capacity and
     * difference (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 5.1). The films grow thinner with
     * the difference, so k falls a little as the jar cools: ask at the mean temperature of the lesson. What the wrap itself
     * holds of heat is left out.
     *
     * @param design how the jar is wrapped
     * @param water what is in it, as warm as it is
     * @param surroundings how warm it is where the jar stands
     * @return the cooling constant
     * @throws Refusal if both are equally warm, or the place cannot be so warm
     */
    public static CoolingConstant of(Design design, WaterBody water, Temperature surroundings) {
        double watts = design.between(water.temperature(), surroundings).watts();
        double difference = water.temperature().minus(surroundings).kelvins();
        return new CoolingConstant(watts / (water.heatCapacity().joulesPerKelvin() * difference));
    }
}
