package org.snugsheet.engine.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.reading.Graduation;

class ReadingPlanTest {

    private static final Graduation DEGREE = Graduation.of(1, Scale.CELSIUS);

    /** The error planned against the scatter of many fits of drawn readings (JCGM 101:2008, 5.3.2). */
    @ParameterizedTest
    @CsvSource({"0.04, 30, 3, 0.5, 0.5", "0.02, 40, 5, 1, 0.5", "0.08, 20, 2, 0.1, 0.4"})
    void the_error_planned_is_the_error_that_fits_have(
            double perMinute, double minutes, double interval, double mark, double scatter) {
        Graduation graduation = Graduation.of(mark, Scale.CELSIUS);
        ReadingPlan plan = ReadingPlan.filling(jar(perMinute), minutes * 60, interval * 60, graduation, scatter);
        Random random = new Random(11);
        int lessons = 3000;
        double squares = 0;
        for (int i = 0; i < lessons; i++) {
            double off =
                    Lessons.fit(plan, plan.jar().constant(), random).constant().perSecond()
                            - plan.jar().constant().perSecond();
            squares += off * off;
        }
        double found = Math.sqrt(squares / lessons);
        assertEquals(found, plan.standardError(), 0.06 * found);
    }

    @Test
    void a_plan_for_a_certainty_reaches_it_with_no_more_readings_than_needed() {
        double scatter = ReadingPlan.usualScatter(DEGREE);
        ReadingPlan plan = ReadingPlan.forCertainty(jar(0.04), 40 * 60, 0.03, DEGREE, scatter);
        assertTrue(plan.relativeError() <= 0.03);
        ReadingPlan fewer = ReadingPlan.filling(jar(0.04), 40 * 60, plan.intervalSeconds() + 60, DEGREE, scatter);
        assertTrue(fewer.relativeError() > 0.03);
        assertEquals(plan.count(), plan.times().size());
        assertEquals(40, plan.temperatures().get(0).celsius());
    }

    /**
     * The surroundings are read once, to the mark, so k is off by ∂k/∂Tₛ times mark/√12 however many readings there are. By the normal
     * equations for x = e^(−k·t) and u = t·x, with A = 35 K: ∂k/∂Tₛ = (Σu(1 − x) − Σxu/Σx²·Σx(1 − x))/(A·(Σu² − (Σxu)²/Σx²)), which for
     * a mark of 1 °C is 1.6 % of k. That with what a reading every minute leaves is more than 2 %; with half a mark it is not.
     */
    @Test
    void no_number_of_readings_makes_up_for_surroundings_read_once() {
        double k = 0.04;
        double xx = 0;
        double xu = 0;
        double uu = 0;
        double xo = 0;
        double uo = 0;
        for (int minute = 0; minute <= 40; minute++) {
            double x = Math.exp(-k * minute);
            double u = minute * x;
            xx += x * x;
            xu += x * u;
            uu += u * u;
            xo += x * (1 - x);
            uo += u * (1 - x);
        }
        double own = uu - xu * xu / xx;
        double ofSurroundings = (uo - xu / xx * xo) / own / 35 / Math.sqrt(12);
        assertEquals(0.016, Math.abs(ofSurroundings) / k, 0.0005);
        double scatter = ReadingPlan.usualScatter(DEGREE);
        double ofReadings = Math.hypot(scatter, 1 / Math.sqrt(12)) / Math.sqrt(own) / 35;
        double most = Math.hypot(ofSurroundings, ofReadings) / k;
        double least = Math.hypot(ofSurroundings, scatter / Math.sqrt(own) / 35) / k;
        double everyMinute =
                ReadingPlan.filling(jar(k), 40 * 60, 60, DEGREE, scatter).relativeError();
        assertTrue(least * 0.99 <= everyMinute && everyMinute <= most * 1.01, least + " " + everyMinute + " " + most);
        assertTrue(everyMinute > 0.02, "2 % is out of reach: " + everyMinute);
        refused(Problem.CERTAINTY_OUT_OF_REACH, () -> ReadingPlan.forCertainty(jar(k), 40 * 60, 0.02, DEGREE, scatter));
        Graduation half = Graduation.of(0.5, Scale.CELSIUS);
        assertTrue(ReadingPlan.forCertainty(jar(k), 40 * 60, 0.02, half, ReadingPlan.usualScatter(half))
                        .relativeError()
                <= 0.02);
    }

