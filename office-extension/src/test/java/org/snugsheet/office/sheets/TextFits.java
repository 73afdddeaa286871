package org.snugsheet.office.sheets;

import com.sun.star.awt.FontWeight;
import com.sun.star.awt.Size;
import com.sun.star.beans.XMultiPropertySet;
import com.sun.star.container.XEnumeration;
import com.sun.star.container.XEnumerationAccess;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.CellOrientation;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.text.XTextRange;
import com.sun.star.util.XMergeable;
import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;

/**
 * Finds texts that are cut off on a page: their drawn width is measured, letter by letter in the type of the page, and held against
 * the room that their cells have. A text in one line may go on over empty cells beside it, as the office draws it; one that is wrapped
 * must have its last line above the lower edge.
 */
final class TextFits {

    /** Between the edge of a cell and its text, on each side, in millimeters; the office’s own. */
    private static final double MARGIN = 0.35;

    /** A text that is wider by less is still drawn whole; the office turns lines a little before the edge. */
    private static final double TOLERANCE = 0.3;

    private static final double HUNDREDTHS = 100;
    private static final String[] LOOK = {
        "CharHeight", "CharWeight", "HoriJustify", "IsTextWrapped", "ParaIndent", "ShrinkToFit", "Size", "Orientation"
    };

    private final XSpreadsheet page;
    private final CellRangeAddress area;
    private final String[][] held;
    private final Object[][] values;
    private final double[] widths;

    private TextFits(XSpreadsheet page, CellRangeAddress area) throws com.sun.star.uno.Exception {
        this.page = page;
        this.area = area;
        XCellRange cells = page.getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
        this.held = Uno.as(XCellRangeFormula.class, cells).getFormulaArray();
        this.values = Uno.as(XCellRangeData.class, cells).getDataArray();
        this.widths = new double[held[0].length];
        for (int column = 0; column < widths.length; column++) {
            Object first = page.getCellByPosition(area.StartColumn + column, area.StartRow);
            widths[column] = ((Size) Uno.property(first, "Size")).Width / HUNDREDTHS;
        }
    }

    /**
     * The texts that are cut off on what is printed of a page.
     *
     * @param page the page; call this within the office, for it asks for every cell
     * @return each with its cell and what it lacks; empty if all can be read
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static List<String> cutOff(XSpreadsheet page) throws com.sun.star.uno.Exception {
        List<String> found = new ArrayList<>();
        for (CellRangeAddress area : Uno.as(XPrintAreas.class, page).getPrintAreas()) {
            found.addAll(new TextFits(page, area).cutOff());
        }
        return found;
    }

    private List<String> cutOff() throws com.sun.star.uno.Exception {
        List<String> found = new ArrayList<>();
        for (int row = 0; row < held.length; row++) {
            for (int column = 0; column < held[row].length; column++) {
                if (!held[row][column].isEmpty() && !"".equals(values[row][column])) {
                    XCell cell = page.getCellByPosition(area.StartColumn + column, area.StartRow + row);
                    String shown = Uno.as(XText.class, cell).getString();
                    String lack = shown.isEmpty() ? "" : lack(cell, shown, row, column);
                    if (!lack.isEmpty()) {
                        found.add(Uno.as(XNamed.class, page).getName() + "."
                                + CellName.of(area.StartColumn + column, area.StartRow + row) + " " + lack + ": "
                                + shown);
                    }
                }
            }
        }
        return found;
    }

    private record Look(double points, boolean bold, CellHoriJustify side, boolean wrapped, double indent, Size size) {

        double width() {
            return size.Width / HUNDREDTHS - 2 * MARGIN - indent;
        }

        double height() {
            return size.Height / HUNDREDTHS;
        }
    }

    private String lack(XCell cell, String shown, int row, int column) throws com.sun.star.uno.Exception {
        Object[] has = Uno.as(XMultiPropertySet.class, cell).getPropertyValues(LOOK);
        boolean isMerged = Uno.as(XMergeable.class, cell).getIsMerged();
        Look look = new Look(
                ((Number) has[0]).doubleValue(),
                ((Number) has[1]).floatValue() >= FontWeight.BOLD,
                (CellHoriJustify) has[2],
                (boolean) has[3],
                ((Number) has[4]).doubleValue() / HUNDREDTHS,
                along(isMerged ? merged(cell) : (Size) has[6], (CellOrientation) has[7]));
        if (shown.startsWith("###")) {
            return "has no room for its number";
        }
        if ((boolean) has[5]) {
            return "";
        }
        if (look.wrapped() || shown.contains("\n")) {
            return tooHigh(paragraphs(cell, shown, look, held[row][column].startsWith("=")), look);
        }
        double wide = LetterWidths.of(new LetterWidths.Run(shown, look.points(), look.bold()));
        double room = isMerged ? look.width() : room(look, row, column);
        return wide <= room + TOLERANCE ? "" : "is " + tenths(wide) + " mm wide and has " + tenths(room);
    }

    /** What is written upward has the height of its cell to go on. */
    private static Size along(Size size, CellOrientation orientation) {
        return orientation == CellOrientation.BOTTOMTOP ? new Size(size.Height, size.Width) : size;
    }

