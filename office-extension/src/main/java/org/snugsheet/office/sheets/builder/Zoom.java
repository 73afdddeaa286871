package org.snugsheet.office.sheets.builder;

import com.sun.star.awt.Size;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.table.CellRangeAddress;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.uno.Uno;

/** How large a page is seen at first. */
public final class Zoom {

    // What a window of 1366 by 768 points leaves for cells beside its bars, in 1/100 mm.
    private static final int ACROSS = 31_700;
    private static final int DOWN = 14_600;

    // Smaller than this, in percent, is hard to read.
    private static final int SMALLEST = 75;

    private Zoom() {}

    /**
     * So small that what is printed fits across a small screen, because nobody looks for a caution beyond its edge; and so small that it
     * is seen whole, if that can still be read.
     *
     * @param page the page
     * @return percent
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static int of(Page page) throws com.sun.star.uno.Exception {
        int zoom = 100;
        for (CellRangeAddress printed : Uno.as(XPrintAreas.class, page.sheet()).getPrintAreas()) {
            Object cells = page.sheet()
                    .getCellRangeByPosition(printed.StartColumn, printed.StartRow, printed.EndColumn, printed.EndRow);
            Size size = (Size) Uno.property(cells, "Size");
            zoom = Math.min(zoom, 100 * ACROSS / size.Width);
            int whole = 100 * DOWN / size.Height;
            if (whole >= SMALLEST) {
                zoom = Math.min(zoom, whole);
            }
        }
        return zoom;
    }
}
