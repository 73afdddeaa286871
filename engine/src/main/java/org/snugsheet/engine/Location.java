package org.snugsheet.engine;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A place in what was typed: a row of the cells given and, where known, the minute typed in that row and the jar. In messages
 * it is named by what a person sees first: “wool sock, minute 12”, or “row 3 (minute 6)” where no jar has a name.
 *
 * @param row the row, counted from 1 within the cells given
 * @param minute the time typed in that row
 * @param jar the name of the jar
 * @param isOfAllJars whether it is a cell that all jars share, such as a time; then the row is left out as well
 */
public record Location(int row, OptionalDouble minute, Optional<String> jar, boolean isOfAllJars) {

    /**
     * A row about which nothing else is known.
     *
     * @param row the row, counted from 1
     * @return the location
     */
    public static Location ofRow(int row) {
        return new Location(row, OptionalDouble.empty(), Optional.empty(), false);
    }

    /** Whether the text begins with a name that somebody typed, which keeps its capitalization. */
    boolean beginsWithAName() {
        return jar.isPresent();
    }

    String words(Function<Phrase, String> language, Locale locale) {
        Object time = minute.isPresent() ? minute.getAsDouble() : row;
        if (jar.isPresent()) {
            return said(minute.isPresent() ? LocationWords.JAR_MINUTE : LocationWords.JAR_ROW, language, locale)
                    .format(new Object[] {jar.get(), time});
        }
        if (minute.isEmpty()) {
            return said(LocationWords.ROW, language, locale).format(new Object[] {row});
        }
        return said(isOfAllJars ? LocationWords.MINUTE : LocationWords.ROW_MINUTE, language, locale)
                .format(new Object[] {row, time});
    }

    private static MessageFormat said(LocationWords words, Function<Phrase, String> language, Locale locale) {
        return new MessageFormat(language.apply(words), locale);
    }
}
