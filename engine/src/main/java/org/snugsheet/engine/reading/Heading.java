package org.snugsheet.engine.reading;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.quantity.Scale;

/**
 * The heading of a column of readings: the jar’s name and, if it ends in a scale, the scale of its thermometer.
 *
 * <p>{@code wool °F} and {@code bare (C)} name a scale; C, F and K without the degree sign count only in brackets.
 *
 * @param name the name, without the scale; empty if nobody typed one
 * @param scale the scale; empty if none is named
 */
public record Heading(String name, Optional<Scale> scale) {

    private static final Pattern OWN_SCALE =
            Pattern.compile("(.*?)\\s*(?:\\(\\s*([°º]?\\s*[CFK])\\s*\\)|([°º]\\s*[CF]))\\s*", Pattern.CASE_INSENSITIVE);

    /**
     * Reads a heading.
     *
     * @param entry the cell; a number is a name too, such as that of a group
     * @return the heading
     */
    public static Heading of(Entry entry) {
        String text = entry.written().strip();
        Matcher matcher = OWN_SCALE.matcher(text);
        if (!matcher.matches()) {
            return new Heading(text, Optional.empty());
        }
        String sign = matcher.group(2) == null ? matcher.group(3) : matcher.group(2);
        return new Heading(matcher.group(1).strip(), Scale.find(sign.replace(" ", "")));
    }
}
