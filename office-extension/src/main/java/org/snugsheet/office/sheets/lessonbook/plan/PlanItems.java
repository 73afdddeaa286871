package org.snugsheet.office.sheets.lessonbook.plan;

import static org.snugsheet.office.sheets.lessonbook.plan.PlanPage.degrees;
import static org.snugsheet.office.sheets.lessonbook.plan.PlanPage.milliliters;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;

/** What there may be to bring, one line for each on the page behind; those that this lesson needs are numbered from 1. */
final class PlanItems extends BookPage {

    /** The place of the wraps in the list, as long as there are any. */
    static final int WRAPS = 3;

    /** That of the tub, if there is one. */
    static final int TUB = 6;

    private static final int HEAD = 20;
    private static final String LAST = "BE";

    private int row = HEAD;

    PlanItems(Page page, BookPlan plan, Book book) {
        super(page, plan, book, LAST);
    }

    void write() throws com.sun.star.uno.Exception {
        page.text("BC" + HEAD, words(PlanWords.BRING)).look("BB" + HEAD + ":BE" + HEAD, CellStyleName.HEAD);
        item("TRUE()", PlanWords.JARS, "plan_jars", sentence(PlanWords.JARS_NOTE, "(" + milliliters("volume") + ")"));
        // One more beside the jars.
        item("TRUE()", PlanWords.THERMOMETERS, "plan_jars+1", quoted(PlanWords.THERMOMETERS_NOTE));
        item("plan_wrapped>0", PlanWords.WRAPS, "plan_wrapped", "TEXTJOIN(\", \";TRUE();plan_listed)");
        String mixes = "ISNUMBER(" + PlanBehind.HOT + ")";
        String start = quoted(BookWords.START_PAGE);
        String noMix = sentence(PlanWords.NO_MIX, degrees("hot_tap"), degrees("cold_tap"), degrees("start"), start);
        item(
                "TRUE()",
                PlanWords.HOT,
                "IF(" + mixes + ";" + milliliters(PlanBehind.HOT) + ";\"–\")",
                "IF(" + mixes + ";IF(hot_tap>=" + PlanPage.scalding() + ";"
                        + sentence(PlanWords.SCALDING_NOTE, degrees("hot_tap"), degrees("start")) + ";"
                        + sentence(PlanWords.HOT_NOTE, degrees("hot_tap"), degrees("start")) + ");IFERROR(" + noMix
                        + ";" + sentence(PlanWords.NO_TAP, start) + "))");
        item(mixes, PlanWords.COLD, milliliters(PlanBehind.COLD), sentence(PlanWords.COLD_NOTE, degrees("cold_tap")));
        item(
                "place<3",
                PlanWords.TUB,
                PlanPage.much(language, "tub"),
                "IF(place=2;" + sentence(PlanWords.TUB_ICE_NOTE, degrees("cold_tap")) + ";"
                        + sentence(PlanWords.TUB_NOTE, degrees("cold")) + "&IF(N(cold_tap)>cold;\" \"&"
                        + sentence(PlanWords.TUB_COLDER, degrees("cold_tap")) + ";\"\"))");
        item(
                "place=2",
                PlanWords.ICE,
                "IF(ISNUMBER(plan_ice);" + PlanPage.grams(PlanBehind.ICE) + ";\"–\")",
                quoted(PlanWords.ICE_NOTE));
        item("place=3", PlanWords.SNOW, quoted(PlanWords.SNOW_AMOUNT), quoted(PlanWords.SNOW_NOTE));
        item("AND(place<3;kept_dry=1;plan_wrapped>0)", PlanWords.BAGS, "plan_wrapped", quoted(PlanWords.BAGS_NOTE));
        item("TRUE()", PlanWords.TOWELS, quoted(PlanWords.TOWELS_AMOUNT), quoted(PlanWords.TOWELS_NOTE));
    }

    /** Which item is the hot water: it is the fourth, or the third if no jar has a wrap. */
    String isHot() {
        return "IF(plan_wrapped>0;4;3)";
    }

    /** Whether a line of the list speaks of water that only adults handle; for a condition of its cells. */
    static String tapTooHot(String place) {
        return "AND(plan_ready=1;N(hot_tap)>=" + PlanPage.scalding() + ";ROW()=" + (PlanPage.FIRST_ITEM - 1) + "+"
                + place + ")";
    }

    /** What the line of that number shows; nothing beyond the last. */
    String cell(int column, int number) {
        return "IFERROR(INDEX(" + column((char) ('C' + column)) + ";MATCH(" + number + ";" + column('B') + ";0));\"\")";
    }

    private String column(char letter) {
        return "$'" + page.name() + "'.$B" + letter + "$" + (HEAD + 1) + ":$B" + letter + "$" + row;
    }

    private void item(String needed, PlanWords what, String amount, String note) throws com.sun.star.uno.Exception {
        row++;
        String before = row == HEAD + 1 ? "0" : "MAX(BB$" + HEAD + ":BB" + (row - 1) + ")";
        page.formula("BB" + row, "=IF(plan_ready=1;IF(" + needed + ";" + before + "+1;\"\");\"\")");
        page.text("BC" + row, words(what));
        page.formula("BD" + row, "=IF(ISNUMBER(BB" + row + ");IFERROR(" + amount + ";\"–\");\"\")");
        page.formula("BE" + row, "=IF(ISNUMBER(BB" + row + ");IFERROR(" + note + ";\"\");\"\")");
        page.look("BB" + row + ":BE" + row, CellStyleName.RESULT);
    }
}
