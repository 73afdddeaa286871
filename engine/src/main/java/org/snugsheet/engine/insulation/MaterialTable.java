package org.snugsheet.engine.insulation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.table.DataFile;
import org.snugsheet.engine.table.Names;

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
        for (DataFile.Row row : DataFile.rows(MaterialTable.class, FILE)) {
            Material material = material(row);
            all.add(material);
            List<String> names = namesOf.computeIfAbsent(material.name(), name -> new ArrayList<>(List.of(name)));
            names.addAll(row.list("also"));
        }
        return new MaterialTable(List.copyOf(all), Names.of(namesOf), Names.of(inOtherLanguages()));
    }

    private static Map<String, List<String>> inOtherLanguages() {
        Map<String, List<String>> namesOf = new LinkedHashMap<>();
        for (DataFile.Row row : DataFile.rows(MaterialTable.class, NAMES_FILE)) {
            List<String> names = new ArrayList<>();
            LANGUAGES.forEach(language -> names.addAll(row.list(language)));
            namesOf.put(row.cell("name"), names);
        }
        return namesOf;
    }

    private static Material material(DataFile.Row row) {
        String layer = row.cell("layer_mm");
        return new Material(
                row.cell("name"),
                Condition.parse(row.cell("condition")),
                conductivity(row, "low"),
                conductivity(row, "typical"),
                conductivity(row, "high"),
                layer.isEmpty() ? Optional.empty() : Optional.of(Length.of(Double.parseDouble(layer), Unit.MILLIMETRE)),
                row.cell("source"),
                Material.Provenance.valueOf(
                        row.cell("provenance").toUpperCase(Locale.ROOT).replace(' ', '_')),
                row.cell("note"),
                row.cell("soaks").equals("yes"));
    }

    private static Conductivity conductivity(DataFile.Row row, String column) {
        return new Conductivity(Double.parseDouble(row.cell(column)));
    }
}
