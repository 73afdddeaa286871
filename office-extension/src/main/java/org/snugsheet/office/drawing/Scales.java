package org.snugsheet.office.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;

/**
 * Which scale a block of readings is in, as a person sees at a glance: a jar whose head names its scale keeps that one, so the
 * others decide. The window offers it first; what is chosen there counts.
 */
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
        List<Entry> heads = rows.get(0);
        List<Integer> jars = IntStream.range(1, heads.size())
                .filter(column -> rows.stream().anyMatch(row -> !(row.get(column) instanceof Entry.Missing)))
                .boxed()
                .toList();
        List<Integer> unnamed = jars.stream()
                .filter(column -> named(heads.get(column)).isEmpty())
                .filter(column ->
                        rows.subList(1, rows.size()).stream().anyMatch(row -> row.get(column) instanceof Entry.Value))
                .toList();
        if (!unnamed.isEmpty()) {
            return byNumbers(rows, unnamed);
        }
        Set<Scale> all = jars.stream()
                .flatMap(column -> named(heads.get(column)).stream())
                .collect(Collectors.toSet());
        return all.size() == 1 ? Optional.of(all.iterator().next()) : Optional.empty();
    }

    private static Optional<Scale> named(Entry head) {
        if (head instanceof Entry.Text text) {
            String name = text.text().strip().toUpperCase(Locale.ROOT);
            for (Scale scale : List.of(Scale.FAHRENHEIT, Scale.CELSIUS)) {
                String letter = scale == Scale.FAHRENHEIT ? "F" : "C";
                if (name.endsWith("°" + letter) || name.endsWith("(" + letter + ")")) {
                    return Optional.of(scale);
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Scale> byNumbers(List<List<Entry>> rows, List<Integer> jars) {
        List<Double> readings = new ArrayList<>();
        for (List<Entry> row : rows.subList(1, rows.size())) {
            for (int jar : jars) {
                if (row.get(jar) instanceof Entry.Value number) {
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
