package org.snugsheet.office.sharing;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A Snugsheet formula and where it was.
 *
 * @param sheet the name of the sheet
 * @param cells the cell, or the range of an array formula, as in {@code B3} or {@code B3:E9}
 * @param array whether it is an array formula
 * @param formula the formula as the office’s interfaces give it
 * @param noteBefore the note its cell had before, if any
 * @param answers what stood in its cells; copies made by early versions do not say
 * @param places where its own cells and those of its references are followed, see {@link Followed}; empty in early copies
 * @param living whether another formula stands in for it, in a copy that goes on working
 */
record KeptFormula(
        String sheet,
        String cells,
        boolean array,
        String formula,
        Optional<String> noteBefore,
        Optional<ShownValues> answers,
        List<Integer> places,
        boolean living) {

    private static final String ARRAY = "array";
    private static final String SINGLE = "single";

    /** What the first copies wrote, and all later ones begin with. */
    private static final int PARTS = 5;

    private static final String ANSWERS = "answers=";
    private static final String PLACES = "places=";
    private static final String LIVING = "living";

    KeptFormula {
        places = List.copyOf(places);
    }

    /** One in a document that is no copy yet. */
    static KeptFormula found(
            String sheet,
            String cells,
            boolean array,
            String formula,
            Optional<String> noteBefore,
            ShownValues answers) {
        return new KeptFormula(sheet, cells, array, formula, noteBefore, Optional.of(answers), List.of(), false);
    }

    /** The same, in a copy that goes on working: what its cells show there changes, so nobody compares it. */
    KeptFormula goesOn() {
        return new KeptFormula(
                sheet, cells, array, formula, noteBefore, Optional.of(ShownValues.CHANGING), places, true);
    }

    /** The same, its cells and those of its references followed. */
    KeptFormula followedAt(List<Integer> where) {
        return new KeptFormula(sheet, cells, array, formula, noteBefore, answers, where, living);
    }

    /** As one line of text that no file format harms: its parts as in an address of the web. */
    String written() {
        String line = String.join(
                "&",
                encoded(sheet),
                encoded(cells),
                array ? ARRAY : SINGLE,
                encoded(formula),
                noteBefore.map(note -> "+" + encoded(note)).orElse("-"));
        if (answers.isPresent()) {
            line += "&" + ANSWERS + encoded(answers.get().written());
        }
        if (!places.isEmpty()) {
            line += "&" + PLACES + places.stream().map(String::valueOf).collect(Collectors.joining("+"));
        }
        return living ? line + "&" + LIVING : line;
    }

    /** Read from such a line; empty if it is another. */
    static Optional<KeptFormula> read(String line) {
        String[] parts = line.split("&", -1);
        if (parts.length < PARTS) {
            return Optional.empty();
        }
        try {
            Optional<String> note =
                    parts[4].startsWith("+") ? Optional.of(decoded(parts[4].substring(1))) : Optional.empty();
            List<String> rest = Arrays.asList(parts).subList(PARTS, parts.length);
            return Optional.of(new KeptFormula(
                    decoded(parts[0]),
                    decoded(parts[1]),
                    parts[2].equals(ARRAY),
                    decoded(parts[3]),
                    note,
                    named(rest, ANSWERS).map(KeptFormula::decoded).map(ShownValues::read),
                    named(rest, PLACES).map(KeptFormula::numbers).orElse(List.of()),
                    rest.contains(LIVING)));
        } catch (IllegalArgumentException crafted) {
            // No version of Snugsheet wrote a copy like that.
            return Optional.empty();
        }
    }

    private static Optional<String> named(List<String> parts, String name) {
        return parts.stream()
                .filter(part -> part.startsWith(name))
                .map(part -> part.substring(name.length()))
                .findFirst();
    }

    private static List<Integer> numbers(String joined) {
        return Arrays.stream(joined.split("\\+")).map(Integer::valueOf).toList();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
