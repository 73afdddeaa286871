package org.snugsheet.office.sheets.shared;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;

/**
 * The first five rows of a worked sheet: its title, what it is for, what can hurt, and what an input cell looks like.
 *
 * @param title the title
 * @param purpose one sentence
 * @param caution what can hurt, behind the word “Caution:”
 */
public record Top(String title, String purpose, String caution) {

    /** The first row below. */
    static final int NEXT_ROW = 6;

    /**
     * Writes it.
     *
     * @param page the page
     * @param last its last column
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void write(Page page, String last) throws com.sun.star.uno.Exception {
        write(page, "A", "B", last);
    }

    /**
     * Writes it where the sample of an input cell needs more columns than one.
     *
     * @param page the page
     * @param sampleEnd the last column of the sample
     * @param hint the first column behind it
     * @param last the last column of the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void write(Page page, String sampleEnd, String hint, String last) throws com.sun.star.uno.Exception {
        page.height("A1", 10)
                .height("A2", 7)
                .height("A3", 10.5)
                .height("A4", 1.5)
                .height("A5", 6);
        page.text("A1", title).look("A1", CellStyleName.TITLE);
        across(page, 2, last, CellStyleName.PURPOSE).text("A2", purpose);
        across(page, 3, last, CellStyleName.CAUTION).paragraphs("A3", "Caution:", caution);
        page.merge("A5:" + sampleEnd + "5")
                .look("A5:" + sampleEnd + "5", CellStyleName.SAMPLE)
                .text("A5", "a boxed cell");
        page.text(
                        hint + "5",
                        "is for you to type in. Everything else works itself out and is locked against slips; there is"
                                + " no password (Tools, Protect Sheet).")
                .look(hint + "5:" + last + "5", CellStyleName.FOLLOWS);
    }

    /**
     * Writes it on an upright page, where long lines go on in a second one.
     *
     * @param page the page
     * @param last its last column
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void writeNarrow(Page page, String last) throws com.sun.star.uno.Exception {
        write(page, last);
        page.height("A2", 12).height("A5", 9.5).merge("B5:" + last + "5").wrapped("B5:" + last + "5");
    }

    private static Page across(Page page, int row, String last, CellStyleName look) throws com.sun.star.uno.Exception {
        String cells = "A" + row + ":" + last + row;
        return page.merge(cells).look(cells, look);
    }
}
