package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/**
 * Single columns, each with one slip that is known because it was made here: what is said names it, its row, what was typed and what was
 * meant. The jar is invented: 42 °C in 8 °C, losing 3 % of the difference a minute, read every 4 minutes to a mark of 0.5 °C.
 */
class SlipExamplesTest {

    private static final double RATE = 0.03;
    private static final double AROUND = 8;
    private static final double STEP = 4;
    private static final double MARK = 0.5;
    private static final int ROWS = 12;

    /** A column under test: what is typed in each row, to be changed. */
    private static final class Typed {
        private final List<Entry> minutes = new ArrayList<>();
        private final List<Entry> readings = new ArrayList<>();
        private List<Entry> around = List.of(Entry.of(AROUND));
        private Scale scale = Scale.CELSIUS;
        private double mark = MARK;

        static Typed jar() {
            Typed typed = new Typed();
            for (int row = 1; row <= ROWS; row++) {
                typed.minutes.add(Entry.of(minute(row)));
                typed.readings.add(Entry.of(reading(row)));
            }
            return typed;
        }

        Typed reads(int row, double value) {
            readings.set(row - 1, Entry.of(value));
            return this;
        }

        Typed at(int row, double minute) {
            minutes.set(row - 1, Entry.of(minute));
            return this;
        }

        Typed says(int row, String text) {
            readings.set(row - 1, Entry.of(text));
            return this;
        }

        Typed in(Entry... surroundings) {
            around = Arrays.asList(surroundings);
            return this;
        }

        Typed on(Scale other, double graduation) {
            scale = other;
            mark = graduation;
            return this;
        }

        List<Slip> slips() {
            return SlipFinder.find(minutes, readings, around, Graduation.of(mark, scale), scale);
        }

        Slip only() {
            List<Slip> slips = slips();
            assertEquals(1, slips.size(), slips::toString);
            return slips.get(0);
        }
    }

    private static double minute(int row) {
        return STEP * (row - 1);
    }

    private static double truth(double minute) {
        return AROUND + 34 * Math.exp(-RATE * minute);
    }

    private static double reading(int row) {
        return rounded(truth(minute(row)));
    }

    private static double rounded(double celsius) {
        return Math.rint(celsius / MARK) * MARK;
    }

    private static void says(Slip slip, SlipKind kind, int row, Problem problem, Object... arguments) {
        assertEquals(kind, slip.kind(), slip.finding()::sentence);
        assertEquals(row == 0 ? OptionalInt.empty() : OptionalInt.of(row), slip.row());
        assertEquals(problem, slip.finding().problem());
        List<?> said = slip.finding().arguments();
        List<?> values = row == 0 ? said : said.subList(1, said.size());
        assertEquals(arguments.length, values.size(), () -> "arguments " + said);
        for (int i = 0; i < arguments.length; i++) {
            if (arguments[i] instanceof Double number) {
                assertEquals(number, (double) values.get(i), 1e-9, slip.finding()::sentence);
            } else {
                assertEquals(arguments[i], values.get(i));
            }
        }
        assertTrue(slip.certainty() > 0.8 && slip.certainty() <= 1, () -> "certainty " + slip.certainty());
    }

    @Test
    void theJarItselfIsClean() {
        assertEquals(List.of(), Typed.jar().slips());
        assertEquals(List.of(), Typed.jar().in(Entry.of("8 °C")).slips());
    }

    // ---- one reading

    @ParameterizedTest
    @ValueSource(ints = {2, 5, 12})
    void aMinusSignTooMany(int row) {
        double meant = reading(row);
        says(Typed.jar().reads(row, -meant).only(), SlipKind.SIGN_WRONG, row, Problem.ROW_SIGN_WRONG, -meant, meant);
    }

    @Test
    void aLostComma() {
        says(Typed.jar().reads(3, 345).only(), SlipKind.COMMA_LOST, 3, Problem.ROW_COMMA_LOST, 345.0, 34.5);
        says(Typed.jar().reads(3, 3450).only(), SlipKind.COMMA_LOST, 3, Problem.ROW_COMMA_LOST, 3450.0, 34.5);
        says(Typed.jar().reads(3, 3.45).only(), SlipKind.COMMA_LOST, 3, Problem.ROW_COMMA_LOST, 3.45, 34.5);
    }

