package org.snugsheet.engine.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Names in languages other than English, from a data file with a column {@code name} for the English name and one for each
 * language, such as {@code de}. Several names are separated by semicolons; the first is the one to show.
 *
 * @param rows from each English name to its row
 */
public record OtherNames(Map<String, DataFile.Row> rows) {

    private static final List<String> LANGUAGES = List.of("es", "fr", "de");

    /** Names; the map is copied. Its order is kept: of two names equally near a slip the first is suggested. */
    public OtherNames {
        rows = Collections.unmodifiableMap(new LinkedHashMap<>(rows));
    }

    /**
     * The names in a file.
     *
     * @param beside the class beside which it lies
     * @param file its name
     * @return its names
     */
    public static OtherNames read(Class<?> beside, String file) {
        return of(DataFile.rows(beside, file));
    }

    static OtherNames of(List<DataFile.Row> rows) {
        Map<String, DataFile.Row> byName = new LinkedHashMap<>();
        rows.forEach(row -> byName.put(row.cell("name"), row));
        return new OtherNames(byName);
    }

    /**
     * All names of each thing in all languages but English.
     *
     * @return from each English name to the others
     */
    public Map<String, List<String>> all() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        rows.forEach((name, row) -> {
            List<String> others = new ArrayList<>();
            LANGUAGES.forEach(language -> others.addAll(row.list(language)));
            all.put(name, others);
        });
        return all;
    }

    /**
     * The name to show in a language.
     *
     * @param name the English name
     * @param language the language
     * @return its first name there; empty for English, a language that the file does not have, or an unknown name
     */
    public Optional<String> shown(String name, Locale language) {
        DataFile.Row row = rows.get(name);
        return row == null || !LANGUAGES.contains(language.getLanguage())
                ? Optional.empty()
                : row.list(language.getLanguage()).stream().findFirst();
    }
}
