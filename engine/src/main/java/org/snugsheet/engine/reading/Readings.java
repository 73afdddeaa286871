package org.snugsheet.engine.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Time;

/**
 * The readings of one vessel, each later than the one before.
 *
 * <pre>{@code
 * Readings.ofMinutes(List.of(Entry.of(0), Entry.of(5), Entry.of(10)),
 *                    List.of(Entry.of(40), Entry.of("-"), Entry.of("95 °F")),
 *                    Scale.CELSIUS);          // two readings: 40 °C at 0 min, 35 °C at 10 min
 * Readings.ofMinutes(List.of(Entry.of(5), Entry.of(5)),
 *                    List.of(Entry.of(40), Entry.of(39)), Scale.CELSIUS);   // refused: row 2 is not later
 * }</pre>
 *
 * @param all the readings, in the order of their times
 * @param scale the scale that the class works in, used in messages
 */
public record Readings(List<Reading> all, Scale scale) {

    /**
     * Readings in the order of their times.
     *
     * @throws InvalidInputException if a reading is not later than the one before it
     */
    public Readings {
        all = List.copyOf(all);
        for (int i = 1; i < all.size(); i++) {
            Reading before = all.get(i - 1);
            Reading reading = all.get(i);
            if (!(reading.seconds() > before.seconds())) {
                throw InvalidInputException.atRow(
                        reading.row(),
                        Problem.TIME_NOT_LATER,
                        reading.seconds() / Time.SECONDS_PER_MINUTE,
                        before.seconds() / Time.SECONDS_PER_MINUTE);
            }
        }
    }

    /**
     * Readings from plain numbers.
     *
     * @param minutes the times in minutes, each later than the one before
     * @param degrees the readings, one for each time
     * @param scale the scale of the readings
     * @return the readings
     * @throws InvalidInputException if the arrays differ in length, hold something that is not a finite number, or the times do not
     *     rise or look like times of day
     */
    public static Readings ofMinutes(double[] minutes, double[] degrees, Scale scale) {
        return ofMinutes(entries(minutes), entries(degrees), scale);
    }

    private static List<Entry> entries(double[] numbers) {
        return Arrays.stream(numbers).mapToObj(Entry::of).toList();
    }

    /**
     * Pairs a column of times with a column of temperatures. A pair with a gap on either side is left out.
     *
     * @param minutes times in minutes, one for each row
     * @param temperatures readings, one for each row; a text may carry its own scale
     * @param scale the scale of the other readings
     * @return the readings, perhaps none
     * @throws InvalidInputException if the columns differ in length, hold something that cannot be read, or the times do not rise or are
     *     times of day
     */
    public static Readings ofMinutes(List<Entry> minutes, List<Entry> temperatures, Scale scale) {
        if (minutes.size() != temperatures.size()) {
            throw InvalidInputException.of(Problem.DIFFERENT_LENGTH, minutes.size(), temperatures.size());
        }
        TimeColumn.of(minutes).notMinutes().ifPresent(finding -> {
            throw new InvalidInputException(finding);
        });
        List<Reading> readings = new ArrayList<>(minutes.size());
        for (int i = 0; i < minutes.size(); i++) {
            if (minutes.get(i) instanceof Entry.Missing || temperatures.get(i) instanceof Entry.Missing) {
                continue;
            }
            int row = i + 1;
            double seconds = minutes.get(i).asNumber(row) * Time.SECONDS_PER_MINUTE;
            if (!Double.isFinite(seconds)) {
                throw InvalidInputException.of(Problem.NOT_A_NUMBER);
            }
            readings.add(new Reading(row, seconds, temperatures.get(i).asTemperature(row, scale)));
        }
        return new Readings(readings, scale);
    }

    /**
     * How many readings there are.
     *
     * @return their number
     */
    public int size() {
        return all.size();
    }

    /**
     * The first reading.
     *
     * @return the reading
     * @throws InvalidInputException if there are no readings
     */
    public Reading first() {
        if (all.isEmpty()) {
            throw InvalidInputException.of(Problem.NO_READINGS);
        }
        return all.get(0);
    }

    /**
     * The time from the first reading to the last.
     *
     * @return seconds
     * @throws InvalidInputException if there is no reading
     */
    public double span() {
        return all.get(all.size() - 1).seconds() - first().seconds();
    }
}
