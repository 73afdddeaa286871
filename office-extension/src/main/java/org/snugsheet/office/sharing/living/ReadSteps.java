package org.snugsheet.office.sharing.living;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.sharing.living.Translator.Table;
import org.snugsheet.office.words.Language;

/** The steps of TEMP.READ: a line for each cell that is read. */
final class ReadSteps {

    private final Block block;
    private final int most;
    private final Map<String, Table> known = new HashMap<>();
    private int used;

    ReadSteps(StepsPage page, int most, Language language) {
        this.most = most;
        this.block = new Block(page, language.words(LivingWords.READ_TITLE), most);
        if (most == 0) {
            return;
        }
        block.open("scale", language.words(LivingWords.SCALE));
        block.open("typedRaw", language.words(LivingWords.TYPED));
        block.open("typedText", language.words(LivingWords.AS_TEXT));
        block.open("typedUnit", language.words(LivingWords.UNIT));
        block.open("typedDigits", language.words(LivingWords.DIGITS));
        block.open("typed", language.words(LivingWords.READ));
        block.open("answer", language.words(LivingWords.ANSWER));
        page.reserve(page.below() + most);
    }

    boolean hasRoom(int more) {
        return used + more <= most;
    }

    Table read(List<String> cells, String scale) {
        String key = scale + "|" + String.join("|", cells);
        Optional<Table> before = Optional.ofNullable(known.get(key));
        if (before.isPresent()) {
            return before.get();
        }
        int first = used;
        for (String cell : cells) {
            int line = used++;
            block.in("scale", line, TypedSteps.scale(scale));
            TypedSteps.line(block, "typed", line, cell);
            String celsius = TypedSteps.celsius("[typed.]", "[typedUnit.]", "[scale.]");
            block.in(
                    "answer",
                    line,
                    "=IF([typed.]=\"\";\"\";IF(OR([typed.]=" + TypedSteps.UNREADABLE + ";[scale.]=\"x\");NA();IF("
                            + celsius
                            + "<-273.15;NA();IF(OR([typedUnit.]=\"\";[typedUnit.]=[scale.]);[typed.];"
                            + TypedSteps.fromCelsius(celsius, "[scale.]") + "))))");
        }
        Table table = new Table(
                block.table("answer", 1).column(), block.table("answer", 1).row() + first, 1, cells.size());
        known.put(key, table);
        return table;
    }
}
