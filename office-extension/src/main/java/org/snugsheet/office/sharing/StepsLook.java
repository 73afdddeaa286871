package org.snugsheet.office.sharing;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellRangeContainer;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.CellVertJustify2;
import com.sun.star.table.XColumnRowRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.sharing.living.StepsPage;
import org.snugsheet.office.uno.Uno;

/**
 * How the page of steps looks: as the other pages of a sheet of ours, or in bold where somebody’s own document has no styles of ours. Every name
 * and head is seen whole.
 */
final class StepsLook {

    private static final int INTRODUCTION = 1;
    private static final int NAMES_WIDTH = 8000;
    private static final int WIDTH = 2700;
    private static final int FIRST_OF_TABLE = 3;
    private static final int GAP_COLUMN = 2;
    private static final int GAP_WIDTH = 600;

    private final XSpreadsheetDocument copy;
    private final XSpreadsheet sheet;
    private final short number;
    private final XNameAccess styles;

    StepsLook(XSpreadsheetDocument copy, XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        this.copy = copy;
        this.sheet = sheet;
        this.number =
                Uno.as(com.sun.star.sheet.XCellRangeAddressable.class, sheet).getRangeAddress().Sheet;
        this.styles = Uno.as(
                XNameAccess.class,
                Uno.as(XStyleFamiliesSupplier.class, copy).getStyleFamilies().getByName("CellStyles"));
    }

    /**
     * Before anything is written: each width, style and wrapped line of rows that are filled makes the office lay out all of them again to see how
     * high they are.
     */
    void of(StepsPage steps) throws com.sun.star.uno.Exception {
        int last = steps.rows().isEmpty() ? 1 : steps.rows().lastKey();
        int right = Math.max(
                FIRST_OF_TABLE,
                steps.heads().values().stream().max(Integer::compare).orElse(0));
        Uno.set(columns(FIRST_OF_TABLE, right), "Width", WIDTH);
        Uno.set(columns(GAP_COLUMN, GAP_COLUMN), "Width", GAP_WIDTH);
        Uno.set(columns(0, 0), "Width", NAMES_WIDTH);
        List<CellRangeAddress> titles = new ArrayList<>();
        steps.titles().forEach(row -> titles.add(place(0, 0, row)));
        List<CellRangeAddress> heads = new ArrayList<>();
        steps.heads().forEach((row, column) -> heads.add(place(FIRST_OF_TABLE, column, row)));
        // Makes the columns: a style for several ranges together passes over those in which nothing has ever been.
        Uno.set(sheet.getCellRangeByPosition(0, 0, right, 0), "CellStyle", "Default");
        Map<String, Object> wrapped = Map.of("IsTextWrapped", true, "VertJustify", CellVertJustify2.BOTTOM);
        look(List.of(place(0, 0, 0)), CellStyleName.TITLE, Map.of("CharWeight", 150f, "CharHeight", 16f));
        look(titles, CellStyleName.SECTION, Map.of("CharWeight", 150f));
        look(heads, CellStyleName.NARROW_HEAD, Map.of());
        if (!heads.isEmpty()) {
            Uno.setAll(ranges(heads), wrapped);
        }
        CellRangeAddress names = place(0, 0, 0);
        names.StartRow = INTRODUCTION;
        names.EndRow = last;
        Uno.setAll(ranges(List.of(names)), wrapped);
        // A title stands in one line, over all cells beside it.
        Uno.set(ranges(titles), "IsTextWrapped", false);
        // Of a class of twelve jars it would be five hundred sheets of paper.
        CellRangeAddress head = place(0, 0, 0);
        head.EndRow = INTRODUCTION;
        Uno.as(XPrintAreas.class, sheet).setPrintAreas(new CellRangeAddress[] {head});
    }

    private Object columns(int from, int to) throws com.sun.star.uno.Exception {
        return Uno.as(XColumnRowRange.class, sheet.getCellRangeByPosition(from, 0, to, 0))
                .getColumns();
    }

    private CellRangeAddress place(int from, int to, int row) {
        return new CellRangeAddress(number, from, row, to, row);
    }

    private void look(List<CellRangeAddress> cells, CellStyleName style, Map<String, Object> otherwise)
            throws com.sun.star.uno.Exception {
        if (cells.isEmpty()) {
            return;
        }
        Object ranges = ranges(cells);
        if (styles.hasByName(style.styleName())) {
            Uno.set(ranges, "CellStyle", style.styleName());
        } else if (!otherwise.isEmpty()) {
            Uno.setAll(ranges, otherwise);
        }
    }

    private Object ranges(List<CellRangeAddress> cells) throws com.sun.star.uno.Exception {
        Object ranges = Uno.make(copy, "com.sun.star.sheet.SheetCellRanges");
        Uno.as(XSheetCellRangeContainer.class, ranges).addRangeAddresses(cells.toArray(CellRangeAddress[]::new), false);
        return Uno.as(XPropertySet.class, ranges);
    }
}
