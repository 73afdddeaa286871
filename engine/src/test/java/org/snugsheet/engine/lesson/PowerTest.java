package org.snugsheet.engine.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.NamedEstimate;
import org.snugsheet.engine.comparison.Ranking;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/** The power against whole lessons that are drawn, read to the mark, fitted and judged. */
class PowerTest {

    private static final int LESSONS = 4000;

    /** The share of 4000 lessons is known to 0.8 in a hundred; two in a hundred is what is promised. */
    @ParameterizedTest
    @CsvSource({
        // slower, jars, minutes, interval, mark, scatter, spread
        "1.3, 1, 30, 3, 1, 0.5, 0",
        "1.2, 1, 30, 3, 0.5, 0.4, 0",
        "1.4, 2, 30, 5, 1, 0.5, 0.05",
        "1.3, 3, 30, 3, 1, 0.5, 0.1",
        "1.5, 4, 20, 5, 2, 1, 0.15",
        "1.0, 1, 30, 3, 1, 0.5, 0",
        "1.0, 4, 30, 3, 1, 0.5, 0.1",
        // jars that round alike, so that many of them tell little more than one
        "1.15, 10, 30, 10, 2, 1, 0",
        "1.1, 6, 30, 3, 1, 0.2, 0",
        // errors so large that the curve bends
        "2, 1, 30, 10, 2, 1, 0"
    })
    @Tag("simulation")
    void the_power_is_that_of_whole_lessons(
            double slower, int jars, double minutes, double interval, double mark, double scatter, double spread) {
        ReadingPlan first = plan(0.05, minutes, interval, mark, scatter);
        ReadingPlan second = plan(0.05 / slower, minutes, interval, mark, scatter);
        Random random = new Random(5);
        int apart = 0;
        for (int i = 0; i < LESSONS; i++) {
            List<NamedEstimate> lesson = new ArrayList<>();
            double warmer = mark * (random.nextDouble() - 0.5);
            for (int jar = 0; jar < jars; jar++) {
                lesson.add(read(first, "first", spread, warmer, random));
                lesson.add(read(second, "second", spread, warmer, random));
            }
            if (Ranking.of(lesson).pair(0, 1).isSeparated()) {
                apart++;
            }
        }
        assertEquals((double) apart / LESSONS, new Power(first, second, spread).of(jars), 0.02);
    }

    @Test
    void more_jars_tell_more_and_the_fewest_are_found() {
        Power power = new Power(plan(0.05, 30, 3, 1, 0.5), plan(0.04, 30, 3, 1, 0.5), 0.15);
        int jars = power.jarsFor(0.8);
        assertTrue(power.of(jars) >= 0.8);
        assertTrue(power.of(jars - 1) < 0.8);
        assertTrue(power.of(Power.MOST_JARS) > power.of(jars));
        Power again = new Power(plan(0.05, 30, 3, 1, 0.5), plan(0.04, 30, 3, 1, 0.5), 0.15);
        power.of(2);
        assertEquals(again.of(3), power.of(3), "the same question has the same answer, whatever was asked before");
    }

    @Test
    void what_no_class_can_do_is_refused() {
        Power alike = new Power(plan(0.05, 30, 3, 1, 0.5), plan(0.0499, 30, 3, 1, 0.5), 0.1);
        assertEquals(
                Problem.JARS_OUT_OF_REACH,
                assertThrows(InvalidInputException.class, () -> alike.jarsFor(0.8))
                        .problem());
        assertThrows(InvalidInputException.class, () -> alike.of(0));
        assertThrows(InvalidInputException.class, () -> alike.of(Power.MOST_JARS + 1));
        assertThrows(InvalidInputException.class, () -> alike.jarsFor(80));
        assertThrows(InvalidInputException.class, () -> new Power(alike.first(), alike.second(), -0.1));
    }

    private static NamedEstimate read(ReadingPlan plan, String name, double spread, double warmer, Random random) {
        double k = plan.jar().constant().perSecond() * (1 + spread * random.nextGaussian());
        return new NamedEstimate(
                name, Lessons.fit(plan, new CoolingConstant(k), warmer, random).conservativeEstimate());
    }

    private static ReadingPlan plan(double perMinute, double minutes, double interval, double mark, double scatter) {
        return ReadingPlan.filling(
                new Steady(new NewtonCooling(
                        new Temperature(40), new Temperature(5), CoolingConstant.ofPerMinute(perMinute))),
                minutes * 60,
                interval * 60,
                Graduation.of(mark, Scale.CELSIUS),
                scatter);
    }
}
