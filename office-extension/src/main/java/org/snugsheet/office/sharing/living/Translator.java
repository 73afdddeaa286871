package org.snugsheet.office.sharing.living;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.declare.FunctionDeclaration;
import org.snugsheet.office.functions.FunctionIndex;

/** Turns formulas that call our functions into such that do without, with steps on a page. */
public final class Translator {

    private static final Pattern ROWS = Pattern.compile("ROW\\(\\$A\\$(\\d+):\\$A\\$(\\d+)\\)");
    private static final Pattern COLUMNS = Pattern.compile("COLUMN\\(\\$([A-Z])\\$1:\\$([A-Z])\\$1\\)");

    /**
     * A formula that does without our functions.
     *
     * @param formula the formula
     * @param keeps whether some of it stays as it was on the day of the copy
     */
    public record Living(String formula, boolean keeps) {}

    /** A table that stands in for a call: where it is on the page of the steps. */
    record Table(int column, int row, int columns, int rows) {}

    private final StepsPage page;
    private final CallSteps steps;

    /**
     * For one document.
     *
     * @param page the page of the steps
     * @param seen the document
     * @param reads how many cells may be read one by one at most
     * @param language the language of the document
     */
    public Translator(StepsPage page, Seen seen, int reads, org.snugsheet.office.words.Language language) {
        this.page = page;
        this.steps = new CallSteps(page, seen, reads, language);
    }

    /**
     * The cells that a formula is nothing but the name of.
     *
     * @param formula without its equals sign; it names its sheet
     * @return the cells; empty if it is something else
     */
    public static Optional<Seen.Cells> place(String formula) {
        return Formulas.place(formula, "");
    }

    /**
     * Translates a formula.
     *
     * @param sheet the name of the sheet it is on
     * @param formula the formula, with its equals sign
     * @param isArray whether it is an array formula
     * @return the other formula; empty if nothing of it can be translated
     */
    public Optional<Living> translate(String sheet, String formula, boolean isArray) {
        if (FunctionIndex.calledBy(formula).stream().noneMatch(function -> CallSteps.knows(function.name()))) {
            return Optional.empty();
        }
        Attempt attempt = new Attempt(sheet);
        try {
            String living = attempt.translated(formula.substring(1), !isArray);
            return attempt.translated > 0 ? Optional.of(new Living("=" + living, attempt.kept)) : Optional.empty();
        } catch (UntranslatableException impossible) {
            return Optional.empty();
        }
    }

    /** One formula that is being translated. */
    private final class Attempt {

        private final String sheet;
        private int translated;
        private boolean kept;

        Attempt(String sheet) {
            this.sheet = sheet;
        }

        /** Translates a formula, or a part of one; a call that is all of a single cell’s formula shows one cell of its answer. */
        String translated(String formula, boolean isWhole) throws UntranslatableException {
            StringBuilder living = new StringBuilder();
            int at = 0;
            for (Formulas.Call call : Formulas.calls(formula)) {
                living.append(formula, at, call.from());
                boolean isAll = isWhole && call.from() == 0 && call.to() == formula.length();
                living.append(other(call, formula.substring(call.from(), call.to()), isAll));
                at = call.to();
            }
            return living.append(formula.substring(at)).toString();
        }

        private String other(Formulas.Call call, String text, boolean isWhole) throws UntranslatableException {
            Optional<String> ours = ours(call.name());
            if (ours.isPresent()) {
                List<String> arguments = arguments(call);
                Optional<String> inline = InlineSteps.of(ours.get(), arguments);
                if (inline.isPresent()) {
                    translated++;
                    return inline.get();
                }
                Table table = table(ours.get(), call, text, arguments);
                return isWhole ? first(table) : whole(table);
            }
            if (call.name().equalsIgnoreCase("INDEX")) {
                Optional<String> part = part(call);
                if (part.isPresent()) {
                    return part.get();
                }
            }
            List<String> arguments = new ArrayList<>();
            for (String argument : call.arguments()) {
                arguments.add(translated(argument, false));
            }
            return call.name() + "(" + String.join(";", arguments) + ")";
        }

        /** A part of a table that is picked by the numbers of rows and columns. */
        private Optional<String> part(Formulas.Call index) throws UntranslatableException {
            List<Formulas.Call> inner = Formulas.calls(index.argument(0));
            Matcher rows = ROWS.matcher(index.argument(1));
            Matcher columns = COLUMNS.matcher(index.argument(2));
            if (inner.size() != 1
                    || ours(inner.get(0).name()).isEmpty()
                    || inner.get(0).to() - inner.get(0).from()
                            != index.argument(0).length()
                    || !rows.matches()
                    || !columns.matches()) {
                return Optional.empty();
            }
            Table table =
                    table(ours(inner.get(0).name()).get(), inner.get(0), index.argument(0), arguments(inner.get(0)));
            int row = Integer.parseInt(rows.group(1)) - 1;
            int column = columns.group(1).charAt(0) - 'A';
            return Optional.of(page.fromElsewhere(StepsPage.address(table.column() + column, table.row() + row) + ":"
                    + StepsPage.address(
                            table.column() + columns.group(2).charAt(0) - 'A',
                            table.row() + Integer.parseInt(rows.group(2)) - 1)));
        }

        private List<String> arguments(Formulas.Call call) throws UntranslatableException {
            List<String> here = new ArrayList<>();
            for (String argument : call.arguments()) {
                here.add(translated(argument, false).strip());
            }
            return here;
        }

        private Table table(String name, Formulas.Call call, String text, List<String> here)
                throws UntranslatableException {
            if (Formulas.dependsOnPlace(text)) {
                throw new UntranslatableException();
            }
            CallSteps.Given given = new CallSteps.Given(
                    name,
                    here.stream().map(one -> Formulas.fromElsewhere(one, sheet)).toList(),
                    call.arguments().stream()
                            .map(one -> Formulas.fromElsewhere(one.strip(), sheet))
                            .toList());
            Optional<Table> made = steps.of(given);
            if (made.isPresent()) {
                translated++;
                return made.get();
            }
            CallSteps.Kept stays = steps.keep(given, Formulas.fromElsewhere(text, sheet));
            if (stays.isGuarded() || CallSteps.leavesTheRest(name)) {
                translated++;
            }
            kept |= !stays.isGuarded();
            return stays.table();
        }

        /** A table in a single cell shows its first. */
        private String first(Table table) {
            return page.fromElsewhere(StepsPage.address(table.column(), table.row()));
        }

        private String whole(Table table) {
            String first = StepsPage.address(table.column(), table.row());
            return page.fromElsewhere(
                    table.rows() * table.columns() == 1
                            ? first
                            : first + ":"
                                    + StepsPage.address(
                                            table.column() + table.columns() - 1, table.row() + table.rows() - 1));
        }
    }

    private static Optional<String> ours(String name) {
        return FunctionIndex.calledBy(name + "(1)").stream()
                .map(FunctionDeclaration::name)
                .findFirst();
    }
}
