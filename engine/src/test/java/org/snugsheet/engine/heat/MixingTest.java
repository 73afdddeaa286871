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

class MixingTest {

    /**
     * Published exercises, worked with one specific heat for all temperatures; the real one changes by less than 1 %, so the
     * answers agree to a tenth of a degree. Sources, in order: a school textbook’s bucket of water
     * (https://sarthaks.com/1800992); https://www.univerkov.com, water in a glass; https://byjus.com, 20 g of hot water poured
     * into 60 g of cold; https://kudo.tips, exercise 25.
     */
    @ParameterizedTest
    @CsvSource({
        "4, 80, 8, 20, 40",
        "0.1, 80, 0.05, 20, 60",
        "0.02, 80, 0.06, 0, 20",
        "0.1, 80, 0.04, 20, 62.9",
    })
    void hotAndColdWaterEndWhereTheExercisesSay(
            double hotKilograms, double hot, double coldKilograms, double cold, double end) {
        assertEquals(
                end,
                Mixing.endTemperature(water(hotKilograms, hot), water(coldKilograms, cold))
                        .celsius(),
                0.15);
    }

    /** Source: OpenStax, College Physics, Example 14.3, cold water poured into a hot aluminium pan: 59.1 °C. */
    @Test
    void waterInAHotPan() {
        DryBody pan = new DryBody(new HeatCapacity(0.500 * 900), new Temperature(150));
        assertEquals(59.1, Mixing.endTemperature(water(0.250, 20), pan).celsius(), 0.1);
    }

    /**
     * Source: Knight, Physics for Scientists and Engineers, problem 19.21: a pan of 750 g, c = 900 J/(kg·K), in 10.0 L of
     * water at 20.0 °C brings it to 24.0 °C. By the published steps the pan was at 24 + 10·4186·4/(0.75·900) = 272 °C.
     */
    @Test
    void aPanInASink() {
        DryBody pan = new DryBody(new HeatCapacity(0.750 * 900), new Temperature(272));
        assertEquals(24.0, Mixing.endTemperature(water(10, 20), pan).celsius(), 0.01);
    }

    @Test
    void theExampleOfTheDocumentation() {
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
        WaterBody tub = WaterBody.of(Volume.of(2, Unit.LITER), new Temperature(5));
        assertEquals(8.85, Mixing.endTemperature(jar, tub).celsius(), 0.01);
    }

