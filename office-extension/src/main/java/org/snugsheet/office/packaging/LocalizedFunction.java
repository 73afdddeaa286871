package org.snugsheet.office.packaging;

import java.util.List;
import java.util.regex.Pattern;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.words.Language;

/**
 * A declared function as a person reads of it in one language; every form of the reference shows these same lines.
 *
 * @param declaration the function
 * @param language the reader’s
 */
record LocalizedFunction(FunctionDeclaration declaration, Language language) {

    // A number with its decimal point, outside quotation marks: what follows has an even number of them.
    private static final Pattern DECIMAL_POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)");

    /** One argument: its name, and what to give. */
    record Argument(String name, String text) {}

    /** The functions of a family. */
    static List<LocalizedFunction> of(Class<?> family, Language language) {
        return FunctionDeclaration.of(family).stream()
                .map(function -> new LocalizedFunction(function, language))
                .toList();
    }

    /** The heading of a family. */
    static String title(Class<?> family, Language language) {
        return language.declared(
                "title." + family.getSimpleName(),
                family.getAnnotation(Family.class).title());
    }

    String name() {
        return declaration.name();
    }

    /** The name in an address. */
    String anchor() {
        return declaration.anchor();
    }

    String signature() {
        return declaration.signature(language);
    }

    String text() {
        return declaration.description(language);
    }

    List<Argument> arguments() {
        return declaration.arguments().stream()
                .map(argument -> new Argument(argument.name(language), argument.text(language)))
                .toList();
    }

    /** The formula; empty where there is none. */
    String formula() {
        return withDecimalSign(declaration.function().formula());
    }

    /** Where it comes from; empty where nothing is cited. */
    String source() {
        String source = declaration.function().source();
        for (Phrase words : List.of(Material.Provenance.FROM_MEMORY, ReferenceWords.NO_SOURCE, ReferenceWords.SEE)) {
            source = source.replaceAll("\\b" + words.english() + "\\b", language.words(words));
        }
        return source;
    }

    /** As it is typed into a cell, with the decimal sign of the language. */
    String example() {
        return "=" + withDecimalSign(declaration.function().example());
    }

    String answer() {
        String answer = declaration.answer(language);
        return answer.matches("-?[\\d.]+") ? withDecimalSign(answer) : answer;
    }

    /** Whether there is anything that it refuses. */
    boolean refuses() {
        return !declaration.function().refused().isEmpty();
    }

    String refused() {
        return "=" + withDecimalSign(declaration.function().refused());
    }

    String because() {
        return declaration.because(language) + ".";
    }

    String storedName() {
        return declaration.storedName();
    }

    private String withDecimalSign(String formula) {
        return language == Language.ENGLISH
                ? formula
                : DECIMAL_POINT.matcher(formula).replaceAll(",");
    }
}
