package org.snugsheet.office.sharing;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.CellVertJustify2;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.util.XMergeable;
import java.util.List;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Paper;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.UndoPause;
import org.snugsheet.office.uno.Uno;
import org.snugsheet.office.words.Language;

/** How the page “How this was worked out” looks, on the screen and on paper. */
final class WorkedOutLook {

    /** The last column of the table, in a copy that goes on working. */
    static final int STATE_COLUMN = 4;

    /** With that one. */
    static final int COLUMNS = STATE_COLUMN + 1;

    private static final int[] WIDTHS = {3600, 2400, 10000, 13000, 5000};

    private static final int INTRODUCTION_HEIGHT = 1500;

    /**
     * As many lines as two sheets of paper hold that lie on their long side. That much can be read beside the answers; the list of a lesson book
     * would be twenty sheets and more that nobody asked for, behind those that somebody wants on paper.
     */
    private static final int MOST_LINES = 80;

    /** About as wide as a letter is, with what a line loses where it breaks between words; in 1/100 mm as the widths are. */
    private static final int LETTER_WIDTH = 180;

    private WorkedOutLook() {}

    /** Bold heads, wrapped lines and widths. */
    static void look(XSpreadsheetDocument copy, XSpreadsheet page, int columns, int last)
            throws com.sun.star.uno.Exception {
        int head = WorkedOutPage.HEAD_ROW;
        XCellRange table = page.getCellRangeByPosition(0, head, columns - 1, Math.max(head, last));
        set(page.getCellRangeByPosition(0, 0, 0, 0), "CharWeight", FontWeight.BOLD);
        set(page.getCellRangeByPosition(0, 0, 0, 0), "CharHeight", 16f);
        set(page.getCellRangeByPosition(0, head, columns - 1, head), "CharWeight", FontWeight.BOLD);
        set(table, "IsTextWrapped", true);
        set(table, "VertJustify", CellVertJustify2.TOP);
        XCellRange intro = page.getCellRangeByPosition(0, 1, STATE_COLUMN - 1, 1);
        Uno.as(XMergeable.class, intro).merge(true);
        set(intro, "IsTextWrapped", true);
        set(intro, "VertJustify", CellVertJustify2.TOP);
        for (int i = 0; i < columns; i++) {
            UndoPause.again(copy);
            Uno.set(Uno.as(XColumnRowRange.class, page).getColumns().getByIndex(i), "Width", WIDTHS[i]);
        }
        UndoPause.again(copy);
        Uno.set(Uno.as(XColumnRowRange.class, page).getRows().getByIndex(1), "Height", INTRODUCTION_HEIGHT);
        UndoPause.again(copy);
    }

    /**
     * Whether a table would fill more paper than anybody wants. Counted from its letters, for how high its rows become is known only once they are
     * written, below the introduction that says it.
     */
    static boolean isLong(List<List<String>> table) {
        return table.stream().mapToInt(WorkedOutLook::lines).sum() > MOST_LINES;
    }

    private static int lines(List<String> row) {
        int lines = 1;
        for (int i = 0; i < row.size(); i++) {
            lines = Math.max(lines, 1 + row.get(i).length() * LETTER_WIDTH / WIDTHS[i]);
        }
        return lines;
    }

    /**
     * As wide as the paper, which lies on its side. The page has a style of its own, since the one that a new page has is often that of
     * somebody’s own pages. The heads stand on the first sheet of paper only: in an .ods with rows that are repeated the office (7.4) works out the
     * formulas above them before it has read them, and the warning was a 0.
     */
    static void setUpForPaper(XSpreadsheetDocument copy, XSpreadsheet page, Language language, CellRangeAddress printed)
            throws com.sun.star.uno.Exception {
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(SharingWords.PAGE))
                .withBreaks()
                .applyStyle(new Page(copy, page, Uno.as(XNamed.class, page).getName()).on(paper(copy)));
        print(copy, page, List.of(printed));
    }

    private static void print(XSpreadsheetDocument document, XSpreadsheet page, List<CellRangeAddress> areas)
            throws com.sun.star.uno.Exception {
        Uno.as(XPrintAreas.class, page).setPrintAreas(areas.toArray(CellRangeAddress[]::new));
        UndoPause.again(document);
    }

    /** A copy in Spanish may be printed on Letter: so it is not the language that tells, but the first page. */
    private static Paper paper(XSpreadsheetDocument copy) throws com.sun.star.uno.Exception {
        Object styles =
                Uno.as(XStyleFamiliesSupplier.class, copy).getStyleFamilies().getByName("PageStyles");
        String name = (String) Uno.property(Uno.sheets(copy).get(0), "PageStyle");
        Object style = Uno.as(XNameAccess.class, styles).getByName(name);
        int width = ((Number) Uno.property(style, "Width")).intValue();
        int height = ((Number) Uno.property(style, "Height")).intValue();
        return Paper.withShortSide(Math.min(width, height));
    }

    /**
     * How a page is printed, to be given to it once more.
     *
     * @param style the name of its page style
     * @param areas what is printed; empty if it is all
     */
    record OnPaper(String style, List<CellRangeAddress> areas) {

        OnPaper {
            areas = List.copyOf(areas);
        }

        static OnPaper of(XSpreadsheet page) throws com.sun.star.uno.Exception {
            return new OnPaper(
                    (String) Uno.property(page, "PageStyle"),
                    List.of(Uno.as(XPrintAreas.class, page).getPrintAreas()));
        }

        /** The style is still there: a page that goes leaves it behind. */
        void giveTo(XSpreadsheetDocument document, XSpreadsheet page) throws com.sun.star.uno.Exception {
            Uno.set(page, "PageStyle", style);
            UndoPause.again(document);
            if (!areas.isEmpty()) {
                print(document, page, areas);
            }
        }
    }

    private static void set(XCellRange range, String property, Object value) throws com.sun.star.uno.Exception {
        Uno.as(XPropertySet.class, range).setPropertyValue(property, value);
    }
}
