package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.functions.PlainCall.Range;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.words.Language;

/**
 * A formula read from left to right and calculated on the way: our functions, ROUND, INDEX and TIME of the office, cells and ranges,
 * arrays with a semicolon between columns and a bar between rows, numbers, texts, and the four operations.
 */
final class PlainFormula {

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d*)?([eE][-+]?\\d+)?");
    private static final Pattern CELLS = Pattern.compile("([A-Z]{1,2}\\d+)(?::([A-Z]{1,2}\\d+))?");
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z.]*(?=\\()");

    private final String formula;
    private final PlainSheet sheet;
    private final Language language;
    private int at;

    PlainFormula(String formula, PlainSheet sheet, Language language) {
        this.formula = formula;
        this.sheet = sheet;
        this.language = language;
        this.at = formula.startsWith("=") ? 1 : 0;
    }

    Object value() {
        Object value = sum();
        if (at < formula.length()) {
            throw new AssertionError("Not understood: " + formula.substring(at) + " in " + formula);
        }
        return value instanceof Range range ? alone(range) : value;
    }

    private static Object alone(Range range) {
        return "".equals(range.values()[0][0]) ? (Object) 0.0 : range.values()[0][0];
    }

    private Object sum() {
        Object value = product();
        while (next('+') || next('-')) {
            boolean plus = formula.charAt(at++) == '+';
            double other = number(product());
            value = plus ? number(value) + other : number(value) - other;
        }
        return value;
    }

    private Object product() {
        Object value = factor();
        while (next('*') || next('/')) {
            boolean times = formula.charAt(at++) == '*';
            double other = number(factor());
            value = times ? number(value) * other : number(value) / other;
        }
        return value;
    }

    private Object factor() {
        if (taken('-')) {
            return -number(factor());
        }
        if (taken('(')) {
            Object value = sum();
            need(')');
            return value;
        }
        if (next('"')) {
            return text();
        }
        if (taken('{')) {
            return array();
        }
        Optional<Matcher> name = found(NAME);
        if (name.isPresent()) {
            need('(');
            return call(name.get().group(), arguments());
        }
        Optional<Matcher> cells = found(CELLS);
        if (cells.isPresent()) {
            return cells(cells.get().group(1), Optional.ofNullable(cells.get().group(2)));
        }
        return Double.parseDouble(found(NUMBER)
                .orElseThrow(() -> new AssertionError("Not understood: " + formula.substring(at) + " in " + formula))
                .group());
    }

    private List<Object> arguments() {
        List<Object> arguments = new ArrayList<>();
        if (taken(')')) {
            return arguments;
        }
        do {
            arguments.add(next(';') || next(')') ? PlainCall.LEFT_OUT : sum());
        } while (taken(';'));
        need(')');
        return arguments;
    }

    private Object call(String name, List<Object> given) {
        return switch (name) {
            case "ROUND" -> {
                double unit = Math.pow(10, -number(given.get(1)));
                double value = number(given.get(0));
                yield Math.copySign(Math.floor(Math.abs(value) / unit + 0.5) * unit, value);
            }
            case "INDEX" -> ((Object[][]) given.get(0))[(int) number(given.get(1)) - 1][(int) number(given.get(2)) - 1];
            case "TIME" -> (number(given.get(0)) / 24 + number(given.get(1)) / 1440) % 1;
            default -> PlainCall.of(name, given, language);
        };
    }

    private Object[][] array() {
        List<Object[]> rows = new ArrayList<>();
        do {
            List<Object> row = new ArrayList<>();
            do {
                row.add(factor());
            } while (taken(';'));
            rows.add(row.toArray());
        } while (taken('|'));
        need('}');
        return rows.toArray(Object[][]::new);
    }

    private String text() {
        int end = formula.indexOf('"', at + 1);
        String text = formula.substring(at + 1, end);
        at = end + 1;
        return text;
    }

    private Range cells(String first, Optional<String> last) {
        List<List<CellResult>> rows = sheet.all(first + ":" + last.orElse(first));
        Object[][] values = new Object[rows.size()][];
        for (int row = 0; row < values.length; row++) {
            values[row] = rows.get(row).stream().map(PlainFormula::content).toArray();
        }
        return new Range(values, last.isEmpty());
    }

    private static Object content(CellResult cell) {
        if (cell.error() != 0) {
            throw new PlainCall.Failed(cell.error());
        }
        return cell instanceof CellResult.OfNumber number ? number.number() : cell.shown();
    }

    private static double number(Object value) {
        Object cell = value instanceof Range range ? alone(range) : value;
        if ((cell instanceof Object[][] table ? table[0][0] : cell) instanceof Number number) {
            return number.doubleValue();
        }
        throw new PlainCall.Failed(ErrorCodes.VALUE);
    }

    private Optional<Matcher> found(Pattern pattern) {
        Matcher matcher = pattern.matcher(formula).region(at, formula.length());
        if (!matcher.lookingAt()) {
            return Optional.empty();
        }
        at = matcher.end();
        return Optional.of(matcher);
    }

    private boolean next(char wanted) {
        return at < formula.length() && formula.charAt(at) == wanted;
    }

    private boolean taken(char wanted) {
        boolean there = next(wanted);
        at += there ? 1 : 0;
        return there;
    }

    private void need(char wanted) {
        if (!taken(wanted)) {
            throw new AssertionError("No " + wanted + " at " + at + " in " + formula);
        }
    }
}
