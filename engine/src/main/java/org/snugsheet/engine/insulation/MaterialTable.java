package org.snugsheet.engine.insulation;

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
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Unit;

/**
 * The content of {@code materials.csv}, and of {@code material-names.csv}.
 *
 * <p>A fault in that file is a fault of this project and not of a teacher: it is met with {@link IllegalStateException}.
 *
 * @param all every row
 * @param names leads from any usual name in English to the one in the file
 * @param otherNames does so from names in other languages
 */
record MaterialTable(List<Material> all, Names<String> names, Names<String> otherNames) {

    private static final String FILE = "materials.csv";
    private static final String NAMES_FILE = "material-names.csv";
    private static final List<String> LANGUAGES = List.of("es", "fr", "de");

    /** The name in the file that somebody means, in whatever language; words as {@link Names#words} gives them. */
    Optional<String> find(List<String> words) {
        return names.find(words).or(() -> otherNames.find(words));
    }

    /** The name that was most likely meant, in English before other languages. */
    Optional<String> suggest(List<String> words) {
        return names.suggest(words).or(() -> otherNames.suggest(words));
    }

    List<Material> named(String name) {
        return all.stream().filter(material -> material.name().equals(name)).toList();
    }

    static MaterialTable read() {
        List<Material> all = new ArrayList<>();
        Map<String, List<String>> namesOf = new LinkedHashMap<>();
        for (Map<String, String> row : rows(FILE)) {
            Material material = material(row);
            all.add(material);
            namesOf.computeIfAbsent(material.name(), name -> new ArrayList<>(List.of(name)))
                    .addAll(list(cell(row, "also")));
        }
        return new MaterialTable(List.copyOf(all), Names.of(namesOf), Names.of(inOtherLanguages()));
    }

    private static Map<String, List<String>> inOtherLanguages() {
        Map<String, List<String>> namesOf = new LinkedHashMap<>();
        for (Map<String, String> row : rows(NAMES_FILE)) {
            List<String> names = new ArrayList<>();
            LANGUAGES.forEach(language -> names.addAll(list(cell(row, language))));
            namesOf.put(cell(row, "name"), names);
        }
        return namesOf;
    }

    private static List<String> list(String cell) {
        return Arrays.stream(cell.split(";"))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    private static Material material(Map<String, String> row) {
        String layer = cell(row, "layer_mm");
        return new Material(
                cell(row, "name"),
                Condition.parse(cell(row, "condition")),
                conductivity(row, "low"),
                conductivity(row, "typical"),
                conductivity(row, "high"),
                layer.isEmpty() ? Optional.empty() : Optional.of(Length.of(Double.parseDouble(layer), Unit.MILLIMETRE)),
                cell(row, "source"),
                Material.Provenance.valueOf(
                        cell(row, "provenance").toUpperCase(Locale.ROOT).replace(' ', '_')),
                cell(row, "note"),
                cell(row, "soaks").equals("yes"));
    }

    private static Conductivity conductivity(Map<String, String> row, String column) {
        return new Conductivity(Double.parseDouble(cell(row, column)));
    }

    private static String cell(Map<String, String> row, String column) {
        String cell = row.get(column);
        if (cell == null) {
            throw new IllegalStateException("a table of materials lacks the column " + column);
        }
        return cell;
    }

    private static List<Map<String, String>> rows(String file) {
        List<String> lines = lines(file);
        List<String> header = cells(lines.get(0));
        return lines.stream()
                .skip(1)
                .map(line -> {
                    List<String> cells = cells(line);
                    if (cells.size() != header.size()) {
                        throw new IllegalStateException(file + " has a row of another length: " + line);
                    }
                    Map<String, String> row = new LinkedHashMap<>();
                    for (int i = 0; i < cells.size(); i++) {
                        row.put(header.get(i), cells.get(i));
                    }
                    return row;
                })
                .toList();
    }

    private static List<String> lines(String file) {
        try (InputStream stream = MaterialTable.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException(file + " is missing");
            }
            try (BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                return reader.lines()
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .collect(Collectors.toList());
            }
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
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
