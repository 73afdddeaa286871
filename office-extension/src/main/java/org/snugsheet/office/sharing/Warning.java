package org.snugsheet.office.sharing;

import com.sun.star.awt.FontWeight;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XFormulaQuery;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snugsheet.office.page.Palette;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** The line on each page of a copy that shows as soon as what was typed is no longer what the answers were worked out from. */
final class Warning {

    /** Cells with this style promise that results follow what is typed; in a copy they do not. */
    static final String FOLLOWS = "Snugsheet follows";

    private static final int FIRST_LINES = 12;
    private static final int ONE_SCREEN = 30;

    private Warning() {}

    /** What is on a page before the line is there, and where the line goes. */
    record Place(Area cell, String before, boolean promised) {}

    /**
     * Empties the cells that promise to follow, and finds a place for the line on a page.
     *
     * @param sheet the page
     * @param followed what answers depend on: none of it is written over
     */
    static List<Place> places(XSpreadsheet sheet, Followed followed) throws com.sun.star.uno.Exception {
        List<Place> places = new ArrayList<>(promises(sheet));
        if (places.isEmpty()) {
            places.add(free(sheet, followed));
        }
        return places;
    }

    /**
     * The cells of a page that promise that results follow.
     *
     * @param sheet the page
     */
    static List<Place> promises(XSpreadsheet sheet) throws com.sun.star.uno.Exception {
        List<Place> found = new ArrayList<>();
        Area used = FollowedCells.used(sheet);
        XCellRange all = sheet.getCellRangeByPosition(0, 0, used.right(), used.bottom());
        XSheetCellRanges filled = Uno.as(XCellRangesQuery.class, all).queryContentCells((short)
                (com.sun.star.sheet.CellFlags.STRING | com.sun.star.sheet.CellFlags.FORMULA));
        for (CellRangeAddress block : filled.getRangeAddresses()) {
            XCellRange range =
                    sheet.getCellRangeByPosition(block.StartColumn, block.StartRow, block.EndColumn, block.EndRow);
            Object style = Uno.property(range, "CellStyle");
            // A block of one style tells it for all of its cells, one of several tells none.
            if (style instanceof String one && !one.isEmpty() && !one.equals(FOLLOWS)) {
                continue;
            }
            for (int row = block.StartRow; row <= block.EndRow; row++) {
                for (int column = block.StartColumn; column <= block.EndColumn; column++) {
                    XCell cell = sheet.getCellByPosition(column, row);
                    if (FOLLOWS.equals(Uno.property(cell, "CellStyle"))) {
                        found.add(new Place(new Area(block.Sheet, column, row, column, row), cell.getFormula(), true));
                    }
                }
            }
        }
        return found;
    }

    /** A free line near the top; otherwise below a page that is seen at once; otherwise right of everything. */
    private static Place free(XSpreadsheet sheet, Followed followed) throws com.sun.star.uno.Exception {
        Area used = FollowedCells.used(sheet);
        for (int row = 0; row < Math.min(FIRST_LINES, used.bottom()); row++) {
            Area line = new Area(used.sheet(), 0, row, used.right(), row);
            if (!followed.isInput(line) && isFree(sheet, line) && isFreeOfFormulas(sheet, line)) {
                return new Place(new Area(used.sheet(), 0, row, 0, row), "", false);
            }
        }
        if (used.bottom() < ONE_SCREEN) {
            int row = used.bottom() + 2;
            Area line = new Area(used.sheet(), 0, row, used.right(), row);
            if (!followed.isInput(line) && isFreeOfFormulas(sheet, line)) {
                return new Place(new Area(used.sheet(), 0, row, 0, row), "", false);
            }
        }
        int column = used.right() + 2;
        return new Place(new Area(used.sheet(), column, 0, column, 0), "", false);
    }

    private static boolean isFree(XSpreadsheet sheet, Area line) throws com.sun.star.uno.Exception {
        XCellRange range = range(sheet, line);
        int anything = 1 | 2 | 4 | 8 | 16;
        boolean isEmpty = Uno.as(XCellRangesQuery.class, range)
                        .queryContentCells((short) anything)
                        .getRangeAddresses()
                        .length
                == 0;
        Object row = Uno.as(XColumnRowRange.class, range).getRows().getByIndex(0);
        boolean isSeen = Boolean.TRUE.equals(Uno.property(row, "IsVisible"))
                && ((Number) Uno.property(row, "Height")).intValue() >= 400;
        boolean isMerged = Uno.as(com.sun.star.util.XMergeable.class, range).getIsMerged();
        return isEmpty && isSeen && !isMerged && isLocked(range);
    }

