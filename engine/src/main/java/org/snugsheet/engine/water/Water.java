package org.snugsheet.engine.water;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Mass;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Volume;

/**
 * Liquid water from 0 °C to 100 °C under the air’s pressure.
 *
 * <p>Source: IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa. The release is valid
 * from −20 °C to 110 °C, but below 0 °C and above 100 °C for metastable water; a jar in a classroom holds none, so these
 * temperatures are refused. At one atmosphere instead of 0.1 MPa the water is denser by less than 0.001 kg/m³, and its
 * specific heat changes in the sixth digit.
 *
 * <pre>{@code
 * Water.mass(Volume.of(250, Unit.MILLILITER), new Temperature(40));   // 0.24805 kg, not 0.25
 * Water.specificHeat(new Temperature(40));                            // 4179.4 J/(kg·K)
 * Water.density(new Temperature(-5));                                 // refused: that is ice
 * }</pre>
 */
public final class Water {

    /** Below this water is ice, at one atmosphere. */
    public static final Temperature FREEZES = new Temperature(0);

    /** Above this water is steam, at one atmosphere. */
    public static final Temperature BOILS = new Temperature(100);

    private Water() {}

    /**
     * The density.
     *
     * @param temperature from 0 °C to 100 °C
     * @return kg/m³
     * @throws InvalidInputException if the water would be ice or steam
     */
    public static double density(Temperature temperature) {
        return LiquidWater.density(kelvins(temperature));
    }

    /**
     * The specific heat at constant pressure.
     *
     * @param temperature from 0 °C to 100 °C
     * @return J/(kg·K)
     * @throws InvalidInputException if the water would be ice or steam
     */
    public static double specificHeat(Temperature temperature) {
        return LiquidWater.specificHeat(kelvins(temperature));
    }

    /**
     * The heat that each kilogram gives off between two temperatures: the difference in enthalpy, which is the integral of
     * the specific heat.
     *
     * @param from the initial temperature, from 0 °C to 100 °C
     * @param to the final temperature, from 0 °C to 100 °C
     * @return J/kg, negative if the water takes heat up
     * @throws InvalidInputException if the water would be ice or steam
     */
    public static double heatGivenOff(Temperature from, Temperature to) {
        return LiquidWater.enthalpy(kelvins(from)) - LiquidWater.enthalpy(kelvins(to));
    }

    /**
     * The mass of a volume of water.
     *
     * @param volume as read off at that temperature
     * @param temperature from 0 °C to 100 °C
     * @return its mass
     * @throws InvalidInputException if the water would be ice or steam
     */
    public static Mass mass(Volume volume, Temperature temperature) {
        return new Mass(volume.cubicMeters() * density(temperature));
    }

    /**
     * The dynamic viscosity.
     *
     * @param temperature from 0 °C to 100 °C
     * @return Pa·s
     * @throws InvalidInputException if the water would be ice or steam
     */
    public static double viscosity(Temperature temperature) {
        return LiquidWater.viscosity(kelvins(temperature));
    }

    /**
     * The thermal conductivity.
     *
     * @param temperature from 0 °C to 100 °C
     * @return W/(m·K)
     * @throws InvalidInputException if the water would be ice or steam
     */
    public static double conductivity(Temperature temperature) {
        return LiquidWater.conductivity(kelvins(temperature));
    }

    private static double kelvins(Temperature temperature) {
        if (temperature.celsius() < FREEZES.celsius()) {
            throw refusal(Problem.WATER_FROZEN, temperature);
        }
        if (temperature.celsius() > BOILS.celsius()) {
            throw refusal(Problem.WATER_BOILED, temperature);
        }
        return temperature.in(Scale.KELVIN);
    }

    private static InvalidInputException refusal(Problem problem, Temperature temperature) {
        return InvalidInputException.of(problem, temperature.celsius(), temperature.in(Scale.FAHRENHEIT));
    }
}