    @Test
    void tenDegreesOff() {
        // Row 4 is 31.5, row 7 24.5; 41.5 is warmer than the start.
        says(Typed.jar().reads(4, 41.5).only(), SlipKind.TENS_MISREAD, 4, Problem.ROW_TENS_MISREAD, 41.5, 31.5);
        says(Typed.jar().reads(7, 14.5).only(), SlipKind.TENS_MISREAD, 7, Problem.ROW_TENS_MISREAD, 14.5, reading(7));
    }

    @Test
    void swappedDigits() {
        says(Typed.jar().reads(4, 13.5).only(), SlipKind.DIGITS_SWAPPED, 4, Problem.ROW_DIGITS_SWAPPED, 13.5, 31.5);
        says(Typed.jar().reads(5, 92).only(), SlipKind.DIGITS_SWAPPED, 5, Problem.ROW_DIGITS_SWAPPED, 92.0, 29.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 6, 11})
    void aReadingOnTheOtherScale(int row) {
        double fahrenheit = Math.rint(reading(row) * 9 / 5 + 32);
        says(
                Typed.jar().reads(row, fahrenheit).only(),
                SlipKind.READING_ON_OTHER_SCALE,
                row,
                Problem.ROW_ON_OTHER_SCALE,
                fahrenheit,
                "°F",
                "°C");
    }

    @Test
    void aFirstReadingThatHasNotSettled() {
        Slip slip = Typed.jar().reads(1, 35.8).only();
        assertEquals(SlipKind.NOT_SETTLED, slip.kind(), slip.finding()::sentence);
        assertEquals(OptionalInt.of(1), slip.row());
        assertEquals(35.8, (double) slip.finding().arguments().get(1), 1e-9);
        // The curve points to 42 °C; it is known to a mark.
        assertEquals(42, (double) slip.finding().arguments().get(2), MARK);
    }

    @Test
    void aReadingThatGoesBack() {
        // 29 was read; none of its digits was anything else.
        Slip slip = Typed.jar().reads(5, 34.7).only();
        says(slip, SlipKind.GOES_BACK, 5, Problem.WARMER_THAN_BEFORE, 34.7, reading(4), "°C");
    }

    @Test
    void aReadingBeyondTheSurroundings() {
        Slip slip = Typed.jar().reads(12, 5.7).only();
        says(slip, SlipKind.BEYOND_SURROUNDINGS, 12, Problem.ROW_BEYOND_SURROUNDINGS, 5.7, 8.0, "°C");
    }

    @Test
    void aReadingOffTheCurve() {
        Slip slip = Typed.jar().reads(6, 24.3).only();
        assertEquals(SlipKind.OFF_THE_CURVE, slip.kind(), slip.finding()::sentence);
        assertEquals(OptionalInt.of(6), slip.row());
        assertEquals(24.3, (double) slip.finding().arguments().get(1), 1e-9);
        assertEquals(truth(minute(6)), (double) slip.finding().arguments().get(2), MARK);
    }

    /** A jar that warms in a room goes back where it gets colder. */
    @Test
    void aJarThatWarmsGoesBackWhereItIsColder() {
        Typed typed = Typed.jar().in(Entry.of(21));
        for (int row = 1; row <= ROWS; row++) {
            typed.reads(row, rounded(21 - 17 * Math.exp(-RATE * minute(row))));
        }
        assertEquals(List.of(), typed.slips());
        double before = rounded(21 - 17 * Math.exp(-RATE * minute(6)));
        Slip slip = typed.reads(7, before - 2.8).only();
        says(slip, SlipKind.GOES_BACK, 7, Problem.COLDER_THAN_BEFORE, before - 2.8, before, "°C");
    }

    @Test
    void twoSlipsOfTwoKinds() {
        List<Slip> slips = Typed.jar().reads(3, -34.5).reads(9, 210).slips();
        assertEquals(
                List.of("SIGN_WRONG 3", "COMMA_LOST 9"),
                slips.stream()
                        .map(slip -> slip.kind() + " " + slip.row().orElse(0))
                        .sorted((a, b) -> a.substring(a.length() - 1).compareTo(b.substring(b.length() - 1)))
                        .toList());
    }

    // ---- times

