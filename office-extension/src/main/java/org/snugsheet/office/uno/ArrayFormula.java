package org.snugsheet.office.uno;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.table.XCellRange;

/** The formula of several cells. */
public final class ArrayFormula {

    private static final int CONTENTS = CellFlags.VALUE | CellFlags.DATETIME | CellFlags.STRING | CellFlags.FORMULA;

    private ArrayFormula() {}

    /**
     * Empties all the cells of an array formula, and leaves their notes and formats. (An empty array formula, the way of the
     * office’s own interface, takes the notes along.)
     *
     * @param cells all of its cells
     */
    public static void takeAway(XCellRange cells) {
        Uno.as(XSheetOperation.class, cells).clearContents(CONTENTS);
    }
}
