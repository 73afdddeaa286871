package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.office.words.Language;

/** What all calls of a document share: the page, the blocks that are on it, and what is seen of the document. */
final class Desk {

    private final StepsPage page;
    private final Seen seen;
    private final Language language;
    private final Map<String, Block> blocks = new HashMap<>();

    Desk(StepsPage page, Seen seen, Language language) {
        this.page = page;
        this.seen = seen;
        this.language = language;
    }

    StepsPage page() {
        return page;
    }

    Language language() {
        return language;
    }

    Object[][] answer(String formula) {
        return seen.answer(formula);
    }

    /** What a call answers now. */
    Object[][] answer(CallSteps.Given call) {
        return seen.answer(call.name() + "(" + String.join(";", call.before()) + ")");
    }

    /** A block that is made once, whoever asks for it. */
    Block block(String key, Supplier<Block> made) {
        Block known = blocks.get(key);
        if (known == null) {
            known = made.get();
            blocks.put(key, known);
        }
        return known;
    }

    /** Cells of the arguments of a call as they were, from one to before another. */
    List<Block> guards(CallSteps.Given call, int from, int to) {
        List<Block> guards = new ArrayList<>();
        for (int i = from; i < Math.min(to, call.living().size()); i++) {
            String living = call.at(i);
            String before = call.beforeAt(i);
            if (!living.isEmpty() && !isConstant(living)) {
                guards.add(block("guard " + whole(living), () -> guard(living, before)));
            }
        }
        return guards;
    }

    private static boolean isConstant(String argument) {
        return argument.matches("-?[0-9.]+|\"[^\"]*\"");
    }

    private Block guard(String living, String before) {
        Object[][] then = seen.answer(before);
        List<String> now = new ArrayList<>();
        List<Object> values = new ArrayList<>();
        boolean isOne = then.length == 1 && then[0].length == 1;
        for (int row = 0; row < then.length; row++) {
            for (int column = 0; column < then[row].length; column++) {
                now.add(isOne ? "(" + living + ")" : "INDEX(" + living + ";" + (row + 1) + ";" + (column + 1) + ")");
                values.add(then[row][column]);
            }
        }
        return KeptSteps.guard(page, title(LivingWords.KEPT_TITLE, shown(living)), now, values, language);
    }

    /** Surroundings that were read as a column, or are to be fitted, need more than these steps. */
    boolean isOneTemperature(String around) {
        Object[][] now = seen.answer(around);
        return now.length == 1
                && now[0].length == 1
                && !(now[0][0] instanceof String text && Surroundings.isToBeFitted(new Entry.Text(text)));
    }

    /** What may be one cell today and several tomorrow. */
    String single(String around) {
        if (place(around).isPresent() || isConstant(around)) {
            return around;
        }
        return "IF(IFERROR(ROWS(" + around + ")*COLUMNS(" + around + ");1)>1;" + TypedSteps.UNREADABLE + ";" + around
                + ")";
    }

    /** The same cells are called by one name, whatever dollar signs stand in it. */
    String whole(String argument) {
        return place(argument).map(Seen.Cells::whole).orElse(argument);
    }

    Optional<Seen.Cells> place(String argument) {
        Optional<Seen.Cells> place = Formulas.place(argument, "");
        return place.isPresent() ? place : seen.named(argument);
    }

    /** The cells of an argument, one by one; something worked out has as many as are expected. */
    Optional<List<String>> cells(String argument, int expected) {
        Optional<Seen.Cells> place = place(argument);
        if (place.isPresent()) {
            return place.filter(Seen.Cells::isLine).map(Seen.Cells::line);
        }
        if (expected == 0 || argument.isEmpty()) {
            return Optional.empty();
        }
        List<String> cells = new ArrayList<>();
        for (int i = 1; i <= expected; i++) {
            cells.add(expected == 1 ? "(" + argument + ")" : "INDEX(" + argument + ";" + i + ";1)");
        }
        return Optional.of(cells);
    }

    /** The title of a block that is about something, a jar say. */
    String title(Phrase phrase, String what) {
        String title = language.say(phrase, what);
        page.about(title, what);
        return title;
    }

    /** What a column shows, if all of its cells show others as long as the same holds. */
    Optional<Masked> masked(Seen.Cells column) {
        List<String> formulas = seen.formulas(column);
        return formulas.isEmpty() ? Optional.empty() : Masked.of(formulas, column.sheet(), seen::formulas);
    }

    static String shown(String argument) {
        return argument.replace("$", "");
    }
}
