package org.snugsheet.office.page;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XCellRange;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/**
 * What the cells of a page are to hold, until it is written in blocks as large as they can be: whoever fills a page cell by cell waits for
 * the office at each of them.
 */
final class WaitingCells {

    /** Blank cells within a block are cheap, but not for nothing. */
    private static final int MOST_CELLS = 20_000;

    private static final int SIDE_BY_SIDE = 4;

    private static final Comparator<CellArea> ROW_BY_ROW =
            Comparator.comparingInt(CellArea::top).thenComparingInt(CellArea::left);

    private final XSpreadsheet sheet;
    private final SortedMap<CellArea, Object> values = new TreeMap<>(ROW_BY_ROW);
    private final SortedMap<CellArea, String> formulas = new TreeMap<>(ROW_BY_ROW);
    private final Map<CellArea, String> tables = new LinkedHashMap<>();
    private final List<CellArea> written = new ArrayList<>();

    WaitingCells(XSpreadsheet sheet) {
        this.sheet = sheet;
    }

    void value(CellArea cell, Object value) {
        if (formulas.containsKey(cell) || isInTable(cell)) {
            throw taken(cell);
        }
        values.put(cell, value);
    }

    void formula(CellArea cells, String formula) {
        for (int row = cells.top(); row <= cells.bottom(); row++) {
            for (int column = cells.left(); column <= cells.right(); column++) {
                CellArea cell = CellArea.cell(column, row);
                // A label may be left blank for a formula.
                boolean isFree = "".equals(values.getOrDefault(cell, "")) && !isInTable(cell);
                if (!isFree || !formulas.getOrDefault(cell, formula).equals(formula)) {
                    throw taken(cell);
                }
                values.remove(cell);
                formulas.put(cell, formula);
            }
        }
    }

    void table(CellArea cells, String formula) {
        if (isInTable(cells)
                || formulas.keySet().stream().anyMatch(cells::meets)
                || values.keySet().stream().anyMatch(cells::meets)) {
            throw taken(cells);
        }
        tables.put(cells, formula);
    }

    private boolean isInTable(CellArea cells) {
        return tables.keySet().stream().anyMatch(cells::meets);
    }

    /** Two parts of a page that claim the same cell are a fault of ours, which would otherwise show as wrong numbers. */
    private static IllegalStateException taken(CellArea cells) {
        return new IllegalStateException(
                "two contents for " + CellName.of(cells.left(), cells.top()) + ", or for cells from there on");
    }

    /** Tells it of cells that are written by others, which must not be blanked. */
    void isWritten(CellArea cells) {
        written.add(cells);
    }

    /** Tells it that these cells were repeated below themselves, so often in the end. */
    void repeatBelow(CellArea first, int times) {
        for (CellArea cells : List.copyOf(written)) {
            for (int time = 1; time < times && cells.meets(first); time++) {
                written.add(cells.lower(time * first.rows()));
            }
        }
    }

    /** The row below all of them. */
    int freeRow() {
        return 1
                + Stream.of(values.keySet(), formulas.keySet(), tables.keySet(), written)
                        .flatMap(Collection::stream)
                        .mapToInt(CellArea::bottom)
                        .max()
                        .orElse(-1);
    }

    void writeValues() throws com.sun.star.uno.Exception {
        Map<CellArea, Object> all = new HashMap<>(values);
        for (CellArea block : blocks(values)) {
            Uno.as(XCellRangeData.class, range(block))
                    .setDataArray(content(block, all, "", new Object[block.rows()][block.columns()]));
        }
        written.addAll(values.keySet());
        values.clear();
    }

    void writeFormulas() throws com.sun.star.uno.Exception {
        written.addAll(tables.keySet());
        Map<CellArea, String> all = new HashMap<>(formulas);
        for (CellArea block : blocks(formulas)) {
            Uno.as(XCellRangeFormula.class, range(block))
                    .setFormulaArray(content(block, all, "", new String[block.rows()][block.columns()]));
        }
        written.addAll(formulas.keySet());
        formulas.clear();
        for (Map.Entry<CellArea, String> table : tables.entrySet()) {
            Uno.as(XArrayFormulaRange.class, range(table.getKey())).setArrayFormula(table.getValue());
        }
        tables.clear();
    }

    private XCellRange range(CellArea area) throws com.sun.star.uno.Exception {
        return sheet.getCellRangeByPosition(area.left(), area.top(), area.right(), area.bottom());
    }

    /** Rectangles that together hold these cells, and no other one that was written; what is blank in them may be written blank. */
    private List<CellArea> blocks(SortedMap<CellArea, ?> cells) {
        List<CellArea> blocks = new ArrayList<>();
        for (CellArea cell : cells.keySet()) {
            int place = blocks.size() - 1;
            // Side by side there are rarely more.
            int first = Math.max(0, blocks.size() - SIDE_BY_SIDE);
            while (place >= first && !isFree(blocks.get(place).with(cell), cells)) {
                place--;
            }
            if (place >= first) {
                blocks.set(place, blocks.get(place).with(cell));
            } else {
                blocks.add(cell);
            }
        }
        return blocks;
    }

    /** Asked for each cell of a page about all others: no stream, which takes several times as long. */
    private boolean isFree(CellArea area, SortedMap<CellArea, ?> cells) {
        if ((long) area.rows() * area.columns() > MOST_CELLS) {
            return false;
        }
        for (CellArea other : written) {
            if (area.meets(other) && !cells.containsKey(other)) {
                return false;
            }
        }
        return true;
    }

    private static <T> T[][] content(CellArea block, Map<CellArea, T> cells, T blank, T[][] rows) {
        for (int row = 0; row < block.rows(); row++) {
            for (int column = 0; column < block.columns(); column++) {
                rows[row][column] = cells.getOrDefault(CellArea.cell(block.left() + column, block.top() + row), blank);
            }
        }
        return rows;
    }
}
