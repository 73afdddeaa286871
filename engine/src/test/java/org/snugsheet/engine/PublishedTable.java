package org.snugsheet.engine;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Published figures to check against: a file of comma-separated values beside a test, where lines with # are remarks. */
public final class PublishedTable {

    private static final Pattern CELL = Pattern.compile("(?:^|,)(?:\"((?:[^\"]|\"\")*)\"|([^,\"]*))");

    private PublishedTable() {}

    /**
     * The rows of a file, each from its column’s name to its cell.
     *
     * @param test the test beside which the file lies
     * @param file the name of the file
     * @return its rows without the header
     */
    public static List<Map<String, String>> rows(Class<?> test, String file) {
        return rows(file, lines(test, file));
    }

    /**
     * The rows of a file that was written just now.
     *
     * @param file the file
     * @return its rows without the header
     * @throws IOException if it cannot be read
     */
    public static List<Map<String, String>> rows(Path file) throws IOException {
        try (BufferedReader reader = Files.newBufferedReader(file)) {
            return rows(file.toString(), lines(reader));
        }
    }

    private static List<Map<String, String>> rows(String file, List<List<String>> lines) {
        List<String> header = lines.get(0);
        List<Map<String, String>> rows = new ArrayList<>();
        for (List<String> cells : lines.subList(1, lines.size())) {
            if (cells.size() != header.size()) {
                throw new IllegalStateException(file + ": a row of another length: " + cells);
            }
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.size(); i++) {
                row.put(header.get(i), cells.get(i));
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<List<String>> lines(Class<?> test, String file) {
        try (InputStream stream = test.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException(file + " does not lie beside " + test);
            }
            try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                return lines(reader);
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static List<List<String>> lines(BufferedReader reader) {
        return reader.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(PublishedTable::cells)
                .toList();
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        Matcher cell = CELL.matcher(line);
        while (cell.find()) {
            String quoted = cell.group(1);
            String plain = cell.group(2);
            cells.add(quoted != null ? quoted.replace("\"\"", "\"") : plain == null ? "" : plain);
        }
        return cells;
    }
}
