package org.snugsheet.engine.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.quantity.HeatCapacity;

/** Properties: what was put in comes out again. The error is held against a simulation as JCGM 101:2008 describes it. */
class MeasuredResistanceTest {

    private static final HeatCapacity CAPACITY = new HeatCapacity(1000);
    private static final double AREA = 0.02;

    @Test
    void aResistancePutInComesOutAgain() {
        double film = 0.1;
        double wrap = 0.06;
        Estimate bare = exact(AREA / (film * 1000));
        Estimate wrapped = exact(AREA / ((film + wrap) * 1000));
        assertEquals(film, MeasuredResistance.ofOneJar(bare, CAPACITY, AREA).value(), 1e-12);
        assertEquals(
                wrap,
                MeasuredResistance.ofTheWrap(bare, wrapped, CAPACITY, AREA).value(),
                1e-12);
        assertEquals(
                0, MeasuredResistance.ofTheWrap(bare, wrapped, CAPACITY, AREA).standardError(), 1e-15);
    }

    /** The error carried on by JCGM 100:2008 against that of many drawn pairs of constants (JCGM 101:2008, 5.3.2). */
    @Test
    void theErrorIsThatOfASimulation() {
        Estimate bare = new Estimate(2e-4, 4e-6, 10);
        Estimate wrapped = new Estimate(1.2e-4, 3e-6, 10);
        Estimate wrap = MeasuredResistance.ofTheWrap(bare, wrapped, CAPACITY, AREA);
        Random random = new Random(7);
        int draws = 200_000;
        double squares = 0;
        for (int i = 0; i < draws; i++) {
            Estimate one = exact(bare.value() + bare.standardError() * random.nextGaussian());
            Estimate two = exact(wrapped.value() + wrapped.standardError() * random.nextGaussian());
            double off = MeasuredResistance.ofTheWrap(one, two, CAPACITY, AREA).value() - wrap.value();
            squares += off * off;
        }
        assertEquals(Math.sqrt(squares / draws), wrap.standardError(), 0.01 * wrap.standardError());
        assertTrue(wrap.degreesOfFreedom() > 10 && wrap.degreesOfFreedom() < 20, "between one jar’s and both jars’");
    }

    /**
     * JCGM 100:2008, G.4.1, by hand: errors of 0.003 with 6 and 0.004 with 8 degrees of freedom make 0.005 with 5⁴/(3⁴/6 + 4⁴/8) =
     * 13.74. A constant k of error s shows 0.02/(1000·k) m²·K/W with an error of 0.02·s/(1000·k²).
     */
    @Test
    void degreesOfFreedomAreThoseOfWelchAndSatterthwaite() {
        Estimate wrap =
                MeasuredResistance.ofTheWrap(new Estimate(2e-4, 6e-6, 6), new Estimate(1e-4, 2e-6, 8), CAPACITY, AREA);
        assertEquals(0.1, wrap.value(), 1e-12);
        assertEquals(0.005, wrap.standardError(), 1e-12);
        assertEquals(625 / (81.0 / 6 + 256.0 / 8), wrap.degreesOfFreedom(), 1e-9);
    }

    /** 1e−4 per second of 1000 J/K is 0.1 W/K. */
    @Test
    void aJarMustLoseMoreThanWhatGoesElsewhere() {
        assertEquals(
                AREA / 0.001,
                MeasuredResistance.ofOneJar(exact(1e-4), CAPACITY, AREA, 0.099).value(),
                1e-6);
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class, () -> MeasuredResistance.ofOneJar(exact(1e-4), CAPACITY, AREA, 0.1));
        assertEquals(Problem.ALL_GOES_ELSEWHERE, refusal.problem());
        assertTrue(refusal.finding().sentence().startsWith("The jar loses 0.1 W/K in all"), refusal.toString());
        assertEquals(
                AREA / 0.1,
                MeasuredResistance.ofOneJar(exact(1e-4), CAPACITY, AREA, 0).value(),
                1e-12,
                "nothing elsewhere is no refusal");
    }

    @Test
    void aWrapThatCoolsFasterHasLessThanNone() {
        assertTrue(MeasuredResistance.ofTheWrap(exact(1e-4), exact(2e-4), CAPACITY, AREA)
                        .value()
                < 0);
    }

    @Test
    void aJarThatDoesNotCoolShowsNothing() {
        assertEquals(
                Problem.RATE_TELLS_NO_RESISTANCE,
                assertThrows(InvalidInputException.class, () -> MeasuredResistance.ofOneJar(exact(0), CAPACITY, AREA))
                        .problem());
    }

    private static Estimate exact(double value) {
        return new Estimate(value, 0, Double.POSITIVE_INFINITY);
    }
}
