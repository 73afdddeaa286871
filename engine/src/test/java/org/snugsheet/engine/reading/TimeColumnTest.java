package org.snugsheet.engine.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;

class TimeColumnTest {

    /** A time cell holds hours divided by 24: 9:05 is 0.378472, a stopwatch’s 5:00 in such a cell 0.208333. */
    @ParameterizedTest
    @CsvSource({
        "540, 5, DAY_FRACTIONS", "540, 1, DAY_FRACTIONS", "0, 10, DAY_FRACTIONS", "0, 120, STOPWATCH_HOURS",
        "0, 180, STOPWATCH_HOURS", "0, 300, STOPWATCH_HOURS", "0, 600, STOPWATCH_HOURS", "300, 300, STOPWATCH_HOURS",
        "0, 540, STOPWATCH_HOURS"
    })
    void timeCellsAreRefusedWhereverTimesAreTaken(int first, int step, Problem problem) {
        List<Entry> times = IntStream.range(0, 6)
                .mapToObj(i -> Entry.of((first + i * step) / 1440.0))
                .toList();
        assertEquals(problem, TimeColumn.of(times).notMinutes().orElseThrow().problem());
        List<Entry> readings = Stream.of(40, 34, 30, 27, 25, 23).map(Entry::of).toList();
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> Readings.ofMinutes(times, readings, Scale.CELSIUS));
        assertTrue(refusal.finding().sentence().contains("COOL.MINUTES(A2:A9)"));
    }

    @Test
    void aStopwatchOfHoursCountsItsMinutes() {
        List<Entry> times =
                IntStream.range(0, 6).mapToObj(i -> Entry.of(i * 5 / 24.0)).toList();
        List<Entry> minutes = TimeColumn.of(times).minutes();
        assertEquals(25, minutes.get(5).asNumber(6), 1e-9);
    }

    @Test
    void textsAreToldTheSame() {
        List<Entry> times = Stream.of("9:05", "9:10", "9:15").map(Entry::of).toList();
        assertEquals(
                "The times are times of day, such as 9:05. Type minutes, or give COOL.MINUTES(times) in their place, such as COOL.MINUTES(A2:A9).",
                TimeColumn.of(times).notMinutes().map(Finding::sentence).orElseThrow());
    }

    @Test
    void secondsForMinutesAreAskedAboutButNotRefused() {
        TimeColumn seconds = TimeColumn.of(steps(300, 6));
        assertEquals(Optional.empty(), seconds.notMinutes());
        assertEquals(
                "The times run over 1,500 minutes: are these seconds? Look again. If so, divide the times by 60.",
                seconds.doubt().map(Finding::sentence).orElseThrow());
        assertEquals(
                6, Readings.ofMinutes(steps(300, 6), steps(1, 6), Scale.CELSIUS).size());
    }

    /** Half minutes, hours of a thermos flask, and seconds divided by 60. */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.5, 1, 2, 2.5, 5, 10, 20, 60})
    void minutesAreMinutes(double step) {
        TimeColumn column = TimeColumn.of(steps(step, 10));
        assertEquals(Optional.empty(), column.notMinutes());
        assertEquals(Optional.empty(), column.doubt());
    }

    @Test
    void oneTimeWithANoughtTooManyMakesNoSeconds() {
        List<Entry> times =
                Stream.of(0, 10, 20, 30, 40, 500, 6000).map(Entry::of).toList();
        assertEquals(Optional.empty(), TimeColumn.of(times).doubt());
    }

    private static List<Entry> steps(double step, int count) {
        return IntStream.range(0, count).mapToObj(i -> Entry.of(i * step)).toList();
    }
}
