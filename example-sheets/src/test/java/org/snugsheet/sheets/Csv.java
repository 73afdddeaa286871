package org.snugsheet.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The small tables beside the tests: comma between cells, # before a remark, the first line names the columns. */
final class Csv {
    private Csv() {}

    /**
     * One line.
     *
     * @param names of the columns
     * @param cells what stands there
     */
    record Row(List<String> names, List<String> cells) {
        String get(String name) {
            return cells.get(names.indexOf(name));
        }

        boolean has(String name) {
            return !get(name).isEmpty();
        }

        double number(String name) {
            return Double.parseDouble(get(name));
        }
    }

    static List<Row> rows(String file) {
        try (InputStream in = Csv.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("No such table: " + file);
            }
            return rowsOf(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Row> rowsOf(String text) {
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
