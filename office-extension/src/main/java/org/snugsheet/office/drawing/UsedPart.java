package org.snugsheet.office.drawing;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import java.util.Optional;
import org.snugsheet.office.uno.Uno;

/** The filled part of cells: a selection of whole columns, or of the whole sheet, means what is in them. */
final class UsedPart {

    private static final int FILLED = CellFlags.VALUE | CellFlags.DATETIME | CellFlags.STRING | CellFlags.FORMULA;

    private UsedPart() {}

    /**
     * Cuts cells to what is filled. Columns that are blank on the left stay, because the first one is that of the times, unless
     * the whole sheet is meant.
     *
     * @param sheet their sheet
     * @param cells the cells
     * @return the smallest rectangle with all that is filled; empty if nothing is
     */
    static Optional<CellRangeAddress> of(XSpreadsheet sheet, CellRangeAddress cells) throws com.sun.star.uno.Exception {
        CellRangeAddress[] filled = Uno.as(
                        XCellRangesQuery.class,
                        sheet.getCellRangeByPosition(cells.StartColumn, cells.StartRow, cells.EndColumn, cells.EndRow))
                .queryContentCells((short) FILLED)
                .getRangeAddresses();
        if (filled.length == 0) {
            return Optional.empty();
        }
        CellRangeAddress used = filled[0];
        for (CellRangeAddress part : filled) {
            used.StartColumn = Math.min(used.StartColumn, part.StartColumn);
            used.StartRow = Math.min(used.StartRow, part.StartRow);
            used.EndColumn = Math.max(used.EndColumn, part.EndColumn);
            used.EndRow = Math.max(used.EndRow, part.EndRow);
        }
        if (!isWhole(sheet, cells)) {
            used.StartColumn = cells.StartColumn;
        }
        return Optional.of(used);
    }

    /** Whether cells reach from the first column to the last. */
    private static boolean isWhole(XSpreadsheet sheet, CellRangeAddress cells) {
        return cells.StartColumn == 0
                && cells.EndColumn == Uno.as(XCellRangeAddressable.class, sheet).getRangeAddress().EndColumn;
    }
}
