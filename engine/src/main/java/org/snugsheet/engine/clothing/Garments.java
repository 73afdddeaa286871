package org.snugsheet.engine.clothing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.table.DataFile;
import org.snugsheet.engine.table.Names;
import org.snugsheet.engine.table.OtherNames;

/**
 * The garments known here, read from the file {@code garments.csv} in this package, which gives the source of each figure.
 *
 * <pre>{@code
 * Garments.find("T-Shirts").insulation().in(Unit.CLO); // 0.08
 * Garments.find("swaeter");                            // refused: did you mean “Sweater”?
 * }</pre>
 */
public final class Garments {

    private static final String FILE = "garments.csv";
    private static final String NAMES_FILE = "garment-names.csv";

    /** Read once, on first use; the class loader takes care of concurrent threads. */
    private record Loaded(List<Garment> all, Names<Garment> names, OtherNames others) {
        static final Loaded TABLE = read();

        private static Loaded read() {
            OtherNames others = OtherNames.read(Garments.class, NAMES_FILE);
            Map<String, List<String>> inOtherLanguages = others.all();
            Map<Garment, List<String>> names = new LinkedHashMap<>();
            for (DataFile.Row row : DataFile.rows(Garments.class, FILE)) {
                Garment garment = new Garment(
                        row.cell("name"),
                        ThermalResistance.of(row.number("clo"), Unit.CLO),
                        row.cell("source"),
                        Material.Provenance.parse(row.cell("provenance")),
                        row.cell("note"));
                List<String> all = new ArrayList<>(List.of(garment.name()));
                all.addAll(row.list("also"));
                all.addAll(inOtherLanguages.getOrDefault(garment.name(), List.of()));
                names.put(garment, all);
            }
            return new Loaded(List.copyOf(names.keySet()), Names.of(names), others);
        }
    }

    private Garments() {}

    /**
     * Every garment.
     *
     * @return the garments, in the order of their file
     */
    public static List<Garment> all() {
        return Loaded.TABLE.all();
    }

    /**
     * The garments that have a word in their name.
     *
     * @param word such as {@code socks}; case and plural do not matter
     * @return at least one garment
     * @throws InvalidInputException if there are none
     */
    public static List<Garment> with(String word) {
        List<String> wanted = Names.words(word);
        List<Garment> found = all().stream()
                .filter(garment -> Names.words(garment.name()).containsAll(wanted))
                .toList();
        if (found.isEmpty()) {
            throw InvalidInputException.of(Problem.UNKNOWN_GARMENT, word.strip());
        }
        return found;
    }

    /**
     * Finds a garment by name. Case, blanks, plural and the order of words do not matter, and other usual names are accepted.
     *
     * @param name its name
     * @return the garment
     * @throws InvalidInputException if it is unknown, with a suggestion where one is near
     */
    public static Garment find(String name) {
        return find(name, 0);
    }

    /**
     * Finds a garment of a list.
     *
     * @param name its name
     * @param row its row, for the message; 0 if it is not in a list
     * @return the garment
     * @throws InvalidInputException if it is unknown, with a suggestion where one is near
     */
    public static Garment find(String name, int row) {
        List<String> words = Names.words(name);
        return Loaded.TABLE.names().find(words).orElseThrow(() -> unknown(name.strip(), words, row));
    }

    /**
     * The name of a garment in a language.
     *
     * @param garment the garment
     * @param language the language
     * @return its name in that language, or else the English one
     */
    public static String nameIn(Garment garment, Locale language) {
        return Loaded.TABLE.others().shown(garment.name(), language).orElse(garment.name());
    }

    private static InvalidInputException unknown(String typed, List<String> words, int row) {
        return Loaded.TABLE
                .names()
                .suggest(words)
                .map(near -> row == 0
                        ? InvalidInputException.of(Problem.UNKNOWN_GARMENT_NEAR, typed, near)
                        : InvalidInputException.atRow(row, Problem.ROW_UNKNOWN_GARMENT_NEAR, typed, near))
                .orElseGet(() -> row == 0
                        ? InvalidInputException.of(Problem.UNKNOWN_GARMENT, typed)
                        : InvalidInputException.atRow(row, Problem.ROW_UNKNOWN_GARMENT, typed));
    }
}
