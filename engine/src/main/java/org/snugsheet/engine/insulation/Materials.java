package org.snugsheet.engine.insulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.table.Names;

/**
 * The materials known here, read from the file {@code materials.csv} beside this class, which says where each figure comes
 * from and how they were merged.
 *
 * <pre>{@code
 * Materials.find("Wool").typical();
 * Materials.find("damp sand");                    // the condition may stand with the name
 * Materials.find("sand", Condition.SOAKED);
 * Materials.find("fleese");                       // refused: did you mean “fleece”?
 * }</pre>
 */
public final class Materials {

    /** Read once, when first asked for; the class loader sees to it that threads do not meet. */
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
     * Finds a material by name. Case, blanks, plural and the order of words do not matter, and other usual names will do, in English, Spanish,
     * French and German.
     *
     * @param text its name, with or without a condition, such as {@code wool}, {@code Wet Sand}; dry if it has none
     * @return the material
     * @throws Refusal if it is unknown, with a suggestion where one is near, or is not known in that condition
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
     * @throws Refusal if it is unknown, with a suggestion where one is near, or is not known in that condition
     */
    public static Material find(String name, Condition condition) {
        return find(name, Names.words(name), condition, 0);
    }

    /**
     * The typical conductivity of a material.
     *
     * @param text its name, as in {@link #find(String)}
     * @return its conductivity
     * @throws Refusal as {@link #find(String)} does
     */
    public static Conductivity conductivityOf(String text) {
        return find(text).typical();
    }

    /** As {@link #find(String)}; a refusal names the layer unless that is 0. */
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
     * What a material is called in a language.
     *
     * @param material the material
     * @param language the language
     * @return its name there; the English one where there is none
     */
    public static String nameIn(Material material, Locale language) {
        return Loaded.TABLE.shown().shown(material.name(), language).orElse(material.name());
    }

    private static Material find(String text, List<String> words, Condition condition, int layer) {
        MaterialTable table = Loaded.TABLE;
        String name = table.find(words).orElseThrow(() -> unknown(text.strip(), words, layer));
        List<Material> conditions = table.named(name);
        return conditions.stream()
                .filter(material -> material.condition() == condition)
                .findFirst()
                .orElseThrow(() -> refusal(
                        layer,
                        Trouble.NO_SUCH_CONDITION,
                        Trouble.LAYER_NO_SUCH_CONDITION,
                        condition,
                        name,
                        conditions.stream().map(Material::condition).toList()));
    }

    private static Refusal unknown(String typed, List<String> words, int layer) {
        return Loaded.TABLE
                .suggest(words)
                .map(near ->
                        refusal(layer, Trouble.UNKNOWN_MATERIAL_NEAR, Trouble.LAYER_UNKNOWN_MATERIAL_NEAR, typed, near))
                .orElseGet(() -> refusal(layer, Trouble.UNKNOWN_MATERIAL, Trouble.LAYER_UNKNOWN_MATERIAL, typed));
    }

    private static Refusal refusal(int layer, Trouble alone, Trouble inLayer, Object... arguments) {
        return layer == 0 ? Refusal.of(alone, arguments) : Refusal.atItem(layer, inLayer, arguments);
    }
}
