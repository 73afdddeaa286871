package org.snugsheet.engine.clothing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

class ActivityTest {

    /**
     * Sources: ASHRAE’s table of metabolic rates for typical tasks (https://hvac-eng.com/metabolic-rates-for-typical-tasks);
     * 1 met = 58.2 W/m² (same page); playing 3.5 met (Compendium of Physical Activities 2011, from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "sitting, 60",
        "Standing, 70",
        "Waiting, 70",
        "walking slowly, 115",
        "walking, 150",
        "WALKING FAST, 220",
        "playing in the snow, 203.7",
        "1 met, 58.2",
        "2.6 met, 151.32",
        "'2,6 MET', 151.32",
        "145 W/m², 145",
        "145 w/m2, 145"
    })
    void wordsAndUnitsAreUnderstood(String typed, double wattsPerSquareMeter) {
        assertEquals(wattsPerSquareMeter, Activity.parse(typed).wattsPerSquareMeter(), 1e-9);
    }

    @Test
    void aSmallNumberIsMetAndALargeOneWatts() {
        assertEquals(2 * 58.2, Activity.of(2).wattsPerSquareMeter(), 1e-9);
        assertEquals(90, Activity.of(90).wattsPerSquareMeter());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -5, 0.9, 7, 10, 11, 57, 401, Double.NaN})
    void numbersThatCanBeNeitherAreRefused(double number) {
        assertSame(
                Problem.ACTIVITY_OUT_OF_RANGE,
                assertThrows(InvalidInputException.class, () -> Activity.of(number))
                        .problem());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "flying", "12 horses"})
    void anUnknownActivityIsRefused(String typed) {
        assertSame(
                Problem.UNKNOWN_ACTIVITY,
                assertThrows(InvalidInputException.class, () -> Activity.parse(typed))
                        .problem());
    }

    @ParameterizedTest
    @EnumSource(Activity.Usual.class)
    void everyUsualActivityIsFoundByItsName(Activity.Usual usual) {
        assertEquals(usual.activity(), Activity.parse(usual.english()));
    }
}
