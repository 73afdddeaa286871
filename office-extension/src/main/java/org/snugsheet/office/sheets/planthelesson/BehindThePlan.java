package org.snugsheet.office.sheets.planthelesson;

import java.util.List;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.ScatterChart;
import org.snugsheet.office.page.SeriesColor;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.shared.SafeWater;

/** The page of {@link PlanTheLesson} with what its chart draws and what its run sheet shows. Nobody types here. */
final class BehindThePlan {

    static final String NAME = "Curves";

    /** The name of a cell: whether the start is too hot for pupils. */
    static final String TOO_HOT = "too_hot";

    /** The name of a cell: how many lines the table of PLAN.LESSON has, up to one more than fit; none without a plan. */
    static final String LINES = "lines";

    private static final int FIRST_ROW = 6;
    private static final int STEPS = 30;
    private static final int LAST_ROW = FIRST_ROW + STEPS;

    private BehindThePlan() {}

    static Page add(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
        page.width("A1:C1", 24).width("D1", 5).width("E1:G1", 24).width("H1", 5).width("I1:J1", 28);
        page.width("K1", 5).width("L1", 90).width("M1:N1", 26).width("O1", 60);
        page.text("A1", "Behind the chart").look("A1", CellStyleName.TITLE).height("A1", 10);
        page.merge("A2:O2").look("A2:O2", CellStyleName.PURPOSE).height("A2", 7);
        page.text("A2", "Nothing to type here: what the chart on the first page draws, and the run sheet shows.");
        page.look("A4:C4", CellStyleName.SECTION).text("A4", "Expected curves, °C");
        page.look("E4:G4", CellStyleName.SECTION).text("E4", "When to read, °C expected");
        page.look("I4:J4", CellStyleName.SECTION).text("I4", "Surroundings, °C");
        heads(page, "A", "B", "C");
        heads(page, "E", "F", "G");
        page.look("I5:J5", CellStyleName.HEAD).text("I5", "minutes").text("J5", "surroundings");
        page.look("A" + FIRST_ROW + ":C" + LAST_ROW, CellStyleName.RESULT)
                .look("E" + FIRST_ROW + ":G" + LAST_ROW, CellStyleName.RESULT);
        for (int row = FIRST_ROW; row <= LAST_ROW; row++) {
            int step = row - FIRST_ROW;
            page.formula("A" + row, "=" + step + "*lesson/" + STEPS);
            // Beyond the last reading the last is repeated: it is drawn on itself, and no cell is left with an error.
            page.formula("E" + row, "=IFERROR(MIN(" + step + ";readings-1)*interval;0)");
            curve(page, "A", "B", row, "bare");
            curve(page, "A", "C", row, "wrapped");
            curve(page, "E", "F", row, "bare");
            curve(page, "E", "G", row, "wrapped");
        }
        page.numbers("A" + FIRST_ROW + ":G" + LAST_ROW, "0.0");
        page.look("I6:J8", CellStyleName.RESULT).numbers("I6:J8", "0.0");
        page.number("I6", 0).formula("I7", "=lesson/2").formula("I8", "=lesson");
        page.formula("J6:J8", "=surroundings");
        writeTable(book, page);
        new PrintSetup(PrintSetup.Way.PORTRAIT, "Behind the chart of a plan").applyUnprinted(page);
        return page;
    }

    private static void writeTable(Book book, Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + RunSheet.ROWS;
        page.look("L4:O4", CellStyleName.SECTION).text("L4", "What PLAN.LESSON answers");
        page.look("L" + FIRST_ROW + ":O" + last, CellStyleName.LABEL)
                .look("M" + FIRST_ROW + ":N" + last, CellStyleName.TENTHS);
        // One line more than the run sheet has, so that it can say when the table is too long for it.
        page.growingTable("L" + FIRST_ROW + ":O" + last, PlanTheLesson.LESSON);
        page.look("I10:J12", CellStyleName.LABEL).look("J11:J12", CellStyleName.RESULT);
        page.text("I10", "For the run sheet").look("I10:J10", CellStyleName.SECTION);
        page.text("I11", "start too hot?").formula("J11", "=" + SafeWater.tooHot("start", "\"C\""));
        page.text("I12", "lines of the plan");
        page.formula("J12", "=SUMPRODUCT(--(LEN(L" + FIRST_ROW + ":L" + last + ")>0))");
        book.names().fixed(TOO_HOT, page, "J11").fixed(LINES, page, "J12");
    }

    /** A cell of the table, for a formula on another page. */
    static String cell(int line, int column) {
        return "$" + NAME + "." + (char) ('L' + column) + (FIRST_ROW + line);
    }

    private static void heads(Page page, String minutes, String bare, String wrapped)
            throws com.sun.star.uno.Exception {
        page.look(minutes + "5:" + wrapped + "5", CellStyleName.HEAD);
        page.text(minutes + "5", "minutes").text(bare + "5", "bare jar").text(wrapped + "5", "wrapped jar");
    }

    private static void curve(Page page, String minutes, String column, int row, String rate)
            throws com.sun.star.uno.Exception {
        // Where the plan is refused there is nothing to draw either.
        page.formula(
                column + row,
                "=IF(" + TOO_HOT + ";\"\";COOL.TEMP($" + minutes + row + ";start;surroundings;" + rate + "))");
    }

    static ScatterChart curves(Page behind) {
        return new ScatterChart(
                "What to expect. Symbols: when to read",
                "Time, minutes",
                "Temperature, °C",
                "Expected temperature against time. The full line with circles is the bare jar, the dashed line with"
                        + " squares the wrapped jar; the symbols stand where the plan says to read. The gray line is the"
                        + " surroundings. Both jars begin alike, and the one with the larger cooling constant cools"
                        + " faster. The values are on the page " + NAME + ".",
                List.of(
                        plot(Plot.Form.GUIDE, behind, "I6:I8", "J6:J8", "J5", SeriesColor.GRAY),
                        plot(Plot.Form.LINE, behind, column("A"), column("B"), "B5", SeriesColor.BLACK),
                        plot(Plot.Form.LINE, behind, column("A"), column("C"), "C5", SeriesColor.VERMILION),
                        plot(Plot.Form.POINTS, behind, column("E"), column("F"), "F5", SeriesColor.BLACK),
                        plot(Plot.Form.POINTS, behind, column("E"), column("G"), "G5", SeriesColor.VERMILION)));
    }

    private static String column(String letter) {
        return letter + FIRST_ROW + ":" + letter + LAST_ROW;
    }

    private static Plot plot(Plot.Form form, Page page, String across, String up, String name, SeriesColor ink) {
        return new Plot(form, new Plot.Cells(page, across), new Plot.Cells(page, up), new Plot.Cells(page, name), ink);
    }
}
