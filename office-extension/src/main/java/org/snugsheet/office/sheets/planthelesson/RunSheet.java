package org.snugsheet.office.sheets.planthelesson;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;

/**
 * The second page of {@link PlanTheLesson}: the table of PLAN.LESSON, to print and take along.
 *
 * <p>How long the table is depends on the taps, the tub and the readings. So the lines are ruled by what they hold. The table
 * itself is asked for once, on the page {@link BehindThePlan}: it takes the functions long.
 */
final class RunSheet {

    static final String NAME = "Run sheet";

    static final int FIRST_ROW = 5;
    static final int LAST_ROW = 44;

    /** How many lines of the table fit, and how many columns it has. */
    static final int ROWS = LAST_ROW - FIRST_ROW + 1;

    static final int COLUMNS = 4;

    private RunSheet() {}

    static Page add(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
        page.width("A1", 66).width("B1:C1", 28).width("D1", 136);
        page.height("A1", 10).height("A2", 7).height("A3", 15).height("A4", 13);
        page.height("A" + FIRST_ROW + ":A" + LAST_ROW, 9);
        // The words about the start, the longest.
        page.height("A" + (FIRST_ROW + 1), 13);
        page.text("A1", "Run sheet for the lesson").look("A1", CellStyleName.TITLE);
        page.merge("A2:D2").look("A2:D2", CellStyleName.PURPOSE);
        page.formula(
                "A2",
                "=\"What to prepare, when to read, and what to expect.\"&IF(invented;\" The numbers are"
                        + " invented.\";\"\")");
        page.merge("A3:D3").look("A3:D3", CellStyleName.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "an adult mixes and pours, and checks the start before a pupil touches a jar. Glass breaks, ice hurts"
                        + " bare hands, wet floors are slippery: read the cautions at the end before you begin. Your"
                        + " school’s policy and local rules come first.");
        writeMessage(page);
        writeTable(page);
        new PrintSetup(PrintSetup.Way.PORTRAIT, "Run sheet for the lesson").apply(page, "A1:D" + LAST_ROW);
        return page;
    }

    private static void writeMessage(Page page) throws com.sun.star.uno.Exception {
        page.merge("A4:D4").look("A4:D4", CellStyleName.MESSAGE);
        String tooLong = BehindThePlan.LINES + ">" + ROWS;
        page.formula(
                "A4",
                "=IF(" + BehindThePlan.TOO_HOT + ";safe;IF(" + BehindThePlan.LINES
                        + "=0;\"There is no plan yet. On the page"
                        + " Plan, fill every box; the start must lie between the two taps.\";IF(" + tooLong
                        + ";\"The table is too long for this page, and ends early. Read for a shorter time, or with a"
                        + " finer thermometer.\";\"Print this page and keep it at hand. An adult reads the cautions"
                        + " below before the lesson begins.\")))");
        Highlight.when(page, "A4:D4", BehindThePlan.TOO_HOT, CellStyleName.ALARM);
        Highlight.when(
                page, "A4:D4", "OR(" + BehindThePlan.LINES + "=0;" + tooLong + ")", CellStyleName.TROUBLE_MESSAGE);
    }

    private static void writeTable(Page page) throws com.sun.star.uno.Exception {
        String all = "A" + FIRST_ROW + ":D" + LAST_ROW;
        // No number format of the cells themselves: it would go before that of the looks below.
        page.wrapped(all);
        for (int line = 0; line < ROWS; line++) {
            for (int column = 0; column < COLUMNS; column++) {
                String there = BehindThePlan.cell(line, column);
                // In a copy to share, a cell that showed nothing is empty, and an empty one would show as 0.
                page.formula(
                        (char) ('A' + column) + "" + (FIRST_ROW + line),
                        "=IF(LEN(" + there + ")=0;\"\";" + there + ")");
            }
        }
        rule(page, "A", CellStyleName.LABEL);
        rule(page, "B", CellStyleName.TENTHS);
        rule(page, "C", CellStyleName.TENTHS);
        rule(page, "D", CellStyleName.LABEL);
    }

    // Told by what kind of cells a line has, for the words follow the language of the document: a heading has words in
    // its second column, a reading a number in its first; a caution has nothing between its first and its last, and
    // follows the readings, if there are any; a count of jars has no unit. The first condition that holds decides.
    private static void rule(Page page, String column, CellStyleName otherwise) throws com.sun.star.uno.Exception {
        String cells = column + FIRST_ROW + ":" + column + LAST_ROW;
        String first = "$A$" + FIRST_ROW + ":$A";
        String noUnit = "LEN($A1)>0;LEN($C1)=0;ISTEXT($A1)";
        Highlight.when(page, cells, "AND(ISTEXT($B1);LEN($B1)>0)", CellStyleName.HEAD);
        Highlight.when(
                page,
                cells,
                "AND(" + noUnit + ";LEN($B1)=0;OR(COUNT(" + first + "1)>0;COUNT(" + first + "$" + LAST_ROW + ")=0))",
                CellStyleName.CAUTION_LINE);
        Highlight.when(page, cells, "ISNUMBER($A1)", column.equals("A") ? CellStyleName.RESULT : CellStyleName.TENTHS);
        if (column.equals("B")) {
            Highlight.when(page, cells, "AND(" + noUnit + ";ISNUMBER($B1))", CellStyleName.COUNT);
        }
        Highlight.when(page, cells, "LEN($A1)>0", otherwise);
    }
}
