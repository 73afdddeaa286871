package org.snugsheet.engine.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.heat.Mixing;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;

class BathTest {

    private static final Temperature ROOM = new Temperature(21);

    /** Against a numerical solution of the two heat balances by Dormand and Prince’s method (Apache Commons Math). */
    @ParameterizedTest
    @CsvSource({"1, 0.03, 0, 30", "6, 0.05, 1.2, 45", "8, 0.2, 3, 20", "3, 0.001, 0.5, 300", "6, 0.05, 1.2, 2000"})
    void it_warms_as_the_balances_say(int jars, double perMinute, double leak, double minutes) {
        WaterBody tub = WaterBody.of(Volume.of(4, Unit.LITER), new Temperature(6));
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
        Bath bath = new Bath(tub, jars, jar, CoolingConstant.ofPerMinute(perMinute), ROOM, leak);
        double[] state = {40, 6};
        double ofJar = jar.heatCapacity().joulesPerKelvin();
        double ofTub = tub.heatCapacity().joulesPerKelvin();
        new DormandPrince853Integrator(1e-6, 60, 1e-11, 1e-11)
                .integrate(
                        new FirstOrderDifferentialEquations() {
                            @Override
                            public int getDimension() {
                                return 2;
                            }

                            @Override
                            public void computeDerivatives(double t, double[] now, double[] slope) {
                                double k = perMinute / 60;
                                slope[0] = -k * (now[0] - now[1]);
                                slope[1] = (jars * ofJar * k * (now[0] - now[1]) + leak * (21 - now[1])) / ofTub;
                            }
                        },
                        0,
                        state,
                        minutes * 60,
                        state);
        assertEquals(state[0], bath.jarAfter(minutes * 60).celsius(), 1e-6);
        assertEquals(state[1], bath.after(minutes * 60).celsius(), 1e-6);
    }

    @Test
    void a_tub_that_leaks_nothing_ends_where_mixing_ends() {
        WaterBody tub = WaterBody.of(Volume.of(1, Unit.LITER), new Temperature(5));
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
        Bath bath = new Bath(tub, 1, jar, CoolingConstant.ofPerMinute(0.05), ROOM, 0);
        assertEquals(Mixing.endTemperature(tub, jar).celsius(), bath.after(1e6).celsius(), 0.05);
        assertEquals(5, bath.after(0).celsius(), 1e-12);
        assertEquals(40, bath.jarAfter(0).celsius(), 1e-12);
    }

    @Test
    void a_big_tub_warms_less() {
        assertTrue(Bath.usualLeak(Volume.of(8, Unit.LITER)) > Bath.usualLeak(Volume.of(1, Unit.LITER)));
        // Area and R by hand: 1 l is 54 mm wide in radius and 108 mm high.
        double radius = Math.cbrt(1e-3 / 2 / Math.PI);
        double byHand = Math.PI * radius * radius * (4 / 0.13 + 1 / 0.17 + 1 / 0.10);
        assertEquals(byHand, Bath.usualLeak(Volume.of(1, Unit.LITER)), 1e-12);
    }

    @Test
    void a_bath_of_nothing_is_refused() {
        WaterBody tub = WaterBody.of(Volume.of(1, Unit.LITER), new Temperature(5));
        WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
        WaterBody hot = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(60));
        CoolingConstant k = CoolingConstant.ofPerMinute(0.05);
        assertEquals(
                Problem.START_TOO_HOT,
                assertThrows(InvalidInputException.class, () -> new Bath(tub, 1, hot, k, ROOM, 0))
                        .problem());
        assertThrows(InvalidInputException.class, () -> new Bath(tub, 0, jar, k, ROOM, 0));
        assertThrows(InvalidInputException.class, () -> new Bath(tub, 1, jar, CoolingConstant.ofPerMinute(0), ROOM, 0));
        assertThrows(InvalidInputException.class, () -> new Bath(tub, 1, jar, k, ROOM, -1));
    }

    /**
     * OpenStax College Physics, section 14.3: ice melts with 334 kJ/kg, water holds 4186 J/(kg·K). By these 1 kg of water at 20 °C
     * needs 0.2507 kg of ice to come to 0 °C.
     */
    @Test
    void ice_for_a_liter_is_as_the_textbook_sums_it() {
        WaterBody tub = WaterBody.of(Volume.of(1, Unit.LITER), new Temperature(20));
        WaterBody jar = WaterBody.of(Volume.of(500, Unit.MILLILITER), new Temperature(40));
        Bath bath = new Bath(tub, 2, jar, CoolingConstant.ofPerMinute(10), ROOM, 2);
        Ice ice = Ice.holding(bath, 3600);
        assertEquals(4186 * 20 / 334e3, ice.forTheTub(), 0.001);
        assertEquals(4186 * 40 / 334e3, ice.forTheJars(), 0.005);
        assertEquals(2 * 21 * 3600 / 334e3, ice.forTheRoom(), 0.001);
        assertEquals(
                ice.forTheTub() + ice.forTheJars() + ice.forTheRoom(),
                ice.mass().kilograms(),
                1e-15);
        assertThrows(InvalidInputException.class, () -> Ice.holding(bath, 0));
    }
}
