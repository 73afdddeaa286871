package org.snugsheet.sheets;

import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Look;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.sheets.builder.Book;

/**
 * The second page of {@link PlanTheLesson}: the table of PLAN.LESSON, to print and take along.
 *
 * <p>How long the table is depends on the taps, the tub and the readings. So one array formula asks for each of its lines, and
 * leaves those below its end empty; the lines are ruled by what they hold.
 */
final class RunSheet {

    static final String NAME = "Run sheet";

    static final int FIRST_ROW = 5;
    static final int LAST_ROW = 38;

    private RunSheet() {}

    static Page add(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
        page.width("A1", 66).width("B1:C1", 26).width("D1", 136);
        page.height("A1", 10).height("A2", 7).height("A3", 15).height("A4", 13);
        page.height("A" + FIRST_ROW + ":A" + LAST_ROW, 9);
        page.text("A1", "Run sheet for the lesson").look("A1", Look.TITLE);
        page.merge("A2:D2").look("A2:D2", Look.PURPOSE);
        page.text("A2", "What to prepare, when to read, and what to expect. It follows from the page Plan.");
        page.merge("A3:D3").look("A3:D3", Look.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "an adult mixes and pours, and checks the start before a pupil touches a jar. Glass breaks, ice hurts bare"
                        + " hands, wet floors are slippery: read the cautions at the end before you begin. Your"
                        + " school’s policy and local rules come first.");
        writeMessage(page);
        writeTable(page);
        new PrintSetup(PrintSetup.Way.UPRIGHT, "Run sheet for the lesson: invented numbers")
                .apply(page, "A1:D" + LAST_ROW);
        return page;
    }

    private static void writeMessage(Page page) throws com.sun.star.uno.Exception {
        page.merge("A4:D4").look("A4:D4", Look.MESSAGE);
        String lines = "ROWS(" + PlanTheLesson.LESSON + ")";
        page.formula(
                "A4",
                "=IF(ISERROR(" + lines
                        + ");IF(LEFT(safe;7)=\"Too hot\";safe;\"There is no plan yet. On the page Plan, fill"
                        + " every box; the start must lie between the two taps.\");IF(" + lines + ">"
                        + (LAST_ROW - FIRST_ROW + 1)
                        + ";\"The table is too long for this page, and ends early. Read for a shorter time, or with a"
                        + " finer thermometer.\";\"Print this page and keep it at hand. An adult reads the cautions below before the lesson begins.\"))");
        Highlight.when(page, "A4:D4", "LEFT($A$4;7)=\"Too hot\"", Look.ALARM);
        Highlight.when(page, "A4:D4", "LEFT($A$4;1)=\"T\"", Look.TROUBLE_MESSAGE);
    }

    private static void writeTable(Page page) throws com.sun.star.uno.Exception {
        String all = "A" + FIRST_ROW + ":D" + LAST_ROW;
        // No number format of the cells themselves: it would go before that of the looks below.
        page.wrapped(all);
        page.table(
                all,
                "=IFERROR(INDEX(" + PlanTheLesson.LESSON + ";ROW($A$1:$A$" + (LAST_ROW - FIRST_ROW + 1)
                        + ");COLUMN($A$1:$D$1));\"\")");
        rule(page, "A", Look.LABEL);
        rule(page, "B", Look.TENTHS);
        rule(page, "C", Look.TENTHS);
        rule(page, "D", Look.LABEL);
    }

    // A text out of a function’s table equals no other text until it is put together anew: hence the &"". The first
    // condition that holds decides.
    private static void rule(Page page, String column, Look otherwise) throws com.sun.star.uno.Exception {
        String cells = column + FIRST_ROW + ":" + column + LAST_ROW;
        Highlight.when(page, cells, "OR($A1&\"\"=\"what\";$A1&\"\"=\"minute\")", Look.HEAD);
        Highlight.when(page, cells, "$A1&\"\"=\"caution\"", Look.CAUTION);
        Highlight.when(page, cells, "ISNUMBER($A1)", column.equals("A") ? Look.RESULT : Look.TENTHS);
        Highlight.when(page, cells, "AND($A1&\"\"=\"jars of each wrap\";ISNUMBER(" + column + "1))", Look.COUNT);
        Highlight.when(page, cells, "$A1&\"\"<>\"\"", otherwise);
    }
}
