package org.snugsheet.engine.surface;

import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.water.Vapor;

/**
 * The open surface of water in still air: free convection and radiation as on a lid, and evaporation.
 *
 * <p>Vapor is carried off by the same airflow as heat, so its coefficient follows from that of convection:
 * {@code hₘ = h/(ρ·c·Le^(2/3))} with {@code Le = a/D} (Chilton and Colburn, Ind. Eng. Chem. 26 (1934), 1183; Incropera and
 * DeWitt, section 6.7). D is {@code 1.87·10⁻¹⁰·T^2.072} m²/s at one atmosphere (Marrero and Mason, J. Phys. Chem. Ref. Data 1
 * (1972), 3). Moist air is lighter than dry air, {@code ρ = (p − 0.378·e)/(R·T)}, which drives the flow too. The thickening
 * of the film by the vapor itself is neglected: 2 % at 30 °C, 4 % at 40 °C.
 */
public final class OpenWater {

    private static final double GAS_CONSTANT_OF_VAPOR = 461.5;

    /** Of water at 300 K; Incropera and DeWitt, Table A.11 (from memory). */
    private static final double EMISSIVITY = 0.96;

    private OpenWater() {}

    /**
     * The heat it gives off.
     *
     * @param diameter of the surface
     * @param surface the temperature of the surface
     * @param air the temperature of the room
     * @param humidity the relative humidity of the room, from 0 to 1
     * @return W/m², all three ways together
     */
    public static double flux(Length diameter, Temperature surface, Temperature air, double humidity) {
        double convection = convection(diameter, surface, air, humidity);
        double radiation = Radiation.coefficient(surface, air, EMISSIVITY);
        return (convection + radiation) * surface.minus(air).kelvins()
                + evaporation(convection, surface, air, humidity);
    }

    /** The coefficient of convection, W/(m²·K). */
    static double convection(Length diameter, Temperature surface, Temperature air, double humidity) {
        Fluid film = Fluid.airBetween(surface, air);
        double above = Fluid.densityOfMoistAir(surface, Vapor.pressure(surface));
        double around = Fluid.densityOfMoistAir(air, humidity * Vapor.pressure(air));
        Face face = new Face(Orientation.UP, diameter, diameter, EMISSIVITY);
        double grashof = film.grashof(Math.abs(above - around) * 2 / (above + around), face.length());
        return FreeFilm.nusselt(face, film.prandtl(), grashof, above <= around) * film.conductivity() / face.length();
    }

    /** The heat that evaporation takes at a coefficient of convection, W/m²; negative where vapor condenses. */
    static double evaporation(double convection, Temperature surface, Temperature air, double humidity) {
        double kelvins = (surface.in(Scale.KELVIN) + air.in(Scale.KELVIN)) / 2;
        Fluid film = Fluid.air(kelvins);
        double lewis = film.diffusivity() / (1.87e-10 * Math.pow(kelvins, 2.072));
        double heatHeld = film.conductivity() / film.diffusivity();
        double carried = convection / (heatHeld * Math.cbrt(lewis * lewis));
        return carried * (vaporDensity(surface, 1) - vaporDensity(air, humidity)) * Vapor.heat(surface);
    }

    private static double vaporDensity(Temperature temperature, double humidity) {
        return humidity * Vapor.pressure(temperature) / (GAS_CONSTANT_OF_VAPOR * temperature.in(Scale.KELVIN));
    }
}
