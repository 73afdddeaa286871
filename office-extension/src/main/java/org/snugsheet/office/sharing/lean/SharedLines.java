package org.snugsheet.office.sharing.lean;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.uno.CellName;

/**
 * Squared paper in half as many cells: a line between two cells need be said of one only. Like the black squares of a chess board, every second
 * empty cell is left out if its neighbors have all of its lines.
 *
 * <p>Only on protected sheets: elsewhere somebody may type into such a cell, and would miss its format.
 */
final class SharedLines {

    private static final String PROTECTED = "<sheetProtection sheet=\"true\"";
    private static final Pattern CELL = Pattern.compile("<c r=\"([A-Z]{1,3})(\\d{1,7})\" s=\"(\\d+)\"");
    private static final Pattern EMPTY = Pattern.compile(CELL.pattern() + "/>");

    private final CellFormats formats;
    private final Set<String> merged;
    private final Map<String, String> numbers = new HashMap<>();

    private SharedLines(CellFormats formats, Set<String> merged) {
        this.formats = formats;
        this.merged = merged;
    }

    /**
     * Leaves out what neighbors say.
     *
     * @param sheet its XML
     * @param formats the formats of its cells
     * @param merged the names of all cells that are merged with others, which may look otherwise than their formats say
     * @return the other XML
     */
    static String in(String sheet, CellFormats formats, Set<String> merged) {
        if (!sheet.contains(PROTECTED)) {
            return sheet;
        }
        SharedLines lines = new SharedLines(formats, merged);
        Matcher cell = CELL.matcher(sheet);
        while (cell.find()) {
            lines.numbers.put(cell.group(1) + cell.group(2), cell.group(3));
        }
        return EMPTY.matcher(sheet)
                .replaceAll(empty ->
                        lines.isSaid(CellName.number(empty.group(1)), Integer.parseInt(empty.group(2)), empty.group(3))
                                ? ""
                                : Matcher.quoteReplacement(empty.group()));
    }

    private boolean isSaid(int column, int row, String number) {
        return (column + row) % 2 == 1
                && formats.isOnlyLines(number)
                && !formats.hasNoLines(number)
                && !merged.contains(CellName.of(column, row - 1))
                && isSaid(number, "left", column - 1, row, "right")
                && isSaid(number, "right", column + 1, row, "left")
                && isSaid(number, "top", column, row - 1, "bottom")
                && isSaid(number, "bottom", column, row + 1, "top");
    }

    private boolean isSaid(String number, String side, int column, int row, String otherSide) {
        String line = formats.line(number, side);
        if (line.isEmpty()) {
            return true;
        }
        String beside = column < 0 || row < 1 ? "" : CellName.of(column, row - 1);
        return !merged.contains(beside) && line.equals(formats.line(numbers.getOrDefault(beside, ""), otherSide));
    }
}
