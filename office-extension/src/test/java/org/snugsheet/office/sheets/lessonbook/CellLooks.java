package org.snugsheet.office.sheets.lessonbook;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSpreadsheet;
import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.harness.CalcDocument;
import org.snugsheet.office.harness.Office;
import org.snugsheet.office.uno.Uno;

/** How cells of a document look, to be compared with those of its copy: the office mixes them up if it works something out while it writes. */
final class CellLooks {

    private static final int COLUMNS = 60;
    private static final int ROWS = 5000;

    private CellLooks() {}

    /** How bold the cells of a row are, from the left. */
    static List<Object> weights(Office office, CalcDocument book, String sheet, int row) {
        return office.call("looking at row " + row, () -> {
            List<Object> weights = new ArrayList<>();
            for (int column = 0; column < COLUMNS; column++) {
                weights.add(Uno.property(sheet(book, sheet).getCellByPosition(column, row - 1), "CharWeight"));
            }
            return weights;
        });
    }

    /** The style of all typed texts from a column on, below the introduction of a page; empty if they do not all have the same. */
    static String styleOfTexts(Office office, CalcDocument book, String sheet, int column) {
        return office.call("looking at " + sheet, () -> {
            Object typed = Uno.as(
                            XCellRangesQuery.class, sheet(book, sheet).getCellRangeByPosition(column, 2, COLUMNS, ROWS))
                    .queryContentCells((short) CellFlags.STRING);
            return (String) Uno.property(typed, "CellStyle");
        });
    }

    private static XSpreadsheet sheet(CalcDocument book, String name) throws com.sun.star.uno.Exception {
        return Uno.as(XSpreadsheet.class, book.uno().getSheets().getByName(name));
    }
}
