package org.snugsheet.office.sharing;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.util.XSearchDescriptor;
import com.sun.star.util.XSearchable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.uno.Uno;

/**
 * The hidden columns of the page “How this was worked out”: in each row the formula of the office that names a {@link Followed}
 * area, its number, and, for areas that answers depend on, how many of its cells are no longer as they were; beside them the
 * values as they were. All in functions that every spreadsheet program has.
 */
final class FollowedCells {

    /** The first hidden column: how many cells differ, with the total on top. */
    static final int DIFFERENT = 7;

    private static final int NAMED = DIFFERENT + 1;

    /** The last of the columns that are worked out; values follow it. */
    static final int NUMBER = NAMED + 1;

    private static final int VALUES = NUMBER + 1;

    /** Stands above the formulas that name cells, whatever the language of the page. */
    private static final String MARKER = "snugsheet:followed";

    private FollowedCells() {}

    /** What an area held: its used part and its values. */
    record Held(Area area, Area used, List<Object[]> values, boolean failed) {

        Held {
            values = List.copyOf(values);
        }
    }

    /** Values of followed areas, read before anything is changed. */
    record Snapshot(Followed followed, List<Held> held) {

        Snapshot {
            held = List.copyOf(held);
        }
    }

    static Snapshot snapshot(XSpreadsheetDocument document, Followed followed) throws com.sun.star.uno.Exception {
        List<XSpreadsheet> sheets = Uno.sheets(document);
        Map<Integer, Area> used = new HashMap<>();
        List<Held> held = new ArrayList<>();
        for (Area area : followed.compared()) {
            XSpreadsheet sheet = sheets.get(area.sheet());
            if (!used.containsKey(area.sheet())) {
                used.put(area.sheet(), used(sheet));
            }
            Area cut = area.within(used.get(area.sheet()));
            Object[][] values = Uno.as(
                            XCellRangeData.class,
                            sheet.getCellRangeByPosition(cut.left(), cut.top(), cut.right(), cut.bottom()))
                    .getDataArray();
            addHeld(held, area, cut, values);
        }
        return new Snapshot(followed, held);
    }

    /** An error in a block would hide all of its differences: then each cell is compared on its own. */
    private static void addHeld(List<Held> held, Area area, Area cut, Object[][] values) {
        if (cut.cells() == 1 || !hasError(values)) {
            held.add(new Held(area, cut, List.of(values), hasError(values)));
            return;
        }
        for (int row = 0; row < values.length; row++) {
            for (int column = 0; column < values[row].length; column++) {
                Area one = new Area(
                        cut.sheet(), cut.left() + column, cut.top() + row, cut.left() + column, cut.top() + row);
                Object[][] value = {{values[row][column]}};
                held.add(new Held(area, one, List.<Object[]>of(value), hasError(value)));
            }
        }
    }

    private static boolean hasError(Object[][] values) {
        for (Object[] row : values) {
            for (Object value : row) {
                if (!(value instanceof Double || value instanceof String)) {
                    return true;
                }
            }
        }
        return false;
    }

    static Area used(XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        XSheetCellCursor cursor = sheet.createCursor();
        Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
        Area last = Area.of(Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress());
        return new Area(last.sheet(), 0, 0, last.right(), last.bottom());
    }

    /** Writes the hidden columns. */
    static void write(XSpreadsheetDocument document, XSpreadsheet page, Snapshot snapshot)
            throws com.sun.star.uno.Exception {
        String[] sheets = document.getSheets().getElementNames();
        String pageName = Uno.as(com.sun.star.container.XNamed.class, page).getName();
        int width = Math.max(1, values(page, snapshot));
        List<Area> all = snapshot.followed().all();
        String[][] named = new String[all.size()][];
        for (int i = 0; i < all.size(); i++) {
            named[i] =
                    new String[] {"=COUNTA(" + all.get(i).from(sheets[all.get(i).sheet()]) + ")", "" + (i + 1)};
        }
        text(page, NAMED, 0, MARKER);
        if (named.length > 0) {
            formulas(page, NAMED, named);
        }
        int rows = compared(page, pageName, snapshot, sheets);
        page.getCellByPosition(DIFFERENT, 0)
                .setFormula("=SUM(" + Area.fixed(DIFFERENT, 1) + ":" + Area.fixed(DIFFERENT, Math.max(1, rows)) + ")");
        hide(page, VALUES + width - 1);
    }

    /** Hides these columns. */
    static void hide(XSpreadsheet page, int last) throws com.sun.star.uno.Exception {
        if (last >= DIFFERENT) {
            XCellRange hidden = page.getCellRangeByPosition(DIFFERENT, 0, last, 0);
            Uno.as(XPropertySet.class, Uno.as(XColumnRowRange.class, hidden).getColumns())
                    .setPropertyValue("IsVisible", false);
        }
    }

    /** The formula of the office that tells how many cells differ. */
    static String total(String pageName) {
        return "$" + Area.quoted(pageName) + "." + Area.fixed(DIFFERENT, 0);
    }

    /** The values as they were, block below block. */
    private static int values(XSpreadsheet page, Snapshot snapshot) throws com.sun.star.uno.Exception {
        int width = 0;
        int height = 0;
        for (Held held : snapshot.held()) {
            width = Math.max(width, held.used().columns());
            height += held.failed() ? 0 : held.used().rows();
        }
        if (height == 0) {
            return width;
        }
        Object[][] block = new Object[height][width];
        int row = 0;
        for (Held held : snapshot.held()) {
            if (held.failed()) {
                continue;
            }
            for (Object[] values : held.values()) {
                for (int column = 0; column < width; column++) {
                    block[row][column] = column < values.length ? values[column] : "";
                }
                row++;
            }
        }
        Uno.as(XCellRangeData.class, page.getCellRangeByPosition(VALUES, 0, VALUES + width - 1, height - 1))
                .setDataArray(block);
        return width;
    }

