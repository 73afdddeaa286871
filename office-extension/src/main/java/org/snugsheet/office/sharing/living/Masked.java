package org.snugsheet.office.sharing.living;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column of cells that show other cells as long as something holds, and nothing otherwise: readings that a ranking trusts, say. Where it holds
 * they are the same numbers, so what was worked out from the other cells need not be worked out again.
 *
 * @param condition what must hold, as formulas call it
 * @param source the cells that are shown
 */
record Masked(String condition, Seen.Cells source) {

    private static final Pattern SHOWN = Pattern.compile("=IF\\(([^\"();]+);(\\$?[A-Z]{1,3}\\$?[0-9]{1,7});\"\"\\)");

    /**
     * What a column of formulas shows.
     *
     * @param formulas the formula of each cell
     * @param sheet the sheet they are on
     * @param sources the formulas of the cells that are shown; one without is blank, or may become so, and a blank is shown as a zero
     */
    static Optional<Masked> of(
            List<String> formulas, String sheet, java.util.function.Function<Seen.Cells, List<String>> sources) {
        String condition = "";
        Optional<Seen.Cells> first = Optional.empty();
        for (int line = 0; line < formulas.size(); line++) {
            Matcher shown = SHOWN.matcher(formulas.get(line));
            if (!shown.matches() || (line > 0 && !condition.equals(shown.group(1)))) {
                return Optional.empty();
            }
            condition = shown.group(1);
            Seen.Cells cell = Formulas.place(shown.group(2), sheet).orElseThrow();
            first = line == 0 ? Optional.of(cell) : first;
            Seen.Cells top = first.orElseThrow();
            if (cell.left() != top.left() || cell.top() != top.top() + line) {
                return Optional.empty();
            }
        }
        String holds = Formulas.fromElsewhere(condition, sheet);
        return first.map(top -> new Seen.Cells(sheet, top.left(), top.top(), 1, formulas.size()))
                .filter(cells -> sources.apply(cells).stream().allMatch(formula -> formula.startsWith("=")))
                .map(cells -> new Masked(holds, cells));
    }

    /** A formula for a value of the jar, with what stands in for it where nothing is shown. */
    String where(String shown, String otherwise, String error) {
        return "IF(ISERROR(" + condition + ");" + error + ";IF(" + condition + ";" + shown + ";" + otherwise + "))";
    }
}
