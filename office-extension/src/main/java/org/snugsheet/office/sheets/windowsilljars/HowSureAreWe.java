package org.snugsheet.office.sheets.windowsilljars;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.TablePart;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.shared.Invented;

/**
 * The second page of {@link WindowsillJars}: how surely the readings tell the jars apart, and how surely they tell the curve
 * of one jar. Nobody types here; all of it follows from the first page.
 *
 * <p>The tables of the cell functions may get shorter or longer with the readings: jars of one name share a row, readings
 * that stand out get rows of their own. So there is room for the longest, and the rows beyond it stay empty.
 */
public final class HowSureAreWe {

    /** The tab; the office allows no question mark in it. */
    public static final String NAME = "How sure are we";

    /** The jar that is reported on and drawn, from 0 on: the one in fleece. */
    static final int SHOWN = 3;

    private static final int FIRST_COMPARED = 0;
    private static final int SECOND_COMPARED = 1;

    private static final String RANK = "COOL.RANK(times;all_readings;jars;surroundings;mark;\"C\";0.1)";
    private static final int RANK_ROW = 5;
    private static final int REPORT_ROW = 17;
    // The heading, six quantities, and Newton’s law; then the other laws, and up to two readings that stand out.
    private static final int REPORT_SURE = 8;
    private static final int REPORT_MORE = 5;

    private HowSureAreWe() {}

    /**
     * Fills the page, all but its chart.
     *
     * @param page the page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static void fill(Page page) throws com.sun.star.uno.Exception {
        setSizes(page);
        page.text("A1", NAME + "?").look("A1", CellStyleName.TITLE);
        page.merge("A2:H2").look("A2:H2", CellStyleName.PURPOSE);
        page.formula(
                "A2",
                Invented.heading(
                        "What the readings of the first page can tell, and what they cannot. Nothing to type here."));
        writeRanking(page);
        writeVerdict(page);
        writeReport(page);
        writeNotes(page);
        new PrintSetup(PrintSetup.Way.PORTRAIT, "How sure are we? Four wrapped jars").apply(page, "A1:H33");
    }

    /**
     * Draws the chart.
     *
     * @param book the document
     * @param page this page
     * @param behind the page with the cells of the charts
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static void drawChart(Book book, Page page, Page behind) throws com.sun.star.uno.Exception {
        BehindTheChart.band(behind).draw(book.office(), page, "curve_with_band", "A32:E33");
    }

    /** A formula for the name of a jar. */
    static String nameOf(int jar) {
        return "INDEX(jars;1;" + (jar + 1) + ")";
    }

