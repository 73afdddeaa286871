package org.snugsheet.office.sheets;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XMultiPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.CellOrientation;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.util.XMergeable;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.uno.Uno;

/**
 * How the cells of a rectangle look. The office is asked once for all cells that look the same, for each call costs as much as measuring many
 * words; cells that look the same are also merged with as many others.
 */
final class CellLooks {

    private static final double HUNDREDTHS = 100;
    private static final String[] NAMES = {
        "CharHeight", "CharWeight", "HoriJustify", "IsTextWrapped", "ParaIndent", "ShrinkToFit", "Orientation"
    };

    /**
     * How a cell looks; lengths in millimeters.
     *
     * @param group the number of those that look the same
     * @param rows how many are merged with its own, itself included
     * @param columns the same
     */
    record Look(
            int group,
            double points,
            boolean bold,
            CellHoriJustify side,
            boolean wrapped,
            double indent,
            boolean shrinks,
            boolean upward,
            int rows,
            int columns) {

        boolean isMerged() {
            return rows > 1 || columns > 1;
        }
    }

    private final XSpreadsheet page;
    private final CellRangeAddress area;
    private final XIndexAccess groups;
    private final int[][] groupAt;
    private final @Nullable Look[] known;

    private CellLooks(XSpreadsheet page, CellRangeAddress area) throws com.sun.star.uno.Exception {
        this.page = page;
        this.area = area;
        XCellRange cells = page.getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
        this.groups = Uno.as(XUniqueCellFormatRangesSupplier.class, cells).getUniqueCellFormatRanges();
        this.groupAt = new int[area.EndRow - area.StartRow + 1][area.EndColumn - area.StartColumn + 1];
        this.known = new Look[groups.getCount()];
        for (int group = 0; group < known.length; group++) {
            for (CellRangeAddress range :
                    Uno.as(XSheetCellRanges.class, groups.getByIndex(group)).getRangeAddresses()) {
                for (int row = range.StartRow; row <= range.EndRow; row++) {
                    Arrays.fill(
                            groupAt[row - area.StartRow],
                            range.StartColumn - area.StartColumn,
                            range.EndColumn - area.StartColumn + 1,
                            group);
                }
            }
        }
    }

    /** Those of an area of a page. */
    static CellLooks of(XSpreadsheet page, CellRangeAddress area) throws com.sun.star.uno.Exception {
        return new CellLooks(page, area);
    }

    /** That of a cell, counted from the first of the area. */
    Look at(int row, int column) throws com.sun.star.uno.Exception {
        int group = groupAt[row][column];
        Look look = known[group];
        if (look == null) {
            XCell cell = page.getCellByPosition(area.StartColumn + column, area.StartRow + row);
            look = look(group, cell);
            known[group] = look;
        }
        return look;
    }

    private Look look(int group, XCell one) throws com.sun.star.uno.Exception {
        Object[] has = Uno.as(XMultiPropertySet.class, one).getPropertyValues(NAMES);
        int rows = 1;
        int columns = 1;
        if (Uno.as(XMergeable.class, one).getIsMerged()) {
            XSheetCellCursor cursor = page.createCursorByRange(Uno.as(XSheetCellRange.class, one));
            cursor.collapseToMergedArea();
            CellRangeAddress merged =
                    Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
            rows = merged.EndRow - merged.StartRow + 1;
            columns = merged.EndColumn - merged.StartColumn + 1;
        }
        return new Look(
                group,
                ((Number) has[0]).doubleValue(),
                ((Number) has[1]).floatValue() >= FontWeight.BOLD,
                (CellHoriJustify) has[2],
                (boolean) has[3],
                ((Number) has[4]).doubleValue() / HUNDREDTHS,
                (boolean) has[5],
                has[6] == CellOrientation.BOTTOMTOP,
                rows,
                columns);
    }
}
