package org.snugsheet.engine.surface;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.water.Water;

/**
 * The properties of a film of air or water at its mean temperature.
 *
 * @param conductivity W/(m·K)
 * @param kinematicViscosity m²/s
 * @param diffusivity thermal diffusivity, m²/s
 */
record Fluid(double conductivity, double kinematicViscosity, double diffusivity) {

    private static final double STANDARD_GRAVITY = 9.80665;

    /** Sea-level pressure of the U.S. Standard Atmosphere, Pa, and its gas constant of air, J/(kg·K). */
    private static final double PRESSURE = 101_325;

    private static final double GAS_CONSTANT = 287.053;

    private static final double COLDEST = 200;
    private static final double HOTTEST = 400;

    /** J/(kg·K) at 300 K; Incropera and DeWitt, Table A.4 (from memory). It changes by 0.2 % from 250 K to 350 K. */
    private static final double AIR_SPECIFIC_HEAT = 1007;

    /**
     * Dry air at sea level. Viscosity and conductivity: U.S. Standard Atmosphere, 1976, equations (51) and (53) (from
     * memory), from 200 K to 400 K: there they agree with Incropera and DeWitt, Table A.4, to 1 % (from memory).
     *
     * @throws InvalidInputException if it is colder or hotter
     */
    static Fluid air(double kelvins) {
        if (!(kelvins >= COLDEST && kelvins <= HOTTEST)) {
            throw InvalidInputException.of(Problem.AIR_OUT_OF_RANGE, kelvins + Temperature.ABSOLUTE_ZERO);
        }
        double density = airDensity(kelvins);
        double viscosity = 1.458e-6 * Math.pow(kelvins, 1.5) / (kelvins + 110.4);
        double conductivity = 2.64638e-3 * Math.pow(kelvins, 1.5) / (kelvins + 245.4 * Math.pow(10, -12 / kelvins));
        return new Fluid(conductivity, viscosity / density, conductivity / (density * AIR_SPECIFIC_HEAT));
    }

    /** Liquid water (IAPWS SR6-08). */
    static Fluid water(Temperature temperature) {
        double density = Water.density(temperature);
        double conductivity = Water.conductivity(temperature);
        return new Fluid(
                conductivity,
                Water.viscosity(temperature) / density,
                conductivity / (density * Water.specificHeat(temperature)));
    }

    /** Dry air between two temperatures. */
    static Fluid airBetween(Temperature one, Temperature other) {
        return air((one.in(Scale.KELVIN) + other.in(Scale.KELVIN)) / 2);
    }

    /** Water between two temperatures. */
    static Fluid waterBetween(Temperature one, Temperature other) {
        return water(new Temperature((one.celsius() + other.celsius()) / 2));
    }

    /** The relative difference in density of air at two temperatures; zero or positive. */
    static double buoyancyOfAir(Temperature one, Temperature other) {
        double a = airDensity(one.in(Scale.KELVIN));
        double b = airDensity(other.in(Scale.KELVIN));
        return Math.abs(a - b) * 2 / (a + b);
    }

    /** The density of moist air at sea level, with a vapor pressure in Pa; vapor weighs 0.622 of the air it replaces; kg/m³. */
    static double densityOfMoistAir(Temperature temperature, double vapor) {
        return airDensity(temperature.in(Scale.KELVIN)) * (1 - 0.378 * vapor / PRESSURE);
    }

    /**
     * As {@link #buoyancyOfAir}, from water’s densities themselves: its expansion changes sign at 4 °C, so that a film
     * between 2 °C and 6 °C hardly moves.
     */
    static double buoyancyOfWater(Temperature one, Temperature other) {
        double a = Water.density(one);
        double b = Water.density(other);
        return Math.abs(a - b) * 2 / (a + b);
    }

    double prandtl() {
        return kinematicViscosity / diffusivity;
    }

    double grashof(double buoyancy, double meters) {
        return STANDARD_GRAVITY * buoyancy * Math.pow(meters, 3) / (kinematicViscosity * kinematicViscosity);
    }

    private static double airDensity(double kelvins) {
        return PRESSURE / (GAS_CONSTANT * kelvins);
    }
}
