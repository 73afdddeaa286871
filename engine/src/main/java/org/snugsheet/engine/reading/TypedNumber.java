package org.snugsheet.engine.reading;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.quantity.Scale;

/**
 * A number as people type it: with a decimal point or a decimal comma, possibly followed by a scale.
 *
 * @param value the number
 * @param scale the scale typed after it, if any
 */
record TypedNumber(double value, Optional<Scale> scale) {

    // One sign, digits, one point or comma, and for very small numbers the exponent that LibreOffice 7.4 writes or the
    // many zeros of 26.8. No thousands mark: nobody types one into a thermometer column, and reading “1,234” in one
    // country as in the other would be off by a thousand.
    private static final Pattern FORM = Pattern.compile(
            "([+\\-−]?)((?:\\d{1,20}(?:[.,]\\d{0,340})?|[.,]\\d{1,340})(?:[eE][+-]?\\d{1,3})?)\\s*([°º]?\\s*\\p{L}*)");

    // A whole column has a million cells, and most of them are blank or words: those need no pattern.
    private static final String BEGINNINGS = "0123456789+-−.,";

    private static final String DASHES = "-–—−";

    static boolean isGap(String text) {
        String typed = stripped(text);
        return typed.isEmpty() || (typed.length() == 1 && DASHES.contains(typed));
    }

    static Optional<TypedNumber> parse(String text) {
        String typed = stripped(text);
        if (typed.isEmpty() || BEGINNINGS.indexOf(typed.charAt(0)) < 0) {
            return Optional.empty();
        }
        Matcher matcher = FORM.matcher(typed);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double size = Double.parseDouble(matcher.group(2).replace(',', '.'));
        if (Double.isInfinite(size)) {
            return Optional.empty();
        }
        double value = matcher.group(1).isEmpty() || matcher.group(1).equals("+") ? size : -size;
        String suffix = matcher.group(3).strip();
        if (suffix.isEmpty()) {
            return Optional.of(new TypedNumber(value, Optional.empty()));
        }
        return Scale.find(suffix).map(scale -> new TypedNumber(value, Optional.of(scale)));
    }

    private static String stripped(String text) {
        // A no-break space is what a spreadsheet or a web page leaves before a unit; strip() does not take it off.
        return text.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    }
}
