package org.snugsheet.office.sharing;

import com.sun.star.sheet.ComplexReference;
import com.sun.star.sheet.ReferenceFlags;
import com.sun.star.sheet.SingleReference;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.CellName;

/**
 * A rectangle of cells of one sheet.
 *
 * @param sheet the sheet’s number, from 0
 * @param left its first column, from 0
 * @param top its first row, from 0
 * @param right its last column
 * @param bottom its last row
 */
record Area(int sheet, int left, int top, int right, int bottom) {

    private static final Pattern CELLS =
            Pattern.compile("([A-Z]{1,3})([1-9]\\d{0,6})(?::([A-Z]{1,3})([1-9]\\d{0,6}))?");

    private static final int GONE =
            ReferenceFlags.COLUMN_DELETED | ReferenceFlags.ROW_DELETED | ReferenceFlags.SHEET_DELETED;

    static Area of(CellRangeAddress range) {
        return new Area(range.Sheet, range.StartColumn, range.StartRow, range.EndColumn, range.EndRow);
    }

    /**
     * The area of a name of cells.
     *
     * @param sheet the number of its sheet
     * @param cells as {@link #cellNames} gives them
     * @return the area; empty if that is no such name
     */
    static Optional<Area> read(int sheet, String cells) {
        Matcher name = CELLS.matcher(cells);
        if (!name.matches()) {
            return Optional.empty();
        }
        int left = CellName.number(name.group(1));
        int top = Integer.parseInt(name.group(2)) - 1;
        return Optional.of(
                name.group(3) == null
                        ? new Area(sheet, left, top, left, top)
                        : new Area(
                                sheet, left, top, CellName.number(name.group(3)), Integer.parseInt(name.group(4)) - 1));
    }

    /**
     * The area that a part of a formula names.
     *
     * @param part the part, as the office’s parser gives it
     * @param at the cell the formula is in
     * @return the area; empty if the part is no reference, or the cells were deleted
     */
    static Optional<Area> named(Object part, CellAddress at) {
        if (part instanceof SingleReference one) {
            return (one.Flags & GONE) != 0
                    ? Optional.empty()
                    : Optional.of(
                            new Area(sheet(one, at), column(one, at), row(one, at), column(one, at), row(one, at)));
        }
        if (part instanceof ComplexReference two) {
            SingleReference from = two.Reference1;
            SingleReference to = two.Reference2;
            boolean isOneSheet = sheet(from, at) == sheet(to, at);
            return ((from.Flags | to.Flags) & GONE) != 0 || !isOneSheet
                    ? Optional.empty()
                    : Optional.of(
                            new Area(sheet(from, at), column(from, at), row(from, at), column(to, at), row(to, at)));
        }
        return Optional.empty();
    }

    /** The same kind of reference, relative or fixed, to this area. */
    Object as(Object part, CellAddress at) {
        if (part instanceof ComplexReference two) {
            return new ComplexReference(
                    corner(two.Reference1, left, top, at), corner(two.Reference2, right, bottom, at));
        }
        return corner((SingleReference) part, left, top, at);
    }

    Area down(int rows) {
        return new Area(sheet, left, top + rows, right, bottom + rows);
    }

    /** This area without what lies beyond the used part of its sheet; its first cell always stays. */
    Area within(Area used) {
        return new Area(
                sheet,
                left,
                top,
                Math.max(left, Math.min(right, used.right)),
                Math.max(top, Math.min(bottom, used.bottom)));
    }

    boolean holds(Area other) {
        return sheet == other.sheet
                && left <= other.left
                && right >= other.right
                && top <= other.top
                && bottom >= other.bottom;
    }

    boolean meets(Area other) {
        return sheet == other.sheet
                && left <= other.right
                && right >= other.left
                && top <= other.bottom
                && bottom >= other.top;
    }

    int columns() {
        return right - left + 1;
    }

    int rows() {
        return bottom - top + 1;
    }

    long cells() {
        return (long) columns() * rows();
    }

    /** As in {@code B3} or {@code B3:E9}. */
    String cellNames() {
        String first = CellName.of(left, top);
        return cells() == 1 ? first : first + ":" + CellName.of(right, bottom);
    }

    /** As a formula on another sheet names it, fixed. */
    String from(String sheetName) {
        String quoted = "$" + quoted(sheetName) + ".";
        String first = fixed(left, top);
        return quoted + (cells() == 1 ? first : first + ":" + fixed(right, bottom));
    }

    static String quoted(String sheetName) {
        return "'" + sheetName.replace("'", "''") + "'";
    }

    static String fixed(int column, int row) {
        return "$" + CellName.column(column) + "$" + (row + 1);
    }

    CellAddress first() {
        return new CellAddress((short) sheet, left, top);
    }

    private SingleReference corner(SingleReference like, int column, int row, CellAddress at) {
        SingleReference moved = new SingleReference();
        moved.Flags = like.Flags;
        if (sheet != at.Sheet) {
            moved.Flags |= ReferenceFlags.SHEET_3D;
        }
        moved.Column = column;
        moved.Row = row;
        moved.Sheet = sheet;
        moved.RelativeColumn = column - at.Column;
        moved.RelativeRow = row - at.Row;
        moved.RelativeSheet = sheet - at.Sheet;
        return moved;
    }

    private static int column(SingleReference one, CellAddress at) {
        return (one.Flags & ReferenceFlags.COLUMN_RELATIVE) != 0 ? at.Column + one.RelativeColumn : one.Column;
    }

    private static int row(SingleReference one, CellAddress at) {
        return (one.Flags & ReferenceFlags.ROW_RELATIVE) != 0 ? at.Row + one.RelativeRow : one.Row;
    }

    private static int sheet(SingleReference one, CellAddress at) {
        return (one.Flags & ReferenceFlags.SHEET_RELATIVE) != 0 ? at.Sheet + one.RelativeSheet : one.Sheet;
    }
}
