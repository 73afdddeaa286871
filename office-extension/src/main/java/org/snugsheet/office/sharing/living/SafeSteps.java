package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.sharing.living.Translator.Table;
import org.snugsheet.office.words.Language;

/** The steps of PLAN.SAFE: what is to be said of water of a temperature, from a list of the temperatures from which on it is said. */
final class SafeSteps {

    /** From which temperature on the next sentence is said; those that are still said at a limit are left a little behind it. */
    private static final double[] FROM = {0, 15, 37.8000000001, 43.0000000001, 48.85, 51.65, 54.35, 60, 65.5};

    private SafeSteps() {}

    static Optional<Table> of(Desk desk, CallSteps.Given call) {
        String water = call.at(0);
        Optional<List<String>> cells = desk.cells(water, 1);
        if (water.isEmpty() || cells.isEmpty() || cells.get().size() != 1) {
            return Optional.empty();
        }
        Language language = desk.language();
        Block list = desk.block("cautions", () -> cautions(desk));
        String scale = call.at(1).isEmpty() ? "\"\"" : call.at(1);
        Block block = new Block(desk.page(), desk.title(LivingWords.SAFE_TITLE, Desk.shown(water)), 0);
        block.later("sentence", language.words(LivingWords.ANSWER));
        block.value("scale", language.words(LivingWords.SCALE), TypedSteps.scale(scale));
        TypedSteps.value(
                block, "water", LivingWords.TYPED, LivingWords.READ, cells.get().get(0), language);
        block.value(
                "celsius",
                language.words(LivingWords.CELSIUS),
                "=" + TypedSteps.celsius("[water]", "[waterUnit]", "[scale]"));
        block.write(
                "sentence",
                "=IF(AND(ISNUMBER([celsius]);[scale]<>\"x\");IF(AND([celsius]>=0;[celsius]<=100);INDEX("
                        + list.at("said") + ";MATCH([celsius];" + list.at("from") + ";1));NA());NA())");
        return Optional.of(block.table("sentence"));
    }

    private static Block cautions(Desk desk) {
        Language language = desk.language();
        Block list = new Block(desk.page(), language.words(LivingWords.CAUTIONS_TITLE), FROM.length);
        list.open("from", language.words(LivingWords.FROM_ON));
        list.open("said", language.words(LivingWords.ANSWER));
        for (int line = 0; line < FROM.length; line++) {
            Temperature there = new Temperature(FROM[line] + 0.001);
            list.constant("from", line, FROM[line]);
            list.constant(
                    "said",
                    line,
                    SafeStart.cautions(there).stream().map(language::words).collect(Collectors.joining(" ")));
        }
        return list;
    }
}
