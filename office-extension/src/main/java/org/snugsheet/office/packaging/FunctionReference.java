package org.snugsheet.office.packaging;

import java.util.List;
import org.snugsheet.office.words.Language;

/** The reference of all functions in the repository, in Markdown. */
final class FunctionReference {

    private static final String ORIGIN =
            "<!-- Generated from the declarations in office-extension/src/main/java/org/snugsheet/office/functions:"
                    + " change them there. -->\n";

    private final StringBuilder text = new StringBuilder(ORIGIN);
    private final Language language;

    private FunctionReference(Language language) {
        this.language = language;
    }

    static String of(List<Class<?>> families, Language language) {
        FunctionReference reference = new FunctionReference(language);
        reference.head();
        for (Class<?> family : families) {
            reference
                    .text
                    .append("\n## ")
                    .append(LocalizedFunction.title(family, language))
                    .append('\n');
            LocalizedFunction.of(family, language).forEach(reference::add);
        }
        return reference.text.toString();
    }

    private void head() {
        text.append("# ").append(language.words(ReferenceWords.TITLE)).append("\n\n");
        text.append(language.words(ReferenceWords.HOW_TO_READ)).append("\n\n");
        text.append(language.words(ReferenceWords.RANGES)).append("\n\n");
        text.append(language.words(ReferenceWords.NOT_IN_ERRORS)).append("\n\n");
        text.append(language.words(ReferenceWords.SYMBOLS)).append('\n');
    }

    private void add(LocalizedFunction function) {
        text.append("\n### ").append(function.signature()).append("\n\n");
        text.append(function.text()).append('\n');
        text.append(function.arguments().isEmpty() ? "" : "\n");
        for (LocalizedFunction.Argument argument : function.arguments()) {
            text.append("- `")
                    .append(argument.name())
                    .append("` – ")
                    .append(argument.text())
                    .append('\n');
        }
        line(ReferenceWords.FORMULA, quoted(function.formula()));
        line(ReferenceWords.SOURCE, function.source());
        line(ReferenceWords.EXAMPLE, quoted(function.example()) + " → " + function.answer());
        if (function.refuses()) {
            line(ReferenceWords.REFUSED, quoted(function.refused()) + " – " + function.because());
        }
        line(ReferenceWords.STORED, quoted(function.storedName()));
    }

    private void line(ReferenceWords label, String shown) {
        if (!shown.isEmpty()) {
            text.append('\n')
                    .append(language.words(label))
                    .append(": ")
                    .append(shown)
                    .append('\n');
        }
    }

    private static String quoted(String code) {
        return code.isEmpty() ? "" : "`" + code + "`";
    }
}
