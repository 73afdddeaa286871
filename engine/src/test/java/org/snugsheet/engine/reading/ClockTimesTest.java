package org.snugsheet.engine.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;

/**
 * The clock with twelve hours goes from 12:59 to 1:00, that with 24 from 23:59 to 0:00 (ISO 8601-1:2019, 4.3.8 and the
 * usage of am and pm in NIST’s “Times of day FAQs”, both from memory). All other expectations are differences on the clock.
 *
 * <p>In the tables below entries are parted by a bar; one that begins with {@code =} is a cell’s number, as a fraction of a
 * day or a date with its time, and {@code =h:mm} is the number that a cell holds when somebody types that time into it.
 */
class ClockTimesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                // written in every way
                "9:05 | 9:10 | 9:20;                              0 | 5 | 15",
                "09:05 | 09:10;                                   0 | 5",
                "9.05 | 9.10 | 9.20;                              0 | 5 | 15",
                "9.05 am | 9.10 am;                               0 | 5",
                "9:05am | 9:10 AM | 9:15 a.m. | 9:20 a. m.;       0 | 5 | 10 | 15",
                "9:05p | 9:10 pm;                                 0 | 5",
                "21:05:30 | 21:06:00 | 21:10;                     0 | 0.5 | 4.5",
                "21.05.30 | 21.06.00;                             0 | 0.5",
                "9h05 | 9 h 10 | 9H15 | 10h;                      0 | 5 | 10 | 55",
                "9.05 Uhr | 9.25 Uhr | 10 Uhr;                    0 | 20 | 55",
                "9 am | 9.30 am;                                  0 | 30",
                "11:50 | noon | 12:10;                            0 | 10 | 20",
                "11:50 pm | midnight | 12:10 am;                  0 | 10 | 20",
                "13:05 pm | 13:10;                                0 | 5",
                "9:05\u00a0am | 9:10\u202fam;                     0 | 5",
                // numbers, as time-formatted cells hold them
                "=9:05 | =9:10 | =9:20;                           0 | 5 | 15",
                "=0.378472222222222 | =0.381944444444444;         0 | 5",
                "=9:05 | 9:10 | 9.15;                             0 | 5 | 10",
                "=46034.378472222 | =46034.381944444;             0 | 5",
                "=46034.997222222 | =46035 | =46035.003472222;    0 | 4 | 9",
                "=46034.375 | =46035.375;                         0 | 1440",
                "=46034.375 | 9:10 | =46034.388888889;            0 | 10 | 20",
                "=46034.583333333 | 2:10 | 2:20 pm;               0 | 10 | 20",
                "=0 | =0.003472222 | =0.006944444;                0 | 5 | 10",
                "0:00 | 0:05 | 0:10;                              0 | 5 | 10",
                // gaps
                "- | 9:05 | - | 9:15 | -;                         - | 0 | - | 10 | -",
                // past noon without am or pm
                "12:55 | 1:05;                                    0 | 10",
                "=12:55 | =1:05;                                  0 | 10",
                "11:50 | 12:00 | 12:59 | 1:00 | 1:30;             0 | 10 | 69 | 70 | 100",
                "11.50 | 12.10 | 1.10;                            0 | 20 | 80",
                "8:30 | 11:45 | 2:15;                             0 | 195 | 345",
                // past midnight
                "23:58 | 0:03;                                    0 | 5",
                "=23:58 | =0:03;                                  0 | 5",
                "11:58 | 12:03;                                   0 | 5",
                "11:58 pm | 12:03 am;                             0 | 5",
                "22:00 | 9:00;                                    0 | 660",
                // what is known of one time helps the others
                "9:05 | 9:10 | 9:15 pm;                           0 | 5 | 10",
                "11:55 am | 12:05 | 1:05 | 1:10 pm;               0 | 10 | 70 | 75",
                "9:05 am | 9:10 | 9:15;                           0 | 5 | 10",
                "9:00 am | 9:00 pm;                               0 | 720",
                "12:50 | 12:55 | 13:00 | 13:05;                   0 | 5 | 10 | 15",
                "9:00 | 15:30;                                    0 | 390",
                "6:00 | 12:00;                                    0 | 360",
                // two jars read in the same minute
                "9:05 | 9:05 | 9:10;                              0 | 0 | 5",
                "=9:05 | 9:05;                                    0 | 0",
                // written with a point, and no decimals for all that
                "9.05;                                            0",
                "9.00 | 9.25 | 9.40;                              0 | 25 | 40",
                "9.00 am | 9.25 | 9.50;                           0 | 25 | 50",
                "9.00 | 9:25;                                     0 | 25",
                // from 0:00 with small steps
                "0:00 | 0:29;                                     0 | 29",
                "midnight | 0:30;                                 0 | 30",
                "12:00 am | 12:30 am | 1:30 am;                   0 | 30 | 90",
            })
    void minutesSinceTheFirstTime(String column, String minutes) {
        String answer = ClockTimes.minutes(column(column)).stream()
                .map(entry -> entry instanceof Entry.Value value ? shortest(value.value()) : "-")
                .collect(Collectors.joining(" | "));
        assertEquals(minutes, answer);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                // minutes already, or numbers that are no times
                "=0 | =5 | =10;                     2; ROW_PLAIN_NUMBER",
                "=5 | =10 | =15;                    1; ROW_PLAIN_NUMBER",
                "0 | 5 | 10;                        1; ROW_PLAIN_NUMBER",
                "=9.05 | =9.1;                      1; ROW_PLAIN_NUMBER",
                "=0 | =0.5 | =1;                    3; ROW_PLAIN_NUMBER",
                "9:05 | =-0.25;                     2; ROW_PLAIN_NUMBER",
                "9:05 | =1.0069;                    2; ROW_PLAIN_NUMBER",
                "9:05 | =1e9;                       2; ROW_PLAIN_NUMBER",
                "9.5 | 10;                          1; ROW_PLAIN_NUMBER",
                "9:05 | 0,5;                        2; ROW_PLAIN_NUMBER",
                // no times at all
                "9:05 | soon;                       2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 9:60;                       2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 24:00;                      2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 25:10;                      2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 9:5;                        2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 9:05:61;                    2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 9.05 C;                     2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 905 am;                     2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 13:05 am;                   2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 0:05 pm;                    2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | -9:10;                      2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | 5 min;                      2; ROW_NOT_A_CLOCK_TIME",
                "9:05 | =NaN;                       2; ROW_NOT_A_CLOCK_TIME",
                // slips of the pen
                "9:15 | 9:10;                       2; ROW_CLOCK_GOES_BACK",
                "9:15 | - | 9:51 | 9:20;            4; ROW_CLOCK_GOES_BACK",
                "10:05 | 1:10 | 10:15;              3; ROW_CLOCK_GOES_BACK",
                "14:15 | 14:10;                     2; ROW_CLOCK_GOES_BACK",
                "=14:15 | =14:10;                   2; ROW_CLOCK_GOES_BACK",
                "9:05 am | 9:00 am;                 2; ROW_CLOCK_GOES_BACK",
                "11:55 am | 12:05 am;               2; ROW_CLOCK_GOES_BACK",
                "12:50 | 12:55 | 13:00 | 1:05;      4; ROW_CLOCK_GOES_BACK",
                "9:05 pm | 9:10 | 9:15 am;          3; ROW_CLOCK_GOES_BACK",
                "15:00 | 8:00;                      2; ROW_CLOCK_GOES_BACK",
                // too far apart to tell on a clock with twelve hours
                "8:00 | 3:00;                       2; ROW_CLOCK_GOES_BACK",
                "1:00 | 8:00;                       2; ROW_CLOCK_GOES_BACK",
                "9:00 am | 9:01 pm;                 2; ROW_CLOCK_GOES_BACK",
                // dates
                "=46034.5 | =46034.4;               2; ROW_DATE_GOES_BACK",
                "=46034.5 | 1:00 pm | =46034.52;    3; ROW_DATE_GOES_BACK",
                // a stopwatch
                "0:00 | 5:00 | 10:00;               2; ROW_CLOCK_OR_STOPWATCH",
                "=0:00 | =5:00 | =10:00;            2; ROW_CLOCK_OR_STOPWATCH",
                "0:00 | 0:30 | 1:00;                2; ROW_CLOCK_OR_STOPWATCH",
                "=0 | =0.25 | =0.5;                 2; ROW_CLOCK_OR_STOPWATCH",
                "0:00 | 0:10 | 1:00;                3; ROW_CLOCK_OR_STOPWATCH",
            })
    void whatCannotBeSetInOrderIsRefusedByItsRow(String column, int row, Problem problem) {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> ClockTimes.minutes(column(column)));
        assertEquals(problem, refusal.problem(), refusal.finding().sentence());
        assertEquals(OptionalInt.of(row), refusal.row());
    }

    @ParameterizedTest
    @CsvSource({"5.00 | 10.00 | 15.00", "2.50 | 5.00 | 7.50", "0.25 | 0.50", "9.00 | - | 10.00"})
    void whatCouldBeDecimalsIsRefused(String column) {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> ClockTimes.minutes(column(column)));
        assertEquals(Problem.CLOCK_OR_DECIMALS, refusal.problem());
    }

    @ParameterizedTest
    @CsvSource(
            delimiterString = "=>",
            value = {
                "9:05 | - | 9:01 => Row 3: 9:01 goes back from 9:05 before it. Check both; "
                        + "if more than 6 hours went by, add am or pm or the date.",
                "=14:15 | =14:10 => Row 2: 14:10 goes back from 14:15 before it. Check both; "
                        + "if more than 12 hours went by, add am or pm or the date.",
                "=0 | =5 => Row 2: 5 is a plain number and no time of day. "
                        + "Minutes can be used as they are; type a time as 9:05.",
                "9:05 | soon => Row 2: “soon” is not a time of day. Type it like 9:05, 9:05 am or 21:05.",
                "0:00 | 5:00 => Row 2: from 0:00 to 5:00 may be hours or, on a stopwatch, minutes. "
                        + "Type plain minutes: 0, 5, 10.",
            })
    void theRefusalSaysWhatToDo(String column, String sentence) {
        assertEquals(
                sentence,
                assertThrows(InvalidInputException.class, () -> ClockTimes.minutes(column(column)))
                        .finding()
                        .sentence());
    }

    @Test
    void aColumnWithoutTimesStaysAsItIs() {
        assertEquals(List.of(), ClockTimes.minutes(List.of()));
        assertInstanceOf(
                Entry.Missing.class, ClockTimes.minutes(List.of(Entry.of(""))).get(0));
    }

    @Test
    void equalTimesOfOneJarAreRefusedByItsReadings() {
        List<Entry> minutes = ClockTimes.minutes(column("9:05 | 9:05"));
        List<Entry> temperatures = List.of(Entry.of(40), Entry.of(39));
        assertEquals(
                Problem.TIME_NOT_LATER,
                assertThrows(
                                InvalidInputException.class,
                                () -> Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS))
                        .problem());
    }

    /** Whenever a lesson begins, and however it is written, the minutes are those that went by. */
    @Test
    void anyLessonComesOutRightInEveryWriting() {
        SplittableRandom random = new SplittableRandom(20261125);
        for (int i = 0; i < 2000; i++) {
            // Not at 0:00 itself, where a stopwatch begins.
            int start = 1 + random.nextInt(1439);
            List<Integer> elapsed = new ArrayList<>(List.of(0));
            for (int k = random.nextInt(1, 10); k > 0; k--) {
                elapsed.add(elapsed.get(elapsed.size() - 1) + random.nextInt(0, 361));
            }
            List<Integer> clock = elapsed.stream().map(m -> start + m).toList();
            List<Double> expected = elapsed.stream().map(Integer::doubleValue).toList();

            check(expected, clock.stream().map(ClockTimesTest::twentyFour).map(Entry::of));
            check(expected, clock.stream().map(m -> Entry.of(m % 1440 / 1440.0)));
            check(expected, clock.stream().map(m -> Entry.of(46034 + m / 1440.0)));
            check(expected, clock.stream().map(ClockTimesTest::twelve).map(Entry::of));
            check(
                    expected,
                    clock.stream()
                            .map(m -> twelve(m) + (m % 1440 < 720 ? " a.m." : " p.m."))
                            .map(Entry::of));
        }
    }

    private static void check(List<Double> expected, Stream<Entry> column) {
        List<Entry> entries = column.toList();
        List<Double> minutes = ClockTimes.minutes(entries).stream()
                .map(entry -> ((Entry.Value) entry).value())
                .toList();
        assertEquals(expected, minutes, () -> entries.toString());
    }

    private static String twentyFour(int minutes) {
        return String.format(Locale.ROOT, "%d:%02d", minutes / 60 % 24, minutes % 60);
    }

    private static String twelve(int minutes) {
        return String.format(Locale.ROOT, "%d:%02d", (minutes / 60 + 11) % 12 + 1, minutes % 60);
    }

    private static List<Entry> column(String entries) {
        return Arrays.stream(entries.split("\\|"))
                .map(String::strip)
                .map(ClockTimesTest::entry)
                .toList();
    }

    private static Entry entry(String written) {
        if (!written.startsWith("=")) {
            return Entry.of(written);
        }
        String number = written.substring(1);
        int colon = number.indexOf(':');
        return Entry.of(
                colon < 0
                        ? Double.parseDouble(number)
                        : (Integer.parseInt(number.substring(0, colon)) * 60
                                        + Integer.parseInt(number.substring(colon + 1)))
                                / 1440.0);
    }

    private static String shortest(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
