package org.snugsheet.office.sharing;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.Families;

/** Knows our functions in the text of a formula, by the name that is typed and by the one that files hold. */
final class OurFunctions {

    private static final Pattern TEXT = Pattern.compile("\"(?:[^\"]|\"\")*\"");

    private static final List<FunctionDeclaration> ALL = Families.functions();

    private static final Pattern CALLS = Pattern.compile(
            ALL.stream()
                    .flatMap(function -> List.of(function.name(), function.storedName()).stream())
                    .map(Pattern::quote)
                    .collect(Collectors.joining("|", "(?<![\\w.])(?:", ")\\s*\\(")),
            Pattern.CASE_INSENSITIVE);

    private OurFunctions() {}

    /** Whether a formula calls one of our functions; a name within a text is none. */
    static boolean in(String formula) {
        return CALLS.matcher(withoutTexts(formula)).find();
    }

    /** The functions a formula calls, each once, in the order of the reference. */
    static List<FunctionDeclaration> calledBy(String formula) {
        Matcher calls = CALLS.matcher(withoutTexts(formula));
        List<String> names = calls.results()
                .map(call -> call.group().replaceAll("\\s*\\($", ""))
                .toList();
        return ALL.stream()
                .filter(function -> names.stream()
                        .anyMatch(name ->
                                name.equalsIgnoreCase(function.name()) || name.equalsIgnoreCase(function.storedName())))
                .toList();
    }

    /** A formula as a teacher types it: with the short names. */
    static String asTyped(String formula) {
        String typed = formula;
        for (FunctionDeclaration function : ALL) {
            typed = typed.replaceAll(
                    "(?i)(?<![\\w.])" + Pattern.quote(function.storedName()) + "(?=\\s*\\()",
                    Matcher.quoteReplacement(function.name()));
        }
        return typed;
    }

    private static String withoutTexts(String formula) {
        return TEXT.matcher(formula).replaceAll("\"\"");
    }
}
