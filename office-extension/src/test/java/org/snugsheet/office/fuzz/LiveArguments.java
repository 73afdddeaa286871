package org.snugsheet.office.fuzz;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XCellRange;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/** Writes what a call is given as a person may: typed into the formula, in a cell, in a range, in whole columns. */
final class LiveArguments {

    static final int SHEET_ROWS = 1 << 20;

    /** Typed into a formula, numbers from here on might lose their last digits. */
    private static final double MOST_TYPED = 1e12;

    private static final double LEAST_TYPED = 1e-3;

    /** So many cells are typed as {1;2;3}. */
    private static final int MOST_IN_BRACES = 40;

    /** What is wider or longer is written by itself. */
    private static final int WIDTH = 12;

    private static final int LENGTH = 60;

    private final XSpreadsheet cells;
    private final XSpreadsheet large;
    private final XSpreadsheet columns;
    private final SplittableRandom random;

    /** The rows of {@link #cells}: each call to the office takes long, so they are written together. */
    private final List<Object[]> waiting = new ArrayList<>();

    private final Map<String, String> errors = new LinkedHashMap<>();
    private int nextLarge;
    private int nextColumn;

    /** The first two sheets take ranges one below the other, the last whole columns. */
    LiveArguments(XSpreadsheet cells, XSpreadsheet large, XSpreadsheet columns, SplittableRandom random) {
        this.cells = cells;
        this.large = large;
        this.columns = columns;
        this.random = random;
    }

    /** Types what {@link #written} has only named so far. */
    void fill() throws com.sun.star.uno.Exception {
        inCells(waiting.toArray(Object[][]::new), cells, 0, 0);
        for (Map.Entry<String, String> error : errors.entrySet()) {
            cells.getCellRangeByName(error.getKey()).getCellByPosition(0, 0).setFormula("=" + error.getValue());
        }
    }

    /** What stands for a value in a formula. */
    String written(Object value) throws com.sun.star.uno.Exception {
        if (value == Call.LEFT_OUT) {
            return "";
        }
        if (value instanceof Object[][] rows) {
            boolean lone = rows.length == 1 && rows[0].length == 1;
            return lone ? one(rows[0][0]) : many(rows);
        }
        return one(value);
    }

    /** An error where the value would stand: for a range one of its cells, otherwise the whole. */
    String withError(Object value, String error) {
        Object[][] block = block(value);
        int most = Math.min(block.length, LENGTH);
        Object[][] rows = Arrays.stream(Arrays.copyOf(block, most))
                .map(row -> Arrays.copyOf(row, Math.min(row.length, WIDTH)))
                .toArray(Object[][]::new);
        int column = random.nextInt(rows[0].length);
        int row = waiting.size() + random.nextInt(rows.length);
        errors.put(CellName.of(column, row), error);
        return together(rows);
    }

    /** The cells of a range, those of a whole column as far as it is used. */
    static Object[][] block(Object value) {
        if (value instanceof Object[][] rows) {
            return rows.length == SHEET_ROWS ? used(rows) : rows;
        }
        return new Object[][] {{value}};
    }

    private String one(Object value) throws com.sun.star.uno.Exception {
        // A lone blank cell would come as 0.
        boolean mustBeTyped = value.equals("");
        return mustBeTyped || (isTypable(value) && random.nextBoolean())
                ? typed(value)
                : many(new Object[][] {{value}});
    }

    private String many(Object[][] rows) throws com.sun.star.uno.Exception {
        if (rows.length == SHEET_ROWS) {
            inCells(used(rows), columns, nextColumn, 0);
            String first = CellName.column(nextColumn);
            nextColumn += rows[0].length;
            String last = CellName.column(nextColumn - 1);
            return "$Columns." + (random.nextBoolean() ? first + ":" + last : first + "1:" + last + SHEET_ROWS);
        }
        boolean few = rows.length * rows[0].length <= MOST_IN_BRACES;
        if (few && rows.length * rows[0].length > 1 && random.nextInt(3) == 0 && areTypable(rows)) {
            return "{"
                    + String.join(
                            "|", Arrays.stream(rows).map(LiveArguments::line).toList()) + "}";
        }
        String range = rows.length <= LENGTH && rows[0].length <= WIDTH ? together(rows) : alone(rows);
        return switch (random.nextInt(12)) {
            case 0 -> "INDIRECT(\"" + range + "\")";
            case 1 -> "OFFSET(" + range + ";0;0)";
            default -> range;
        };
    }

    private String together(Object[][] rows) {
        int first = waiting.size();
        for (Object[] row : rows) {
            Object[] wide = Arrays.copyOf(row, WIDTH);
            Arrays.fill(wide, row.length, WIDTH, "");
            waiting.add(wide);
        }
        return name("Cells", 0, first, rows);
    }

    private String alone(Object[][] rows) throws com.sun.star.uno.Exception {
        inCells(rows, large, 0, nextLarge);
        String name = name("Large", 0, nextLarge, rows);
        nextLarge += rows.length;
        return name;
    }

    private static String name(String sheet, int column, int row, Object[][] rows) {
        return "$" + sheet + "." + CellName.of(column, row)
                + (rows.length * rows[0].length == 1
                        ? ""
                        : ":" + CellName.of(column + rows[0].length - 1, row + rows.length - 1));
    }

    private static String line(Object[] row) {
        return String.join(";", Arrays.stream(row).map(LiveArguments::typed).toList());
    }

    private static void inCells(Object[][] rows, XSpreadsheet sheet, int column, int row)
            throws com.sun.star.uno.Exception {
        if (rows.length > 0) {
            XCellRange range =
                    sheet.getCellRangeByPosition(column, row, column + rows[0].length - 1, row + rows.length - 1);
            Uno.as(XCellRangeData.class, range).setDataArray(rows);
        }
    }

    private static Object[][] used(Object[][] rows) {
        int used = rows.length;
        while (used > 1 && Arrays.stream(rows[used - 1]).allMatch(""::equals)) {
            used--;
        }
        return Arrays.copyOf(rows, used);
    }

    private static boolean areTypable(Object[][] rows) {
        return Arrays.stream(rows).flatMap(Arrays::stream).allMatch(LiveArguments::isTypable);
    }

    private static boolean isTypable(Object value) {
        if (value instanceof Double number) {
            double size = Math.abs(number);
            return size == 0 ? 1 / number > 0 : size >= LEAST_TYPED && size <= MOST_TYPED;
        }
        return value.toString().chars().noneMatch(Character::isISOControl);
    }

    private static String typed(Object value) {
        return value instanceof Double
                ? value.toString()
                : "\"" + value.toString().replace("\"", "\"\"") + "\"";
    }

    /** The line to the office takes no half of a letter, and too many cells would only take time. */
    static Object sent(Object value, int most) {
        if (value instanceof String text) {
            return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
        }
        if (!(value instanceof Object[][] rows)) {
            return value;
        }
        Object[][] used = used(rows);
        Object[][] sent = Arrays.stream(used.length > most ? Arrays.copyOf(rows, most) : rows)
                .map(row -> row.length > most ? Arrays.copyOf(row, most) : row)
                .toArray(Object[][]::new);
        for (int row = 0; row < Math.min(sent.length, used.length); row++) {
            sent[row] = Arrays.stream(sent[row]).map(cell -> sent(cell, most)).toArray();
        }
        return sent;
    }
}