    private Size merged(XCell cell) throws com.sun.star.uno.Exception {
        XSheetCellCursor cursor = page.createCursorByRange(Uno.as(XSheetCellRange.class, cell));
        cursor.collapseToMergedArea();
        return (Size) Uno.property(cursor, "Size");
    }

    private static String tooHigh(List<List<LetterWidths.Run>> paragraphs, Look look) {
        double high = 0;
        for (List<LetterWidths.Run> paragraph : paragraphs) {
            int lines = LetterWidths.lines(paragraph, look.width() - TOLERANCE);
            if (lines > paragraphs.size() * 1000) {
                return "has a word that is wider than its " + tenths(look.width()) + " mm";
            }
            high += lines * LetterWidths.lineHeight(look.points());
        }
        return high <= look.height() + TOLERANCE
                ? ""
                : "is " + tenths(high) + " mm high and has " + tenths(look.height());
    }

    /** Only what is typed can be partly bold. */
    private static List<List<LetterWidths.Run>> paragraphs(XCell cell, String shown, Look look, boolean isFormula)
            throws com.sun.star.uno.Exception {
        List<List<LetterWidths.Run>> paragraphs = new ArrayList<>();
        if (isFormula) {
            for (String line : shown.split("\n", -1)) {
                paragraphs.add(List.of(new LetterWidths.Run(line, look.points(), look.bold())));
            }
            return paragraphs;
        }
        XEnumeration all = Uno.as(XEnumerationAccess.class, cell).createEnumeration();
        while (all.hasMoreElements()) {
            List<LetterWidths.Run> runs = new ArrayList<>();
            XEnumeration portions =
                    Uno.as(XEnumerationAccess.class, all.nextElement()).createEnumeration();
            while (portions.hasMoreElements()) {
                Object portion = portions.nextElement();
                runs.add(new LetterWidths.Run(
                        Uno.as(XTextRange.class, portion).getString(),
                        look.points(),
                        ((Number) Uno.property(portion, "CharWeight")).floatValue() >= FontWeight.BOLD));
            }
            paragraphs.add(runs);
        }
        return paragraphs;
    }

    /** A number stays in its cell; a text goes on over empty cells, one that is centered over as many on both sides. */
    private double room(Look look, int row, int column) {
        double right = beside(row, column, 1);
        double left = beside(row, column, -1);
        if (look.side() == CellHoriJustify.CENTER) {
            return look.width() + 2 * Math.min(left, right);
        }
        return look.width() + (look.side() == CellHoriJustify.RIGHT ? left : right);
    }

    private double beside(int row, int column, int step) {
        double room = 0;
        int end = step > 0 ? held[row].length : -1;
        for (int at = column + step; at != end && held[row][at].isEmpty(); at += step) {
            room += widths[at];
        }
        return room;
    }

    private static String tenths(double millimeters) {
        return String.valueOf(Math.round(millimeters * 10) / 10.0);
    }
}