    private static int compared(XSpreadsheet page, String pageName, Snapshot snapshot, String[] sheets)
            throws com.sun.star.uno.Exception {
        int count = snapshot.held().size();
        if (count == 0) {
            return 0;
        }
        String[][] compared = new String[count][];
        int row = 0;
        for (int i = 0; i < count; i++) {
            Held held = snapshot.held().get(i);
            String live = held.used().from(sheets[held.used().sheet()]);
            if (held.failed()) {
                compared[i] = new String[] {"=IF(ISERROR(" + live + ");0;1)"};
                continue;
            }
            Area stood = new Area(
                    0,
                    VALUES,
                    row,
                    VALUES + held.used().columns() - 1,
                    row + held.used().rows() - 1);
            row += held.used().rows();
            compared[i] = new String[] {
                held.used().cells() == 1
                        ? comparison(live, stood.from(pageName))
                        : comparison(live, stood.from(pageName), beyond(page, snapshot, held))
            };
        }
        formulas(page, DIFFERENT, compared);
        return count;
    }

    /** The same of one cell; a number that another program works out may differ in its last digits. */
    private static String comparison(String now, String then) {
        return "=IF(ISERROR(%1$s);1;IF(AND(ISNUMBER(%1$s);ISNUMBER(%2$s));IF(ABS(%1$s-%2$s)<=1E-12*ABS(%2$s);0;1);IF(OR(ISNUMBER(%1$s);ISNUMBER(%2$s));1;IF(EXACT(%1$s;%2$s);0;1))))"
                .formatted(now, then);
    }

    /**
     * Texts letter by letter, numbers as numbers, and a blank is not a zero. Gnumeric looks at one cell of a range only when it asks whether it is a
     * number, and fails: there it counts how many are.
     */
    private static String comparison(String now, String then, String beyond) {
        return "=IF(ISERROR(SUMPRODUCT(--(%1$s<>%2$s)));1;SUMPRODUCT(--(%1$s<>%2$s))+IFERROR(SUMPRODUCT(--(ISNUMBER(%1$s)<>ISNUMBER(%2$s)))+SUMPRODUCT(ISTEXT(%1$s)*(1-EXACT(%1$s;%2$s)));IF(COUNT(%1$s)=COUNT(%2$s);0;1))%3$s)"
                .formatted(now, then, beyond);
    }

    /** Of a whole column only the used part is compared; whatever is typed below it counts as well. */
    private static String beyond(XSpreadsheet page, Snapshot snapshot, Held held) throws com.sun.star.uno.Exception {
        if (held.used().cells() == 1 || held.area().equals(held.used())) {
            return "";
        }
        int row = snapshot.followed().follow(held.area());
        int now = (int) page.getCellByPosition(NAMED, row).getValue();
        return "+(" + Area.fixed(NAMED, row) + "<>" + now + ")";
    }

    /**
     * Where the followed areas are now.
     *
     * @return by their numbers; empty for one whose cells were deleted; no entry where the page does not say
     */
    static Map<Integer, Optional<Area>> read(XSpreadsheetDocument document, OfficeParser parser)
            throws com.sun.star.uno.Exception {
        Map<Integer, Optional<Area>> places = new HashMap<>();
        for (XSpreadsheet sheet : Uno.sheets(document)) {
            XSearchable search = Uno.as(XSearchable.class, sheet);
            XSearchDescriptor wanted = search.createSearchDescriptor();
            wanted.setSearchString(MARKER);
            Object found = search.findFirst(wanted);
            if (found == null) {
                continue;
            }
            Area marker = Area.of(Uno.as(XCellRangeAddressable.class, found).getRangeAddress());
            Area used = used(sheet);
            if (used.bottom() > marker.bottom()) {
                XCellRange below =
                        sheet.getCellRangeByPosition(marker.left(), marker.top() + 1, marker.left() + 1, used.bottom());
                String[][] rows = Uno.as(XCellRangeFormula.class, below).getFormulaArray();
                for (int i = 0; i < rows.length; i++) {
                    CellAddress at = new CellAddress((short) marker.sheet(), marker.left(), marker.top() + 1 + i);
                    place(rows[i], at, parser, places);
                }
            }
        }
        return places;
    }

    private static void place(String[] row, CellAddress at, OfficeParser parser, Map<Integer, Optional<Area>> places) {
        if (!row[0].startsWith("=COUNTA(")
                || !row[1].matches("\\d{1,7}")
                || Harmless.beforeParsing(row[0]).isPresent()) {
            return;
        }
        Optional<Area> area = Arrays.stream(parser.parts(row[0], at))
                .map(part -> Area.named(part.Data, at))
                .flatMap(Optional::stream)
                .findFirst();
        places.put(Integer.valueOf(row[1]), area);
    }

    private static void formulas(XSpreadsheet page, int column, String[][] below) throws com.sun.star.uno.Exception {
        XCellRange range = page.getCellRangeByPosition(column, 1, column + below[0].length - 1, below.length);
        Uno.as(XCellRangeFormula.class, range).setFormulaArray(below);
    }

    private static void text(XSpreadsheet page, int column, int row, String text) throws com.sun.star.uno.Exception {
        Uno.as(XText.class, page.getCellByPosition(column, row)).setString(text);
    }
}
