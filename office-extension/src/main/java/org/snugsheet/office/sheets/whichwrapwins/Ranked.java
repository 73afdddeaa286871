package org.snugsheet.office.sheets.whichwrapwins;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.BigBars;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.shared.Degrees;

/**
 * The last page of {@link WhichWrapWins}: the ranking as COOL.RANK gives it, what each jar loses in ten minutes, and the
 * bars. Nobody types here. A jar that cannot be used is listed below the others, without a rank and with the reason.
 */
public final class Ranked {

    public static final String NAME = "Ranking";

    static final String PLACE = "A";
    static final String WRAP = "B";
    static final String JARS = "C";
    static final String HALFTIME = "G";
    static final String NOT_TOLD_FROM = "H";
    static final String LOST = "K";
    static final String LOST_FROM = "L";
    static final String LOST_TO = "M";

    private static final int HEAD = 5;
    private static final int FIRST_ROW = HEAD + 1;

    /** A sentence that names the best wrap, or those that share the first place. */
    static final String WINNER = winner();

    /** A sentence about the two jars that somebody chose; a jar that is held back is in no verdict. */
    static final String VERDICT = verdict();

    private Ranked() {}

    static Page add(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
        int last = FIRST_ROW + WhichWrapWins.JARS.size() - 1;
        page.width("A1", 16).width("B1", 36).width("C1", 16).width("D1:G1", 28).width("H1", 60);
        page.width("I1", 6).width("J1", 36).width("K1:M1", 34).width("N1", 6).width("O1", 20);
        page.width("P1", 6).width("Q1", 36);
        page.text("A1", "Behind the ranking").look("A1", CellStyleName.TITLE).height("A1", 10);
        page.text("A2", "Nothing to type here: the other pages show these cells.")
                .merge("A2:O2")
                .look("A2:O2", CellStyleName.PURPOSE);
        page.look("A4:H4", CellStyleName.SECTION).text("A4", "What COOL.RANK answers");
        page.look("A5:H5", CellStyleName.NARROW_HEAD)
                .height("A5", 9.5)
                .look("A6:G" + last, CellStyleName.RESULT)
                .look("H6:H" + last, CellStyleName.LABEL);
        page.growingTable("A5:H" + last, "COOL.RANK(" + WhichWrapWins.OF_ALL + ";" + WhichWrapWins.SPREAD + ")");
        page.numbers("D6:F" + last, "0.0000").numbers("G6:G" + last, "0.0");
        page.look("J4:M4", CellStyleName.SECTION);
        page.formula("J4", "=\"Lost in 10 minutes, from \"&from&" + Degrees.UNIT);
        page.look("J5:M5", CellStyleName.HEAD).text("J5", "wrap").text("K5", "degrees lost");
        page.text("L5", "95 % from").text("M5", "95 % to");
        page.look("J6:J" + last, CellStyleName.LABEL)
                .look("K6:M" + last, CellStyleName.RESULT)
                .numbers("K6:M" + last, "0.0");
        for (int row = FIRST_ROW; row <= last; row++) {
            // Neither a name nor a bar for a jar that is held back.
            page.formula("J" + row, "=IF(ISNUMBER(" + PLACE + row + ");" + WRAP + row + "&\"\";\"\")");
            page.formula(
                    "Q" + row,
                    "=IF(OR(ISNUMBER(" + PLACE + row + ");LEN(" + WRAP + row + ")=0);\"\";" + WRAP + row + "&\"\")");
            page.formula("K" + row, lost("D", row));
            page.formula("L" + row, lost("E", row));
            page.formula("M" + row, lost("F", row));
        }
        page.look("Q4", CellStyleName.SECTION).text("Q4", "Held back").look("Q6:Q" + last, CellStyleName.LABEL);
        page.look("O4", CellStyleName.SECTION)
                .text("O4", "Scales")
                .text("O6", "C")
                .text("O7", "F");
        page.look("O6:O7", CellStyleName.LABEL);
        book.names()
                .fixed("scales", page, "O6:O7")
                .fixed("places", page, "A6:A" + last)
                .fixed("held_back", page, "Q6:Q" + last)
                .fixed("best", page, "B6");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Behind the ranking").applyUnprinted(page);
        page.protect();
        return page;
    }

    private static String lost(String rate, int row) {
        return "=IF(ISNUMBER(" + rate + row + ");from-COOL.TEMP(10;from;surroundings;" + rate + row + ";scale);\"\")";
    }

    private static String verdict() {
        String first = "MATCH(first_jar;groups;0)";
        String second = "MATCH(second_jar;groups;0)";
        return "IFERROR(IF(INDEX(checks;1;" + first + ")<>\"OK\";\"No verdict: \"&first_jar&\" is held back.\";"
                + "IF(INDEX(checks;1;" + second + ")<>\"OK\";\"No verdict: \"&second_jar&\" is held back.\";"
                + "COOL.VERDICT(times;INDEX(same_scale;0;" + first + ");times;INDEX(same_scale;0;" + second
                + ");surroundings;mark;scale;" + WhichWrapWins.SPREAD + ")));\"Choose two wraps from the list.\")";
    }

    private static String winner() {
        String others = "$" + NAME + ".$" + NOT_TOLD_FROM + "$" + FIRST_ROW;
        String waits = "\"No ranking yet: it takes two jars whose readings can be used.\"";
        String held = "IF(COUNTIF(held_back;\"?*\")=0;\"\";\" Held back: \"&TEXTJOIN(\", \";1;held_back)&\".\")";
        return "IF(COUNT(places)=0;" + waits + ";IF(COUNTIF(places;1)>1;"
                + "\"First place is shared: \"&best&\", \"&" + others
                + "&\". These readings cannot tell them apart.\";\"The winner: \"&best&\". It lets out the least"
                + " heat.\")&" + held + ")";
    }

    /** A cell of the page, for a formula on another one. */
    static String cell(int place, String column) {
        return "$" + NAME + "." + column + (FIRST_ROW + place);
    }

    /** The bars in a size of type. */
    static BigBars bars(Page ranked, float points) {
        return new BigBars(
                "Degrees lost in 10 minutes",
                "degrees",
                "One horizontal bar for each wrap, the best at the top: how many degrees its jar loses in ten minutes from"
                        + " the start chosen on the first page. The shorter the bar, the better the wrap. The values are"
                        + " on the page " + NAME + ".",
                points,
                new Plot.Cells(ranked, "J5:K" + (HEAD + WhichWrapWins.JARS.size())));
    }
}
