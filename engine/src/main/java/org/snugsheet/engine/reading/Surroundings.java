package org.snugsheet.engine.reading;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.table.Keywords;

/** What the vessel stands in, and how warm that is: the air of a windowsill, a tub of snow. */
public sealed interface Surroundings {

    /**
     * Surroundings that stay as they are.
     *
     * @param temperature their temperature, the same from the first reading to the last
     */
    record Constant(Temperature temperature) implements Surroundings {}

    /** Surroundings that nobody measured and that stay as they are: the readings are to tell. */
    record Unknown() implements Surroundings {}

    /**
     * Surroundings that were read as well, such as a bath that warms; straight from each reading to the next.
     *
     * @param all their readings, in the order of their times, at least one
     */
    record Measured(Readings all) implements Surroundings {

        /**
         * Measured surroundings.
         *
         * @throws Refusal if there is no reading
         */
        public Measured {
            all.first();
        }
    }

    /**
     * Surroundings that stay as they are.
     *
     * @param temperature their temperature
     * @return the surroundings
     */
    static Surroundings constant(Temperature temperature) {
        return new Constant(temperature);
    }

    /**
     * The surroundings as typed: one temperature, the word {@code fit}, or a column read at the times of the readings.
     *
     * @param cells the cells given for them
     * @param minutes the times of the readings, one for each row
     * @param scale the scale of a number without one
     * @return the surroundings
     * @throws Refusal if nothing is typed there, it is no temperature, or a column has another length than the times
     */
    static Surroundings of(List<Entry> cells, List<Entry> minutes, Scale scale) {
        if (cells.stream().allMatch(Entry.Gap.class::isInstance)) {
            throw Refusal.of(Trouble.SURROUNDINGS_BLANK);
        }
        if (cells.size() > 1) {
            return column(cells, minutes, scale);
        }
        Entry cell = cells.get(0);
        if (cell instanceof Entry.Text text && isToBeFitted(text)) {
            return new Unknown();
        }
        try {
            return new Constant(cell.asTemperature(1, scale));
        } catch (Refusal refusal) {
            if (cell instanceof Entry.Text text) {
                throw Refusal.of(Trouble.SURROUNDINGS_NOT_A_TEMPERATURE, text.text());
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

    private static Surroundings column(List<Entry> cells, List<Entry> minutes, Scale scale) {
        if (cells.size() != minutes.size()) {
            throw Refusal.of(Trouble.SURROUNDINGS_LENGTH, cells.size(), minutes.size());
        }
        List<Entry> temperatures = new ArrayList<>(cells);
        for (int i = 0; i < cells.size(); i++) {
            // A row without a time has no place on the clock, whatever stands beside it.
            if (minutes.get(i) instanceof Entry.Gap) {
                temperatures.set(i, new Entry.Gap());
            }
        }
        return new Measured(Readings.ofMinutes(minutes, temperatures, scale));
    }
}
