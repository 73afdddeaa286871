package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.insulation.Condition;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.office.sharing.living.Translator.Table;
import org.snugsheet.office.words.Language;

/**
 * The steps of flat layers one behind the other: each is its thickness divided by what its material conducts. The figures of all materials stand
 * on the page, by the names that the document’s language has for them and those that were typed when the copy was made. A gap of air, which
 * conducts the more the wider it is, needs Snugsheet itself.
 */
final class LayerSteps {

    private static final int MOST = 50;

    private final Desk desk;
    private final Language language;

    private LayerSteps(Desk desk) {
        this.desk = desk;
        this.language = desk.language();
    }

    /**
     * The table of one R-value.
     *
     * @param options the unit, and the surfaces inside and outside; what was left out is empty
     */
    static Optional<Table> of(Desk desk, CallSteps.Given call, List<String> options) {
        return new LayerSteps(desk).table(call, options);
    }

    private Optional<Table> table(CallSteps.Given call, List<String> options) {
        Optional<Double> unit = unit(options.get(0));
        if (unit.isEmpty() || call.at(0).isEmpty() || call.at(1).isEmpty()) {
            return Optional.empty();
        }
        List<Object> thick = values(call.beforeAt(0));
        List<Object> stuff = values(call.beforeAt(1));
        if (thick.size() != stuff.size()
                || stuff.size() > MOST
                || !stuff.stream().allMatch(this::isListed)) {
            return Optional.empty();
        }
        Optional<List<String>> thicknesses = desk.cells(call.at(0), thick.size());
        Optional<List<String>> materials = desk.cells(call.at(1), stuff.size());
        if (thicknesses.isEmpty()
                || materials.isEmpty()
                || thicknesses.get().size() != materials.get().size()) {
            return Optional.empty();
        }
        Block figures = desk.block("materials", this::figures);
        Block more = desk.block("materials " + call.at(1), () -> typed(stuff));
        Block block = new Block(
                desk.page(),
                desk.title(LivingWords.LAYERS_TITLE, Desk.shown(call.at(1))),
                thicknesses.get().size());
        block.later("trouble", language.words(LivingWords.TROUBLE));
        block.later("sum", language.words(LivingWords.RESISTANCE));
        column(block, "thick", LivingWords.THICKNESS, thicknesses.get());
        column(block, "stuff", LivingWords.MATERIAL, materials.get());
        String name = "UPPER(TRIM([stuff.]))";
        block.column(
                "lambda",
                language.words(LivingWords.CONDUCTS),
                "=IF(ISNUMBER([stuff.]);IF([stuff.]>0;[stuff.];NA());" + found(name, figures, found(name, more, "NA()"))
                        + ")");
        block.column(
                "r",
                language.words(LivingWords.LAYER_RESISTANCE),
                "=IF(AND(LEN([thick.])=0;LEN([stuff.])=0);0;IF(ISNUMBER([thick.]);IF([thick.]>0;[thick.]/1000/[lambda.];NA());NA()))");
        StringBuilder surfaces = new StringBuilder();
        for (int i = 1; i < options.size(); i++) {
            String given = options.get(i);
            if (!given.isEmpty()) {
                block.value(
                        "surface" + i,
                        language.words(LivingWords.SURFACE),
                        "=IF(LEN(" + given + ")=0;0;IF(ISNUMBER(" + given + ");IF(" + given + ">=0;" + given + "*"
                                + unit.get() + ";NA());NA()))");
                surfaces.append("+[surface").append(i).append(']');
            }
        }
        block.write("sum", "=IF(SUM([r])" + surfaces + ">0;(SUM([r])" + surfaces + ")/" + unit.get() + ";NA())");
        block.write(
                "trouble", "=IF(ISERROR([sum]);" + Formulas.text(language.words(LivingWords.LAYER_UNKNOWN)) + ";\"\")");
        return Optional.of(block.table("sum"));
    }

    private void column(Block block, String name, LivingWords said, List<String> cells) {
        block.column(
                name, language.words(said), line -> "=IF(LEN(" + cells.get(line) + ")=0;\"\";" + cells.get(line) + ")");
    }

    private static String found(String name, Block list, String otherwise) {
        return "IF(" + TypedSteps.isListed(name, list.at("name")) + ";INDEX(" + list.at("lambda") + ";MATCH(" + name
                + ";" + list.at("name") + ";0));" + otherwise + ")";
    }

    /** How many m²·K/W one of the unit is; empty if the unit is not written in the formula. */
    private static Optional<Double> unit(String given) {
        if (given.isEmpty()) {
            return Optional.of(1.0);
        }
        try {
            return given.matches("\"[^\"]+\"")
                    ? Optional.of(ThermalResistance.of(1, Unit.parse(given.substring(1, given.length() - 1)))
                            .squareMeterKelvinsPerWatt())
                    : Optional.empty();
        } catch (InvalidInputException unknown) {
            return Optional.empty();
        }
    }

    private List<Object> values(String formula) {
        List<Object> values = new ArrayList<>();
        for (Object[] row : desk.answer(formula)) {
            values.addAll(List.of(row));
        }
        return values;
    }

    private boolean isListed(Object typed) {
        return typed instanceof Double
                || (typed instanceof String text
                        && (text.isEmpty() || conducts(text).isPresent()));
    }

    /** What a material conducts by its name; nothing for a gap of air, which conducts the more the wider it is. */
    private static Optional<Double> conducts(String name) {
        try {
            double thin = conducts(name, 5);
            return Double.compare(thin, conducts(name, 50)) == 0 ? Optional.of(thin) : Optional.empty();
        } catch (InvalidInputException unknown) {
            return Optional.empty();
        }
    }

    private static double conducts(String name, double millimeters) {
        return Layers.NONE
                .with(millimeters, name)
                .fromInside()
                .get(0)
                .conductivity()
                .wattsPerMeterKelvin();
    }

    private Block figures() {
        Map<String, Double> all = new LinkedHashMap<>();
        for (Material material : Materials.all()) {
            String condition = material.condition() == Condition.DRY
                    ? ""
                    : material.condition().english() + " ";
            for (String name : List.of(material.name(), Materials.nameIn(material, language.locale()))) {
                conducts(condition + name).ifPresent(lambda -> all.putIfAbsent(capitals(condition + name), lambda));
            }
        }
        return list(all);
    }

    private Block typed(List<Object> stuff) {
        Map<String, Double> all = new LinkedHashMap<>();
        for (Object one : stuff) {
            if (one instanceof String text && !text.isEmpty()) {
                conducts(text).ifPresent(lambda -> all.putIfAbsent(capitals(text), lambda));
            }
        }
        all.putIfAbsent("-", 0.0);
        return list(all);
    }

    private Block list(Map<String, Double> all) {
        List<String> names = List.copyOf(all.keySet());
        List<Double> figures = List.copyOf(all.values());
        Block block = new Block(desk.page(), language.words(LivingWords.MATERIALS_TITLE), names.size());
        block.column("name", language.words(LivingWords.MATERIAL), names::get);
        block.open("lambda", language.words(LivingWords.CONDUCTS));
        for (int line = 0; line < figures.size(); line++) {
            block.constant("lambda", line, figures.get(line));
        }
        return block;
    }

    private static String capitals(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }
}
