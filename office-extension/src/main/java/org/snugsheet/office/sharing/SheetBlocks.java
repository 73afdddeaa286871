package org.snugsheet.office.sharing;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.XCellRange;
import java.util.HashMap;
import java.util.Map;
import org.snugsheet.office.uno.Uno;

/**
 * The contents of the cells of a sheet, read in blocks. The office tells each change of a document to every cell and range that was
 * ever handed out and is still held, and Java holds them for long: thousands of cells asked for one by one make each later change slow.
 */
final class SheetBlocks {

    private static final int COLUMNS = 16;
    private static final int ROWS = 512;

    private final XSpreadsheet sheet;
    private final int lastColumn;
    private final int lastRow;
    private final Map<Notes.CellKey, Block> blocks = new HashMap<>();

    SheetBlocks(XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        this.sheet = sheet;
        Area used = FollowedCells.used(sheet);
        this.lastColumn = used.right();
        this.lastRow = used.bottom();
    }

    private static final class Block {

        private final Object[][] values;
        private final String[][] formulas;

        Block(XCellRange range) {
            values = Uno.as(XCellRangeData.class, range).getDataArray();
            formulas = Uno.as(XCellRangeFormula.class, range).getFormulaArray();
        }
    }

    /** The value of a cell: a number, a text, or another object for an error. */
    Object value(int column, int row) throws com.sun.star.uno.Exception {
        return isUsed(column, row) ? block(column, row).values[row % ROWS][column % COLUMNS] : "";
    }

    /** What was written into a cell. */
    String formula(int column, int row) throws com.sun.star.uno.Exception {
        return isUsed(column, row) ? block(column, row).formulas[row % ROWS][column % COLUMNS] : "";
    }

    /** The values of some cells. */
    Object[][] values(Area area) throws com.sun.star.uno.Exception {
        Object[][] values = new Object[area.rows()][area.columns()];
        for (int row = 0; row < area.rows(); row++) {
            for (int column = 0; column < area.columns(); column++) {
                values[row][column] = value(area.left() + column, area.top() + row);
            }
        }
        return values;
    }

    /** What was written into some cells. */
    String[][] formulas(Area area) throws com.sun.star.uno.Exception {
        String[][] formulas = new String[area.rows()][area.columns()];
        for (int row = 0; row < area.rows(); row++) {
            for (int column = 0; column < area.columns(); column++) {
                formulas[row][column] = formula(area.left() + column, area.top() + row);
            }
        }
        return formulas;
    }

    private boolean isUsed(int column, int row) {
        return column <= lastColumn && row <= lastRow;
    }

    private Block block(int column, int row) throws com.sun.star.uno.Exception {
        Notes.CellKey key = new Notes.CellKey(column / COLUMNS, row / ROWS);
        Block known = blocks.get(key);
        if (known != null) {
            return known;
        }
        int left = key.column() * COLUMNS;
        int top = key.row() * ROWS;
        XCellRange range = sheet.getCellRangeByPosition(
                left, top, Math.min(lastColumn, left + COLUMNS - 1), Math.min(lastRow, top + ROWS - 1));
        Block read = new Block(range);
        blocks.put(key, read);
        return read;
    }
}