    /** A formula for the readings of a jar. */
    static String readingsOf(int jar) {
        return "INDEX(same_scale;0;" + (jar + 1) + ")";
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 15).width("B1", 58).width("C1", 18).width("D1", 30);
        page.width("E1:F1", 24).width("G1", 34).width("H1", 40);
        page.height("A1:A31", 5.5).height("A1", 10).height("A2", 7).height("A3", 2);
        page.height("A4", 6.5).height("A12", 6.5).height("A16", 6.5).height("A31", 6.5);
        page.height("A14", 8).height("A24:A27", 13).height("A5", 9.5).height("A17", 9.5);
        page.height("A32", 2).height("A33", 122);
    }

    private static void writeRanking(Page page) throws com.sun.star.uno.Exception {
        int last = RANK_ROW + WindowsillJars.JARS.size();
        page.look("A4:H4", CellStyleName.SECTION).text("A4", "Which wrap is best? The best comes first");
        page.look("A5:H5", CellStyleName.NARROW_HEAD)
                .look("A6:H" + last, CellStyleName.RESULT)
                .look("B6:B" + last, CellStyleName.LABEL);
        page.growingTable("A" + RANK_ROW + ":G" + last, RANK);
        // There is no room for the reason why a jar is held back, which the first page gives.
        String beside = "H6:H" + last;
        page.text("H5", "not told apart from")
                .table(
                        beside,
                        "=IFERROR(IF((LEN(B6:B" + last + ")>0)*(1-ISNUMBER(A6:A" + last
                                + "));\"held back: see page Jars\";" + TablePart.of(page, beside, RANK, 2, 8)
                                + "&\"\");\"\")");
        page.numbers("D6:F" + last, "0.0000").numbers("G6:G" + last, "0.0");
    }

    private static void writeVerdict(Page page) throws com.sun.star.uno.Exception {
        page.look("A12:H12", CellStyleName.SECTION).text("A12", "Is one of two jars really slower?");
        page.formula(
                "A13",
                "=\"The first jar: \"&" + nameOf(FIRST_COMPARED) + "&\". The second jar: \"&" + nameOf(SECOND_COMPARED)
                        + "&\".\"");
        String held = heldBack(FIRST_COMPARED) + heldBack(SECOND_COMPARED);
        page.merge("A14:H14").look("A14:H14", CellStyleName.MESSAGE);
        page.formula(
                "A14",
                "=" + held + "IFERROR(COOL.VERDICT(times;" + readingsOf(FIRST_COMPARED) + ";times;"
                        + readingsOf(SECOND_COMPARED)
                        + ";surroundings;mark;\"C\";0.1);\"No verdict: fix first what the page Jars says.\")))");
    }

    private static String heldBack(int jar) {
        return "IF(INDEX(checks;1;" + (jar + 1) + ")<>\"OK\";\"No verdict: \"&" + nameOf(jar) + "&\" is held back.\";";
    }

    private static void writeReport(Page page) throws com.sun.star.uno.Exception {
        int last = REPORT_ROW + REPORT_SURE + REPORT_MORE - 1;
        page.look("A16:H16", CellStyleName.SECTION)
                .formula(
                        "A16",
                        "=\"All that the readings of one jar tell: \"&" + nameOf(SHOWN) + "&IF(INDEX(checks;1;"
                                + (SHOWN + 1) + ")=\"OK\";\"\";\", which is held back\")");
        int lastSure = REPORT_ROW + REPORT_SURE - 1;
        page.look("B17:G17", CellStyleName.NARROW_HEAD)
                .look("B18:B" + lastSure, CellStyleName.LABEL)
                .look("C18:G" + lastSure, CellStyleName.RESULT);
        // Ruled only where there is something to read. The office reads the condition as seen from A1: B of the same
        // row.
        Highlight.when(page, "B" + (lastSure + 1) + ":B" + last, "$B1<>\"\"", CellStyleName.LABEL);
        Highlight.when(page, "C" + (lastSure + 1) + ":G" + last, "$B1<>\"\"", CellStyleName.RESULT);
        page.wrapped("B24:D27");
        String report = "COOL.REPORT(times;" + readingsOf(SHOWN) + ";surroundings;mark)";
        page.growingTable(
                "B" + REPORT_ROW + ":G" + last, "IF(INDEX(checks;1;" + (SHOWN + 1) + ")=\"OK\";" + report + ";\"\")");
        page.numbers("C18:F18", "0.0000")
                .numbers("C19:F21", "0.0")
                .numbers("C22", "0.00")
                .numbers("C23", "0");
        page.numbers("C24:F" + last, "0.0").numbers("C24:C27", "0.00");
    }

    private static void writeNotes(Page page) throws com.sun.star.uno.Exception {
        page.look("A31:H31", CellStyleName.SECTION)
                .text("A31", "How sure is its curve?")
                .text("F31", "What to look for");
        page.merge("F33:H33").look("F33:H33", CellStyleName.NOTE);
        page.paragraphs(
                "F33",
                "Do jars share a place?",
                "Then these readings cannot tell them apart, even if one half-time is longer. The last column says from"
                        + " which jars. More readings, or more jars of each kind, may tell.",
                "Is one jar really slower?",
                "The sentence claims it only if chance alone would hardly make jars that cool alike differ as much."
                        + " Jars wrapped alike differ by about a tenth: that is counted in, for each wrap has one jar"
                        + " here.",
                "How wide is the band?",
                "The full line is the fitted curve. The true one lies between the two dashed lines with 95 %"
                        + " certainty. A narrow band means that the readings fix the curve well. It is the curve that lies"
                        + " there, not each reading: a reading is rounded to a mark, and may lie outside.",
                "What do ± and limits leave out?",
                "What no reading shows: a room that drifts while nobody reads it, a thermometer that reads high or had"
                        + " not settled, reading down to the mark. CHECK.FAIR says by how many per cent each shifts a"
                        + " constant.",
                "Which law?",
                "Newton’s law is supported, unless another one fits better beyond doubt: the smaller its AICc, the"
                        + " better.");
    }
}
