package org.snugsheet.sheets.builder;

import com.sun.star.container.XNameContainer;
import com.sun.star.sheet.XHeaderFooterContent;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.CellRangeAddress;

/**
 * How a page is printed: on which paper, which cells, shrunk to a single sheet of paper if need be, with one line below.
 *
 * @param paper the paper
 * @param footer the line at the bottom
 */
public record PrintSetup(Paper paper, String footer) {

    private static final int MARGIN = 1000;

    /** Papers, in 1/100 mm (ISO 216; ANSI/ASME Y14.1 for Letter). */
    public enum Paper {
        /** A4, upright. */
        A4_UPRIGHT(21000, 29700),
        /** A4, lying. */
        A4_LYING(29700, 21000),
        /** US Letter, upright. */
        LETTER_UPRIGHT(21590, 27940),
        /** US Letter, lying. */
        LETTER_LYING(27940, 21590);

        private final int width;
        private final int height;

        Paper(int width, int height) {
            this.width = width;
            this.height = height;
        }
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
        Uno.as(XPrintAreas.class, page.sheet()).setPrintAreas(new CellRangeAddress[] {page.place(cells)});
    }

    /**
     * Sets up a page that is not printed with the others; whoever wants it on paper sets its print range.
     *
     * @param page the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void applyUnprinted(Page page) throws com.sun.star.uno.Exception {
        style(page);
        // An empty list differs from none: a new page is printed whole.
        Uno.as(XPrintAreas.class, page.sheet()).setPrintAreas(new CellRangeAddress[0]);
    }

    private void style(Page page) throws com.sun.star.uno.Exception {
        String name = "Snug " + page.name();
        Object style = Uno.make(page.document(), "com.sun.star.style.PageStyle");
        Object styles = Uno.as(XStyleFamiliesSupplier.class, page.document())
                .getStyleFamilies()
                .getByName("PageStyles");
        Uno.as(XNameContainer.class, styles).insertByName(name, style);
        Uno.set(style, "IsLandscape", paper.width > paper.height);
        Uno.set(style, "Width", paper.width);
        Uno.set(style, "Height", paper.height);
        for (String side : new String[] {"Left", "Right", "Top", "Bottom"}) {
            Uno.set(style, side + "Margin", MARGIN);
        }
        Uno.set(style, "CenterHorizontally", true);
        Uno.set(style, "ScaleToPagesX", (short) 1);
        Uno.set(style, "ScaleToPagesY", (short) 1);
        Uno.set(style, "HeaderIsOn", false);
        Uno.set(style, "FooterIsOn", true);
        Uno.set(style, "FooterIsShared", true);
        XHeaderFooterContent line = Uno.as(XHeaderFooterContent.class, Uno.get(style, "RightPageFooterContent"));
        line.getLeftText().setString("");
        line.getCenterText().setString(footer);
        line.getRightText().setString("");
        Uno.set(style, "RightPageFooterContent", line);
        Uno.set(page.sheet(), "PageStyle", name);
    }
}
