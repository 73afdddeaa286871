package org.snugsheet.office.page;

import com.sun.star.sheet.XSheetCellRangeContainer;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.uno.Uno;

/**
 * How the cells of a page are to look, until it is said of all cells that look alike at once. What is said later of a cell still comes
 * later.
 */
final class WaitingFormats {

    /** A style takes away what was set by hand before. */
    static final String STYLE = "CellStyle";

    private record Change(String property, Object value) {

        boolean isOrderedWith(Change other) {
            return !equals(other)
                    && (property.equals(other.property) || property.equals(STYLE) || other.property.equals(STYLE));
        }
    }

    private record Step(Change change, CellArea cells, int layer) {}

    private final XSpreadsheetDocument document;
    private final XSpreadsheet sheet;
    private final List<Step> steps = new ArrayList<>();
    private final List<Map<Change, List<CellArea>>> layers = new ArrayList<>();
    private int madeUpTo = -1;

    WaitingFormats(XSpreadsheetDocument document, XSpreadsheet sheet) {
        this.document = document;
        this.sheet = sheet;
    }

    void set(CellArea cells, String property, Object value) {
        Change change = new Change(property, value);
        int layer = 0;
        for (Step before : steps) {
            if (before.layer >= layer && cells.meets(before.cells) && change.isOrderedWith(before.change)) {
                layer = before.layer + 1;
            }
        }
        steps.add(new Step(change, cells, layer));
        while (layers.size() <= layer) {
            layers.add(new LinkedHashMap<>());
        }
        layers.get(layer).computeIfAbsent(change, none -> new ArrayList<>()).add(cells);
    }

    boolean isEmpty() {
        return steps.isEmpty();
    }

    /**
     * Writes all of it.
     *
     * @param number the number of the sheet
     * @param free a row in which no cell holds anything
     */
    void write(short number, int free) throws com.sun.star.uno.Exception {
        if (layers.stream().flatMap(layer -> layer.values().stream()).anyMatch(areas -> areas.size() > 1)) {
            makeColumns(free);
        }
        for (Map<Change, List<CellArea>> layer : layers) {
            for (Map.Entry<Change, List<CellArea>> alike : layer.entrySet()) {
                Change change = alike.getKey();
                Uno.set(cells(alike.getValue(), number), change.property, change.value);
            }
        }
        steps.clear();
        layers.clear();
    }

    /** Of several ranges together the office passes over columns in which nothing has ever been. */
    private void makeColumns(int free) throws com.sun.star.uno.Exception {
        int right = steps.stream().mapToInt(step -> step.cells.right()).max().orElse(-1);
        if (right > madeUpTo) {
            XCell blank = sheet.getCellByPosition(right, free);
            blank.setValue(0);
            blank.setFormula("");
            madeUpTo = right;
        }
    }

    private Object cells(List<CellArea> areas, short number) throws com.sun.star.uno.Exception {
        if (areas.size() == 1) {
            CellArea only = areas.get(0);
            return sheet.getCellRangeByPosition(only.left(), only.top(), only.right(), only.bottom());
        }
        Object several = Uno.make(document, "com.sun.star.sheet.SheetCellRanges");
        Uno.as(XSheetCellRangeContainer.class, several)
                .addRangeAddresses(areas.stream().map(area -> area.on(number)).toArray(CellRangeAddress[]::new), false);
        return several;
    }
}
