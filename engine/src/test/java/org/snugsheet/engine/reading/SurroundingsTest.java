package org.snugsheet.engine.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

class SurroundingsTest {

    private static final List<Entry> MINUTES = List.of(Entry.of(0), Entry.of(5), Entry.of(""), Entry.of(15));

    @Test
    void oneCellIsTheirTemperature() {
        assertEquals(Surroundings.constant(new Temperature(0)), of(Entry.of(0)));
        assertEquals(Surroundings.constant(new Temperature(20)), of(Entry.of("68 °F")));
    }

    @Test
    void theWordFitLeavesThemToTheReadings() {
        assertInstanceOf(Surroundings.Unknown.class, of(Entry.of(" Fit ")));
    }

    @Test
    void aColumnIsReadAtTheTimesOfTheReadings() {
        Surroundings measured = of(Entry.of(1), Entry.of("-"), Entry.of(9), Entry.of(4));

        assertEquals(
                new Surroundings.Measured(new Readings(
                        List.of(new Reading(1, 0, new Temperature(1)), new Reading(4, 900, new Temperature(4))),
                        Scale.CELSIUS)),
                measured);
    }

    @Test
    void aBlankIsNeverZero() {
        refused(Problem.SURROUNDINGS_BLANK, Entry.of(""));
        refused(Problem.SURROUNDINGS_BLANK, Entry.of(""), Entry.of(""), Entry.of(""), Entry.of(""));
        refused(Problem.SURROUNDINGS_BLANK);
    }

    @Test
    void whatIsNoTemperatureIsRefused() {
        refused(Problem.SURROUNDINGS_NOT_A_TEMPERATURE, Entry.of("cold"));
        refused(Problem.BELOW_ABSOLUTE_ZERO, Entry.of(-400));
        refused(Problem.NOT_A_TEMPERATURE, Entry.of(1), Entry.of("cold"), Entry.of(2), Entry.of(3));
        refused(Problem.SURROUNDINGS_LENGTH, Entry.of(1), Entry.of(2));
    }

    private static Surroundings of(Entry... cells) {
        return Surroundings.of(List.of(cells), MINUTES, Scale.CELSIUS);
    }

    private static void refused(Problem problem, Entry... cells) {
        assertEquals(
                problem,
                assertThrows(InvalidInputException.class, () -> of(cells)).problem());
    }
}
