package org.snugsheet.office.page;

import com.sun.star.container.XNameContainer;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.XHeaderFooterContent;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellRangeAddress;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.snugsheet.office.uno.Uno;

/**
 * How a page is printed: which way the paper lies, which cells, shrunk to a single sheet of paper if need be, with one
 * line below. {@link #printOn} changes the paper of all pages of a document.
 *
 * @param way which way the paper lies
 * @param footer the line at the bottom
 * @param breaks whether it goes on below, on a new sheet of paper wherever {@link Page#newPaperAt} says so
 */
public record PrintSetup(Way way, String footer, boolean breaks) {

    private static final int MARGIN = 1000;
    private static final String OUR_STYLES = "Snug ";

    /** Which way the paper lies. */
    public enum Way {
        /** The short side along the bottom. */
        PORTRAIT,
        /** The long side along the bottom. */
        LANDSCAPE
    }

    /**
     * A page on one sheet of paper.
     *
     * @param way which way the paper lies
     * @param footer the line at the bottom
     */
    public PrintSetup(Way way, String footer) {
        this(way, footer, false);
    }

    /**
     * The same on several sheets of paper.
     *
     * @return the set-up
     */
    public PrintSetup withBreaks() {
        return new PrintSetup(way, footer, true);
    }

    /**
     * Sets up a page.
     *
     * @param page the page
     * @param cells what is printed
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void apply(Page page, String cells) throws com.sun.star.uno.Exception {
        style(page);
        print(page, cells);
    }

    /**
     * Says what is printed of a page.
     *
     * @param page the page
     * @param cells what is printed
     */
    public static void print(Page page, String cells) {
        Uno.as(XPrintAreas.class, page.sheet()).setPrintAreas(new CellRangeAddress[] {page.place(cells)});
    }

    /**
     * Sets up a page of which it is said already what is printed.
     *
     * @param page the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void applyStyle(Page page) throws com.sun.star.uno.Exception {
        style(page);
    }

    /**
     * Sets up a page that is not printed with the others; to have it on paper, set its print range.
     *
     * @param page the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void applyUnprinted(Page page) throws com.sun.star.uno.Exception {
        style(page);
        // An empty list differs from none: a new page is printed whole.
        Uno.as(XPrintAreas.class, page.sheet()).setPrintAreas(new CellRangeAddress[0]);
    }

    /**
     * Changes the paper of all pages that were set up here.
     *
     * @param paper the paper
     * @param document their document
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static void printOn(Paper paper, XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        XNameContainer styles = styles(document);
        for (String name : styles.getElementNames()) {
            if (name.startsWith(OUR_STYLES)) {
                Object style = styles.getByName(name);
                boolean lying = (boolean) Uno.property(style, "IsLandscape");
                // The office lays out anew each page whose paper is set, the same paper too.
                if (!Uno.property(style, "Width").equals(paper.width(lying))) {
                    Uno.setAll(style, size(paper, lying));
                }
            }
        }
    }

    private static XNameContainer styles(XSpreadsheetDocument document) throws com.sun.star.uno.Exception {
        Object styles = Uno.as(XStyleFamiliesSupplier.class, document)
                .getStyleFamilies()
                .getByName("PageStyles");
        return Uno.as(XNameContainer.class, styles);
    }

    /** A page that was deleted or renamed leaves its style behind: one that no other page uses is taken. */
    private static String free(Page page, XNameContainer styles) throws com.sun.star.uno.Exception {
        String own = OUR_STYLES + page.name();
        if (!styles.hasByName(own)) {
            return own;
        }
        Set<Object> used = new HashSet<>();
        for (XSpreadsheet sheet : Uno.sheets(page.document())) {
            if (!Uno.as(XNamed.class, sheet).getName().equals(page.name())) {
                used.add(Uno.property(sheet, "PageStyle"));
            }
        }
        String free = own;
        for (int number = 2; used.contains(free); number++) {
            free = own + " " + number;
        }
        return free;
    }

    private static Map<String, Object> size(Paper paper, boolean lying) {
        return Map.of("IsLandscape", lying, "Width", paper.width(lying), "Height", paper.height(lying));
    }

    private void style(Page page) throws com.sun.star.uno.Exception {
        XNameContainer styles = styles(page.document());
        String name = free(page, styles);
        if (!styles.hasByName(name)) {
            styles.insertByName(name, Uno.make(page.document(), "com.sun.star.style.PageStyle"));
        }
        Object style = styles.getByName(name);
        Map<String, Object> values = new HashMap<>(size(page.paper(), way == Way.LANDSCAPE));
        for (String side : new String[] {"Left", "Right", "Top", "Bottom"}) {
            values.put(side + "Margin", MARGIN);
        }
        values.put("CenterHorizontally", true);
        values.put("ScaleToPagesX", (short) 1);
        // The office heeds no breaks where the number of sheets is set.
        values.put("ScaleToPagesY", (short) (breaks ? 0 : 1));
        values.put("HeaderIsOn", false);
        values.put("FooterIsOn", true);
        values.put("FooterIsShared", true);
        Uno.setAll(style, values);
        XHeaderFooterContent line = Uno.as(XHeaderFooterContent.class, Uno.property(style, "RightPageFooterContent"));
        line.getLeftText().setString("");
        line.getCenterText().setString(footer);
        line.getRightText().setString("");
        Uno.set(style, "RightPageFooterContent", line);
        Uno.set(page.sheet(), "PageStyle", name);
        UndoPause.again(page.document());
    }
}
