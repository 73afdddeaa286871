package org.snugsheet.office.cells;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;

/**
 * Reads the cells given for a needed argument. They come as {@code Object[][]} or, where a lone blank must be told from a
 * zero, as {@code String[][]}; every method here takes both.
 */
public final class Cells {

    /** More than all readings of a school; a whole column has a million. Common practice, no source. */
    public static final int MOST = 200_000;

    private Cells() {}

    /**
     * A column or a row of cells.
     *
     * @param cells the cells
     * @return their entries, in order
     * @throws InvalidInputException if it is a block of several rows and columns, or more than {@value #MOST} cells are filled
     */
    public static List<Entry> line(Object[][] cells) {
        return line(cells, MOST);
    }

    /**
     * A column or a row of cells, of which not many are filled; of blank ones there may be as many as a sheet has.
     *
     * @param cells the cells
     * @param most how many may be filled
     * @return their entries, in order
     * @throws InvalidInputException if it is a block of several rows and columns, or more cells are filled
     */
    public static List<Entry> line(Object[][] cells, int most) {
        requireLine(cells);
        // Counted before they are read: they may be a whole column.
        int filled = filled(cells);
        if (filled > most) {
            throw InvalidInputException.of(Problem.TOO_MANY_CELLS, filled, most);
        }
        List<Entry> line = new ArrayList<>(cells.length);
        for (Object[] row : cells) {
            for (Object cell : row) {
                line.add(cells instanceof String[][] ? Entry.ofWritten(typed(cell)) : entry(cell));
            }
        }
        return line;
    }

    private static int filled(Object[][] cells) {
        int filled = 0;
        for (Object[] row : cells) {
            for (Object cell : row) {
                if (!"".equals(cell)) {
                    filled++;
                }
            }
        }
        return filled;
    }

    /**
     * A block of cells.
     *
     * @param cells the cells
     * @return their entries, row by row
     */
    public static List<List<Entry>> rows(Object[][] cells) {
        List<List<Entry>> rows = new ArrayList<>(cells.length);
        for (Object[] row : cells) {
            rows.add(line(new Object[][] {row}));
        }
        return rows;
    }

    /**
     * A single cell.
     *
     * @param cells the cells
     * @return its entry
     * @throws InvalidInputException if there is more than one cell, or none
     */
    public static Entry single(Object[][] cells) {
        requireLine(cells);
        // Counted before they are read: they may be a whole column.
        int count = Arrays.stream(cells).mapToInt(row -> row.length).sum();
        if (count != 1) {
            throw InvalidInputException.of(Problem.NOT_ONE_CELL, count);
        }
        return line(cells).get(0);
    }

    private static void requireLine(Object[][] cells) {
        if (cells.length > 1 && cells[0].length > 1) {
            throw InvalidInputException.of(Problem.NOT_ONE_COLUMN, cells.length, cells[0].length);
        }
    }

    /**
     * A single cell with a number.
     *
     * @param cells the cells
     * @return its number
     * @throws InvalidInputException if it is blank or no number
     */
    public static double number(Object[][] cells) {
        return single(cells).asNumber(1);
    }

    /**
     * A single cell with a whole number.
     *
     * @param cells the cells
     * @return its number
     * @throws InvalidInputException if it is blank, no number, or not whole
     */
    public static int whole(Object[][] cells) {
        return whole(number(cells));
    }

    /**
     * A whole number.
     *
     * @param number the number
     * @return the same
     * @throws InvalidInputException if it is not whole
     */
    public static int whole(double number) {
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw InvalidInputException.of(Problem.NOT_WHOLE, number);
        }
        return (int) number;
    }

    /**
     * A single cell with a temperature.
     *
     * @param cells the cells
     * @param scale the scale of a number without one
     * @return its temperature
     * @throws InvalidInputException if it is blank or no temperature
     */
    public static Temperature temperature(Object[][] cells, Scale scale) {
        return single(cells).asTemperature(1, scale);
    }

    /**
     * A single cell with text.
     *
     * @param cells the cells
     * @return its text; a number is written out
     * @throws InvalidInputException if it is blank
     */
    public static String text(Object[][] cells) {
        Entry entry = single(cells);
        if (entry instanceof Entry.Missing) {
            throw InvalidInputException.atRow(1, Problem.BLANK);
        }
        return entry.written();
    }

    /**
     * Answers every cell by itself: a blank with a blank, so that a formula filled down an unfinished column stays clean.
     *
     * @param cells one cell or a range
     * @param answer what to answer for an entry that is no gap, given its row
     * @return one answer for one cell, otherwise a range of the same shape
     * @throws InvalidInputException if there are more than {@value #MOST}, as in a whole column
     */
    public static Object each(Object[][] cells, ToDoubleBiFunction<Integer, Entry> answer) {
        requireFew(cells);
        Object[][] answers = new Object[cells.length][];
        for (int row = 0; row < cells.length; row++) {
            answers[row] = new Object[cells[row].length];
            for (int column = 0; column < cells[row].length; column++) {
                Entry entry = entry(cells[row][column]);
                answers[row][column] = entry instanceof Entry.Missing
                        ? ""
                        : (Object) answer.applyAsDouble(cells.length == 1 ? column + 1 : row + 1, entry);
            }
        }
        return answers.length == 1 && answers[0].length == 1 ? answers[0][0] : answers;
    }

    /**
     * Lets cells pass that somebody may have filled.
     *
     * @param cells one cell or a range
     * @throws InvalidInputException if there are more than {@value #MOST}
     */
    public static void requireFew(Object[][] cells) {
        long count = cells.length == 0 ? 0 : (long) cells.length * cells[0].length;
        if (count > MOST) {
            throw InvalidInputException.of(Problem.TOO_MANY_CELLS, count, MOST);
        }
    }

    /**
     * One column of a block.
     *
     * @param block the cells
     * @param index which column, from 0
     * @return its cells
     */
    public static Object[][] column(Object[][] block, int index) {
        Object[][] column = new Object[block.length][1];
        for (int row = 0; row < block.length; row++) {
            column[row][0] = block[row][index];
        }
        return column;
    }

    /**
     * The columns of a block.
     *
     * @param block the cells
     * @return their entries, column by column
     */
    public static List<List<Entry>> columns(Object[][] block) {
        List<List<Entry>> columns = new ArrayList<>(block[0].length);
        for (int column = 0; column < block[0].length; column++) {
            columns.add(line(column(block, column)));
        }
        return columns;
    }

    static Entry entry(Object cell) {
        return cell instanceof Number number ? Entry.of(number.doubleValue()) : Entry.of(typed(cell));
    }

    /** In a cell of several lines the office keeps a tab as this letter, which is no white space. */
    private static String typed(Object cell) {
        return cell.toString().replace('\u0001', '\t');
    }
}
