package org.snugsheet.office.page;

import com.sun.star.table.CellRangeAddress;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.CellName;

/**
 * A rectangle of cells of a page, worked out from its address without asking the office.
 *
 * @param left its first column, from 0
 * @param top its first row, from 0
 * @param right its last column
 * @param bottom its last row
 */
record CellArea(int left, int top, int right, int bottom) {

    private static final Pattern ADDRESS = Pattern.compile("([A-Z]{1,3})([1-9][0-9]*)(?::([A-Z]{1,3})([1-9][0-9]*))?");

    /**
     * The cells of an address.
     *
     * @param address such as {@code B8} or {@code B8:F16}
     * @return their place
     */
    static CellArea of(String address) {
        Matcher parts = ADDRESS.matcher(address);
        if (!parts.matches()) {
            throw new IllegalArgumentException("no cells: " + address);
        }
        int left = CellName.number(parts.group(1));
        int top = Integer.parseInt(parts.group(2)) - 1;
        return parts.group(3) == null
                ? cell(left, top)
                : new CellArea(left, top, CellName.number(parts.group(3)), Integer.parseInt(parts.group(4)) - 1);
    }

    static CellArea cell(int column, int row) {
        return new CellArea(column, row, column, row);
    }

    /** Its upper left cell. */
    CellArea corner() {
        return cell(left, top);
    }

    int columns() {
        return right - left + 1;
    }

    int rows() {
        return bottom - top + 1;
    }

    boolean meets(CellArea other) {
        return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
    }

    /** The smallest rectangle that holds both. */
    CellArea with(CellArea other) {
        return new CellArea(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    CellArea lower(int rows) {
        return new CellArea(left, top + rows, right, bottom + rows);
    }

    CellRangeAddress on(short sheet) {
        return new CellRangeAddress(sheet, left, top, right, bottom);
    }
}
