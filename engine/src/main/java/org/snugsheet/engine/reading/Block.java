package org.snugsheet.engine.reading;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * A sheet of readings: a header row, times in the first column, and one more column for each jar.
 *
 * <p>The cells of the header are {@linkplain Heading headings}: each names a jar and perhaps the scale its column was read on.
 *
 * @param times what was typed for the times, one for each row below the header
 * @param jars the jars, in the order of their columns
 */
public record Block(List<Entry> times, List<Jar> jars) {

    /**
     * One jar of the block.
     *
     * @param number its column after the times, counted from 1
     * @param heading its name and, if given, its scale
     * @param temperatures what was typed for its readings
     */
    public record Jar(int number, Heading heading, List<Entry> temperatures) {

        /** A jar; its readings are copied. */
        public Jar {
            temperatures = List.copyOf(temperatures);
        }
    }

    /** A block; its lists are copied. */
    public Block {
        times = List.copyOf(times);
        jars = List.copyOf(jars);
    }

    /**
     * Reads a block.
     *
     * @param rows the rows, all of one length; the first is the header
     * @return the block; a column with neither a header nor readings is left out
     * @throws InvalidInputException if there is no row below the header or no column beside the times
     */
    public static Block of(List<List<Entry>> rows) {
        if (rows.size() < 2 || rows.get(0).size() < 2) {
            throw InvalidInputException.of(Problem.NO_BLOCK);
        }
        List<List<Entry>> columns = new ArrayList<>();
        for (int column = 0; column < rows.get(0).size(); column++) {
            int at = column;
            columns.add(rows.stream().skip(1).map(row -> row.get(at)).toList());
        }
        List<Entry> header = rows.get(0);
        return of(columns.get(0), header.subList(1, header.size()), columns.subList(1, columns.size()));
    }

    /**
     * Makes a block.
     *
     * @param times what was typed for the times
     * @param headings the heading of each column of readings
     * @param columns the columns of readings
     * @return the block; a column with neither a heading nor readings is left out
     * @throws InvalidInputException if there are more headings than columns, or fewer
     */
    public static Block of(List<Entry> times, List<Entry> headings, List<List<Entry>> columns) {
        if (headings.size() != columns.size()) {
            throw InvalidInputException.of(Problem.DIFFERENT_NAMES, headings.size(), columns.size());
        }
        List<Jar> jars = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            boolean unused = headings.get(i) instanceof Entry.Missing
                    && columns.get(i).stream().allMatch(Entry.Missing.class::isInstance);
            if (!unused) {
                jars.add(new Jar(i + 1, Heading.of(headings.get(i)), columns.get(i)));
            }
        }
        return new Block(times, jars);
    }
}