    @Test
    void a_finer_mark_and_more_readings_lower_the_error() {
        double coarse = ReadingPlan.filling(jar(0.04), 1800, 300, DEGREE, 0.5).standardError();
        double more = ReadingPlan.filling(jar(0.04), 1800, 120, DEGREE, 0.5).standardError();
        double fine = ReadingPlan.filling(jar(0.04), 1800, 300, Graduation.of(0.1, Scale.CELSIUS), 0.5)
                .standardError();
        assertTrue(more < coarse);
        assertTrue(fine < coarse);
    }

    @Test
    void after_the_longest_lesson_a_mark_is_left() {
        double seconds = ReadingPlan.longestLesson(jar(0.04), DEGREE);
        assertEquals(6, jar(0.04).after(seconds).celsius(), 1e-9);
    }

    @Test
    void what_cannot_be_planned_is_refused() {
        Forecast hot = new Steady(
                new NewtonCooling(new Temperature(50), new Temperature(5), CoolingConstant.ofPerMinute(0.1)));
        Forecast near =
                new Steady(new NewtonCooling(new Temperature(6), new Temperature(5), CoolingConstant.ofPerMinute(0.1)));
        refused(Problem.START_TOO_HOT, () -> ReadingPlan.filling(hot, 1800, 300, DEGREE, 0.5));
        refused(Problem.TOO_NEAR_TO_READ, () -> ReadingPlan.filling(near, 1800, 300, DEGREE, 0.5));
        refused(Problem.TOO_FEW_READINGS, () -> ReadingPlan.filling(jar(0.1), 1800, 1200, DEGREE, 0.5));
        refused(Problem.TOO_MANY_READINGS, () -> ReadingPlan.filling(jar(0.1), 1800, 1, DEGREE, 0.5));
        refused(Problem.RATE_NOT_POSITIVE, () -> ReadingPlan.filling(jar(0), 1800, 300, DEGREE, 0.5));
        refused(Problem.CERTAINTY_OUT_OF_REACH, () -> ReadingPlan.forCertainty(jar(0.001), 600, 0.01, DEGREE, 0.5));
        refused(Problem.NOT_A_SHARE, () -> ReadingPlan.forCertainty(jar(0.1), 600, 5, DEGREE, 0.5));
        refused(Problem.NEGATIVE, () -> ReadingPlan.filling(jar(0.1), 1800, 300, DEGREE, -1));
        refused(Problem.NOT_POSITIVE, () -> ReadingPlan.filling(jar(0.1), 0, 300, DEGREE, 0.5));
        refused(Problem.NOT_POSITIVE, () -> ReadingPlan.filling(jar(0.1), 1800, 0, DEGREE, 0.5));
    }

    /**
     * Two jars of 40 °C in 5 °C with 0.02 and 0.04 per minute: with x = e^(−0.02·t) they differ by 35·(x − x²), which is 2 K at x =
     * (1 + √(1 − 8/35))/2, hence after 3.16 minutes; at most 35/4 K, at x = 1/2.
     */
    @Test
    void two_jars_are_told_apart_when_the_quadratic_says() {
        TimeToDistinguish jars = new TimeToDistinguish(
                new Temperature(40),
                new Temperature(5),
                CoolingConstant.ofPerMinute(0.04),
                CoolingConstant.ofPerMinute(0.02));
        double x = (1 + Math.sqrt(1 - 8.0 / 35)) / 2;
        assertEquals(-Math.log(x) / 0.02, jars.by(Graduation.of(2, Scale.CELSIUS)) / 60, 1e-6);
        assertEquals(Math.log(2) / 0.02, jars.farthest() / 60, 1e-9);
        assertEquals(35.0 / 4, jars.difference(jars.farthest()), 1e-9);
        refused(Problem.NEVER_TOLD_APART, () -> jars.by(Graduation.of(9, Scale.CELSIUS)));
        refused(
                Problem.RATES_ALIKE,
                () -> new TimeToDistinguish(new Temperature(40), new Temperature(5), jars.first(), jars.first()));
    }

    @Test
    void the_times_fill_the_lesson() {
        assertEquals(
                List.of(0.0, 300.0, 600.0, 900.0),
                ReadingPlan.filling(jar(0.04), 1000, 300, DEGREE, 0.5).times());
        assertEquals(new TemperatureDifference(1), DEGREE.graduation(), "the marks here are of 1 °C");
    }

    private static Forecast jar(double perMinute) {
        return new Steady(
                new NewtonCooling(new Temperature(40), new Temperature(5), CoolingConstant.ofPerMinute(perMinute)));
    }

    private static void refused(Problem problem, org.junit.jupiter.api.function.Executable plan) {
        assertEquals(problem, assertThrows(InvalidInputException.class, plan).problem());
    }
}
