package org.snugsheet.engine.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

class GraduationTest {

    /** By counting marks on a thermometer. */
    @ParameterizedTest
    @CsvSource({
        "20.4, 1, CELSIUS, 20",
        "20.5, 1, CELSIUS, 21",
        "-20.5, 1, CELSIUS, -21",
        "20.37, 0.5, CELSIUS, 20.5",
        "20.43, 0.2, CELSIUS, 20.4",
        "0.1, 1, CELSIUS, 0",
        "98.7, 2, FAHRENHEIT, 98",
        "99, 2, FAHRENHEIT, 100",
        "98.64, 0.2, FAHRENHEIT, 98.6",
        "31, 5, FAHRENHEIT, 30"
    })
    void aTemperatureIsReadAtTheNearestMark(double degrees, double step, Scale scale, double read) {
        assertEquals(read, Graduation.of(step, scale).nearest(Temperature.of(degrees, scale), scale));
    }

    @Test
    void whatIsReadIsAMarkAndNoMoreThanHalfAStepOff() {
        Random random = new Random(4);
        for (int i = 0; i < 2000; i++) {
            Scale scale = random.nextBoolean() ? Scale.CELSIUS : Scale.FAHRENHEIT;
            double step = (1 + random.nextInt(50)) / 10.0;
            double degrees = random.nextDouble() * 150 - 50;
            Graduation mark = Graduation.of(step, scale);
            double read = mark.nearest(Temperature.of(degrees, scale), scale);
            assertTrue(Math.abs(read - degrees) <= step / 2 + 1e-9, degrees + " at " + step);
            assertEquals(Math.rint(read / step), read / step, 1e-9);
            assertEquals(read, mark.nearest(Temperature.of(read, scale), scale), 1e-12);
        }
    }

    @Test
    void aMarkOfNothingIsRefused() {
        assertSame(
                Problem.MARK_NOT_POSITIVE,
                assertThrows(InvalidInputException.class, () -> Graduation.of(0, Scale.CELSIUS))
                        .problem());
    }
}
