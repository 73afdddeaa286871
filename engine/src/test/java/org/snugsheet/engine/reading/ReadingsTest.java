package org.snugsheet.engine.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

class ReadingsTest {

    @Test
    void aPairWithAGapIsLeftOutAndTheOthersKeepTheirRows() {
        Readings readings = Readings.ofMinutes(
                List.of(Entry.of(0), Entry.of(5), Entry.of(""), Entry.of(15)),
                List.of(Entry.of(40), Entry.of("-"), Entry.of(30), Entry.of("77 °F")),
                Scale.CELSIUS);

        assertEquals(
                List.of(new Reading(1, 0, new Temperature(40)), new Reading(4, 900, new Temperature(25))),
                readings.all());
        assertEquals(900, readings.span());
    }

    @Test
    void aBlankColumnIsNoReadingsAndNotZeros() {
        Readings readings = Readings.ofMinutes(
                List.of(Entry.of(""), Entry.of("")), List.of(Entry.of(""), Entry.of("")), Scale.CELSIUS);

        assertEquals(0, readings.size());
        assertEquals(
                Problem.NO_READINGS,
                assertThrows(InvalidInputException.class, readings::first).problem());
    }

    @ParameterizedTest
    @CsvSource({"5, 5", "5, 4"})
    void aTimeThatIsNotLaterIsRefusedByItsRow(double before, double time) {
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> Readings.ofMinutes(
                        List.of(Entry.of(0), Entry.of(before), Entry.of("-"), Entry.of(time)),
                        List.of(Entry.of(40), Entry.of(38), Entry.of(37), Entry.of(36)),
                        Scale.CELSIUS));

        assertEquals(Problem.TIME_NOT_LATER, refusal.problem());
        assertEquals(OptionalInt.of(4), refusal.row());
    }

    @Test
    void columnsOfDifferentLengthAreRefused() {
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> Readings.ofMinutes(List.of(Entry.of(0), Entry.of(5)), List.of(Entry.of(40)), Scale.CELSIUS));

        assertEquals(Problem.DIFFERENT_LENGTH, refusal.problem());
    }

    @Test
    void aTimeThatIsTextIsRefusedByItsRow() {
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> Readings.ofMinutes(
                        List.of(Entry.of(0), Entry.of("soon")), List.of(Entry.of(40), Entry.of(39)), Scale.CELSIUS));

        assertEquals(
                "Row 2: “soon” is not a number. Type a plain number there.",
                refusal.finding().sentence());
    }

    /** GUM (JCGM 100:2008), 4.3.7: half-width a has the standard uncertainty a/√3, so a whole mark has mark/√12. */
    @Test
    void aMarkLeavesItsRoundingBehind() {
        assertEquals(0.5 / Math.sqrt(3), Graduation.usual(Scale.CELSIUS).standardUncertainty(), 1e-15);
        assertEquals(5.0 / 9 / Math.sqrt(3), Graduation.usual(Scale.FAHRENHEIT).standardUncertainty(), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"0", "-1", "NaN"})
    void aMarkIsMoreThanZero(double degrees) {
        assertThrows(InvalidInputException.class, () -> Graduation.of(degrees, Scale.CELSIUS));
    }
}
