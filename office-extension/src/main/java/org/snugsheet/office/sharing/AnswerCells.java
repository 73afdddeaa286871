package org.snugsheet.office.sharing;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XCellRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.snugsheet.office.uno.Uno;

/**
 * Answers to write into the cells of a sheet, block by block: see {@link SheetBlocks} for why. A block that is written loses its notes,
 * so a cell that has one is written alone.
 */
final class AnswerCells {

    private record Cell(int column, int row, Object content, boolean isFormula) {}

    private record Run(List<Cell> cells, boolean isColumn) {}

    private final Set<Notes.CellKey> noted;
    private final List<Cell> alone = new ArrayList<>();
    private final List<Cell> values = new ArrayList<>();
    private final List<Cell> formulas = new ArrayList<>();

    /**
     * For a sheet.
     *
     * @param noted its cells with notes
     */
    AnswerCells(Set<Notes.CellKey> noted) {
        this.noted = noted;
    }

    /** Adds the cells of an answer. */
    void add(Area area, ShownValues answers) {
        for (int row = 0; row < area.rows(); row++) {
            for (int column = 0; column < area.columns(); column++) {
                Object content = answers.content(row, column);
                boolean isFormula = answers.isFormula(row, column);
                Cell cell = new Cell(area.left() + column, area.top() + row, content, isFormula);
                boolean hasLines = content instanceof String text && text.contains("\n");
                if (noted.contains(new Notes.CellKey(cell.column(), cell.row())) || hasLines) {
                    alone.add(cell);
                } else {
                    (isFormula ? formulas : values).add(cell);
                }
            }
        }
    }

    /** Adds a formula of the office. */
    void add(Area cell, String formula) {
        Cell one = new Cell(cell.left(), cell.top(), formula, true);
        (noted.contains(new Notes.CellKey(cell.left(), cell.top())) ? alone : formulas).add(one);
    }

    void writeTo(XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        for (Cell cell : alone) {
            ShownValues.write(sheet.getCellByPosition(cell.column(), cell.row()), cell.content(), cell.isFormula());
        }
        for (Run run : runs(values)) {
            write(sheet, run, false);
        }
        for (Run run : runs(formulas)) {
            write(sheet, run, true);
        }
    }

    /** Down or across, whichever are fewer. */
    private static List<Run> runs(List<Cell> cells) {
        List<Run> down = runs(cells, Cell::column, Cell::row, true);
        List<Run> across = runs(cells, Cell::row, Cell::column, false);
        return down.size() <= across.size() ? down : across;
    }

    private static List<Run> runs(
            List<Cell> cells, ToIntFunction<Cell> line, ToIntFunction<Cell> place, boolean isColumn) {
        List<Cell> sorted = new ArrayList<>(cells);
        sorted.sort(Comparator.comparingInt(line).thenComparingInt(place));
        List<Run> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            boolean ends = i == sorted.size()
                    || line.applyAsInt(sorted.get(i)) != line.applyAsInt(sorted.get(i - 1))
                    || place.applyAsInt(sorted.get(i)) != place.applyAsInt(sorted.get(i - 1)) + 1;
            if (ends) {
                runs.add(new Run(sorted.subList(from, i), isColumn));
                from = i;
            }
        }
        return runs;
    }

    private static void write(XSpreadsheet sheet, Run run, boolean areFormulas) throws com.sun.star.uno.Exception {
        Cell first = run.cells().get(0);
        Cell last = run.cells().get(run.cells().size() - 1);
        XCellRange range = sheet.getCellRangeByPosition(first.column(), first.row(), last.column(), last.row());
        int rows = run.isColumn() ? run.cells().size() : 1;
        int columns = run.isColumn() ? 1 : run.cells().size();
        if (areFormulas) {
            String[][] formulas = new String[rows][columns];
            for (int i = 0; i < run.cells().size(); i++) {
                formulas[run.isColumn() ? i : 0][run.isColumn() ? 0 : i] =
                        String.valueOf(run.cells().get(i).content());
            }
            Uno.as(XCellRangeFormula.class, range).setFormulaArray(formulas);
            return;
        }
        Object[][] values = new Object[rows][columns];
        for (int i = 0; i < run.cells().size(); i++) {
            values[run.isColumn() ? i : 0][run.isColumn() ? 0 : i] =
                    run.cells().get(i).content();
        }
        Uno.as(XCellRangeData.class, range).setDataArray(values);
    }
}
