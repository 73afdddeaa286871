package org.snugsheet.engine.reading;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * One time as typed or as given by a time-formatted cell, before the times of a column are put in order.
 *
 * @param row its row
 * @param written its text, for a message
 * @param millis milliseconds since midnight, or since the day zero of the sheet if it is dated
 * @param form what is known about it
 */
record ClockTime(int row, String written, long millis, Form form) {

    /** What an entry says besides hours and minutes. */
    enum Form {
        /** A time with its date. */
        DATED,
        /** A time with am or pm, noon, midnight. */
        HALF_OF_DAY_KNOWN,
        /** A time and no more: 9:05. */
        BARE,
        /** Like a bare time, but it could also be a number: 9.05. */
        BARE_WITH_POINT
    }

    static final long SECOND = 1000;
    static final long MINUTE = 60 * SECOND;
    static final long HOUR = 60 * MINUTE;
    static final long DAY = 24 * HOUR;

    // The office counts days from 1899-12-30 (or from 1900 or 1904, by a setting). Between the two lie the years 1954
    // to
    // 9999: no lesson was earlier, and no minutes of a lesson are so many.
    private static final double FIRST_DATE = 20_000;
    private static final double LAST_DATE = 2_958_466;

    private static final String WORD = "([ap]\\.?\\s?m\\.?|[ap]|uhr|h)";
    private static final Pattern CLOCK =
            Pattern.compile("(\\d{1,2})(?:([:.])|\\s?h\\s?)(\\d{2})(?:[:.](\\d{2}))?\\s*" + WORD + "?");
    private static final Pattern HOUR_ALONE = Pattern.compile("(\\d{1,2})\\s*" + WORD);

    /**
     * Reads an entry that is no gap.
     *
     * @throws InvalidInputException if it is not a time of day
     */
    static ClockTime read(int row, Entry entry) {
        if (entry instanceof Entry.Value number) {
            return ofNumber(row, number.value());
        }
        String text = ((Entry.Text) entry).text();
        String plain = text.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
        return ofText(row, plain, plain.toLowerCase(Locale.ROOT)).orElseThrow(() -> {
            boolean number =
                    TypedNumber.parse(text).filter(t -> t.scale().isEmpty()).isPresent();
            return InvalidInputException.atRow(
                    row, number ? Problem.ROW_PLAIN_NUMBER : Problem.ROW_NOT_A_CLOCK_TIME, plain);
        });
    }

    /** Whether it can stand on the face of a clock with twelve hours only. */
    boolean isOnTwelveHourFace() {
        return millis >= HOUR && millis < 13 * HOUR;
    }

    boolean isBare() {
        return form == Form.BARE || form == Form.BARE_WITH_POINT;
    }

    // Whole milliseconds: a cell holds 9:05 as 0.378472222222222, which must be the same time as “9:05”.
    private static ClockTime ofNumber(int row, double days) {
        if (!Double.isFinite(days)) {
            throw InvalidInputException.atRow(row, Problem.ROW_NOT_A_CLOCK_TIME, String.valueOf(days));
        }
        boolean dated = days >= FIRST_DATE && days < LAST_DATE;
        if (!dated && !(days >= 0 && days < 1)) {
            throw InvalidInputException.atRow(row, Problem.ROW_PLAIN_NUMBER, days);
        }
        long millis = Math.round(days * DAY);
        return new ClockTime(row, face(Math.floorMod(millis, DAY)), millis, dated ? Form.DATED : Form.BARE);
    }

    private static String face(long millis) {
        long seconds = millis / SECOND % 60;
        String face = String.format(Locale.ROOT, "%d:%02d", millis / HOUR, millis / MINUTE % 60);
        return seconds == 0 ? face : face + String.format(Locale.ROOT, ":%02d", seconds);
    }

    private static Optional<ClockTime> ofText(int row, String written, String text) {
        if (text.equals("noon") || text.equals("midnight")) {
            long millis = text.equals("noon") ? DAY / 2 : 0;
            return Optional.of(new ClockTime(row, written, millis, Form.HALF_OF_DAY_KNOWN));
        }
        Matcher hour = HOUR_ALONE.matcher(text);
        if (hour.matches()) {
            return of(row, written, number(hour.group(1)), 0, Optional.of(hour.group(2)), false);
        }
        Matcher clock = CLOCK.matcher(text);
        if (!clock.matches()) {
            return Optional.empty();
        }
        int minutes = number(clock.group(3));
        int seconds = clock.group(4) == null ? 0 : number(clock.group(4));
        if (minutes > 59 || seconds > 59) {
            return Optional.empty();
        }
        boolean point = ".".equals(clock.group(2)) && clock.group(4) == null;
        long past = minutes * MINUTE + seconds * SECOND;
        return of(row, written, number(clock.group(1)), past, Optional.ofNullable(clock.group(5)), point);
    }

    private static Optional<ClockTime> of(
            int row, String written, int hour, long past, Optional<String> word, boolean point) {
        boolean morning = word.filter(w -> w.startsWith("a")).isPresent();
        boolean afternoon = word.filter(w -> w.startsWith("p")).isPresent();
        // 13:05 pm is redundant; 13:05 am and 0:05 pm contradict themselves.
        if (hour > 23 || (morning && hour > 12) || (afternoon && hour == 0)) {
            return Optional.empty();
        }
        int hourOfDay = morning && hour == 12 ? 0 : afternoon && hour < 12 ? hour + 12 : hour;
        Form form = morning || afternoon
                ? Form.HALF_OF_DAY_KNOWN
                : point && word.isEmpty() ? Form.BARE_WITH_POINT : Form.BARE;
        return Optional.of(new ClockTime(row, written, hourOfDay * HOUR + past, form));
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }
}
