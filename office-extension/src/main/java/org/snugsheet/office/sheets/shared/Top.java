package org.snugsheet.office.sheets.shared;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.words.Language;

/**
 * The first five rows of a worked sheet: its title, what it is for, what can hurt, and what an input cell looks like.
 *
 * @param language what it is written in
 * @param title the title
 * @param purpose one sentence
 * @param caution what can hurt, behind the word that warns of it
 */
public record Top(Language language, String title, String purpose, String caution) {

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
        across(page, 3, last, CellStyleName.CAUTION)
                .paragraphs("A3", language.words(SharedWords.CAUTION_WORD), caution);
        page.merge("A5:" + sampleEnd + "5")
                .look("A5:" + sampleEnd + "5", CellStyleName.SAMPLE)
                .text("A5", language.words(SharedWords.BOXES));
        page.text(hint + "5", language.words(SharedWords.BOXES_TYPE))
                .look(hint + "5:" + last + "5", CellStyleName.FOLLOWS);
    }

    private static Page across(Page page, int row, String last, CellStyleName look) throws com.sun.star.uno.Exception {
        String cells = "A" + row + ":" + last + row;
        return page.merge(cells).look(cells, look);
    }
}
