package org.snugsheet.engine.heat;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Mass;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.water.Water;

/**
 * Water in its vessel, both at one temperature: a jar, a tub.
 *
 * <p>The volume is the one read at the given temperature; the mass follows from the density there and is constant. The heat
 * is {@code Q = m·(h(T) − h(T′)) + C·(T − T′)}: the difference in enthalpy is the integral of the specific heat, which
 * changes with temperature, and C is the vessel’s own heat capacity (Çengel and Boles, Thermodynamics: An Engineering
 * Approach, section 4-5, from memory).
 *
 * <pre>{@code
 * WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
 * jar.heatGivenOff(new Temperature(20));                                   // 20745 J
 * jar.withVessel(VesselMaterial.GLASS.heatCapacity(Mass.of(200, Unit.GRAM)))
 *         .heatGivenOff(new Temperature(20));                              // 3360 J more
 * jar.heatGivenOff(new Temperature(-5));                                   // refused: it would be ice
 * }</pre>
 *
 * @param volume how much water, as read off at that temperature
 * @param temperature the temperature of water and vessel, from 0 °C to 100 °C
 * @param vessel the heat capacity of the vessel; {@link HeatCapacity#NONE} leaves it out
 */
public record WaterBody(Volume volume, Temperature temperature, HeatCapacity vessel) implements Body {

    /**
     * Water in its vessel.
     *
     * @throws InvalidInputException if the water would be ice or steam
     */
    public WaterBody {
        Water.mass(volume, temperature);
    }

    /**
     * Water in a vessel so light that it does not count.
     *
     * @param volume how much water, as read off at that temperature
     * @param temperature its temperature, from 0 °C to 100 °C
     * @return the water
     * @throws InvalidInputException if it would be ice or steam
     */
    public static WaterBody of(Volume volume, Temperature temperature) {
        return new WaterBody(volume, temperature, HeatCapacity.NONE);
    }

    /**
     * The same water in another vessel.
     *
     * @param heatCapacity the heat capacity of the vessel
     * @return the water in it
     */
    public WaterBody withVessel(HeatCapacity heatCapacity) {
        return new WaterBody(volume, temperature, heatCapacity);
    }

    /**
     * The mass of the water alone.
     *
     * @return its mass
     */
    public Mass mass() {
        return Water.mass(volume, temperature);
    }

    @Override
    public double heatGivenOff(Temperature end) {
        double ofWater = mass().kilograms() * Water.heatGivenOff(temperature, end);
        return ofWater + vessel.joulesPerKelvin() * temperature.minus(end).kelvins();
    }

    @Override
    public HeatCapacity heatCapacityAt(Temperature now) {
        return vessel.plus(new HeatCapacity(mass().kilograms() * Water.specificHeat(now)));
    }
}
