package org.snugsheet.engine.insulation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.table.DataFile;
import org.snugsheet.engine.table.Names;
import org.snugsheet.engine.table.OtherNames;

/**
 * The content of {@code materials.csv}, and of {@code material-names.csv}.
 *
 * <p>An error in that file is a bug, not a mistake of a teacher, so it raises {@link IllegalStateException}.
 *
 * @param all every row
 * @param names from any usual English name to the one in the file
 * @param otherNames the same for names in other languages
 * @param shown the names to show in other languages
 */
record MaterialTable(List<Material> all, Names<String> names, Names<String> otherNames, OtherNames shown) {

    private static final String FILE = "materials.csv";
    private static final String NAMES_FILE = "material-names.csv";

    /** The name in the file that is meant, in any language; words as {@link Names#words} gives them. */
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
        OtherNames others = OtherNames.read(MaterialTable.class, NAMES_FILE);
        return new MaterialTable(List.copyOf(all), Names.of(namesOf), Names.of(others.all()), others);
    }

    private static Material material(DataFile.Row row) {
        String layer = row.cell("layer_mm");
        return new Material(
                row.cell("name"),
                Condition.parse(row.cell("condition")),
                conductivity(row, "low"),
                conductivity(row, "typical"),
                conductivity(row, "high"),
                layer.isEmpty() ? Optional.empty() : Optional.of(Length.of(Double.parseDouble(layer), Unit.MILLIMETER)),
                row.cell("source"),
                Material.Provenance.parse(row.cell("provenance")),
                row.cell("note"),
                row.cell("soaks").equals("yes"));
    }

    private static Conductivity conductivity(DataFile.Row row, String column) {
        return new Conductivity(Double.parseDouble(row.cell(column)));
    }
}