    /** A cell that is open in a protected sheet is for typing. */
    private static boolean isLocked(XCellRange range) throws com.sun.star.uno.Exception {
        Object protection = Uno.property(range, "CellProtection");
        return protection instanceof com.sun.star.util.CellProtection locked && locked.IsLocked;
    }

    private static boolean isFreeOfFormulas(XSpreadsheet sheet, Area line) throws com.sun.star.uno.Exception {
        return Uno.as(XFormulaQuery.class, range(sheet, line))
                        .queryDependents(false)
                        .getRangeAddresses()
                        .length
                == 0;
    }

    private static XCellRange range(XSpreadsheet sheet, Area area) throws com.sun.star.uno.Exception {
        return sheet.getCellRangeByPosition(area.left(), area.top(), area.right(), area.bottom());
    }

    /**
     * Puts the line where a page has its place, and empties its other promises.
     *
     * @param words what is said of the answers
     * @param day when the answers were worked out
     */
    static void write(
            XSpreadsheet sheet,
            List<Place> places,
            String pageName,
            SharingWords words,
            Language language,
            LocalDate day)
            throws com.sun.star.uno.Exception {
        for (int i = 0; i < places.size(); i++) {
            Area at = places.get(i).cell();
            XCell cell = sheet.getCellByPosition(at.left(), at.top());
            if (i > 0) {
                cell.setFormula("");
                continue;
            }
            cell.setFormula(formula(pageName, words, language, day));
            look(cell, places.get(i).promised());
        }
    }

    /** In the color of cautions, and bold; in the place of a promise it wraps as that did. */
    static void look(XCell cell, boolean wraps) throws com.sun.star.uno.Exception {
        Uno.set(cell, "CharColor", Palette.CAUTION);
        Uno.set(cell, "CharWeight", FontWeight.BOLD);
        if (!wraps) {
            Uno.set(cell, "IsTextWrapped", false);
        }
    }

    static String formula(String pageName, SharingWords words, Language language, LocalDate day) {
        String written =
                day.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(language.locale()));
        String sentence = language.say(words, written, pageName).replace("\"", "\"\"");
        return "=IF(" + FollowedCells.total(pageName) + "=0;\"\";\"" + sentence + "\")";
    }

    /**
     * Takes the lines away and puts back what was there.
     *
     * @param followed where the cells are now
     */
    static void remove(
            XSpreadsheetDocument copy,
            List<WarningLine> lines,
            Map<Integer, Optional<Area>> followed,
            OfficeParser parser)
            throws com.sun.star.uno.Exception {
        List<XSpreadsheet> sheets = Uno.sheets(copy);
        Harmless harmless = new Harmless(parser, copy);
        for (WarningLine line : lines) {
            Optional<Area> place = followed.getOrDefault(line.place(), Optional.empty());
            if (place.isEmpty()) {
                continue;
            }
            Area at = place.get();
            XSpreadsheet sheet = sheets.get(at.sheet());
            XCell cell = sheet.getCellByPosition(at.left(), at.top());
            String now = cell.getFormula();
            boolean isOurs = now.isEmpty()
                    || (now.startsWith("=IF(") && now.contains(Area.fixed(FollowedCells.DIFFERENT, 0) + "=0;\"\";"));
            if (!isOurs) {
                continue;
            }
            SheetProtection.change(copy, sheet, () -> {
                if (line.before().startsWith("=")) {
                    if (Harmless.beforeParsing(line.before()).isEmpty()
                            && harmless.any(parser.parts(line.before(), at.first()))
                                    .isEmpty()) {
                        Uno.as(com.sun.star.sheet.XFormulaTokens.class, cell)
                                .setTokens(parser.parts(line.before(), at.first()));
                    }
                } else {
                    Uno.as(XText.class, cell).setString(line.before());
                }
                Uno.as(com.sun.star.beans.XPropertyState.class, cell).setPropertyToDefault("CharColor");
                Uno.as(com.sun.star.beans.XPropertyState.class, cell).setPropertyToDefault("CharWeight");
            });
        }
    }
}
