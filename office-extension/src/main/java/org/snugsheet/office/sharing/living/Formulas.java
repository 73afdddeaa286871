package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.CellName;

/** Formulas as the office’s interfaces write them, taken apart as far as a copy needs it. */
final class Formulas {

    private static final String TEXT = "\"(?:[^\"]|\"\")*\"";
    private static final String SHEET = "\\$?(?:'(?:[^']|'')*'|[\\p{L}_][\\p{L}\\p{N}_]*)\\.";
    private static final String CELL = "\\$?([A-Z]{1,3})\\$?([0-9]{1,7})";
    private static final String END = "(?![\\p{L}\\p{N}_.(])";
    private static final Pattern PLACE = Pattern.compile("(?:\\$?(?:'((?:[^']|'')*)'|([\\p{L}_][\\p{L}\\p{N}_]*))\\.)?"
            + CELL + "(?::(?:" + SHEET + ")?" + CELL + ")?");
    private static final Pattern TOKEN = Pattern.compile(
            "(?<text>" + TEXT + ")|(?<far>" + SHEET + CELL + "(?::(?:" + SHEET + ")?" + CELL
                    + ")?" + END + ")|(?<near>" + CELL + "(?::" + CELL + ")?" + END
                    + ")|(?<call>[\\p{L}_][\\p{L}\\p{N}_.]*(?=\\s*\\())|(?<word>[\\p{L}_][\\p{L}\\p{N}_.]*)|(?<other>(?s:.))");
    private static final Pattern WHERE_IT_STANDS =
            Pattern.compile("(?i)(?<![\\w.])(ROW|COLUMN|SHEET)\\s*\\(\\s*\\)|(?<![\\w.])(INDIRECT|CELL|OFFSET)\\s*\\(");

    private Formulas() {}

    /** A call: from where to where it stands in its formula, and its arguments. */
    record Call(String name, int from, int to, List<String> arguments) {

        Call {
            arguments = List.copyOf(arguments);
        }

        /** An argument; empty if it was left out. */
        String argument(int i) {
            return i < arguments.size() ? arguments.get(i).strip() : "";
        }
    }

    /** The outermost calls of functions in a formula, in their order. */
    static List<Call> calls(String formula) {
        List<Call> calls = new ArrayList<>();
        Matcher token = TOKEN.matcher(formula);
        int at = 0;
        while (at < formula.length() && token.find(at)) {
            if (token.group("call") == null) {
                at = token.end();
                continue;
            }
            int open = formula.indexOf('(', token.end());
            List<String> arguments = new ArrayList<>();
            int end = arguments(formula, open + 1, arguments);
            calls.add(new Call(token.group("call"), token.start(), end, arguments));
            at = end;
        }
        return calls;
    }

    /** Reads arguments up to the bracket that closes them, and says where that is. */
    private static int arguments(String formula, int from, List<String> arguments) {
        int depth = 0;
        int begin = from;
        Matcher token = TOKEN.matcher(formula);
        int at = from;
        while (at < formula.length() && token.find(at)) {
            String sign = token.group();
            int end = token.end();
            if (sign.equals("(") || sign.equals("{")) {
                depth++;
            } else if ((sign.equals(")") || sign.equals("}")) && depth > 0) {
                depth--;
            } else if (depth == 0 && (sign.equals(";") || sign.equals(")"))) {
                String argument = formula.substring(begin, token.start());
                if (sign.equals(";") || !arguments.isEmpty() || !argument.isBlank()) {
                    arguments.add(argument);
                }
                begin = end;
                if (sign.equals(")")) {
                    return end;
                }
            }
            at = end;
        }
        throw new IllegalArgumentException(formula);
    }

    /** The same for any other page: references without a sheet get theirs. */
    static String fromElsewhere(String formula, String sheet) {
        return TOKEN.matcher(formula)
                .replaceAll(token -> Matcher.quoteReplacement(
                        ((Matcher) token).group("near") == null ? token.group() : quoted(sheet) + token.group()));
    }

    /** Whether it depends on the cell in which it stands, or on references that it makes up. */
    static boolean dependsOnPlace(String formula) {
        return WHERE_IT_STANDS.matcher(formula.replaceAll(TEXT, "\"\"")).find();
    }

    private static String quoted(String sheet) {
        return "$'" + sheet.replace("'", "''") + "'.";
    }

    /** The cells that a formula is nothing but the name of. */
    static Optional<Seen.Cells> place(String formula, String sheet) {
        Matcher place = PLACE.matcher(formula.strip());
        if (!place.matches()) {
            return Optional.empty();
        }
        String on = place.group(1) != null
                ? place.group(1).replace("''", "'")
                : place.group(2) != null ? place.group(2) : sheet;
        int left = CellName.number(place.group(3));
        int top = Integer.parseInt(place.group(4)) - 1;
        int right = place.group(5) == null ? left : CellName.number(place.group(5));
        int bottom = place.group(6) == null ? top : Integer.parseInt(place.group(6)) - 1;
        return Optional.of(new Seen.Cells(on, left, top, right - left + 1, bottom - top + 1));
    }

    /** A text as a formula writes it. Some programs take no more than 255 letters at a time. */
    static String text(String text) {
        StringBuilder formula = new StringBuilder();
        int most = 200;
        for (int from = 0; from == 0 || from < text.length(); from += most) {
            formula.append(from == 0 ? "\"" : "&\"")
                    .append(text.substring(from, Math.min(text.length(), from + most))
                            .replace("\"", "\"\""))
                    .append('"');
        }
        return formula.toString();
    }
}
