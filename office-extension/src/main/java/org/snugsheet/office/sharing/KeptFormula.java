package org.snugsheet.office.sharing;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * One of our formulas and where it stood.
 *
 * @param sheet the name of the sheet
 * @param cells the cell, or the range of an array formula, as in {@code B3} or {@code B3:E9}
 * @param array whether it is an array formula
 * @param formula the formula as the office’s interfaces give it
 * @param noteBefore the note its cell had before, if any
 */
record KeptFormula(String sheet, String cells, boolean array, String formula, Optional<String> noteBefore) {

    private static final String ARRAY = "array";
    private static final String SINGLE = "single";
    private static final int PARTS = 5;

    /** As one line of text that no file format harms: its parts as in an address of the web. */
    String written() {
        return String.join(
                "&",
                encoded(sheet),
                encoded(cells),
                array ? ARRAY : SINGLE,
                encoded(formula),
                noteBefore.map(note -> "+" + encoded(note)).orElse("-"));
    }

    /** Read from such a line; empty if it is none. */
    static Optional<KeptFormula> read(String line) {
        String[] parts = line.split("&", -1);
        if (parts.length != PARTS) {
            return Optional.empty();
        }
        Optional<String> note =
                parts[4].startsWith("+") ? Optional.of(decoded(parts[4].substring(1))) : Optional.empty();
        return Optional.of(
                new KeptFormula(decoded(parts[0]), decoded(parts[1]), parts[2].equals(ARRAY), decoded(parts[3]), note));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
