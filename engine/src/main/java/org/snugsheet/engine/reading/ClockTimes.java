package org.snugsheet.engine.reading;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * Converts a column of clock times into minutes since the first of them.
 *
 * <pre>{@code
 * ClockTimes.minutes(List.of(Entry.of("9:05"), Entry.of("-"), Entry.of("9.15 am")));   // 0, a gap, 10
 * ClockTimes.minutes(List.of(Entry.of("12:55"), Entry.of("1:05")));                    // 0, 10: past noon
 * ClockTimes.minutes(List.of(Entry.of("23:58"), Entry.of("0:03")));                    // 0, 5: past midnight
 * ClockTimes.minutes(List.of(Entry.of("9:15"), Entry.of("9:10")));                     // refused: row 2 goes back
 * ClockTimes.minutes(List.of(Entry.of(0), Entry.of(5)));                               // refused: 5 is no clock time
 * }</pre>
 *
 * <h2>What is read</h2>
 *
 * <ul>
 *   <li>A number from 0 up to 1 is a part of a day, as a time-formatted cell holds it. A number from 20 000 on is a date with
 *       its time. Any other number is refused: it is already in minutes, or 9.05 typed for 9:05.
 *   <li>Text: {@code 9:05}, {@code 09:05}, {@code 21:05:30}, {@code 9.05}, {@code 9h05}, {@code 9 h}, {@code 9:05 am}, {@code
 *       9.05 p.m.}, {@code 9pm}, {@code 9:05p}, {@code 9.05 Uhr}, {@code noon}, {@code midnight}; capitals do not matter.
 *   <li>A gap stays a gap.
 * </ul>
 *
 * <h2>How times are put in order</h2>
 *
 * <p>Each time is the next such time after the one above it. A time with a date is fully known; a time without one only up to
 * whole turns of its dial: one turn a day for am, pm, noon, midnight and the 24-hour clock, two for the 12-hour clock. Bare
 * times (without any such word) belong to the 12-hour clock if all bare times of the column have an hour from 1 to 12; a
 * single one with hour 0 or 13 to 23 puts all of them on the 24-hour clock. The step between two neighbors is the smallest
 * one forward, from zero on, on the coarser dial of the two; what was stated farther up (am on the first time, say) is
 * remembered.
 *
 * <p>A step of more than half a turn (6 hours on the 12-hour clock, 12 on the 24-hour clock) is considered a step back, as
 * when somebody types 9:15, 9:51, 9:20, and is refused with its row. With dates there is nothing to guess: any step forward
 * is accepted and any step back is refused. Two equal times in a row give equal minutes: two jars may be read in one minute,
 * and {@link Readings} refuses equal times of one jar.
 *
 * <h2>What may not be a clock time at all</h2>
 *
 * <p>Two kinds of columns look like clock times but may be something sixty times smaller; they are refused. One begins at a
 * bare 0:00 and takes a step of half an hour or more: a stopwatch shows 0:00, 5:00, 10:00 for minutes and seconds. The other
 * has two or more times, all written with a point, all ending in .00, .25 or .50: they could be numbers with decimals. A
 * stopwatch column that begins later (5:00, 10:00) cannot be distinguished from clock times and is read as such.
 */
public final class ClockTimes {

    private static final long STOPWATCH_STEP = 30 * ClockTime.MINUTE;

    private ClockTimes() {}

    /**
     * The minutes since the first time of a column.
     *
     * @param column the entries, one for each row
     * @return for each row the minutes as a number, or a gap where there was one
     * @throws InvalidInputException if an entry is not a time of day, times go back, or the column is probably something else
     */
    public static List<Entry> minutes(List<Entry> column) {
        List<ClockTime> times = new ArrayList<>();
        for (int i = 0; i < column.size(); i++) {
            if (!(column.get(i) instanceof Entry.Missing)) {
                times.add(ClockTime.read(i + 1, column.get(i)));
            }
        }
        refuseDecimals(times);
        List<Entry> minutes = new ArrayList<>(column);
        long elapsed = 0;
        Hand hand = new Hand(0, Dial.CALENDAR);
        boolean twelveHours = times.stream().filter(ClockTime::isBare).allMatch(ClockTime::isOnTwelveHourFace);
        for (int i = 0; i < times.size(); i++) {
            ClockTime time = times.get(i);
            Hand shown = new Hand(time.millis(), Dial.of(time, twelveHours));
            if (i == 0) {
                hand = shown;
            } else {
                long step = step(hand, times.get(i - 1), shown, time);
                refuseStopwatch(times.get(0), time, step);
                elapsed += step;
                hand = hand.moved(step, shown);
            }
            minutes.set(time.row() - 1, Entry.of(elapsed / (double) ClockTime.MINUTE));
        }
        return List.copyOf(minutes);
    }

    private static long step(Hand before, ClockTime timeBefore, Hand now, ClockTime time) {
        Dial dial = before.dial().coarser(now.dial());
        long apart = now.millis() - before.millis();
        if (dial == Dial.CALENDAR) {
            if (apart < 0) {
                throw InvalidInputException.atRow(time.row(), Problem.ROW_DATE_GOES_BACK);
            }
            return apart;
        }
        long step = Math.floorMod(apart, dial.turn());
        if (step > dial.turn() / 2) {
            throw InvalidInputException.atRow(
                    time.row(),
                    Problem.ROW_CLOCK_GOES_BACK,
                    time.written(),
                    timeBefore.written(),
                    dial.turn() / 2 / ClockTime.HOUR);
        }
        return step;
    }

    private static void refuseStopwatch(ClockTime first, ClockTime time, long step) {
        if (first.isBare() && first.millis() == 0 && step >= STOPWATCH_STEP) {
            throw InvalidInputException.atRow(time.row(), Problem.ROW_CLOCK_OR_STOPWATCH, time.written());
        }
    }

    private static void refuseDecimals(List<ClockTime> times) {
        boolean decimals = times.stream().allMatch(time -> {
            long minute = time.millis() / ClockTime.MINUTE % 60;
            return time.form() == ClockTime.Form.BARE_WITH_POINT && (minute == 0 || minute == 25 || minute == 50);
        });
        if (decimals && times.size() > 1) {
            throw InvalidInputException.of(
                    Problem.CLOCK_OR_DECIMALS,
                    times.get(0).written(),
                    times.get(1).written());
        }
    }

    /** How far a time is known: up to whole turns of its dial. From the coarsest to the finest. */
    private enum Dial {
        TWELVE_HOURS(ClockTime.DAY / 2),
        DAY(ClockTime.DAY),
        /** Dated: nothing turns. */
        CALENDAR(0);

        private final long turn;

        Dial(long turn) {
            this.turn = turn;
        }

        static Dial of(ClockTime time, boolean twelveHours) {
            return switch (time.form()) {
                case DATED -> CALENDAR;
                case HALF_OF_DAY_KNOWN -> DAY;
                case BARE, BARE_WITH_POINT -> twelveHours ? TWELVE_HOURS : DAY;
            };
        }

        long turn() {
            return turn;
        }

        Dial coarser(Dial other) {
            return compareTo(other) < 0 ? this : other;
        }
    }

    /** The state of the clock, and how far it is known. */
    private record Hand(long millis, Dial dial) {

        /** Moves on to the time shown now, and keeps the more precise knowledge of the two. */
        Hand moved(long step, Hand shown) {
            return dial.coarser(shown.dial) == dial ? shown : new Hand(millis + step, dial);
        }
    }
}
