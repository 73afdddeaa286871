package org.snugsheet.office.fuzz;

import java.util.ArrayList;
import java.util.List;

/** A formula as a person types it, {@code COOL.RATE({0;5;10};{38;32;26};3)}, taken apart into its name and what it is given. */
record FormulaText(String name, List<Object> arguments) {

    FormulaText {
        arguments = List.copyOf(arguments);
    }

    /** A number is a {@code Double}, a text a {@code String}, an array an {@code Object[][]}; an argument left out is {@link Call#LEFT_OUT}. */
    static FormulaText parse(String formula) {
        int open = formula.indexOf('(');
        String inside = formula.substring(open + 1, formula.lastIndexOf(')'));
        List<Object> arguments = new ArrayList<>();
        if (!inside.isEmpty()) {
            for (String argument : split(inside, ';')) {
                arguments.add(argument(argument.strip()));
            }
        }
        return new FormulaText(formula.substring(0, open), arguments);
    }

    private static Object argument(String text) {
        if (text.isEmpty()) {
            return Call.LEFT_OUT;
        }
        if (!text.startsWith("{")) {
            return cell(text);
        }
        // The examples write a column as {1;2;3} and a block as {1;2|3;4}.
        String inside = text.substring(1, text.length() - 1);
        List<String> rows = split(inside, '|');
        if (rows.size() > 1) {
            return rows.stream()
                    .map(row -> split(row, ';').stream().map(FormulaText::cell).toArray())
                    .toArray(Object[][]::new);
        }
        return split(inside, ';').stream()
                .map(cell -> new Object[] {cell(cell)})
                .toArray(Object[][]::new);
    }

    private static Object cell(String text) {
        return text.startsWith("\"")
                ? text.substring(1, text.length() - 1).replace("\"\"", "\"")
                : (Object) Double.valueOf(text);
    }

    /** Splits where the sign stands outside of quotes and braces. */
    private static List<String> split(String text, char sign) {
        List<String> parts = new ArrayList<>();
        boolean quoted = false;
        int depth = 0;
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && c == '{') {
                depth++;
            } else if (!quoted && c == '}') {
                depth--;
            } else if (!quoted && depth == 0 && c == sign) {
                parts.add(text.substring(from, i));
                from = i + 1;
            }
        }
        parts.add(text.substring(from));
        return parts;
    }

    /** The formula again, so that a failure can be kept as a case. */
    @Override
    public String toString() {
        return name + "("
                + String.join(";", arguments.stream().map(FormulaText::written).toList()) + ")";
    }

    private static String written(Object argument) {
        if (argument == Call.LEFT_OUT) {
            return "";
        }
        if (argument instanceof Object[][] rows) {
            List<String> lines = new ArrayList<>();
            for (Object[] row : rows) {
                List<String> cells = new ArrayList<>();
                for (Object cell : row) {
                    cells.add(written(cell));
                }
                lines.add(String.join(";", cells));
            }
            boolean column = rows.length > 0 && rows[0].length == 1;
            return "{" + String.join(column ? ";" : "|", lines) + (column || rows.length > 1 ? "" : "|") + "}";
        }
        return argument instanceof String text ? "\"" + text.replace("\"", "\"\"") + "\"" : String.valueOf(argument);
    }
}
