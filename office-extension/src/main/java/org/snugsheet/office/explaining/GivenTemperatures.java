package org.snugsheet.office.explaining;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Block;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.declare.TemperatureOf.Matter;

/**
 * The temperatures that a call was given, by what they are the temperatures of.
 *
 * @param function the function
 * @param givens as many as it has arguments, all known
 */
record GivenTemperatures(FunctionDeclaration function, List<ArgumentValue> givens) {

    /**
     * The temperatures of one kind of matter; what cannot be read as one is left to the call itself.
     *
     * @param matter what they are the temperatures of
     * @return the temperatures, each on its own scale if it has one
     * @throws InvalidInputException if the scale of the call is not a scale
     */
    Stream<Temperature> of(Matter matter) {
        Scale scale = scale();
        return IntStream.range(0, givens.size())
                .filter(i -> function.arguments().get(i).asksFor(matter))
                .mapToObj(givens::get)
                .flatMap(given -> switch (matter) {
                    case JARS -> jars(columns(given), headings(), scale);
                    case SHEET -> sheet(given, scale);
                    default -> given.values().stream().flatMap(value -> temperature(entry(value), scale));
                });
    }

    /**
     * An argument by its name.
     *
     * @param name the name
     * @param function the function
     * @param givens as many as it has arguments
     * @return what was given for it; left out if there is no such argument
     */
    static ArgumentValue named(String name, FunctionDeclaration function, List<ArgumentValue> givens) {
        for (int i = 0; i < givens.size(); i++) {
            if (function.arguments().get(i).name().equals(name)) {
                return givens.get(i);
            }
        }
        return ArgumentValue.LEFT_OUT;
    }

    private Scale scale() {
        return named("scale", function, givens).values().stream()
                .map(String::valueOf)
                .filter(text -> !text.isBlank() && !text.equals("0.0"))
                .findFirst()
                .map(Scale::parse)
                .orElse(Scale.CELSIUS);
    }

    private static Stream<Temperature> sheet(ArgumentValue given, Scale scale) {
        List<List<Entry>> columns = columns(given);
        if (columns.size() < 2) {
            return Stream.empty();
        }
        List<List<Entry>> jars = columns.subList(1, columns.size());
        return jars(
                jars.stream().map(jar -> jar.subList(1, jar.size())).toList(),
                jars.stream().map(jar -> jar.get(0)).toList(),
                scale);
    }

    private static Stream<Temperature> jars(List<List<Entry>> columns, List<Entry> headings, Scale scale) {
        List<Entry> above = new ArrayList<>(headings.subList(0, Math.min(headings.size(), columns.size())));
        // Too few names are refused by the call; the water is as hot without one.
        above.addAll(Collections.nCopies(columns.size() - above.size(), Entry.of("")));
        return Block.of(List.of(), above, columns).jars().stream()
                .flatMap(jar -> jar.temperatures().stream()
                        .flatMap(entry ->
                                temperature(entry, jar.heading().scale().orElse(scale))));
    }

    private List<Entry> headings() {
        return named("names", function, givens).rows().stream()
                .flatMap(Collection::stream)
                .map(GivenTemperatures::entry)
                .toList();
    }

    private static List<List<Entry>> columns(ArgumentValue given) {
        if (given.rows().isEmpty()) {
            return List.of();
        }
        return IntStream.range(0, given.rows().get(0).size())
                .mapToObj(column ->
                        given.rows().stream().map(row -> entry(row.get(column))).toList())
                .toList();
    }

    private static Entry entry(Object value) {
        return value instanceof Double number ? Entry.of(number) : Entry.ofWritten(String.valueOf(value));
    }

    private static Stream<Temperature> temperature(Entry entry, Scale scale) {
        try {
            return entry instanceof Entry.Missing ? Stream.empty() : Stream.of(entry.asTemperature(1, scale));
        } catch (InvalidInputException noTemperature) {
            return Stream.empty();
        }
    }
}
