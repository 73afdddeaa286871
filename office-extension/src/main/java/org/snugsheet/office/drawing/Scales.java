package org.snugsheet.office.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;

/** Which scale a block of readings is in, as a person sees at a glance. The window offers it first; what is chosen there counts. */
final class Scales {

    /** Liquid water is no colder, in °F: a lower reading is in °C. */
    private static final double ICE_IN_FAHRENHEIT = 32;

    /** Nobody hands a class water as hot as this in °C, and in °F it is cool (common practice, no source). */
    private static final double HOT_IN_CELSIUS = 60;

    private Scales() {}

    /**
     * The scale, if there is no doubt.
     *
     * @param rows the block with its heads and times
     */
    static Optional<Scale> plain(List<List<Entry>> rows) {
        List<Entry> heads = rows.get(0).subList(1, rows.get(0).size());
        boolean inFahrenheit = names(heads, "F");
        boolean inCelsius = names(heads, "C");
        if (inFahrenheit != inCelsius) {
            return Optional.of(inFahrenheit ? Scale.FAHRENHEIT : Scale.CELSIUS);
        }
        return inFahrenheit ? Optional.empty() : byNumbers(rows);
    }

    private static boolean names(List<Entry> heads, String letter) {
        return heads.stream()
                .anyMatch(head -> head instanceof Entry.Text text
                        && text.text().strip().matches("(?is).*(°" + letter + "|\\(" + letter + "\\))"));
    }

    private static Optional<Scale> byNumbers(List<List<Entry>> rows) {
        List<Double> readings = new ArrayList<>();
        for (List<Entry> row : rows.subList(1, rows.size())) {
            for (Entry entry : row.subList(1, row.size())) {
                if (entry instanceof Entry.Value number) {
                    readings.add(number.value());
                }
            }
        }
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        // Counted, because one reading may be a slip.
        long cold =
                readings.stream().filter(reading -> reading < ICE_IN_FAHRENHEIT).count();
        long hot = readings.stream().filter(reading -> reading > HOT_IN_CELSIUS).count();
        if (cold != hot) {
            return Optional.of(cold > hot ? Scale.CELSIUS : Scale.FAHRENHEIT);
        }
        // Between the two: what cools down is warm water in °C, for in °F it would be cold from the start.
        boolean cools = readings.get(readings.size() - 1) < readings.get(0);
        return cools ? Optional.of(Scale.CELSIUS) : Optional.empty();
    }
}
