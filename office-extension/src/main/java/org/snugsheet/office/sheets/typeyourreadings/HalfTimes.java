package org.snugsheet.office.sheets.typeyourreadings;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.BigBars;
import org.snugsheet.office.sheets.builder.Book;

/** The last page of {@link TypeYourReadings}, with what its bars draw: only jars that no check holds back. Nobody types here. */
final class HalfTimes {

    private static final String NAME = "Bars";
    private static final int FIRST_ROW = 6;

    private HalfTimes() {}

    static BigBars add(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
        int last = FIRST_ROW + TypeYourReadings.JARS - 1;
        page.width("A1", 50).width("B1", 34).height("A1", 10);
        page.text("A1", "Behind the bars").look("A1", CellStyleName.TITLE);
        page.text("A2", "Nothing to type here: the bars of the first page.").look("A2", CellStyleName.PURPOSE);
        page.wrapped("A2").merge("A2:B2").height("A2", 12);
        page.look("A4:B4", CellStyleName.SECTION).text("A4", "Jars that can be used");
        page.look("A5:B5", CellStyleName.HEAD).text("A5", "jar").text("B5", "half-time, minutes");
        // No bar and no number for a jar that cannot be used; a text in its place would be taken for a heading.
        page.look("A6:A" + last, CellStyleName.LABEL)
                .look("B6:B" + last, CellStyleName.RESULT)
                .numbers("B6:B" + last, "0;;");
        for (int row = FIRST_ROW; row <= last; row++) {
            String there = "$" + TypeYourReadings.PAGE + ".";
            int line = row - FIRST_ROW + TypeYourReadings.FIRST_RESULT;
            page.formula("A" + row, "=IF(" + there + "J" + line + "=\"OK\";" + there + "D" + line + "&\"\";\"\")");
            String half = there + "G" + line;
            page.formula(
                    "B" + row, "=IF(AND(" + there + "J" + line + "=\"OK\";ISNUMBER(" + half + "));" + half + ";0)");
        }
        new PrintSetup(PrintSetup.Way.PORTRAIT, "Behind the bars").applyUnprinted(page);
        page.protect();
        return new BigBars(
                "Half-times of the jars that can be used",
                "minutes",
                "One horizontal bar for each jar that no check accuses: its half-time in minutes. The longer the bar, the"
                        + " better the wrap. The values are on the page " + NAME + ".",
                10,
                new Plot.Cells(page, "A5:B" + last));
    }
}
