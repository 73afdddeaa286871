package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/** By how much readings may lie beyond the typed surroundings, or move away from them, and still be those of a jar in them. */
class SurroundingsSideTest {

    /** Two thermometers may differ by a kelvin (common practice, no source), or by one mark of a coarse one. */
    @ParameterizedTest
    @CsvSource({"0.1, 9, true", "0.1, 8.9, false", "2, 8, true", "2, 7.9, false"})
    void threeReadingsMayEndAKelvinOrAMarkBeyond(double mark, double last, boolean isTaken) {
        double[] read = {40, 20, last};
        if (isTaken) {
            assertTrue(fit(mark, 10, read).constant().perSecond() > 0);
        } else {
            InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> fit(mark, 10, read));
            assertEquals(Problem.WRONG_SIDE, refusal.problem());
            assertEquals(3, refusal.row().orElse(0));
        }
    }

    /** A jar stays as warm as it was and its readings go up and down by a mark: the slope up is chance. A steady climb is not. */
    @Test
    void aRiseByChanceIsNoMovingAway() {
        CoolingFit fit = fit(1, 10, 40, 39, 40, 41, 40, 40);

        assertTrue(fit.constant().perSecond() < 0);
        assertTrue(-fit.constant().perSecond() < 2 * fit.constantError().perSecond());
        assertEquals(
                Problem.MOVES_AWAY,
                assertThrows(InvalidInputException.class, () -> fit(1, 10, 40, 41, 42, 43, 44, 45))
                        .problem());
    }

    private static CoolingFit fit(double mark, double around, double... read) {
        double[] minutes = new double[read.length];
        for (int i = 0; i < minutes.length; i++) {
            minutes[i] = 10 * i;
        }
        return CoolingFit.of(
                Readings.ofMinutes(minutes, read, Scale.CELSIUS),
                Surroundings.constant(new Temperature(around)),
                Graduation.of(mark, Scale.CELSIUS));
    }
}
