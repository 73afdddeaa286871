package org.snugsheet.office.sheets.lessonbook.plan;

import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.start.StartPage;
import org.snugsheet.office.sheets.lessonbook.start.StartWords;
import org.snugsheet.office.words.Language;

/** What a teacher brings, when to read and what to expect; on a second sheet of paper what {@link PlanTimes} writes. Nobody types here. */
public final class PlanPage extends BookPage {

    /** What everything hangs on, or why there is no plan. */
    static final String MESSAGE = "A2";

    static final String LAST = "D";

    /** Millimeters. */
    static final double SECTION_HEIGHT = 8.5;

    static final int FIRST_ITEM = 4;

    /** As many as there are at most at once: a tub with ice and bags. */
    static final int ITEMS = 9;

    private static final int MANY = 8;
    private static final int WHEN = FIRST_ITEM + ITEMS;
    private static final int EXPECT = WHEN + 2;
    private static final int FIRST_KIND = EXPECT + 2;
    // National Institute of Standards and Technology, Special Publication 811 (2008), appendix B: fluid ounce, cup,
    // pound.
    private static final String FLUID_OUNCE = "29.57353";
    private static final String CUP = "236.5882";
    private static final String POUND = "453.5924";

    private final Page behind;
    private final PlanBehind worked;

    /**
     * The page.
     *
     * @param page the page that is written
     * @param behind the page behind the others
     * @param worked what the plan says, worked out
     * @param plan how large the book is
     * @param book the book
     */
    public PlanPage(Page page, Page behind, PlanBehind worked, BookPlan plan, Book book) {
        super(page, plan, book, LAST);
        this.behind = behind;
        this.worked = worked;
    }

    /** The row of a wrap, counted from 0, with what is expected of it. */
    static int kind(int kind) {
        return FIRST_KIND + kind;
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.width("A1", 36).width("B1", 46).width("C1", 26).width("D1", 82);
        page.text("A1", words(PlanWords.TITLE)).look("A1", CellStyleName.TITLE).height("A1", 11);
        message();
        section(FIRST_ITEM - 1, SECTION_HEIGHT, quoted(PlanWords.BRING));
        items();
        when();
        expect();
        int last = new PlanTimes(page, worked, plan, book).write(FIRST_KIND + plan.jars() + 1);
        new PrintSetup(PrintSetup.Way.PORTRAIT, words(PlanWords.TITLE))
                .withBreaks()
                .apply(page, "A1:" + LAST + last);
        page.protect();
    }

    private void message() throws com.sun.star.uno.Exception {
        page.merge(MESSAGE + ":" + LAST + "2").look(MESSAGE + ":" + LAST + "2", CellStyleName.PURPOSE);
        page.height(MESSAGE, 24);
        String start = quoted(BookWords.START_PAGE);
        page.formula(
                MESSAGE,
                "=IF(too_hot=1;IFERROR(PLAN.SAFE(start;scale);\"\");IF(NOT(ISNUMBER(start));"
                        + sentence(PlanWords.NO_START, start)
                        + ";IF(plan_jars<2;" + sentence(PlanWords.NOT_YET, start)
                        + ";IF(plan_ready=0;" + sentence(PlanWords.NOT_WARMER, start) + ";"
                        + sentence(
                                PlanWords.READY,
                                "plan_jars",
                                degrees("start"),
                                "INDEX(offered_places;place)",
                                degrees("cold"),
                                "lesson",
                                start)
                        + "))))");
        Highlight.when(page, MESSAGE + ":" + LAST + "2", "too_hot=1", CellStyleName.ALARM);
    }

    /** Those that are needed, one below the other; the others would leave gaps. */
    private void items() throws com.sun.star.uno.Exception {
        // Where they are worked out: what it is, how much, a remark.
        PlanItems items = new PlanItems(behind, plan, book);
        items.write();
        for (int i = 0; i < ITEMS; i++) {
            int row = FIRST_ITEM + i;
            page.merge("C" + row + ":D" + row).height("A" + row, itemHeight(i));
            page.formula("A" + row, "=" + items.cell(0, i + 1))
                    .formula("B" + row, "=" + items.cell(1, i + 1))
                    .formula("C" + row, "=" + items.cell(2, i + 1));
            page.look("A" + row, CellStyleName.MESSAGE)
                    .look("B" + row, CellStyleName.LARGE)
                    .size("B" + row, 12)
                    .look("C" + row + ":D" + row, CellStyleName.SMALL_MESSAGE);
        }
        String all = "A" + FIRST_ITEM + ":" + LAST + (FIRST_ITEM + ITEMS - 1);
        Highlight.when(page, "C" + all.substring(1), PlanItems.tapTooHot(items.isHot()), CellStyleName.HOT);
    }

    // All wraps in a list take three lines, or four; the tub may take three. More wraps leave less room for the others.
    private double itemHeight(int item) {
        boolean isMany = plan.jars() > MANY;
        return switch (item + 1) {
            case PlanItems.WRAPS -> isMany ? 16 : 12.5;
            case PlanItems.TUB -> 12;
            default -> isMany ? 8.3 : 9.5;
        };
    }

