package org.snugsheet.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.container.XNamed;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUniqueCellFormatRangesSupplier;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.util.CellProtection;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.office.harness.CalcDocument;

/** Those of the {@link HouseRulesIT house rules} that are about the cells to type into. */
final class InputCellRules {

    private static final String INPUT_STYLE = "Snug input( head| large)?";

    // An address that stays where it is, with its page, if it names one.
    private static final Pattern FIXED =
            Pattern.compile("(?:\\$?'?([^'$.;(&=<>+*/^-]+)'?\\.)?\\$([A-Z]{1,3})\\$([0-9]+)");

    private InputCellRules() {}

    static void opensOnAnInputOfTheFirstPage(CalcDocument document) throws com.sun.star.uno.Exception {
        Object cell = Opened.as(XModel.class, document.uno()).getCurrentSelection();
        CellAddress place = Opened.as(XCellAddressable.class, cell).getCellAddress();
        assertEquals(0, place.Sheet, "the first page");
        assertTrue(
                Opened.property(cell, "CellStyle").toString().matches(INPUT_STYLE), "the cursor is on an input cell");
    }

    /**
     * The formulas that look for what is typed at a fixed address, such as $B$20. A table that is filled down or to the right
     * goes on with relative ones; the numbers of rows and columns, as ROW gives them, are no cells.
     */
    static List<String> inputsGivenByAddress(CalcDocument document, List<XSpreadsheet> pages)
            throws com.sun.star.uno.Exception {
        List<String> found = new ArrayList<>();
        for (XSpreadsheet page : pages) {
            String own = Opened.as(XNamed.class, page).getName();
            String[][] cells = Opened.formulas(page);
            for (String formula : Arrays.stream(cells).flatMap(Arrays::stream).toList()) {
                if (formula.matches("\\{?=.*")) {
                    String places = formula.replaceAll("\"[^\"]*\"", "").replaceAll("(ROW|COLUMN)\\([^)]*\\)", "");
                    Matcher address = FIXED.matcher(places);
                    while (address.find()) {
                        String there = address.group(1) == null ? own : address.group(1);
                        if (isInput(document, there, address.group(2) + address.group(3))) {
                            found.add(own + ": " + formula);
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean isInput(CalcDocument document, String page, String address)
            throws com.sun.star.uno.Exception {
        XSpreadsheet there =
                Opened.as(XSpreadsheet.class, document.uno().getSheets().getByName(page));
        Object style = Opened.property(there.getCellRangeByName(address), "CellStyle");
        return style.toString().matches(INPUT_STYLE);
    }

    /** Looks at all cells that are formatted alike together: a few dozen sorts on a page, instead of thousands of cells. */
    static void inputsAreStyledUnlockedAndRuled(CalcDocument document, XSpreadsheet page)
            throws com.sun.star.uno.Exception {
        var sorts = Opened.as(XUniqueCellFormatRangesSupplier.class, Opened.used(page))
                .getUniqueCellFormatRanges();
        for (int i = 0; i < sorts.getCount(); i++) {
            XSheetCellRanges cells = Opened.as(XSheetCellRanges.class, sorts.getByIndex(i));
            String where = cells.getRangeAddressesAsString();
            boolean open = !((CellProtection) Opened.property(cells, "CellProtection")).IsLocked;
            assertEquals(open, Opened.property(cells, "CellStyle").toString().matches(INPUT_STYLE), where);
            // A hint beside a cell of a grid would cover its neighbors.
            if (open && !isInGrid(document, cells)) {
                Object rule = Opened.property(cells, "Validation");
                assertTrue((boolean) Opened.property(rule, "ShowInputMessage"), where + " has no hint");
                assertFalse(Opened.property(rule, "InputMessage").toString().isBlank(), where);
                // Only values and texts: 16 is a formula (CellFlags).
                String formulas = Opened.as(XCellRangesQuery.class, cells)
                        .queryContentCells((short) 16)
                        .getRangeAddressesAsString();
                assertEquals("", formulas, "a formula in an input cell would be typed over");
            }
        }
    }

    private static boolean isInGrid(CalcDocument document, XSheetCellRanges cells) throws com.sun.star.uno.Exception {
        Optional<CellRangeAddress> grid = grid(document);
        return grid.isPresent()
                && Arrays.stream(cells.getRangeAddresses()).allMatch(range -> isWithin(range, grid.get()));
    }

    private static boolean isWithin(CellRangeAddress range, CellRangeAddress grid) {
        return range.Sheet == grid.Sheet
                && range.StartColumn >= grid.StartColumn
                && range.EndColumn <= grid.EndColumn
                && range.StartRow >= grid.StartRow
                && range.EndRow <= grid.EndRow;
    }

    /** The cells that a class fills with readings, for which every sheet that has some uses the same name. */
    private static Optional<CellRangeAddress> grid(CalcDocument document) throws com.sun.star.uno.Exception {
        XNamedRanges names = Opened.as(XNamedRanges.class, Opened.property(document.uno(), "NamedRanges"));
        if (!names.hasByName("grid")) {
            return Optional.empty();
        }
        Object cells =
                Opened.as(XCellRangeReferrer.class, names.getByName("grid")).getReferredCells();
        return Optional.of(Opened.as(XCellRangeAddressable.class, cells).getRangeAddress());
    }

    /**
     * On a protected page Enter goes down to the next cell that is not locked, and from the last of a column to the first of the
     * next column that has one. So the columns of a grid hold no other cells to type into.
     */
    static void enterStaysInTheGrid(CalcDocument document) throws com.sun.star.uno.Exception {
        Optional<CellRangeAddress> found = grid(document);
        if (found.isEmpty()) {
            return;
        }
        CellRangeAddress grid = found.get();
        XSpreadsheet page = Opened.pages(document).get(grid.Sheet);
        var sorts = Opened.as(XUniqueCellFormatRangesSupplier.class, Opened.used(page))
                .getUniqueCellFormatRanges();
        for (int i = 0; i < sorts.getCount(); i++) {
            XSheetCellRanges cells = Opened.as(XSheetCellRanges.class, sorts.getByIndex(i));
            if (!((CellProtection) Opened.property(cells, "CellProtection")).IsLocked) {
                for (CellRangeAddress range : cells.getRangeAddresses()) {
                    // Going into a grid from cells above its first column is no harm.
                    int first = grid.StartColumn + (isAbove(range, grid) ? 1 : 0);
                    assertTrue(
                            isWithin(range, grid) || range.EndColumn < first || range.StartColumn > grid.EndColumn,
                            "Enter would run into " + cells.getRangeAddressesAsString());
                }
            }
        }
    }

    private static boolean isAbove(CellRangeAddress range, CellRangeAddress grid) {
        return range.EndRow < grid.StartRow && range.EndColumn == grid.StartColumn;
    }
}
