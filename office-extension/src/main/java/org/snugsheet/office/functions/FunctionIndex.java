package org.snugsheet.office.functions;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snugsheet.office.declare.FunctionDeclaration;

/** Finds the functions of this extension in a formula, by the name that people type and by the name that files store. */
public final class FunctionIndex {

    private static final Pattern TEXT = Pattern.compile("\"(?:[^\"]|\"\")*\"");

    private static final List<FunctionDeclaration> ALL = Families.functions();

    /** Anything that may be a function name, to be looked up: one pattern of all names is slow over thousands of formulas. */
    private static final Pattern CALLED = Pattern.compile("(?<![\\w.])[\\w.]+(?=\\s*\\()");

    private static final Map<String, FunctionDeclaration> BY_STORED_NAME = new HashMap<>();
    private static final Map<String, FunctionDeclaration> BY_ANY_NAME = new HashMap<>();

    static {
        for (FunctionDeclaration function : ALL) {
            BY_STORED_NAME.put(key(function.storedName()), function);
            BY_ANY_NAME.put(key(function.storedName()), function);
            BY_ANY_NAME.put(key(function.name()), function);
        }
    }

    private FunctionIndex() {}

    /**
     * Whether a formula calls one of the functions; a name inside a quoted text does not count.
     *
     * @param formula the formula
     * @return true if it does
     */
    public static boolean in(String formula) {
        return called(formula).findAny().isPresent();
    }

    /**
     * The functions a formula calls.
     *
     * @param formula the formula
     * @return each function once, in the order of the reference
     */
    public static List<FunctionDeclaration> calledBy(String formula) {
        Set<String> called = called(formula).map(FunctionDeclaration::name).collect(Collectors.toSet());
        return called.isEmpty()
                ? List.of()
                : ALL.stream()
                        .filter(function -> called.contains(function.name()))
                        .toList();
    }

    /**
     * The function of a name.
     *
     * @param storedName the name that files hold, in any case
     * @return the function, if this extension has it
     */
    public static Optional<FunctionDeclaration> stored(String storedName) {
        return Optional.ofNullable(BY_STORED_NAME.get(key(storedName)));
    }

    /**
     * A formula as a teacher types it: with the short names.
     *
     * @param formula the formula
     * @return the same formula
     */
    public static String asTyped(String formula) {
        return CALLED.matcher(formula).replaceAll(call -> {
            FunctionDeclaration function = BY_STORED_NAME.get(key(call.group()));
            return Matcher.quoteReplacement(function == null ? call.group() : function.name());
        });
    }

    private static Stream<FunctionDeclaration> called(String formula) {
        return CALLED.matcher(withoutTexts(formula))
                .results()
                .map(call -> BY_ANY_NAME.get(key(call.group())))
                .flatMap(Stream::ofNullable);
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String withoutTexts(String formula) {
        return TEXT.matcher(formula).replaceAll("\"\"");
    }
}
