package org.snugsheet.office.page;

import com.sun.star.awt.Point;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.Size;
import com.sun.star.beans.XMultiPropertySet;
import org.snugsheet.office.uno.Uno;

/** Where cells are on a page and how large, for what lies over them: charts and drawings. */
public final class CellFrame {

    private static final double HUNDREDTHS_PER_MILLIMETER = 100;

    private CellFrame() {}

    /**
     * The rectangle that cells cover.
     *
     * @param page the page
     * @param address the cells
     * @return the rectangle, in 1/100 mm
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Rectangle of(Page page, String address) throws com.sun.star.uno.Exception {
        page.writeCells();
        Object[] found = Uno.as(XMultiPropertySet.class, page.range(address))
                .getPropertyValues(new String[] {"Position", "Size"});
        Point corner = (Point) found[0];
        Size size = (Size) found[1];
        return new Rectangle(corner.X, corner.Y, size.Width, size.Height);
    }

    /**
     * Where a cell begins, for a drawing.
     *
     * @param page the page
     * @param address the cell
     * @return its left side and its upper side, in millimeters from the corner of the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static double[] corner(Page page, String address) throws com.sun.star.uno.Exception {
        Rectangle cell = of(page, address);
        return new double[] {cell.X / HUNDREDTHS_PER_MILLIMETER, cell.Y / HUNDREDTHS_PER_MILLIMETER};
    }
}