    @Test
    void noHeatIsLostOrWon() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 500; i++) {
            Body a = random(random);
            Body b = random(random);
            Body c = random(random);
            Temperature end = Mixing.endTemperature(a, b, c);
            double left = a.heatGivenOff(end) + b.heatGivenOff(end) + c.heatGivenOff(end);
            double capacity = a.heatCapacity().joulesPerKelvin()
                    + b.heatCapacity().joulesPerKelvin()
                    + c.heatCapacity().joulesPerKelvin();
            assertEquals(0, left / capacity, 1e-9, "kelvins by which the balance is off");
        }
    }

    @Test
    void theEndLiesBetweenAndTheOrderDoesNotMatter() {
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 500; i++) {
            Body a = random(random);
            Body b = random(random);
            double end = Mixing.endTemperature(a, b).celsius();
            assertEquals(end, Mixing.endTemperature(b, a).celsius(), 1e-11);
            double low = Math.min(a.temperature().celsius(), b.temperature().celsius());
            double high = Math.max(a.temperature().celsius(), b.temperature().celsius());
            assertTrue(low <= end && end <= high, low + " " + end + " " + high);
        }
    }

    @Test
    void theMiddleOfEqualMassesIsWarmerThanHalfWayWhenHotWaterHoldsMore() {
        // c_p(80 °C) = 4196 and c_p(40 °C) = 4179 J/(kg·K), so the hot half weighs more: IAPWS SR6-08(2011).
        double end = Mixing.endTemperature(water(1, 90), water(1, 40)).celsius();
        assertTrue(end > 65 && end < 65.1, "ends at " + end);
    }

    @Test
    void equalTemperaturesStayWhatTheyAre() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            double t = random.nextDouble(0, 100);
            Body a = new WaterBody(
                    Volume.of(random.nextDouble(1, 2000), Unit.MILLILITER), new Temperature(t), new HeatCapacity(90));
            Body b = new DryBody(new HeatCapacity(random.nextDouble(1, 500)), new Temperature(t));
            assertEquals(t, Mixing.endTemperature(a, b).celsius());
            assertEquals(t, Mixing.endTemperature(a, a).celsius());
            assertEquals(t, Mixing.endTemperature(b).celsius());
        }
    }

    @Test
    void aWarmerJarOrMoreOfItEndsWarmer() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 200; i++) {
            double jar = random.nextDouble(30, 90);
            double bath = random.nextDouble(0, 25);
            double volume = random.nextDouble(100, 500);
            double end = end(volume, jar, bath, 0);
            assertTrue(end(volume, jar + 1, bath, 0) > end);
            assertTrue(end(volume, jar, bath + 1, 0) > end);
            assertTrue(end(volume + 10, jar, bath, 0) > end);
            assertTrue(end(volume, jar, bath, 100) > end, "a warm vessel warms the bath too");
        }
    }

    @Test
    void anEmptyGlassCoolsTheWaterPouredIn() {
        WaterBody water = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(50));
        DryBody glass = new DryBody(VesselMaterial.GLASS.heatCapacity(Mass.of(250, Unit.GRAM)), new Temperature(20));
        double end = Mixing.endTemperature(water, glass).celsius();
        // (0.247·4181·50 + 0.25·840·20)/(0.247·4181 + 0.25·840) = 44.9, with c_p of water.csv.
        assertEquals(44.9, end, 0.1);
    }

    @Test
    void waterThatWouldFreezeOrBoilIsRefused() {
        Body snowball = new DryBody(new HeatCapacity(2000), new Temperature(-20));
        Body stone = new DryBody(new HeatCapacity(2000), new Temperature(300));
        Body jar = WaterBody.of(Volume.of(100, Unit.MILLILITER), new Temperature(40));
        assertEquals(
                Problem.MIXTURE_FREEZES,
                assertThrows(InvalidInputException.class, () -> Mixing.endTemperature(jar, snowball))
                        .problem());
        assertEquals(
                Problem.MIXTURE_BOILS,
                assertThrows(InvalidInputException.class, () -> Mixing.endTemperature(stone, jar))
                        .problem());
        // Without water there is nothing to freeze.
        assertEquals(140, Mixing.endTemperature(snowball, stone).celsius(), 1e-9);
    }

    @Test
    void aBodyThatHoldsNoHeatIsRefused() {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> new DryBody(HeatCapacity.NONE, new Temperature(20)));
        assertEquals(Problem.NOT_POSITIVE, refusal.problem());
    }

    private static double end(double milliliters, double jar, double bath, double vessel) {
        return Mixing.endTemperature(
                        new WaterBody(
                                Volume.of(milliliters, Unit.MILLILITER),
                                new Temperature(jar),
                                new HeatCapacity(vessel)),
                        WaterBody.of(Volume.of(2, Unit.LITER), new Temperature(bath)))
                .celsius();
    }

    private static Body random(SplittableRandom random) {
        HeatCapacity capacity = new HeatCapacity(random.nextDouble(1, 400));
        // A dry body between 0 °C and 100 °C cannot make water freeze or boil.
        Temperature temperature = new Temperature(random.nextDouble(0, 100));
        return random.nextInt(3) == 0
                ? new DryBody(capacity, temperature)
                : new WaterBody(Volume.of(random.nextDouble(1, 3000), Unit.MILLILITER), temperature, capacity);
    }

    private static WaterBody water(double kilograms, double celsius) {
        Temperature temperature = new Temperature(celsius);
        return WaterBody.of(new Volume(kilograms / Water.density(temperature)), temperature);
    }
}
