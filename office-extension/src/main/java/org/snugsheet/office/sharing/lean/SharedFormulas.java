package org.snugsheet.office.sharing.lean;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes formulas of a column that are alike once, as shared formulas (ECMA-376, part 1, 18.3.1.40): the first cell holds the formula, the others
 * its number. Formulas are alike if each of their references names the same row in all of them, or a row equally far from its cell. Dollar
 * signs are set to what that needs; so this is for a page that nobody fills down.
 *
 * <p>A formula that names another sheet stays as it is: some programs share none of these.
 */
final class SharedFormulas {

    private static final Pattern CELL =
            Pattern.compile("<c r=\"([A-Z]{1,3})(\\d{1,7})\"([^>]*)><f(?: aca=\"false\")?>([^<]*)</f>");
    private static final Pattern TOKEN = Pattern.compile(
            "(?<text>&quot;.*?&quot;)|(?<far>&apos;.*?&apos;!|[\\p{L}_][\\p{L}\\p{N}_.]*!)"
                    + "|\\$?(?<column>[A-Z]{1,3})\\$?(?<row>\\d{1,7})(?![\\p{L}\\p{N}_.(])|(?<word>[\\p{L}_\\\\][\\p{L}\\p{N}_.]*)|(?<entity>&\\w+;)");
    private static final int SAME = 1;
    private static final int AS_FAR = 2;

    private final Map<String, List<Shared>> byShape = new HashMap<>();
    private final Map<String, Shared> byCell = new HashMap<>();
    private int numbers;

    private SharedFormulas() {}

    /** A cell of the sheet that a formula names. */
    private record Named(String column, int row) {}

    /** A formula of several cells. */
    private static final class Shared {

        private final int row;
        private final String formula;
        private final List<Named> named;
        private final int[] kinds;
        private int last;
        private int count = 1;
        private int number = -1;

        Shared(int row, String formula, List<Named> named) {
            this.row = row;
            this.formula = formula;
            this.named = named;
            this.kinds = new int[named.size()];
            java.util.Arrays.fill(kinds, SAME | AS_FAR);
            this.last = row;
        }

        /** Takes in a formula of the same shape if all of its references allow it. */
        boolean takes(int other, List<Named> others) {
            int[] narrower = new int[kinds.length];
            for (int i = 0; i < kinds.length; i++) {
                Named one = named.get(i);
                Named two = others.get(i);
                int kind = (one.row() == two.row() ? SAME : 0) | (one.row() - row == two.row() - other ? AS_FAR : 0);
                narrower[i] = kinds[i] & kind;
                if (narrower[i] == 0 || !one.column().equals(two.column())) {
                    return false;
                }
            }
            System.arraycopy(narrower, 0, kinds, 0, kinds.length);
            last = other;
            count++;
            return true;
        }

        String written() {
            int[] at = {0};
            return TOKEN.matcher(formula)
                    .replaceAll(token -> Matcher.quoteReplacement(
                            group(token, "column") == null
                                    ? token.group()
                                    : "$" + group(token, "column") + (kinds[at[0]++] >= AS_FAR ? "" : "$")
                                            + group(token, "row")));
        }
    }

    private static @org.jspecify.annotations.Nullable String group(MatchResult token, String name) {
        return ((Matcher) token).group(name);
    }

    /** The rows of a sheet with their formulas shared. */
    static String in(String sheet) {
        SharedFormulas formulas = new SharedFormulas();
        Matcher cell = CELL.matcher(sheet);
        while (cell.find()) {
            formulas.add(cell.group(1), Integer.parseInt(cell.group(2)), cell.group(4));
        }
        return CELL.matcher(sheet).replaceAll(found -> Matcher.quoteReplacement(formulas.written(found)));
    }

    private void add(String column, int row, String formula) {
        List<Named> named = new ArrayList<>();
        StringBuilder shape = new StringBuilder(column).append(' ');
        Matcher token = TOKEN.matcher(formula);
        int at = 0;
        while (token.find()) {
            if (token.group("far") != null) {
                return;
            }
            if (token.group("column") != null) {
                named.add(new Named(token.group("column"), Integer.parseInt(token.group("row"))));
                shape.append(formula, at, token.start()).append('\n');
                at = token.end();
            }
        }
        List<Shared> alike =
                byShape.computeIfAbsent(shape.append(formula.substring(at)).toString(), first -> new ArrayList<>());
        for (Shared one : alike) {
            if (one.takes(row, named)) {
                byCell.put(column + row, one);
                return;
            }
        }
        Shared own = new Shared(row, formula, named);
        alike.add(own);
        byCell.put(column + row, own);
    }

    private String written(MatchResult cell) {
        String column = cell.group(1);
        String place = "<c r=\"" + column + cell.group(2) + "\"" + cell.group(3) + ">";
        Shared shared = byCell.get(column + cell.group(2));
        if (shared == null || shared.count == 1) {
            return place + "<f>" + cell.group(4) + "</f>";
        }
        if (shared.number >= 0) {
            return place + "<f t=\"shared\" si=\"" + shared.number + "\"/>";
        }
        shared.number = numbers++;
        String where = column + shared.row + ":" + column + shared.last;
        return place + "<f t=\"shared\" ref=\"" + where + "\" si=\"" + shared.number + "\">" + shared.written()
                + "</f>";
    }
}
