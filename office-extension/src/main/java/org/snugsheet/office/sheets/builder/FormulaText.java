package org.snugsheet.office.sheets.builder;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.words.Language;

/** Puts phrases into formulas, so that a sentence of a page follows its cells and is translated whole. */
public final class FormulaText {

    private static final Pattern PLACE = Pattern.compile("\\{([0-9])}");

    private FormulaText() {}

    /**
     * A text in quotes, as a formula takes it.
     *
     * @param text any text
     * @return such as {@code "say ""cold"""}
     */
    public static String quoted(String text) {
        return "\"" + text.replace("\"", "\"\"") + "\"";
    }

    /**
     * Words in quotes.
     *
     * @param language the language
     * @param phrase words without values
     * @return them in quotes
     */
    public static String quoted(Language language, Phrase phrase) {
        return quoted(language.words(phrase));
    }

    /**
     * A sentence with values that are worked out in the cell.
     *
     * @param language the language
     * @param pattern words with {@code {0}}, {@code {1}}, …
     * @param formulas what stands for each, without the equals sign; one that is longer than a call or a name needs brackets of its
     *     own
     * @return an expression without the equals sign
     */
    public static String sentence(Language language, Phrase pattern, String... formulas) {
        StringBuilder joined = new StringBuilder();
        String words = language.words(pattern);
        Matcher place = PLACE.matcher(words);
        int from = 0;
        while (place.find()) {
            append(joined, quoted(words.substring(from, place.start())));
            append(joined, formulas[Integer.parseInt(place.group(1))]);
            from = place.end();
        }
        append(joined, quoted(words.substring(from)));
        return joined.toString();
    }

    private static void append(StringBuilder joined, String part) {
        if (part.equals("\"\"")) {
            return;
        }
        joined.append(joined.isEmpty() ? "" : "&").append(part);
    }
}
