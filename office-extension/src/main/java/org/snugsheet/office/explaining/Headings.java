package org.snugsheet.office.explaining;

import com.sun.star.table.CellRangeAddress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/**
 * Headings that were taken for readings, because the cells given begin one too early.
 *
 * @param heading the one that was blamed
 * @param given the cells as they are given, with a heading in the first of them
 * @param better the same without it
 */
record Headings(String heading, List<String> given, List<String> better) {

    /**
     * The headings behind a refusal.
     *
     * @return empty if the refusal blames no heading
     */
    static Optional<Headings> blamed(InvalidInputException refusal, List<ArgumentValue> givens) {
        return refusal.row().orElse(0) != 1
                ? Optional.empty()
                : refusal.finding().arguments().stream()
                        .filter(String.class::isInstance)
                        .flatMap(said -> in(givens, String.valueOf(said)).stream())
                        .findFirst();
    }

    /** The headings behind a sentence of a check: one of them must be named there. */
    static Optional<Headings> anywhere(List<ArgumentValue> givens, String said) {
        return givens.stream()
                .filter(Headings::beginsWithOne)
                .map(given -> first(given))
                .filter(heading -> said.contains("“" + heading + "”")
                        || said.contains("„" + heading + "“")
                        || said.contains("«" + heading + "»")
                        || said.contains("« " + heading + " »"))
                .flatMap(heading -> in(givens, heading).stream())
                .findFirst();
    }

    /** Where to begin instead. */
    String words(Language language) {
        return language.say(ExplainingWords.HEADING, heading, String.join(", ", better), String.join(", ", given));
    }

    private static Optional<Headings> in(List<ArgumentValue> givens, String heading) {
        List<String> given = new ArrayList<>();
        List<String> better = new ArrayList<>();
        boolean found = false;
        for (ArgumentValue one : givens) {
            if (beginsWithOne(one)) {
                found |= first(one).equals(heading.strip());
                given.add(one.written());
                better.add(without(one));
            }
        }
        return found ? Optional.of(new Headings(heading.strip(), given, better)) : Optional.empty();
    }

    private static boolean beginsWithOne(ArgumentValue given) {
        return given.place().isPresent()
                && !given.oneCell()
                && isNoReading(given.values().get(0))
                && given.values().stream().skip(1).anyMatch(value -> !isNoReading(value));
    }

    private static String first(ArgumentValue given) {
        return String.valueOf(given.values().get(0)).strip();
    }

    private static boolean isNoReading(Object value) {
        if (!(value instanceof String text) || text.isBlank()) {
            return false;
        }
        try {
            Entry.of(text).asTemperature(1, Scale.CELSIUS);
            return false;
        } catch (InvalidInputException noReading) {
            return !(Entry.of(text) instanceof Entry.Missing);
        }
    }

    /** The cells without the first, downwards or to the right, with the sheet they are given with. */
    private static String without(ArgumentValue given) {
        CellRangeAddress place = given.place().orElseThrow();
        boolean down = place.EndRow > place.StartRow;
        String start = given.written().substring(0, Math.max(0, given.written().indexOf(':')));
        String sheet = start.substring(0, start.lastIndexOf('.') + 1);
        return sheet
                + CellName.of(place.StartColumn + (down ? 0 : 1), place.StartRow + (down ? 1 : 0))
                + ":"
                + CellName.of(place.EndColumn, place.EndRow);
    }
}
