package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.heat.DryBody;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.water.Water;

class HeatLossTest {

    private static final CoolingConstant FOUR_PERCENT = CoolingConstant.ofPerMinute(0.04);

    @Test
    void aJarLosesItsHeatCapacityTimesTheDegreesItCoolsEachSecond() {
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
        // 0.25 L · 992.216 kg/m³ · 4179.4 J/(kg·K) (water.csv, IAPWS SR6-08) · 0.04/60 s · 30 K
        assertEquals(
                0.25e-3 * 992.216 * 4179.4 * 0.04 / 60 * 30,
                HeatLoss.watts(jar, FOUR_PERCENT, new Temperature(10)),
                1e-3);
        assertEquals(
                170 * 0.04 / 60 * 30,
                HeatLoss.watts(jar.withVessel(new HeatCapacity(170)), FOUR_PERCENT, new Temperature(10))
                        - HeatLoss.watts(jar, FOUR_PERCENT, new Temperature(10)),
                1e-9);
    }

    /**
     * By definition of the cooling constant {@code h·A = C·k}. A film of {@code h = 10 W/(m²·K)} on {@code 0.03 m²} at a
     * difference of 20 K carries 6 W (Newton’s law of cooling, Incropera and DeWitt, equation 1.3a).
     */
    @Test
    void itIsTheHeatThroughTheSurface() {
        double surface = 10 * 0.03;
        HeatCapacity capacity = new HeatCapacity(900);
        CoolingConstant constant = new CoolingConstant(surface / capacity.joulesPerKelvin());
        assertEquals(
                6, HeatLoss.watts(new DryBody(capacity, new Temperature(25)), constant, new Temperature(5)), 1e-12);
    }

    /** Energy is conserved: the power along Newton’s curve adds up to the heat given off on the way. */
    @Test
    void thePowerAddsUpToTheHeat() {
        Temperature surroundings = new Temperature(2);
        Temperature start = new Temperature(60);
        WaterBody jar = new WaterBody(Volume.of(300, Unit.MILLILITER), start, new HeatCapacity(150));
        NewtonCooling curve = new NewtonCooling(start, surroundings, FOUR_PERCENT);
        double joules = 0;
        int pieces = 4000;
        double step = 3600.0 / pieces;
        for (int i = 0; i < pieces; i++) {
            Temperature now = curve.after((i + 0.5) * step);
            Volume shrunk = new Volume(jar.mass().kilograms() / Water.density(now));
            joules += step * HeatLoss.watts(new WaterBody(shrunk, now, jar.vessel()), FOUR_PERCENT, surroundings);
        }
        double heat = jar.heatGivenOff(curve.after(3600));
        assertEquals(heat, joules, 1e-5 * heat);
    }

    @Test
    void aColdJarTakesHeatUpAndOneAtTheSurroundingsNeither() {
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(4));
        assertEquals(
                -HeatLoss.watts(jar, FOUR_PERCENT, new Temperature(-10)),
                HeatLoss.watts(jar, FOUR_PERCENT, new Temperature(18)),
                1e-9);
        assertEquals(0, HeatLoss.watts(jar, FOUR_PERCENT, new Temperature(4)), 0);
        assertEquals(0, HeatLoss.watts(jar, new CoolingConstant(0), new Temperature(20)), 0);
    }

    @Test
    void aNegativeConstantIsRefused() {
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> HeatLoss.watts(jar, new CoolingConstant(-1e-6), new Temperature(10)));
        assertEquals(Problem.NEGATIVE, refusal.problem());
    }
}
