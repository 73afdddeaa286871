package org.snugsheet.office.explaining;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.NumberFormat;
import java.util.List;
import java.util.stream.Collectors;
import org.snugsheet.office.declare.FunctionDeclaration.ArgumentDeclaration;
import org.snugsheet.office.words.Language;

/** Says in one line what an argument was given. */
final class GivenWords {

    /** As many values as a reader takes in. */
    private static final int SHOWN = 12;

    private static final int DIGITS = 6;
    private static final int MOST_DECIMALS = 12;

    private final Language language;

    GivenWords(Language language) {
        this.language = language;
    }

    String line(ArgumentDeclaration argument, ArgumentValue given) {
        String name = argument.name(language);
        String meaning = argument.text(language);
        if (given.isLeftOut()) {
            return language.say(ExplainingWords.LEFT_OUT, name, meaning);
        }
        String values = values(given);
        boolean itself = values.isEmpty()
                || given.written().equals(values)
                || given.written().startsWith("\"");
        return itself
                ? language.say(ExplainingWords.CONSTANT, name, given.written(), meaning)
                : language.say(ExplainingWords.ARGUMENT, name, given.written(), values, meaning);
    }

    private String values(ArgumentValue given) {
        List<Object> values = given.values();
        String shown = values.stream().limit(SHOWN).map(this::value).collect(Collectors.joining("; "));
        return values.size() > SHOWN ? language.say(ExplainingWords.MANY, shown, values.size()) : shown;
    }

    /** A value as this language writes it. */
    String value(Object value) {
        if (value instanceof Double number) {
            NumberFormat format = NumberFormat.getNumberInstance(language.locale());
            format.setGroupingUsed(false);
            format.setMaximumFractionDigits(MOST_DECIMALS);
            return format.format(new BigDecimal(number, new MathContext(DIGITS)));
        }
        if (value instanceof String text) {
            return text.isEmpty() ? language.words(ExplainingWords.BLANK) : text;
        }
        return language.words(ExplainingWords.ERROR);
    }
}
