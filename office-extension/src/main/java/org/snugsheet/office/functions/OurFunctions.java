package org.snugsheet.office.functions;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.snugsheet.office.declare.FunctionDeclaration;

/** Knows our functions in the text of a formula, by the name that is typed and by the one that files hold. */
public final class OurFunctions {

    private static final Pattern TEXT = Pattern.compile("\"(?:[^\"]|\"\")*\"");

    private static final List<FunctionDeclaration> ALL = Families.functions();

    private static final Pattern CALLS = Pattern.compile(
            ALL.stream()
                    .flatMap(function -> List.of(function.name(), function.storedName()).stream())
                    .map(Pattern::quote)
                    .collect(Collectors.joining("|", "(?<![\\w.])(?:", ")\\s*\\(")),
            Pattern.CASE_INSENSITIVE);

    private OurFunctions() {}

    /**
     * Whether a formula calls one of our functions; a name within a text is none.
     *
     * @param formula the formula
     * @return true if it does
     */
    public static boolean in(String formula) {
        return CALLS.matcher(withoutTexts(formula)).find();
    }

    /**
     * The functions a formula calls.
     *
     * @param formula the formula
     * @return each function once, in the order of the reference
     */
    public static List<FunctionDeclaration> calledBy(String formula) {
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

    /**
     * The function of a name.
     *
     * @param storedName the name that files hold, in any case
     * @return the function, if it is one of ours
     */
    public static Optional<FunctionDeclaration> stored(String storedName) {
        return ALL.stream()
                .filter(function -> function.storedName().equalsIgnoreCase(storedName))
                .findFirst();
    }

    /**
     * A formula as a teacher types it: with the short names.
     *
     * @param formula the formula
     * @return the same formula
     */
    public static String asTyped(String formula) {
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
