package org.snugsheet.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Mass;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.water.Water;

class WaterBodyTest {

    /**
     * A liter, by the printed tables: density from Chaplin, Water Structure and Science (998.2 at 20 °C, 992.2 at 40 °C, 988.0
     * at 50 °C, in kg/m³); enthalpy from the NIST steam tables (83.914, 167.53, 209.34 and 42.021 kJ/kg at 20, 40, 50 and 10
     * °C).
     */
    @ParameterizedTest
    @CsvSource({
        "40, 20, 992.2, 167.53, 83.914",
        "50, 10, 988.0, 209.34, 42.021",
        "20, 40, 998.2, 83.914, 167.53",
        "20, 10, 998.2, 83.914, 42.021"
    })
    void aLiterGivesOffWhatTheTablesSay(double from, double to, double density, double hFrom, double hTo) {
        double published = density / 1000 * (hFrom - hTo) * 1000;
        double heat =
                WaterBody.of(Volume.of(1, Unit.LITER), new Temperature(from)).heatGivenOff(new Temperature(to));
        assertEquals(published, heat, 0.0004 * Math.abs(published));
    }

    @Test
    void theExampleOfTheDocumentation() {
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
        assertEquals(20_745, jar.heatGivenOff(new Temperature(20)), 10);
        WaterBody glass = jar.withVessel(VesselMaterial.GLASS.heatCapacity(Mass.of(200, Unit.GRAM)));
        assertEquals(
                0.2 * 840 * 20, glass.heatGivenOff(new Temperature(20)) - jar.heatGivenOff(new Temperature(20)), 1e-9);
    }

    @Test
    void heatIsTheSameThroughAnyTemperatureBetweenAndComesBack() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 200; i++) {
            Temperature a = new Temperature(random.nextDouble(0, 100));
            Temperature b = new Temperature(random.nextDouble(0, 100));
            Temperature c = new Temperature(random.nextDouble(0, 100));
            WaterBody body = new WaterBody(
                    Volume.of(random.nextDouble(50, 2000), Unit.MILLILITER),
                    a,
                    new HeatCapacity(random.nextDouble(0, 300)));
            double whole = body.heatGivenOff(c);
            // The same water at b: its volume has changed, its mass has not.
            WaterBody later = new WaterBody(new Volume(body.mass().kilograms() / Water.density(b)), b, body.vessel());
            assertEquals(whole, body.heatGivenOff(b) + later.heatGivenOff(c), 1e-6 + 1e-10 * Math.abs(whole));
            assertEquals(0, body.heatGivenOff(a));
            assertTrue(whole >= 0 == a.compareTo(c) >= 0);
        }
    }

    /** C = dQ/dT, by central differences. */
    @Test
    void theHeatCapacityIsTheSlopeOfTheHeat() {
        WaterBody jar = new WaterBody(Volume.of(300, Unit.MILLILITER), new Temperature(45), new HeatCapacity(170));
        for (double t = 1; t < 100; t += 7) {
            double slope = jar.heatGivenOff(new Temperature(t - 0.5)) - jar.heatGivenOff(new Temperature(t + 0.5));
            assertEquals(slope, jar.heatCapacityAt(new Temperature(t)).joulesPerKelvin(), 1e-4 * Math.abs(slope));
        }
    }

    @Test
    void twiceTheWaterGivesOffTwiceTheHeat() {
        Temperature warm = new Temperature(55);
        Temperature cool = new Temperature(12);
        double one = WaterBody.of(Volume.of(200, Unit.MILLILITER), warm).heatGivenOff(cool);
        double two = WaterBody.of(Volume.of(400, Unit.MILLILITER), warm).heatGivenOff(cool);
        assertEquals(2 * one, two, 1e-9 * two);
    }

    @ParameterizedTest
    @CsvSource({"-1, WATER_FROZEN", "101, WATER_BOILED"})
    void iceAndSteamAreRefusedBeforeAndAfter(double celsius, Problem problem) {
        Temperature odd = new Temperature(celsius);
        Volume glass = Volume.of(200, Unit.MILLILITER);
        WaterBody jar = WaterBody.of(glass, new Temperature(30));
        assertEquals(
                problem,
                assertThrows(InvalidInputException.class, () -> WaterBody.of(glass, odd))
                        .problem());
        assertEquals(
                problem,
                assertThrows(InvalidInputException.class, () -> jar.heatGivenOff(odd))
                        .problem());
    }
}
