package org.snugsheet.office.sharing.living;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Some steps that belong together: on the left one value below the other, each behind its name; on the right a table with a line for each
 * reading, or jar, or pair; below the table more values, in its columns.
 *
 * <p>Formulas call the values and columns of their block by name: {@code [n]} is a value, {@code [t]} all cells of a column, {@code [t.]} its
 * cell in the same line, {@code [t-]} and {@code [t+]} those in the line before and behind, {@code [#]} the number of the line.
 */
final class Block {

    private static final Pattern NAME = Pattern.compile("\\[([#A-Za-z][A-Za-z0-9]*)([.+-]?)]");
    private static final int VALUES = 1;
    private static final int TABLE = 3;

    private final StepsPage page;
    private final int top;
    private final int lines;
    private final Map<String, String> values = new HashMap<>();
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private int nextValue;
    private int nextColumn = TABLE;

    /**
     * Begins where the page has room for it.
     *
     * @param lines how many lines its table has
     */
    Block(StepsPage page, String title, int lines) {
        this.page = page;
        this.top = page.begin(title);
        this.lines = lines;
        this.nextValue = top + 1;
    }

    int lines() {
        return lines;
    }

    /** Names a cell or range that is elsewhere. */
    Block known(String name, String address) {
        values.put(name, address);
        return this;
    }

    /** One value; its formula may call what is written later, if it is named before. */
    Block value(String name, String said, String formula) {
        int row = nextValue++;
        page.set(0, row, said);
        values.put(name, StepsPage.address(VALUES, row));
        page.set(VALUES, row, filled(formula, -1));
        return this;
    }

    /** Keeps the place of a value that is written later, so that others can call it. */
    Block later(String name, String said) {
        int row = nextValue++;
        page.set(0, row, said);
        values.put(name, StepsPage.address(VALUES, row));
        return this;
    }

    /** Writes a value for which a place was kept. */
    Block write(String name, String formula) {
        String[] parts = at(name).substring(1).split("\\$");
        page.set(VALUES, Integer.parseInt(parts[1]) - 1, filled(formula, -1));
        return this;
    }

    /** A column of the table, the same formula in each line. */
    Block column(String name, String said, String formula) {
        return column(name, said, line -> formula);
    }

    /** A column of the table. */
    Block column(String name, String said, IntFunction<String> formulas) {
        int column = nextColumn++;
        page.head(column, top + 1, said);
        columns.put(name, column);
        for (int line = 0; line < lines; line++) {
            page.set(column, top + 2 + line, filled(formulas.apply(line), line));
        }
        return this;
    }

    /** A cell of a column that goes across the other lines, such as a matrix, by its line. */
    Block in(String name, int line, String formula) {
        page.set(column(name), top + 2 + line, filled(formula, line));
        return this;
    }

    /** A column whose cells are written one by one. */
    Block open(String name, String said) {
        int column = nextColumn++;
        page.head(column, top + 1, said);
        columns.put(name, column);
        return this;
    }

    /** A number, a text or an error in a column, as it is. */
    Block constant(String name, int line, Object content) {
        Object written = content instanceof Double number
                ? (Object) number
                : content.equals(Seen.ERROR) ? "=NA()" : "=" + Formulas.text(String.valueOf(content));
        page.set(column(name), top + 2 + line, written);
        return this;
    }

    /** A value below a column. */
    Block foot(String name, String column, int place, String formula) {
        int row = top + 2 + lines + place;
        values.put(name, StepsPage.address(column(column), row));
        page.set(column(column), row, filled(formula, -1));
        return this;
    }

    /** What the values below the columns are, in front of them. */
    Block footNamed(int place, String said) {
        page.set(TABLE, top + 2 + lines + place, said);
        return this;
    }

    /** Where a value is, or all cells of a column. */
    String at(String name) {
        if (values.containsKey(name)) {
            return values.get(name);
        }
        return StepsPage.range(column(name), top + 2, lines);
    }

    /** Where the cell of a column is. */
    String at(String name, int line) {
        return StepsPage.address(column(name), top + 2 + line);
    }

    /** Some cells of a column. */
    String at(String name, int from, int count) {
        return StepsPage.range(column(name), top + 2 + from, count);
    }

    /** A cell of a column that is written so many columns later than the one that is being written. */
    String columnAfter(int columns, int line) {
        return StepsPage.address(nextColumn - 1 + columns, top + 2 + line);
    }

    /** All cells of the column that is written next. */
    String nextColumn() {
        return StepsPage.range(nextColumn, top + 2, lines);
    }

    /** Some of its columns, which stand beside each other, as a table. */
    Translator.Table table(String first, int width) {
        return new Translator.Table(column(first), top + 2, width, lines);
    }

    /** One value as a table of one cell. */
    Translator.Table table(String value) {
        String[] parts = at(value).substring(1).split("\\$");
        return new Translator.Table(
                org.snugsheet.office.uno.CellName.number(parts[0]), Integer.parseInt(parts[1]) - 1, 1, 1);
    }

    private int column(String name) {
        Integer column = columns.get(name);
        if (column == null) {
            throw new IllegalArgumentException(name);
        }
        return column;
    }

    private String filled(String formula, int line) {
        return NAME.matcher(formula)
                .replaceAll(found -> Matcher.quoteReplacement(
                        switch (found.group(2)) {
                            case "." -> at(found.group(1), line);
                            case "-" -> at(found.group(1), line - 1);
                            case "+" -> at(found.group(1), line + 1);
                            default -> found.group(1).equals("#") ? String.valueOf(line + 1) : at(found.group(1));
                        }));
    }
}
