package org.snugsheet.engine.insulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.table.Names;

/**
 * The materials known here, read from the file {@code materials.csv} in this package, which gives the source of each figure
 * and how they were merged.
 *
 * <pre>{@code
 * Materials.find("Wool").typical();
 * Materials.find("damp sand");                    // the condition may stand with the name
 * Materials.find("sand", Condition.SOAKED);
 * Materials.find("fleese");                       // refused: did you mean “fleece”?
 * }</pre>
 */
public final class Materials {

    /** Water at 10 °C: 0.6 W/(m·K), EN 12524:2000 (now ISO 10456); IAPWS R15-11 has 0.580 there and 0.598 at 20 °C. */
    public static final Conductivity WATER = new Conductivity(0.6);

    /** Read once, on first use; the class loader takes care of concurrent threads. */
    private static final class Loaded {
        static final MaterialTable TABLE = MaterialTable.read();
    }

    private Materials() {}

    /**
     * Every material in each of its conditions.
     *
     * @return the materials, in the order of their file
     */
    public static List<Material> all() {
        return Loaded.TABLE.all();
    }

    /**
     * Finds a material by name. Case, blanks, plural and the order of words do not matter, and other usual names are
     * accepted, in English, Spanish, French and German.
     *
     * @param text its name, with or without a condition, such as {@code wool}, {@code Wet Sand}; dry if it has none
     * @return the material
     * @throws InvalidInputException if it is unknown, with a suggestion where one is near, or is not known in that condition
     */
    public static Material find(String text) {
        return findForLayer(text, 0);
    }

    /**
     * Finds a material in a condition.
     *
     * @param name its name, as in {@link #find(String)} but without a condition
     * @param condition how wet it is
     * @return the material
     * @throws InvalidInputException if it is unknown, with a suggestion where one is near, or is not known in that condition
     */
    public static Material find(String name, Condition condition) {
        return find(name, Names.words(name), condition, 0);
    }

    /**
     * A material with water in place of all its air. Where a figure for the soaked material is published, such as for sand,
     * that is used. Otherwise it conducts as {@linkplain #WATER water} does: in loose materials at least nine tenths were
     * air, and the rest lowers the conductivity by a few percent at most (wool fiber conducts 0.19 W/(m·K): S. Baxter, Proc.
     * Phys. Soc. 58 (1946), 105, abstract).
     *
     * @param material a material that water can enter
     * @return the same, soaked
     */
    public static Material soaked(Material material) {
        return Loaded.TABLE.named(material.name()).stream()
                .filter(each -> each.condition() == Condition.SOAKED)
                .findFirst()
                .orElseGet(() -> material.filledWith(WATER));
    }

    /**
     * The typical conductivity of a material.
     *
     * @param text its name, as in {@link #find(String)}
     * @return its conductivity
     * @throws InvalidInputException as {@link #find(String)} does
     */
    public static Conductivity conductivityOf(String text) {
        return find(text).typical();
    }

    /** Like {@link #find(String)}; the exception names the layer unless that is 0. */
    static Material findForLayer(String text, int layer) {
        List<String> words = Names.words(text);
        if (Loaded.TABLE.find(words).isPresent()) {
            return find(text, words, Condition.DRY, layer);
        }
        Optional<Condition> said =
                words.stream().map(Condition::of).flatMap(Optional::stream).findFirst();
        List<String> others = new ArrayList<>(words);
        others.removeIf(word -> Condition.of(word).isPresent());
        return find(text, others, said.orElse(Condition.DRY), layer);
    }

    /**
     * The name of a material in a language.
     *
     * @param material the material
     * @param language the language
     * @return its name in that language, or else the English one
     */
    public static String nameIn(Material material, Locale language) {
        return Loaded.TABLE.shown().shown(material.name(), language).orElse(material.name());
    }

    private static Material find(String text, List<String> words, Condition condition, int layer) {
        MaterialTable table = Loaded.TABLE;
        String name = table.find(words).orElseThrow(() -> unknown(text.strip(), words, layer));
        List<Material> conditions = table.named(name);
        Optional<Material> found = conditions.stream()
                .filter(material -> material.condition() == condition)
                .findFirst();
        if (condition == Condition.SOAKED) {
            found = found.or(() ->
                    conditions.stream().filter(Material::soaks).findFirst().map(Materials::soaked));
        }
        return found.orElseThrow(() -> refusal(
                layer,
                Problem.NO_SUCH_CONDITION,
                Problem.LAYER_NO_SUCH_CONDITION,
                condition,
                name,
                conditions.stream().map(Material::condition).toList()));
    }

    private static InvalidInputException unknown(String typed, List<String> words, int layer) {
        return Loaded.TABLE
                .suggest(words)
                .map(near ->
                        refusal(layer, Problem.UNKNOWN_MATERIAL_NEAR, Problem.LAYER_UNKNOWN_MATERIAL_NEAR, typed, near))
                .orElseGet(() -> refusal(layer, Problem.UNKNOWN_MATERIAL, Problem.LAYER_UNKNOWN_MATERIAL, typed));
    }

    private static InvalidInputException refusal(int layer, Problem alone, Problem inLayer, Object... arguments) {
        return layer == 0
                ? InvalidInputException.of(alone, arguments)
                : InvalidInputException.atItem(layer, inLayer, arguments);
    }
}
