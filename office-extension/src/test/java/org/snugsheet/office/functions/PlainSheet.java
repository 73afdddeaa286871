package org.snugsheet.office.functions;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.engine.Finding;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.harness.CellResult;
import org.snugsheet.office.harness.ErrorCodes;
import org.snugsheet.office.words.Language;

/**
 * A sheet without an office: formulas with our functions run in plain Java, which takes microseconds. What the functions are given is
 * what an office would give them (see {@link PlainCall}); that an office does is what {@code CatalogueIT} and {@code CellsIT} show.
 *
 * <p>A formula is calculated when it is typed, and not again when a cell that it reads changes.
 */
public final class PlainSheet {

    private final Map<String, CellResult> cells = new HashMap<>();
    private final Language language;

    /** An empty sheet of an English document. */
    public PlainSheet() {
        this(Language.ENGLISH);
    }

    /** An empty sheet of a document in a language. */
    public PlainSheet(Language language) {
        this.language = language;
    }

    /** Puts a number into a cell. */
    public PlainSheet number(String address, double value) {
        cells.put(address, result(value));
        return this;
    }

    /** Puts a text into a cell; an empty one clears it. */
    public PlainSheet text(String address, String value) {
        cells.put(address, value.isEmpty() ? new CellResult.Blank() : new CellResult.OfText(value));
        return this;
    }

    /** Fills a column downwards from a cell. */
    public PlainSheet numbersDown(String top, double... values) {
        CellAddress first = CellAddress.of(top);
        for (int i = 0; i < values.length; i++) {
            number(first.plus(i, 0).toString(), values[i]);
        }
        return this;
    }

    /** Puts a formula into a cell, in English with semicolons; of a table the cell shows the first head. */
    public PlainSheet formula(String address, String formula) {
        cells.put(address, result(formula));
        return this;
    }

    /** Puts one array formula into a whole range, as {@code A1:C9}; cells beyond its table are not available. */
    public PlainSheet arrayFormula(String range, String formula) {
        Object answer = value(formula);
        Object[][] table = answer instanceof Object[][] rows ? rows : new Object[][] {{answer}};
        CellAddress first = CellAddress.of(range.substring(0, range.indexOf(':')));
        CellAddress last = CellAddress.of(range.substring(range.indexOf(':') + 1));
        for (int row = 0; row <= last.row() - first.row(); row++) {
            for (int column = 0; column <= last.column() - first.column(); column++) {
                boolean inside = row < table.length && column < table[row].length;
                cells.put(
                        first.plus(row, column).toString(),
                        inside ? result(table[row][column]) : new CellResult.OfError(ErrorCodes.NOT_AVAILABLE, "#N/A"));
            }
        }
        return this;
    }

    /** What a formula would show in a cell. */
    public CellResult result(String formula) {
        Object answer = value(formula);
        return result(answer instanceof Object[][] table ? table[0][0] : answer);
    }

    /** The table that a formula answers with, whole; of a refused one a single cell with the error. */
    public List<List<CellResult>> table(String formula) {
        Object answer = value(formula);
        if (answer instanceof PlainCall.Failed) {
            return List.of(List.of(result(answer)));
        }
        if (!(answer instanceof Object[][] table)) {
            throw new AssertionError("No table: " + formula);
        }
        List<List<CellResult>> rows = new ArrayList<>();
        for (Object[] row : table) {
            List<CellResult> line = new ArrayList<>();
            for (Object cell : row) {
                line.add(result(cell));
            }
            rows.add(List.copyOf(line));
        }
        return List.copyOf(rows);
    }

    /** Why a formula is refused as Err:502. */
    public Finding refusal(String formula) {
        if (!(value(formula) instanceof PlainCall.Failed failed) || failed.error() != ErrorCodes.INVALID_ARGUMENT) {
            throw new AssertionError("Not refused: " + formula);
        }
        return Optional.ofNullable(failed.getCause())
                .flatMap(Answer::refusal)
                .orElseThrow()
                .finding();
    }

    /** What a cell holds. */
    public CellResult at(String address) {
        return cells.getOrDefault(address, new CellResult.Blank());
    }

    /** What the cells of a range hold, row by row. */
    public List<List<CellResult>> all(String range) {
        CellAddress first = CellAddress.of(range.substring(0, range.indexOf(':')));
        CellAddress last = CellAddress.of(range.substring(range.indexOf(':') + 1));
        List<List<CellResult>> rows = new ArrayList<>();
        for (int row = 0; row <= last.row() - first.row(); row++) {
            List<CellResult> line = new ArrayList<>();
            for (int column = 0; column <= last.column() - first.column(); column++) {
                line.add(at(first.plus(row, column).toString()));
            }
            rows.add(List.copyOf(line));
        }
        return List.copyOf(rows);
    }

    /** What the formula answers: a number, a text, a table, or the error it ends with. */
    private Object value(String formula) {
        try {
            return new PlainFormula(formula, this, language).value();
        } catch (PlainCall.Failed failed) {
            return failed;
        }
    }

    private static CellResult result(Object answer) {
        if (answer instanceof PlainCall.Failed failed) {
            return new CellResult.OfError(failed.error(), "Err:" + failed.error());
        }
        return answer instanceof Number number
                ? new CellResult.OfNumber(number.doubleValue(), number.toString())
                : new CellResult.OfText(answer.toString());
    }
}
