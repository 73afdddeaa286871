package org.snugsheet.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * A column of times as typed, which should be minutes but may be times of day.
 *
 * <p>Nobody reads a hand-held thermometer every few seconds. So times that step by less than a quarter of a minute are not
 * minutes: they are parts of a day, as time cells hold them, or hours and minutes with a point (9.05). Numbers such as 955,
 * 1000 are hours and minutes if their steps are regular at the full hour only in that reading. A stopwatch typed as 0:00,
 * 5:00, 10:00 is stored as hours, so that all values are whole twenty-fourths, most of which nobody types as minutes.
 *
 * <p>Times of ten hours and more in whole steps of ten are not refused: they may be seconds, or a long night.
 *
 * @param minutes the times in minutes as far as they are known, one entry for each row; what cannot be read is a gap
 * @param unreadable what cannot be read, row by row
 * @param notMinutes what the times are if they are not minutes
 * @param doubt what they may be instead of minutes
 */
public record TimeColumn(
        List<Entry> minutes, List<Finding> unreadable, Optional<Finding> notMinutes, Optional<Finding> doubt) {

    private static final double SHORTEST_STEP = 0.25;
    private static final double LONGEST_STEP_AS_PART_OF_DAY = 0.045;
    private static final double MINUTES_PER_DAY = 1440;
    private static final double HOURS_PER_DAY = 24;

    /** A stopwatch that shows more than 72 minutes outlasts a lesson. */
    private static final double LONGEST_STOPWATCH = 3;

    /** Nobody sits beside a jar for ten hours (common practice, no source). */
    private static final double LONGEST_SPAN = 600;

    /** A time column; the lists are copied. */
    public TimeColumn {
        minutes = List.copyOf(minutes);
        unreadable = List.copyOf(unreadable);
    }

    /**
     * Reads a column of times.
     *
     * @param typed what was typed, one for each row
     * @return the column
     */
    public static TimeColumn of(List<Entry> typed) {
        List<Entry> minutes = new ArrayList<>(typed);
        List<Finding> unreadable = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        Optional<String> text = Optional.empty();
        for (int i = 0; i < typed.size(); i++) {
            if (typed.get(i) instanceof Entry.Missing) {
                continue;
            }
            try {
                double number = typed.get(i).asNumber(i + 1);
                numbers.add(number);
                minutes.set(i, Entry.of(number));
            } catch (InvalidInputException refusal) {
                unreadable.add(refusal.finding());
                minutes.set(i, new Entry.Missing());
                if (text.isEmpty() && typed.get(i) instanceof Entry.Text written) {
                    text = Optional.of(written.text());
                }
            }
        }
        if (text.isPresent()) {
            Optional<List<Entry>> clock = clock(typed);
            if (clock.isPresent()) {
                return timesOfDay(clock.get(), Finding.of(Problem.CLOCK_TIMES, text.get()));
            }
        }
        return unreadable.isEmpty()
                ? ofNumbers(minutes, numbers)
                : new TimeColumn(minutes, unreadable, Optional.empty(), Optional.empty());
    }

    private static TimeColumn ofNumbers(List<Entry> typed, List<Double> numbers) {
        double step = usualStep(numbers);
        boolean tooShort = step > 0 && step < SHORTEST_STEP;
        if (tooShort && areHoursAndMinutes(times(numbers, 100)) && numbers.get(0) >= 1) {
            return clockNumbers(typed, numbers, 100);
        }
        if (numbers.size() > 2 && step > 0 && step < LONGEST_STEP_AS_PART_OF_DAY) {
            List<Entry> minutes = clock(typed).orElseGet(() -> scaled(typed, MINUTES_PER_DAY));
            return timesOfDay(minutes, Finding.of(Problem.DAY_FRACTIONS));
        }
        if (isStopwatch(numbers, step)) {
            String shown = Math.round(numbers.get(1) * HOURS_PER_DAY) + ":00";
            return timesOfDay(scaled(typed, HOURS_PER_DAY), Finding.of(Problem.STOPWATCH_HOURS, shown));
        }
        if (areHoursAndMinutes(numbers) && isRegularAsClock(numbers)) {
            return clockNumbers(typed, numbers, 1);
        }
        return new TimeColumn(typed, List.of(), Optional.empty(), doubt(numbers, step));
    }

    private static TimeColumn timesOfDay(List<Entry> minutes, Finding finding) {
        return new TimeColumn(minutes, List.of(), Optional.of(finding), Optional.empty());
    }

    private static Optional<Finding> doubt(List<Double> numbers, double step) {
        double span = step * (numbers.size() - 1);
        boolean seconds = numbers.size() > 2 && span >= LONGEST_SPAN && all(numbers, n -> Math.abs(n % 10) < 1e-9);
        return seconds ? Optional.of(Finding.of(Problem.SECONDS_FOR_MINUTES, span)) : Optional.empty();
    }

    /** Half a minute is a whole number of twenty-fourths too, so there must be a time that nobody types as minutes. */
    private static boolean isStopwatch(List<Double> numbers, double step) {
        return numbers.size() > 2
                && step > 0
                && numbers.get(numbers.size() - 1) - numbers.get(0) < LONGEST_STOPWATCH
                && all(numbers, n -> Math.abs(n * HOURS_PER_DAY - Math.rint(n * HOURS_PER_DAY)) < 1e-6)
                && (step < SHORTEST_STEP
                        || !all(numbers, n -> Math.abs(n * 1000 - Math.rint(n * 1000)) < 1e-6)
                        || !all(numbers, n -> Math.abs(n * 60 - Math.rint(n * 60)) < 1e-6));
    }

    private static boolean all(List<Double> numbers, DoublePredicate what) {
        return numbers.stream().allMatch(what::test);
    }

    private static TimeColumn clockNumbers(List<Entry> typed, List<Double> numbers, double factor) {
        List<Entry> minutes = typed.stream()
                .map(entry -> entry instanceof Entry.Value number
                        ? Entry.of(asClock(Math.rint(number.value() * factor)))
                        : entry)
                .toList();
        long first = Math.round(numbers.get(0) * factor);
        String clock = first / 100 + ":" + (first % 100 < 10 ? "0" : "") + first % 100;
        return timesOfDay(minutes, Finding.of(Problem.CLOCK_NUMBERS, numbers.get(0), clock));
    }

    private static Optional<List<Entry>> clock(List<Entry> typed) {
        try {
            return Optional.of(ClockTimes.minutes(typed));
        } catch (InvalidInputException refusal) {
            return Optional.empty();
        }
    }

    /** Whether each is a whole number whose last two digits are minutes and the others hours. */
    private static boolean areHoursAndMinutes(List<Double> numbers) {
        return numbers.size() > 2
                && all(
                        numbers,
                        n -> n >= 0 && n < 2400 && Math.abs(n - Math.rint(n)) < 1e-6 && Math.rint(n) % 100 < 60);
    }

    private static boolean isRegularAsClock(List<Double> numbers) {
        double step = usualStep(numbers);
        boolean crosses = false;
        for (int i = 1; i < numbers.size(); i++) {
            double asTyped = numbers.get(i) - numbers.get(i - 1);
            double asClock = asClock(numbers.get(i)) - asClock(numbers.get(i - 1));
            if (asClock != asTyped) {
                // 41 too many is what a full hour looks like in such numbers, and hardly anything else.
                crosses |= asTyped > step && Math.abs(asClock - step) < 0.01 * step + 1e-9;
                if (asClock <= 0) {
                    return false;
                }
            }
        }
        return crosses && numbers.get(0) >= 100;
    }

    private static double asClock(double number) {
        double hours = Math.floor(number / 100);
        return 60 * hours + number - 100 * hours;
    }

    private static List<Double> times(List<Double> numbers, double factor) {
        return numbers.stream().map(n -> n * factor).toList();
    }

    /** Days in minutes, or in the hours that are the minutes of a stopwatch. */
    private static List<Entry> scaled(List<Entry> days, double factor) {
        return days.stream()
                .map(entry -> entry instanceof Entry.Value day ? Entry.of(day.value() * factor) : entry)
                .toList();
    }

    /** The lower median of the steps forward; zero if there are none. */
    private static double usualStep(List<Double> numbers) {
        List<Double> steps = new ArrayList<>();
        for (int i = 1; i < numbers.size(); i++) {
            double step = numbers.get(i) - numbers.get(i - 1);
            if (step > 0) {
                steps.add(step);
            }
        }
        steps.sort(null);
        return steps.isEmpty() ? 0 : steps.get((steps.size() - 1) / 2);
    }
}