    private void when() throws com.sun.star.uno.Exception {
        section(WHEN, SECTION_HEIGHT, quoted(PlanWords.WHEN));
        String cells = "A" + (WHEN + 1) + ":" + LAST + (WHEN + 1);
        page.merge(cells).look(cells, CellStyleName.MESSAGE).height("A" + (WHEN + 1), 12);
        page.formula(
                "A" + (WHEN + 1),
                "=IF(plan_ready=1;"
                        + sentence(PlanWords.READ_AT, "COUNT(planned)", "TEXTJOIN(\", \";TRUE();planned)")
                        + ";\"\")");
    }

    private void expect() throws com.sun.star.uno.Exception {
        section(EXPECT, SECTION_HEIGHT, FormulaText.sentence(language, PlanWords.EXPECT, "lesson"));
        int head = EXPECT + 1;
        page.look(row(head), CellStyleName.HEAD).height("A" + head, 10);
        page.merge("A" + head + ":B" + head).wrapped("D" + head);
        page.text("A" + head, words(StartWords.WRAP_HEAD))
                .text("C" + head, words(PlanWords.END_HEAD))
                .text("D" + head, words(PlanWords.HALF_HEAD));
        for (int i = 1; i <= plan.jars(); i++) {
            int row = FIRST_KIND + i - 1;
            String kind = PlanBehind.at(PlanBehind.KINDS, i);
            String end = PlanBehind.at(PlanBehind.ENDS, i);
            page.height("A" + row, plan.jars() > MANY ? 5.2 : 6.5);
            page.merge("A" + row + ":B" + row).look(row(row), CellStyleName.MESSAGE);
            Highlight.when(page, "A" + row + ":B" + row, "LEN($A1)>0", CellStyleName.LABEL);
            Highlight.when(page, "C" + row + ":" + LAST + row, "LEN($A1)>0", CellStyleName.RESULT);
            String jars = PlanBehind.at(PlanBehind.JARS_OF_KIND, i);
            page.formula("A" + row, "=" + kind + "&IF(N(" + jars + ")>1;\" × \"&" + jars + ";\"\")")
                    .formula(
                            "C" + row,
                            "=IF(ISNUMBER(" + end + ");ROUND(" + end + ";0)&\" °\"&shown;IF(" + kind
                                    + "=\"\";\"\";\"–\"))")
                    .formula(
                            "D" + row,
                            "=IF(" + kind + "=\"\";\"\";IF(ISNUMBER(" + end + ");"
                                    + sentence(
                                            PlanWords.HALF, "ROUND(LN(2)/" + PlanBehind.at(PlanBehind.RATES, i) + ";0)")
                                    + ";" + quoted(PlanWords.UNKNOWN) + "))");
        }
        int row = FIRST_KIND + plan.jars();
        across(row, CellStyleName.MESSAGE).height("A" + row, 15);
        page.formula(
                "A" + row,
                "=IF(plan_ready=1;IF(place=1;"
                        + sentence(PlanWords.TUB_WARMS, degrees("cold"), degrees(PlanBehind.TUB_END))
                        + "&\" \";\"\")&" + quoted(PlanWords.FORECAST) + ";" + quoted(PlanWords.NO_PLAN) + ")");
    }

    /** Milliliters as a teacher pours them, in fluid ounces, too, where °F is shown. */
    static String milliliters(String amount) {
        return "IF(shown=\"F\";ROUND(" + amount + "/" + FLUID_OUNCE + ";0)&\" fl oz (\"&ROUND(" + amount
                + ";-1)&\" ml)\";ROUND(" + amount + ";-1)&\" ml\")";
    }

    /** Milliliters of much water, in cups, too, where °F is shown. */
    static String much(Language language, String amount) {
        return "IF(shown=\"F\";" + "("
                + FormulaText.sentence(language, PlanWords.CUPS, "ROUND(" + amount + "/" + CUP + ";0)") + ")"
                + "&\" (\"&ROUND(" + amount + ";-1)&\" ml)\";ROUND(" + amount + ";-1)&\" ml\")";
    }

    /** Grams, in pounds, too, where °F is shown. */
    static String grams(String amount) {
        return "IF(shown=\"F\";ROUND(" + amount + "/" + POUND + ";1)&\" lb (\"&" + amount + "&\" g)\";" + amount
                + "&\" g\")";
    }

    /** From which temperature on only adults handle water, on the scale of the thermometers. */
    static String scalding() {
        return "IF(scale=\"F\";" + SafeStart.ADULTS_ONLY.in(Scale.FAHRENHEIT) + ";" + SafeStart.ADULTS_ONLY.celsius()
                + ")";
    }

    static String degrees(String name) {
        return "(" + StartPage.degrees(name) + ")";
    }
}
