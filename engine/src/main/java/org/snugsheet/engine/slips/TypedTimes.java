package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.Finding;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.reading.ClockTimes;
import org.snugsheet.engine.reading.Entry;

/**
 * The times of a column, with times of day turned into minutes.
 *
 * <p>A thermometer in a hand is not read every few seconds. So times that step by less than {@value #SHORTEST_STEP} minutes are not
 * minutes: they are parts of a day, as time cells hold them, or hours and minutes with a point (9.05). Numbers such as 955, 1000 are
 * hours and minutes if that, and not minutes, makes their steps regular where the hour is full.
 *
 * @param minutes the times in minutes, one entry for each row; what cannot be read is a gap
 * @param slips what is wrong with them
 */
record TypedTimes(List<Entry> minutes, List<Slip> slips) {

    private static final double SHORTEST_STEP = 0.25;
    private static final double LONGEST_STEP_AS_PART_OF_DAY = 0.045;
    private static final double MINUTES_PER_DAY = 1440;

    TypedTimes {
        minutes = List.copyOf(minutes);
        slips = List.copyOf(slips);
    }

    static TypedTimes of(List<Entry> typed) {
        List<Entry> minutes = new ArrayList<>(typed);
        List<Slip> unreadable = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        Optional<String> text = Optional.empty();
        for (int i = 0; i < typed.size(); i++) {
            if (typed.get(i) instanceof Entry.Gap) {
                continue;
            }
            try {
                double number = typed.get(i).asNumber(i + 1);
                numbers.add(number);
                minutes.set(i, Entry.of(number));
            } catch (Refusal refusal) {
                unreadable.add(new Slip(SlipKind.UNREADABLE, 1, refusal.finding()));
                minutes.set(i, new Entry.Gap());
                if (text.isEmpty() && typed.get(i) instanceof Entry.Text written) {
                    text = Optional.of(written.text());
                }
            }
        }
        if (text.isPresent()) {
            Optional<List<Entry>> clock = clock(typed);
            if (clock.isPresent()) {
                return new TypedTimes(clock.get(), List.of(slip(Finding.of(Trouble.CLOCK_TIMES, text.get()))));
            }
        }
        return unreadable.isEmpty() ? ofNumbers(minutes, numbers) : new TypedTimes(minutes, unreadable);
    }

    private static TypedTimes ofNumbers(List<Entry> typed, List<Double> numbers) {
        double step = usualStep(numbers);
        boolean tooShort = step > 0 && step < SHORTEST_STEP;
        if (tooShort && areHoursAndMinutes(times(numbers, 100)) && numbers.get(0) >= 1) {
            return clockNumbers(typed, numbers, 100);
        }
        if (numbers.size() > 2 && step > 0 && step < LONGEST_STEP_AS_PART_OF_DAY) {
            List<Entry> minutes = clock(typed).orElseGet(() -> inMinutes(typed));
            return new TypedTimes(minutes, List.of(slip(Finding.of(Trouble.DAY_FRACTIONS))));
        }
        if (areHoursAndMinutes(numbers) && isRegularAsClock(numbers)) {
            return clockNumbers(typed, numbers, 1);
        }
        return new TypedTimes(typed, List.of());
    }

    private static TypedTimes clockNumbers(List<Entry> typed, List<Double> numbers, double factor) {
        List<Entry> minutes = typed.stream()
                .map(entry -> entry instanceof Entry.Value number
                        ? Entry.of(asClock(Math.rint(number.value() * factor)))
                        : entry)
                .toList();
        long first = Math.round(numbers.get(0) * factor);
        String clock = first / 100 + ":" + (first % 100 < 10 ? "0" : "") + first % 100;
        return new TypedTimes(minutes, List.of(slip(Finding.of(Trouble.CLOCK_NUMBERS, numbers.get(0), clock))));
    }

    private static Slip slip(Finding finding) {
        return new Slip(SlipKind.CLOCK_TIMES, 1, finding);
    }

    private static Optional<List<Entry>> clock(List<Entry> typed) {
        try {
            return Optional.of(ClockTimes.minutes(typed));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    /** Whether each is a whole number whose last two digits are minutes and whose others are an hour. */
    private static boolean areHoursAndMinutes(List<Double> numbers) {
        return numbers.size() > 2
                && numbers.stream()
                        .allMatch(n ->
                                n >= 0 && n < 2400 && Math.abs(n - Math.rint(n)) < 1e-6 && Math.rint(n) % 100 < 60);
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

    private static List<Entry> inMinutes(List<Entry> days) {
        return days.stream()
                .map(entry -> entry instanceof Entry.Value day ? Entry.of(day.value() * MINUTES_PER_DAY) : entry)
                .toList();
    }

    private static double usualStep(List<Double> numbers) {
        double[] steps = new double[numbers.size()];
        int count = 0;
        for (int i = 1; i < numbers.size(); i++) {
            double step = numbers.get(i) - numbers.get(i - 1);
            if (step > 0) {
                steps[count++] = step;
            }
        }
        return Medians.of(steps, count);
    }
}
