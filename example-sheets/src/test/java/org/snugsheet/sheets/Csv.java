package org.snugsheet.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The small tables beside the tests: comma between cells, # before a remark, the first line names the columns. */
public final class Csv {
    private Csv() {}

    /**
     * One line.
     *
     * @param names of the columns
     * @param cells their contents
     */
    public record Row(List<String> names, List<String> cells) {
        public String get(String name) {
            return cells.get(names.indexOf(name));
        }

        public boolean has(String name) {
            return !get(name).isEmpty();
        }

        public double number(String name) {
            return Double.parseDouble(get(name));
        }
    }

    public static List<Row> rows(String file) {
        try (InputStream in = Csv.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("No such table: " + file);
            }
            return rowsOf(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<Row> rowsOf(String text) {
        List<List<String>> lines = text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> List.of(line.split(",", -1)))
                .toList();
        List<String> names = lines.get(0);
        List<Row> rows = new ArrayList<>();
        for (List<String> line : lines.subList(1, lines.size())) {
            rows.add(new Row(names, line));
        }
        return rows;
    }
}
