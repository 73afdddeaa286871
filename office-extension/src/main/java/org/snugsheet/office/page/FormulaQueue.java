package org.snugsheet.office.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Pages whose cells wait until all names of a document are there. For each new name the office takes every formula apart and puts it together
 * again, which takes long and, in LibreOffice 7.4, can end the office.
 */
public final class FormulaQueue {

    private final List<Page> pages = new ArrayList<>();

    void add(Page page) {
        pages.add(page);
    }

    /**
     * Writes what waits.
     *
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void write() throws com.sun.star.uno.Exception {
        for (Page page : pages) {
            page.writeCells();
        }
        for (Page page : pages) {
            page.finish();
        }
    }
}
