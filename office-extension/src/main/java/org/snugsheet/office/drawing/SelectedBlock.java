package org.snugsheet.office.drawing;

import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Surroundings;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.DeclinedException;

/**
 * What is selected: a block of readings, and with it perhaps the cell or the column of the surroundings.
 *
 * @param sheet its sheet, as written before a cell in a formula
 * @param times the cells of the times
 * @param rows how many they are
 * @param jars the jars that have a name or readings
 * @param surroundings the second part of the selection, if there is one
 * @param scale the scale of the readings, if the heads or the numbers leave no doubt
 */
public record SelectedBlock(
        String sheet,
        String times,
        int rows,
        List<Curves.Jar> jars,
        Optional<String> surroundings,
        Optional<Scale> scale) {

    /** What is selected; the list is copied. */
    public SelectedBlock {
        jars = List.copyOf(jars);
    }

    /**
     * Reads a selection.
     *
     * @param document the document
     * @param selection what its window calls the selection; a single cell means all the filled cells around it
     * @return the block
     * @throws DeclinedException if it is no block with a head of names, or one of too many jars
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public static SelectedBlock in(XSpreadsheetDocument document, Object selection) throws com.sun.star.uno.Exception {
        List<CellRangeAddress> parts = parts(selection);
        XSpreadsheet sheet = Uno.sheets(document).get(parts.get(0).Sheet);
        CellRangeAddress place = UsedPart.of(sheet, whole(sheet, parts.get(0)))
                .orElseThrow(() -> new DeclinedException(DrawingWords.NO_BLOCK));
        List<List<Entry>> rows = Cells.rows(Uno.as(
                        XCellRangeData.class,
                        sheet.getCellRangeByPosition(place.StartColumn, place.StartRow, place.EndColumn, place.EndRow))
                .getDataArray());
        if (rows.size() < 2 || rows.get(0).size() < 2) {
            throw new DeclinedException(DrawingWords.NO_BLOCK);
        }
        List<Entry> heads = rows.get(0);
        if (heads.subList(1, heads.size()).stream().noneMatch(Entry.Text.class::isInstance)) {
            throw new DeclinedException(DrawingWords.NO_NAMES);
        }
        String prefix = prefix(Uno.as(XNamed.class, sheet).getName());
        List<Curves.Jar> jars = new ArrayList<>();
        for (int column = 1; column < heads.size(); column++) {
            int index = column;
            if (rows.stream().anyMatch(row -> !(row.get(index) instanceof Entry.Missing))) {
                int at = place.StartColumn + column;
                jars.add(new Curves.Jar(prefix + fixed(at, place.StartRow), down(prefix, at, place)));
            }
        }
        if (jars.size() > Curves.MOST_JARS) {
            throw new DeclinedException(DrawingWords.TOO_MANY_JARS, jars.size(), Curves.MOST_JARS);
        }
        Optional<String> surroundings =
                parts.size() < 2 ? Optional.empty() : Optional.of(prefix + around(sheet, parts.get(1), place));
        return new SelectedBlock(
                prefix,
                down(prefix, place.StartColumn, place),
                place.EndRow - place.StartRow,
                jars,
                surroundings,
                Scales.plain(rows));
    }

    /** The cells of the surroundings; of a whole column those beside the readings. */
    private static String around(XSpreadsheet sheet, CellRangeAddress part, CellRangeAddress block) {
        boolean isColumn = part.StartRow == 0
                && part.EndRow == Uno.as(XCellRangeAddressable.class, sheet).getRangeAddress().EndRow;
        int from = isColumn ? block.StartRow + 1 : part.StartRow;
        int to = isColumn ? block.EndRow : part.EndRow;
        return fixed(part.StartColumn, from) + ":" + fixed(part.EndColumn, to);
    }

    /**
     * What the surroundings are, as an argument of a formula.
     *
     * @param typed a number, a cell of this sheet, or words such as {@code fit} and {@code 37 °F}
     * @param scale the scale of a number without one
     * @return the argument
     * @throws InvalidInputException if it is neither a cell nor a temperature
     */
    public String surroundings(String typed, Scale scale) {
        String bare = typed.strip();
        if (surroundings.filter(bare::equals).isPresent()) {
            return bare;
        }
        if (bare.matches("(?i)\\$?[A-Z]{1,3}\\$?[0-9]+(:\\$?[A-Z]{1,3}\\$?[0-9]+)?")) {
            return sheet + bare;
        }
        String words = bare.isEmpty() ? "fit" : bare;
        Entry entry = Entry.ofWritten(words);
        // Told while the window is still open, and not on a page without curves.
        Surroundings.of(List.of(entry), List.of(), scale);
        return entry instanceof Entry.Value number
                ? String.valueOf(number.value())
                : "\"" + words.replace("\"", "\"\"") + "\"";
    }

    private static List<CellRangeAddress> parts(Object selection) {
        XSheetCellRanges several = UnoRuntime.queryInterface(XSheetCellRanges.class, selection);
        if (several != null) {
            return Arrays.asList(several.getRangeAddresses());
        }
        XCellRangeAddressable one = UnoRuntime.queryInterface(XCellRangeAddressable.class, selection);
        if (one == null) {
            throw new DeclinedException(DrawingWords.NO_BLOCK);
        }
        return List.of(one.getRangeAddress());
    }

    private static CellRangeAddress whole(XSpreadsheet sheet, CellRangeAddress place)
            throws com.sun.star.uno.Exception {
        if (place.StartColumn != place.EndColumn || place.StartRow != place.EndRow) {
            return place;
        }
        if (sheet.getCellByPosition(place.StartColumn, place.StartRow).getType() == CellContentType.EMPTY) {
            throw new DeclinedException(DrawingWords.NO_BLOCK);
        }
        XSheetCellCursor around = sheet.createCursorByRange(Uno.as(
                XSheetCellRange.class,
                sheet.getCellRangeByPosition(place.StartColumn, place.StartRow, place.EndColumn, place.EndRow)));
        around.collapseToCurrentRegion();
        return Uno.as(XCellRangeAddressable.class, around).getRangeAddress();
    }

    private static String down(String prefix, int column, CellRangeAddress place) {
        return prefix + fixed(column, place.StartRow + 1) + ":" + fixed(column, place.EndRow);
    }

    private static String fixed(int column, int row) {
        return "$" + CellName.column(column) + "$" + (row + 1);
    }

    private static String prefix(String sheet) {
        return "$'" + sheet.replace("'", "''") + "'.";
    }
}
