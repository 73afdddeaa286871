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

    private static final Pattern DASH = Pattern.compile("[-–—−]?");

    static boolean isGap(String text) {
        return DASH.matcher(stripped(text)).matches();
    }

    static Optional<TypedNumber> parse(String text) {
        Matcher matcher = FORM.matcher(stripped(text));
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
