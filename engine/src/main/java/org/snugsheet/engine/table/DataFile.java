package org.snugsheet.engine.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A file of comma-separated values in the package of a class. Lines that begin with # are comments; the first other line
 * names the columns.
 *
 * <p>An error in such a file is a bug, not a mistake of a teacher, so it raises {@link IllegalStateException}.
 */
public final class DataFile {

    private DataFile() {}

    /**
     * One row.
     *
     * @param file the name of its file
     * @param cells the text of each column
     */
    public record Row(String file, Map<String, String> cells) {

        /** A row. */
        public Row {
            cells = Map.copyOf(cells);
        }

        /**
         * The text in a column.
         *
         * @param column the column’s name
         * @return the text there; may be empty
         */
        public String cell(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalStateException(file + " lacks the column " + column);
            }
            return cell;
        }

        /**
         * The parts of a cell, separated by semicolons.
         *
         * @param column the column’s name
         * @return its parts that are not empty
         */
        public List<String> list(String column) {
            return Arrays.stream(cell(column).split(";"))
                    .map(String::strip)
                    .filter(part -> !part.isEmpty())
                    .toList();
        }

        /**
         * The number in a column.
         *
         * @param column the column’s name
         * @return its number
         */
        public double number(String column) {
            return Double.parseDouble(cell(column));
        }
    }

    /**
     * The rows of a file.
     *
     * @param beside the class beside which it lies
     * @param file its name
     * @return its rows in order
     */
    public static List<Row> rows(Class<?> beside, String file) {
        List<String> lines = lines(beside, file);
        List<String> header = cells(lines.get(0));
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = cells(line);
            if (cells.size() != header.size()) {
                throw new IllegalStateException(file + " has a row of another length: " + line);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                row.put(header.get(i), cells.get(i));
            }
            rows.add(new Row(file, row));
        }
        return List.copyOf(rows);
    }

    private static List<String> lines(Class<?> beside, String file) {
        try (InputStream stream = beside.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException(file + " is missing");
            }
            try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                return reader.lines()
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .toList();
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** The cells of one line (RFC 4180: a cell in quotation marks may hold commas, and a doubled mark is one mark). */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
