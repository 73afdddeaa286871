package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

class NewtonCoolingTest {

    private static final CoolingConstant TEN_MINUTES = new CoolingConstant(Math.log(2) / 600);

    @Test
    void afterAHalfTimeHalfOfTheDifferenceIsGone() {
        NewtonCooling jar = new NewtonCooling(celsius(40), celsius(10), TEN_MINUTES);

        assertEquals(25, jar.after(600).celsius(), 1e-12);
        assertEquals(17.5, jar.after(1200).celsius(), 1e-12);
        assertEquals(600, TEN_MINUTES.halfTime(), 1e-9);
    }

    @Test
    void aColdJarWarmsTheSameWay() {
        NewtonCooling jar = new NewtonCooling(celsius(0), celsius(20), TEN_MINUTES);

        assertEquals(10, jar.after(600).celsius(), 1e-12);
        assertEquals(600, jar.timeTo(celsius(10)), 1e-9);
    }

    /** The curve solves dT/dt = −k·(T − Tₛ), checked by central differences. */
    @Test
    void theCurveSolvesItsEquation() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 200; i++) {
            NewtonCooling jar = new NewtonCooling(
                    celsius(random.nextDouble(-20, 60)),
                    celsius(random.nextDouble(-20, 60)),
                    new CoolingConstant(random.nextDouble(1e-5, 1e-2)));
            double t = random.nextDouble(0, 3600);
            double step = 0.5;
            double slope = jar.after(t + step).minus(jar.after(t - step)).kelvins() / (2 * step);
            double law = -jar.constant().perSecond()
                    * jar.after(t).minus(jar.surroundings()).kelvins();
            assertEquals(law, slope, 1e-5 * Math.abs(law) + 1e-12);
        }
    }

    @Test
    void timeToAndAfterUndoEachOther() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 200; i++) {
            NewtonCooling jar = new NewtonCooling(
                    celsius(random.nextDouble(30, 60)),
                    celsius(random.nextDouble(-20, 20)),
                    new CoolingConstant(random.nextDouble(1e-4, 1e-3)));
            double t = random.nextDouble(0, 3600);
            assertEquals(t, jar.timeTo(jar.after(t)), 1e-6);
        }
    }

    @Test
    void theStartIsReachedAtOnce() {
        assertEquals(0, new NewtonCooling(celsius(40), celsius(10), TEN_MINUTES).timeTo(celsius(40)));
    }

    @ParameterizedTest
    @CsvSource({"5, 40, 10", "10, 40, 10", "45, 40, 10", "20, 20, 20", "30, 20, 20"})
    void whatIsNeverReachedIsRefused(double target, double start, double surroundings) {
        NewtonCooling jar = new NewtonCooling(celsius(start), celsius(surroundings), TEN_MINUTES);

        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> jar.timeTo(celsius(target)));
        assertEquals(Problem.NEVER_REACHED, refusal.problem());
    }

    @Test
    void aConstantBelowZeroLeadsNowhere() {
        NewtonCooling jar = new NewtonCooling(celsius(40), celsius(10), new CoolingConstant(-0.001));

        assertEquals(
                Problem.RATE_NOT_POSITIVE,
                assertThrows(InvalidInputException.class, () -> jar.after(600)).problem());
    }

    @ParameterizedTest
    @CsvSource({"0", "-0.001"})
    void aJarThatDoesNotCoolReachesNothing(double perSecond) {
        NewtonCooling jar = new NewtonCooling(celsius(40), celsius(10), new CoolingConstant(perSecond));

        assertEquals(
                Problem.RATE_NOT_POSITIVE,
                assertThrows(InvalidInputException.class, () -> jar.timeTo(celsius(20)))
                        .problem());
        assertEquals(
                Problem.HARDLY_COOLS,
                assertThrows(InvalidInputException.class, () -> jar.constant().halfTime())
                        .problem());
    }

    @Test
    void beyondAllBoundsIsRefused() {
        NewtonCooling jar = new NewtonCooling(celsius(40), celsius(10), new CoolingConstant(1));

        assertThrows(InvalidInputException.class, () -> jar.after(-1e9));
        assertThrows(InvalidInputException.class, () -> new CoolingConstant(Double.NaN));
    }

    private static Temperature celsius(double degrees) {
        return Temperature.of(degrees, Scale.CELSIUS);
    }

    /** A perfect wrap: whatever the time, as warm as it was. */
    @Test
    void aConstantOfZeroKeepsTheTemperature() {
        NewtonCooling jar = new NewtonCooling(celsius(40), celsius(10), new CoolingConstant(0));

        assertEquals(40, jar.after(3600).celsius(), 0);
    }

    /** A jar that keeps 95.5 % of its difference each minute keeps half of it for 15 minutes: {@code 0.955¹⁵ = 0.501}. */
    @Test
    void theConstantOfAMinuteIsThatOfSixtySeconds() {
        CoolingConstant constant = CoolingConstant.ofPerMinute(-Math.log(0.955));

        assertEquals(15 * 60, constant.halfTime(), 4);
        assertEquals(-Math.log(0.955), constant.perMinute(), 1e-15);
        assertEquals(
                0.955 * 30,
                new NewtonCooling(celsius(30), celsius(0), constant).after(60).celsius(),
                1e-9);
    }

    /** A constant no larger than its own standard error may be zero. */
    @Test
    void aConstantAsLargeAsItsErrorHasNoHalfTime() {
        CoolingConstant constant = new CoolingConstant(0.001);

        assertThrows(InvalidInputException.class, () -> constant.halfTime(new CoolingConstant(0.001)));
        assertEquals(Math.log(2) * 1000, constant.halfTime(new CoolingConstant(0.00099)), 1e-9);
    }
}
