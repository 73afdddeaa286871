package org.snugsheet.office.harness;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.view.XRenderable;
import java.util.StringJoiner;

/** What a person who prints a document gets, asked for without printing it. */
public final class Printing {

    private Printing() {}

    /**
     * Counts the sheets of paper of all pages.
     *
     * @param office where the document is open
     * @param document the document
     * @return their number
     */
    public static int sheetsOfPaper(Office office, CalcDocument document) {
        return office.call(
                "counting sheets of paper",
                () -> UnoObjects.as(XRenderable.class, document.uno())
                        .getRendererCount(document.uno(), new PropertyValue[0]));
    }

    /**
     * The print ranges of one page.
     *
     * @param office where the document is open
     * @param document the document
     * @param page its page
     * @return such as {@code A1:D8}, separated by blanks; empty if it is printed whole or not at all
     */
    public static String areas(Office office, CalcDocument document, String page) {
        return office.call("looking at what is printed", () -> {
            XSpreadsheet sheet =
                    UnoObjects.as(XSpreadsheet.class, document.uno().getSheets().getByName(page));
            StringJoiner areas = new StringJoiner(" ");
            for (CellRangeAddress area : UnoObjects.as(XPrintAreas.class, sheet).getPrintAreas()) {
                String name = (String) UnoObjects.property(
                        sheet.getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow),
                        "AbsoluteName");
                areas.add(name.substring(name.lastIndexOf('.') + 1).replace("$", ""));
            }
            return areas.toString();
        });
    }
}