    /** A class miscounted: from one row on the clock is a step late, while the jar cooled on by its own. */
    @ParameterizedTest
    @CsvSource({"4, 1", "6, 2", "9, 1"})
    void skippedMinutes(int row, int steps) {
        Typed typed = Typed.jar();
        for (int later = row; later <= ROWS; later++) {
            typed.at(later, minute(later) + steps * STEP);
        }
        says(
                typed.only(),
                SlipKind.MINUTES_SKIPPED,
                row,
                Problem.ROW_MINUTES_SKIPPED,
                minute(row) + steps * STEP,
                minute(row));
    }

    @Test
    void readingsLeftOutOnPurposeAreNoSlip() {
        Typed typed = Typed.jar();
        for (int later = 6; later <= ROWS; later++) {
            typed.at(later, minute(later) + 2 * STEP).reads(later, rounded(truth(minute(later) + 2 * STEP)));
        }
        assertEquals(List.of(), typed.slips());
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 7})
    void repeatedMinutes(int row) {
        Typed typed = Typed.jar();
        for (int later = row; later <= ROWS; later++) {
            typed.at(later, minute(later) - STEP);
        }
        Slip slip = typed.only();
        assertEquals(SlipKind.MINUTES_REPEATED, slip.kind(), slip.finding()::sentence);
        assertEquals(OptionalInt.of(row), slip.row());
        assertEquals(1, slip.certainty());
        assertEquals(minute(row) - STEP, (double) slip.finding().arguments().get(1), 1e-9);
        assertEquals(minute(row), (double) slip.finding().arguments().get(2), 1e-9);
    }

    @Test
    void oneWrongTime() {
        Slip early = Typed.jar().at(8, 3).only();
        assertEquals(SlipKind.TIME_WRONG, early.kind(), early.finding()::sentence);
        assertEquals(OptionalInt.of(8), early.row());
        assertEquals(28.0, (double) early.finding().arguments().get(2), 1e-9);
    }

    @Test
    void theLastTimeAnHourLate() {
        says(
                Typed.jar().at(ROWS, minute(ROWS) + 60).only(),
                SlipKind.TIME_WRONG,
                ROWS,
                Problem.ROW_TIME_WRONG,
                minute(ROWS) + 60,
                minute(ROWS));
    }

    @Test
    void rowsLeftBlankCountForTheStep() {
        Typed typed = Typed.jar().says(4, "").says(8, "-");
        assertEquals(List.of(), typed.slips());
        Slip slip = typed.reads(6, -reading(6)).only();
        says(slip, SlipKind.SIGN_WRONG, 6, Problem.ROW_SIGN_WRONG, -reading(6), reading(6));
    }

    @Test
    void secondsForMinutes() {
        Typed typed = Typed.jar();
        for (int row = 1; row <= ROWS; row++) {
            typed.at(row, 60 * minute(row));
        }
        assertTrue(
                typed.slips().stream().anyMatch(slip -> slip.kind() == SlipKind.SECONDS_FOR_MINUTES),
                () -> "" + typed.slips());
    }

    // ---- from one row on

    @Test
    void aJarThatWasStirred() {
        Typed typed = Typed.jar();
        for (int later = 6; later <= ROWS; later++) {
            typed.reads(later, rounded(AROUND + 44 * Math.exp(-RATE * minute(later))));
        }
        says(typed.only(), SlipKind.STIRRED_OR_MOVED, 6, Problem.ROW_JUMP);
    }

    @Test
    void aThermometerThatSticks() {
        Typed typed = Typed.jar();
        for (int later = 7; later <= ROWS; later++) {
            typed.reads(later, reading(6));
        }
        Slip slip = typed.only();
        assertEquals(SlipKind.STUCK, slip.kind(), slip.finding()::sentence);
        assertEquals(7, slip.row().orElse(0));
        assertEquals(reading(6), (double) slip.finding().arguments().get(1), 0.1);
    }

    @Test
    void aThermometerOutOfTheWater() {
        Typed typed = Typed.jar();
        for (int row = 1; row <= ROWS; row++) {
            typed.reads(row, row % 3 == 0 ? 30.5 : 30);
        }
        says(typed.only(), SlipKind.CONSTANT, 0, Problem.CONSTANT_COLUMN, 30.2, "°C");
    }

    // ---- the other scale

    @Test
    void aColumnOnTheOtherScale() {
        Typed typed = Typed.jar();
        for (int row = 1; row <= ROWS; row++) {
            typed.reads(row, Math.rint(truth(minute(row)) * 9 / 5 + 32));
        }
        says(typed.only(), SlipKind.COLUMN_ON_OTHER_SCALE, 0, Problem.COLUMN_ON_OTHER_SCALE, "°F", "°C");
        says(typed.in(Entry.of(46)).only(), SlipKind.ALL_ON_OTHER_SCALE, 0, Problem.ALL_ON_OTHER_SCALE, "°F", "°C");
    }

    @Test
    void surroundingsOnTheOtherScale() {
        says(
                Typed.jar().in(Entry.of(46)).only(),
                SlipKind.SURROUNDINGS_ON_OTHER_SCALE,
                0,
                Problem.SURROUNDINGS_ON_OTHER_SCALE,
                46.0,
                "°F");
    }

    @Test
    void aColumnInCelsiusOnASheetInFahrenheit() {
        Typed typed = Typed.jar().on(Scale.FAHRENHEIT, 1).in(Entry.of(46.4));
        says(typed.only(), SlipKind.COLUMN_ON_OTHER_SCALE, 0, Problem.COLUMN_ON_OTHER_SCALE, "°C", "°F");
    }

    @Test
    void oneReadingInCelsiusOnASheetInFahrenheit() {
        Typed typed = Typed.jar().on(Scale.FAHRENHEIT, 1).in(Entry.of(46.4));
        for (int row = 1; row <= ROWS; row++) {
            typed.reads(row, Math.rint(truth(minute(row)) * 9 / 5 + 32));
        }
        assertEquals(List.of(), typed.slips());
        says(
                typed.reads(5, 29).only(),
                SlipKind.READING_ON_OTHER_SCALE,
                5,
                Problem.ROW_ON_OTHER_SCALE,
                29.0,
                "°C",
                "°F");
    }

    // ---- what cannot be read

    @Test
    void cellsThatCannotBeRead() {
        Slip word = Typed.jar().says(4, "cold").only();
        assertEquals(SlipKind.UNREADABLE, word.kind());
        assertEquals(4, word.row().orElse(0));
        assertEquals(1, word.certainty());
        Slip blank = Typed.jar().in(Entry.of("")).only();
        assertEquals(Problem.SURROUNDINGS_BLANK, blank.finding().problem());
        Slip strange = Typed.jar().in(Entry.of("warm")).only();
        assertEquals(Problem.SURROUNDINGS_NOT_A_TEMPERATURE, strange.finding().problem());
        Slip few = Typed.jar().in(Entry.of(8), Entry.of(8)).only();
        assertEquals(Problem.SURROUNDINGS_LENGTH, few.finding().problem());
        assertEquals(List.of(2, ROWS), few.finding().arguments());
    }

    @Test
    void columnsOfDifferentLengthAreRefused() {
        Typed typed = Typed.jar();
        typed.minutes.remove(0);
        Slip slip = typed.only();
        assertEquals(SlipKind.REFUSED, slip.kind());
        assertEquals(Problem.DIFFERENT_LENGTH, slip.finding().problem());
    }

    @Test
    void meltingIceIsZero() {
        Typed typed = Typed.jar().in(Entry.of("melting ice"));
        for (int row = 1; row <= ROWS; row++) {
            typed.reads(row, rounded(40 * Math.exp(-RATE * minute(row))));
        }
        assertEquals(List.of(), typed.slips());
    }

    /** A room that was read now and then, straight between: what is typed in °F is turned, and the readings stay clean. */
    @Test
    void surroundingsOfEachRow() {
        Entry[] around = new Entry[ROWS];
        Arrays.fill(around, Entry.of("-"));
        around[0] = Entry.of(8);
        around[4] = Entry.of("46.4 °F");
        around[ROWS - 1] = Entry.of(8);
        assertEquals(List.of(), Typed.jar().in(around).slips());
        // Off by much where nobody read it: the finder sees through what lies between.
        around[4] = Entry.of(18);
        assertTrue(!Typed.jar().in(around).slips().isEmpty());
    }
}
