package org.snugsheet.engine.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** A jar in a tub that warms. No source beside the equations: checked against a numerical solution of them. */
class WarmingTest {

    private static final Graduation DEGREE = Graduation.of(1, Scale.CELSIUS);

    /** The heat balances of tub, a jar that warms it, and a third jar, by Dormand and Prince’s method (Apache Commons Math). */
    @ParameterizedTest
    @CsvSource({"0.03, 30", "0.05, 45", "0.01, 30", "0.2, 60", "0.05, 0"})
    void it_cools_as_the_balances_say(double perMinute, double minutes) {
        Bath bath = bath();
        double ofJar = bath.jar().heatCapacity().joulesPerKelvin();
        double ofTub = bath.tub().heatCapacity().joulesPerKelvin();
        double[] state = {40, 5, 40};
        if (minutes > 0) {
            new DormandPrince853Integrator(1e-6, 60, 1e-11, 1e-11)
                    .integrate(
                            new FirstOrderDifferentialEquations() {
                                @Override
                                public int getDimension() {
                                    return 3;
                                }

                                @Override
                                public void computeDerivatives(double t, double[] now, double[] slope) {
                                    double k = bath.constant().perSecond();
                                    slope[0] = -k * (now[0] - now[1]);
                                    slope[1] =
                                            (6 * ofJar * k * (now[0] - now[1]) + bath.leak() * (21 - now[1])) / ofTub;
                                    slope[2] = -perMinute / 60 * (now[2] - now[1]);
                                }
                            },
                            0,
                            state,
                            minutes * 60,
                            state);
        }
        Warming jar = new Warming(bath, CoolingConstant.ofPerMinute(perMinute));
        assertEquals(state[2], jar.after(minutes * 60).celsius(), 1e-6);
        assertEquals(state[1], jar.surroundingsAfter(minutes * 60).celsius(), 1e-6);
        if (perMinute == 0.05) {
            assertEquals(
                    bath.jarAfter(minutes * 60).celsius(),
                    jar.after(minutes * 60).celsius(),
                    1e-9);
        }
    }

    /** A jar that warms its tub is never colder than it, as long as the room does not take over. */
    @Test
    void no_jar_is_forecast_colder_than_its_tub() {
        Warming bare = new Warming(bath(), CoolingConstant.ofPerMinute(0.05));
        for (double minute = 0; minute <= 45; minute++) {
            assertTrue(bare.difference(minute * 60) > 0, "at minute " + minute);
        }
        assertTrue(bare.surroundingsAfter(45 * 60).celsius() > 10);
    }

    @Test
    void a_tub_that_warms_leaves_less_time_and_less_difference() {
        Bath bath = bath();
        Warming bare = new Warming(bath, CoolingConstant.ofPerMinute(0.05));
        Warming wrapped = new Warming(bath, CoolingConstant.ofPerMinute(0.03));
        TimeToDistinguish ifItStayed = new TimeToDistinguish(
                bath.jar().temperature(), bath.tub().temperature(), bare.constant(), wrapped.constant());
        TimeToDistinguishInTub jars = new TimeToDistinguishInTub(bare, wrapped);
        assertTrue(jars.by(DEGREE) > ifItStayed.by(DEGREE));
        assertEquals(1, jars.difference(jars.by(DEGREE)), 1e-6);
        assertTrue(jars.difference(jars.farthest()) < ifItStayed.difference(ifItStayed.farthest()));
        for (double minute = 0; minute < 60; minute++) {
            assertTrue(jars.difference(minute * 60) <= jars.difference(jars.farthest()) + 1e-9, "at " + minute);
        }
        double longest = ReadingPlan.longestLesson(bare, DEGREE);
        assertEquals(1, bare.difference(longest), 1e-6);
        assertTrue(longest < Math.log(35) / 0.05 * 60);
        assertEquals(
                Problem.RATES_ALIKE,
                assertThrows(InvalidInputException.class, () -> new TimeToDistinguishInTub(bare, bare))
                        .problem());
    }

    /** Whole lessons drawn, read and fitted with the tub’s own readings beside: they scatter by the error that the plan foretells. */
    @Test
    void the_error_foretold_is_the_one_that_fits_have() {
        Warming jar = new Warming(bath(), CoolingConstant.ofPerMinute(0.05));
        ReadingPlan plan = ReadingPlan.filling(jar, 1800, 180, Graduation.of(0.1, Scale.CELSIUS), 0.5);
        Random random = new Random(14);
        StandardDeviation scatter = new StandardDeviation();
        for (int lesson = 0; lesson < 400; lesson++) {
            List<Entry> minutes = new ArrayList<>();
            List<Entry> temperatures = new ArrayList<>();
            List<Entry> tub = new ArrayList<>();
            for (double time : plan.times()) {
                minutes.add(Entry.of(time / 60));
                temperatures.add(Entry.of(jar.after(time).celsius() + 0.5 * random.nextGaussian()));
                tub.add(Entry.of(jar.surroundingsAfter(time).celsius()));
            }
            scatter.increment(CoolingFit.of(
                            Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS),
                            Surroundings.of(tub, minutes, Scale.CELSIUS),
                            plan.mark())
                    .constant()
                    .perSecond());
        }
        // The scatter of 400 lessons is known to 3.5 % (1/√(2·400)); three of that.
        assertEquals(1, scatter.getResult() / plan.standardError(), 0.11);
    }

    private static Bath bath() {
        Volume tub = Volume.of(4, Unit.LITER);
        return new Bath(
                WaterBody.of(tub, new Temperature(5)),
                6,
                WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40)),
                CoolingConstant.ofPerMinute(0.05),
                new Temperature(21),
                Bath.usualLeak(tub));
    }
}
