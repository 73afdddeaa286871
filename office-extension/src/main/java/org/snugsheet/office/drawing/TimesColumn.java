package org.snugsheet.office.drawing;

import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.TablePart;

/**
 * The times in minutes: times of the day count from the first one; a stopwatch shows minutes already.
 *
 * @param times the cells of the times
 * @param rows how many rows there are for them
 */
record TimesColumn(String times, int rows) {

    /** No stopwatch shows so many minutes, but a cell with a date and a time of the day holds more days. */
    private static final int DAYS_SINCE_1900 = 20000;

    /** The formula of all cells together. */
    String formula(Page page, String cells) {
        String given = "IF(ISBLANK(" + times + ");\"\";" + times + ")";
        String ofTheDay = "OR(COUNTIF(" + times + ";\"*:*\")>0;MAX(" + times + ")>" + DAYS_SINCE_1900 + ";AND(COUNT("
                + times + ")>1;MAX(" + times + ")<1))";
        String all = "IF(" + ofTheDay + ";IFERROR(COOL.MINUTES(" + times + ");" + given + ");" + given + ")";
        return "=IF(ROW($A$1:$A$" + rows + ")>ROWS(" + times + ");\"\";" + TablePart.of(page, cells, all, 1, 1) + ")";
    }
}
