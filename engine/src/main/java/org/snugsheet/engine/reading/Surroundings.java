package org.snugsheet.engine.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.table.Keywords;

/** The surroundings of a vessel and their temperature: the air on a windowsill, a tub of snow. */
public sealed interface Surroundings {

    /**
     * Surroundings at a constant temperature.
     *
     * @param temperature their temperature, the same from the first reading to the last
     * @param isExact whether it is known without a thermometer, like that of melting ice
     */
    record Constant(Temperature temperature, boolean isExact) implements Surroundings {}

    /** Constant surroundings that nobody measured: they are to be estimated from the readings. */
    record Unknown() implements Surroundings {}

    /**
     * Surroundings that were read as well, such as a bath that warms; linear between readings.
     *
     * @param all their readings, in the order of their times, at least one
     */
    record Measured(Readings all) implements Surroundings {

        /**
         * Measured surroundings.
         *
         * @throws InvalidInputException if there is no reading
         */
        public Measured {
            all.first();
        }
    }

    /**
     * Constant surroundings that were read on a thermometer.
     *
     * @param temperature their temperature
     * @return the surroundings
     */
    static Surroundings constant(Temperature temperature) {
        return new Constant(temperature, false);
    }

    /**
     * Water in which ice melts: 0 °C by the former definition of the scale, and within 0.0003 K by ITS-90 (H. Preston-Thomas,
     * Metrologia 27 (1990), 3–10: the triple point is 0.01 °C; the ice point from memory). That is far closer than any mark,
     * so it counts as exact.
     *
     * @return the surroundings
     */
    static Surroundings meltingIce() {
        return new Constant(MELTING_ICE, true);
    }

    /** The English words; those of other languages are in the table of keywords under the first. */
    Set<String> ICE = Set.of("melting ice", "ice", "ice water", "melting snow");

    /** The temperature of melting ice. */
    Temperature MELTING_ICE = new Temperature(0);

    /**
     * The surroundings as typed: one temperature, the words {@code melting ice} or {@code fit}, or a column read at the times of the
     * readings.
     *
     * @param cells the cells given for them
     * @param minutes the times of the readings, one for each row
     * @param scale the scale of a number without one
     * @return the surroundings
     * @throws InvalidInputException if nothing is typed there, it is not a temperature, or a column differs in length from
     *     the times
     */
    static Surroundings of(List<Entry> cells, List<Entry> minutes, Scale scale) {
        if (cells.stream().allMatch(Entry.Missing.class::isInstance)) {
            throw InvalidInputException.of(Problem.SURROUNDINGS_BLANK);
        }
        if (cells.size() > 1) {
            return column(cells, minutes, scale);
        }
        Entry cell = cells.get(0);
        if (cell instanceof Entry.Text text && isToBeFitted(text)) {
            return new Unknown();
        }
        if (cell instanceof Entry.Text text && isMeltingIce(text)) {
            return meltingIce();
        }
        if (cell instanceof Entry.Value number) {
            // One temperature stands in no row.
            return constant(Temperature.of(number.value(), scale));
        }
        try {
            return constant(cell.asTemperature(1, scale));
        } catch (InvalidInputException refusal) {
            if (cell instanceof Entry.Text text) {
                throw InvalidInputException.of(Problem.SURROUNDINGS_NOT_A_TEMPERATURE, text.text());
            }
            throw refusal;
        }
    }

    /**
     * Whether it is the word for surroundings that are to be fitted, in any of the languages.
     *
     * @param text what was typed for the surroundings
     * @return true for {@code fit} and its translations
     */
    static boolean isToBeFitted(Entry.Text text) {
        return Keywords.SURROUNDINGS.plain(text.text()).equals("fit");
    }

    /**
     * Whether it is the word for water in which ice melts, in any of the languages.
     *
     * @param text what was typed for the surroundings
     * @return true for {@code ice}, {@code melting ice} and their translations
     */
    static boolean isMeltingIce(Entry.Text text) {
        return ICE.contains(Keywords.SURROUNDINGS.plain(text.text()));
    }

    private static Surroundings column(List<Entry> cells, List<Entry> minutes, Scale scale) {
        if (cells.size() != minutes.size()) {
            throw InvalidInputException.of(Problem.SURROUNDINGS_LENGTH, cells.size(), minutes.size());
        }
        List<Entry> temperatures = new ArrayList<>(cells);
        for (int i = 0; i < cells.size(); i++) {
            // A row without a time is left out, whatever is beside it.
            if (minutes.get(i) instanceof Entry.Missing) {
                temperatures.set(i, new Entry.Missing());
            }
        }
        return new Measured(Readings.ofMinutes(minutes, temperatures, scale));
    }
}
