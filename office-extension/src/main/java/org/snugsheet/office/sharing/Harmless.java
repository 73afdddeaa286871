package org.snugsheet.office.sharing;

import com.sun.star.sheet.ComplexReference;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.NameToken;
import com.sun.star.sheet.SingleReference;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSpreadsheetDocument;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.snugsheet.office.functions.FunctionIndex;
import org.snugsheet.office.uno.Uno;

/**
 * Whether a formula that somebody’s file carries may be written into a cell. Only what is listed here may: Snugsheet functions, those of
 * the office that work on nothing but the values they are given, cells of the same document, and names for such.
 */
final class Harmless {

    /** The office’s own add-ins, which only calculate. */
    private static final List<String> CALCULATING =
            List.of("com.sun.star.sheet.addin.analysis.", "com.sun.star.sheet.addin.datefunctions.");

    private static final Set<String> FUNCTIONS = HarmlessFunctions.NAMES;

    private static final Pattern TEXT = Pattern.compile("\"(?:[^\"]|\"\")*\"");
    private static final Pattern QUOTED = Pattern.compile("'(?:[^']|'')*'");
    private static final Pattern ERROR = Pattern.compile("#(?:REF!|N/A|NAME\\?|DIV/0!|NULL!|NUM!|VALUE!)");

    private static final int DEEPEST_NAME = 20;

    private final OfficeParser parser;
    private final XSpreadsheetDocument document;

    /** What was found of names that formulas call; a book calls the same few a thousand times. */
    private final Map<Integer, Optional<RefusalReason>> judged = new HashMap<>();

    Harmless(OfficeParser parser, XSpreadsheetDocument document) {
        this.parser = parser;
        this.document = document;
    }

    /**
     * Looks at a formula before it is parsed at all: for a name in another document the office opens that document to parse it.
     *
     * @param formula the formula
     * @return why it may not be parsed, if so
     */
    static Optional<RefusalReason> beforeParsing(String formula) {
        if (!formula.startsWith("=")) {
            return Optional.of(new RefusalReason(RefusalWords.NO_FORMULA));
        }
        String bare = ERROR.matcher(
                        QUOTED.matcher(TEXT.matcher(formula).replaceAll("\"\"")).replaceAll("q"))
                .replaceAll("");
        return bare.contains("#") ? Optional.of(new RefusalReason(RefusalWords.OTHER_DOCUMENT)) : Optional.empty();
    }

    /**
     * Checks a Snugsheet formula.
     *
     * @param parts its parts
     * @return why it may not be written, if so
     */
    Optional<RefusalReason> ours(FormulaToken[] parts) throws com.sun.star.uno.Exception {
        for (FormulaToken part : parts) {
            if (parser.isAddIn(part) && isOurs(part)) {
                return any(parts);
            }
        }
        Optional<RefusalReason> reason = any(parts);
        return reason.isPresent() ? reason : Optional.of(new RefusalReason(RefusalWords.NONE_OF_OURS));
    }

    /** Looks at any formula. */
    Optional<RefusalReason> any(FormulaToken[] parts) throws com.sun.star.uno.Exception {
        return any(parts, 0);
    }

    private Optional<RefusalReason> any(FormulaToken[] parts, int depth) throws com.sun.star.uno.Exception {
        for (FormulaToken part : parts) {
            Optional<RefusalReason> reason = reason(part, depth);
            if (reason.isPresent()) {
                return reason;
            }
        }
        return Optional.empty();
    }

    private Optional<RefusalReason> reason(FormulaToken part, int depth) throws com.sun.star.uno.Exception {
        if (parser.isValue(part)) {
            return isPlain(part.Data) ? Optional.empty() : Optional.of(new RefusalReason(RefusalWords.OTHER_DOCUMENT));
        }
        if (parser.isSign(part)) {
            return Optional.empty();
        }
        if (parser.isAddIn(part)) {
            String called = String.valueOf(part.Data);
            return isOurs(part) || CALCULATING.stream().anyMatch(called.toLowerCase(Locale.ROOT)::startsWith)
                    ? Optional.empty()
                    : Optional.of(new RefusalReason(RefusalWords.OTHER_EXTENSION, called));
        }
        if (parser.isName(part)) {
            return name(part, depth);
        }
        if (parser.isUnknown(part)) {
            return Optional.of(new RefusalReason(RefusalWords.UNKNOWN, String.valueOf(part.Data)));
        }
        Optional<String> function = parser.function(part);
        if (function.isPresent()) {
            return FUNCTIONS.contains(function.get())
                    ? Optional.empty()
                    : Optional.of(new RefusalReason(RefusalWords.NOT_LISTED, function.get()));
        }
        return Optional.of(new RefusalReason(RefusalWords.NOT_UNDERSTOOD));
    }

    private static boolean isOurs(FormulaToken part) {
        return FunctionIndex.stored(String.valueOf(part.Data)).isPresent();
    }

    private static boolean isPlain(Object data) {
        if (data instanceof Double || data instanceof String) {
            return true;
        }
        if (data instanceof SingleReference || data instanceof ComplexReference) {
            return true;
        }
        return data instanceof Object[][] rows && isPlain(rows);
    }

    private static boolean isPlain(Object[][] rows) {
        for (Object[] row : rows) {
            for (Object value : row) {
                if (!(value instanceof Double || value instanceof String)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** A name may mean a formula, and other names. */
    private Optional<RefusalReason> name(FormulaToken part, int depth) throws com.sun.star.uno.Exception {
        if (depth > DEEPEST_NAME || !(part.Data instanceof NameToken token)) {
            return Optional.of(new RefusalReason(RefusalWords.NOT_UNDERSTOOD));
        }
        Optional<RefusalReason> known = judged.get(token.Index);
        if (known == null) {
            known = name(token.Index, depth);
            // Deeper down the same name may be too deep.
            if (depth == 0) {
                judged.put(token.Index, known);
            }
        }
        return known;
    }

    private Optional<RefusalReason> name(int index, int depth) throws com.sun.star.uno.Exception {
        for (Object named : DefinedNames.of(document).values()) {
            if (((Number) Uno.property(named, "TokenIndex")).intValue() == index) {
                // Of a sheet and of the document there may be two of one number: both are looked at.
                FormulaToken[] parts = Uno.as(XFormulaTokens.class, named).getTokens();
                Optional<RefusalReason> reason = any(parts, depth + 1);
                if (reason.isPresent()) {
                    return reason;
                }
            }
        }
        return Optional.empty();
    }
}
