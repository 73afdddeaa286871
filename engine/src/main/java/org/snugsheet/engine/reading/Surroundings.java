package org.snugsheet.engine.reading;

import java.util.List;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;

/**
 * What the vessel stands in, and how warm that is: the air of a windowsill, a tub of snow.
 *
 * @param temperature its temperature, the same from the first reading to the last
 */
public record Surroundings(Temperature temperature) {

    /**
     * The surroundings as typed.
     *
     * @param cells the cells given for it
     * @param scale the scale of a number without one
     * @return the surroundings
     * @throws Refusal if nothing is typed there, it is no temperature, or there is more than one cell
     */
    public static Surroundings of(List<Entry> cells, Scale scale) {
        if (cells.size() != 1) {
            throw Refusal.of(Trouble.SURROUNDINGS_NOT_ONE, cells.size());
        }
        Entry cell = cells.get(0);
        if (cell instanceof Entry.Gap) {
            throw Refusal.of(Trouble.SURROUNDINGS_BLANK);
        }
        try {
            return new Surroundings(cell.asTemperature(1, scale));
        } catch (Refusal refusal) {
            if (cell instanceof Entry.Text text) {
                throw Refusal.of(Trouble.SURROUNDINGS_NOT_A_TEMPERATURE, text.text());
            }
            throw refusal;
        }
    }
}
