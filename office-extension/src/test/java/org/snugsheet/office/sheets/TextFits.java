package org.snugsheet.office.sheets;

import com.sun.star.awt.FontWeight;
import com.sun.star.awt.Size;
import com.sun.star.container.XEnumeration;
import com.sun.star.container.XEnumerationAccess;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.text.XTextRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    private final XSpreadsheet page;
    private final CellRangeAddress area;
    private final XCellRange cells;
    private final CellLooks looks;
    private final double[] widths;
    private final Map<Integer, Double> heights = new HashMap<>();
    private final Map<Integer, Boolean> shownAsHeld = new HashMap<>();
    private String[][] held = {};
    private Object[][] values = {};

    private TextFits(XSpreadsheet page, CellRangeAddress area) throws com.sun.star.uno.Exception {
        this.page = page;
        this.area = area;
        this.cells = page.getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow);
        this.looks = CellLooks.of(page, area);
        this.widths = new double[area.EndColumn - area.StartColumn + 1];
        for (int column = 0; column < widths.length; column++) {
            widths[column] = size(0, column).Width / HUNDREDTHS;
        }
    }

    /**
     * The texts that are cut off on what is printed of a page.
     *
     * @param page the page; call this within the office, for it asks much
     * @return each with its cell and what it lacks; empty if all can be read
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static List<String> cutOff(XSpreadsheet page) throws com.sun.star.uno.Exception {
        List<String> found = new ArrayList<>();
        for (TextFits area : of(page)) {
            found.addAll(area.cutOff());
        }
        return found;
    }

    /**
     * What is printed of a page, to be looked at again after something was typed, which changes no look and no width.
     *
     * @param page the page
     * @return its areas
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static List<TextFits> of(XSpreadsheet page) throws com.sun.star.uno.Exception {
        List<TextFits> areas = new ArrayList<>();
        for (CellRangeAddress area : Uno.as(XPrintAreas.class, page).getPrintAreas()) {
            areas.add(new TextFits(page, area));
        }
        return areas;
    }

    /** The texts that are cut off now. */
    List<String> cutOff() throws com.sun.star.uno.Exception {
        held = Uno.as(XCellRangeFormula.class, cells).getFormulaArray();
        values = Uno.as(XCellRangeData.class, cells).getDataArray();
        heights.clear();
        shownAsHeld.clear();
        List<String> found = new ArrayList<>();
        for (int row = 0; row < held.length; row++) {
            for (int column = 0; column < held[row].length; column++) {
                if (!held[row][column].isEmpty() && !"".equals(values[row][column])) {
                    String shown = shown(row, column);
                    String lack = shown.isEmpty() ? "" : lack(shown, row, column);
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

    /** A format may show other words than a cell holds; whether it does is asked once for all texts that look the same. */
    private String shown(int row, int column) throws com.sun.star.uno.Exception {
        if (!(values[row][column] instanceof String text)) {
            return asked(row, column);
        }
        int group = looks.at(row, column).group();
        Boolean asHeld = shownAsHeld.get(group);
        if (asHeld == null) {
            asHeld = asked(row, column).equals(text);
            shownAsHeld.put(group, asHeld);
        }
        return asHeld ? text : asked(row, column);
    }

    private String asked(int row, int column) throws com.sun.star.uno.Exception {
        return Uno.as(XText.class, cell(row, column)).getString();
    }

    private XCell cell(int row, int column) throws com.sun.star.uno.Exception {
        return page.getCellByPosition(area.StartColumn + column, area.StartRow + row);
    }

    private Size size(int row, int column) throws com.sun.star.uno.Exception {
        return (Size) Uno.property(cell(row, column), "Size");
    }

    private String lack(String shown, int row, int column) throws com.sun.star.uno.Exception {
        CellLooks.Look look = looks.at(row, column);
        if (shown.startsWith("###")) {
            return "has no room for its number";
        }
        if (look.shrinks()) {
            return "";
        }
        double along = look.upward() ? height(look, row) : width(look, column);
        double width = along - 2 * MARGIN - look.indent();
        if (look.wrapped() || shown.contains("\n")) {
            double height = look.upward() ? width(look, column) : height(look, row);
            return tooHigh(shown, row, column, new Room(width, height));
        }
        double wide = LetterWidths.of(new LetterWidths.Run(shown, look.points(), look.bold()));
        double room = look.isMerged() ? width : width + besides(look, row, column);
        return wide <= room + TOLERANCE ? "" : "is " + tenths(wide) + " mm wide and has " + tenths(room);
    }

    private double width(CellLooks.Look look, int column) {
        return Arrays.stream(widths, column, column + look.columns()).sum();
    }

    private double height(CellLooks.Look look, int row) throws com.sun.star.uno.Exception {
        double height = 0;
        for (int i = row; i < row + look.rows(); i++) {
            Double known = heights.get(i);
            if (known == null) {
                known = size(i, 0).Height / HUNDREDTHS;
                heights.put(i, known);
            }
            height += known;
        }
        return height;
    }

    /** What a text in several lines has to itself. */
    private record Room(double width, double height) {}

    private String tooHigh(String shown, int row, int column, Room room) throws com.sun.star.uno.Exception {
        CellLooks.Look look = looks.at(row, column);
        if (held[row][column].startsWith("=")) {
            return tooHigh(paragraphs(shown, look, look.bold()), look, room);
        }
        // Only what is typed can be partly bold. Which letters are is many calls, needless where all have room in bold.
        boolean hasRoom = LetterWidths.isWidestInBold(shown)
                && tooHigh(paragraphs(shown, look, true), look, room).isEmpty();
        return hasRoom ? "" : tooHigh(asTyped(cell(row, column), look), look, room);
    }

    private static String tooHigh(List<List<LetterWidths.Run>> paragraphs, CellLooks.Look look, Room room) {
        double high = 0;
        for (List<LetterWidths.Run> paragraph : paragraphs) {
            int lines = LetterWidths.lines(paragraph, room.width() - TOLERANCE);
            if (lines > paragraphs.size() * 1000) {
                return "has a word that is wider than its " + tenths(room.width()) + " mm";
            }
            high += lines * LetterWidths.lineHeight(look.points());
        }
        return high <= room.height() + TOLERANCE
                ? ""
                : "is " + tenths(high) + " mm high and has " + tenths(room.height());
    }

    private static List<List<LetterWidths.Run>> paragraphs(String shown, CellLooks.Look look, boolean bold) {
        return Arrays.stream(shown.split("\n", -1))
                .map(line -> List.of(new LetterWidths.Run(line, look.points(), bold)))
                .toList();
    }

    private static List<List<LetterWidths.Run>> asTyped(XCell cell, CellLooks.Look look)
            throws com.sun.star.uno.Exception {
        List<List<LetterWidths.Run>> paragraphs = new ArrayList<>();
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
    private double besides(CellLooks.Look look, int row, int column) {
        double right = beside(row, column, 1);
        double left = beside(row, column, -1);
        if (look.side() == CellHoriJustify.CENTER) {
            return 2 * Math.min(left, right);
        }
        return look.side() == CellHoriJustify.RIGHT ? left : right;
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
