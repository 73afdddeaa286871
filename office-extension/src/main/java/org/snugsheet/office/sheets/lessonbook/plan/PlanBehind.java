package org.snugsheet.office.sheets.lessonbook.plan;

import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.ScatterChart;
import org.snugsheet.office.page.SeriesColor;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.words.Language;

/**
 * What the plan says, worked out to the right of all else on the page behind: one line for each wrap, the totals for the class, two pairs
 * of wraps that are held against each other, and the curves of the chart. Without a plan all of it is empty.
 */
public final class PlanBehind {

    // One cell for each wrap, in the order in which they are named first.
    static final String KINDS = "plan_kinds";
    static final String JARS_OF_KIND = "plan_jars_of";
    static final String RATES = "plan_rates";
    /** What each reads at the end of the lesson, on the scale that is shown. */
    static final String ENDS = "plan_ends";
    /** Each with its thickness and how many jars of it, for a list; a jar without a wrap is not in it. */
    static final String LISTED = "plan_listed";

    /** 1 if there is a plan: water that pupils may touch, warmer than its surroundings, and two jars. */
    static final String READY = "plan_ready";

    static final String JARS = "plan_jars";
    static final String WRAPPED = "plan_wrapped";
    static final String TUB_END = "plan_tub_end";
    /** Milliliters of hot water for all jars. */
    static final String HOT = "plan_hot";

    static final String COLD = "plan_cold";
    /** Grams, half as much again as melts. */
    static final String ICE = "plan_ice";

    static final String KNOWN = "plan_known";

    /** What is worked out of two wraps: a name is one of these behind that of the pair. */
    static final String FIRST = "_first";

    static final String SECOND = "_second";
    static final String EACH = "_each";
    static final String MINUTES = "_minutes";
    static final String POWER = "_power";
    static final String REPEATS = "_repeats";

    /** The jar without a wrap, or the one that cools the fastest, and the one that cools the slowest. */
    static final String FARTHEST = "farthest";

    /** The two that are most alike. */
    static final String NEAREST = "nearest";

    private static final int HEAD = 2;
    private static final int STEPS = 20;
    // Without any wrap that is known, as a jar without one in water (common practice, no source).
    private static final String FALLBACK_RATE = "0.05";
    // Half as much again as melts, and no finer than kitchen scales (common practice, no source).
    private static final String RESERVE = "1.5";
    // Of a normal distribution 95 % lie so many standard deviations from its middle.
    private static final String NINETY_FIVE = "1.959964";
    private static final String OFTEN_ENOUGH = "0.8";

    private final Page page;
    private final BookPlan plan;
    private final Language language;
    private final NamedRanges names;
    private final int curves;
    private int row = HEAD;

    /**
     * A plan, worked out.
     *
     * @param page the page behind the others
     * @param plan how large the book is
     * @param book the book
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public PlanBehind(Page page, BookPlan plan, Book book) throws com.sun.star.uno.Exception {
        this.page = page;
        this.plan = plan;
        this.language = book.language();
        this.names = book.names();
        this.curves = HEAD + 40;
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.width("BA1:BP1", 22);
        String[][] columns = {
            {"plan_order", "BA"},
            {"plan_places", "BB"},
            {KINDS, "BC"},
            {JARS_OF_KIND, "BD"},
            {RATES, "BE"},
            {ENDS, "BF"},
            {LISTED, "BG"},
            {"plan_keys", "BH"},
            {"plan_sorted", "BI"},
            {"plan_ratios", "BJ"}
        };
        for (String[] each : columns) {
            names.fixed(each[0], page, each[1] + (HEAD + 1) + ":" + each[1] + (HEAD + plan.jars()));
            page.text(each[1] + HEAD, each[0]).look(each[1] + HEAD, CellStyleName.HEAD);
        }
        totals();
        for (int i = 1; i <= plan.jars(); i++) {
            kind(i);
        }
        setting(KNOWN, "COUNT(" + RATES + ")");
        String bare = "IFERROR(MATCH(bare_word;plan_kinds;0);0)";
        String fastest = "MATCH(MAX(plan_keys);plan_keys;0)";
        pair(
                FARTHEST,
                "IF(" + bare + "=0;" + fastest + ";IF(ISNUMBER(INDEX(plan_rates;" + bare + "));" + bare + ";" + fastest
                        + "))",
                "MATCH(MIN(plan_keys);plan_keys;0)");
        String alike = "MATCH(MIN(plan_ratios);plan_ratios;0)";
        pair(
                NEAREST,
                "MATCH(SMALL(plan_keys;1+" + alike + ");plan_keys;0)",
                "MATCH(SMALL(plan_keys;" + alike + ");plan_keys;0)");
        curves();
    }

    /** Where a page asks for one of the wraps. */
    static String at(String column, int kind) {
        return "INDEX(" + column + ";" + kind + ")";
    }

    private void totals() throws com.sun.star.uno.Exception {
        setting(JARS, "SUMPRODUCT(--(wraps<>\"\"))");
        setting(READY, "IF(ISNUMBER(start);IF(AND(too_hot=0;plan_jars>1;start>cold);1;0);0)");
        setting(WRAPPED, "SUMPRODUCT((wraps<>\"\")*(wraps<>bare_word))");
        setting("plan_mean_rate", "IF(COUNT(expected)>0;AVERAGE(expected);" + FALLBACK_RATE + ")");
        setting("plan_tub_middle", tubAfter("lesson/2"));
        setting(TUB_END, tubAfter("lesson"));
        // A tub without ice warms, fast at first: its mean over the lesson by Simpson’s rule.
        setting("plan_around", "(cold+4*plan_tub_middle+plan_tub_end)/6");
        String taps = "(hot_tap;cold_tap;start;plan_jars*volume;scale);\"\")";
        setting(HOT, ready("IFERROR(PLAN.MIX.HOT" + taps));
        setting(COLD, ready("IFERROR(PLAN.MIX.COLD" + taps));
        setting(
                ICE,
                ready(
                        "IF(place=2;IFERROR(CEILING(" + RESERVE
                                + "*PLAN.ICE(tub;cold_tap;plan_jars;volume;start;plan_mean_rate;lesson;room;;scale);10);\"\");\"\")"));
    }

    private static String tubAfter(String minutes) {
        return "IF(AND(place=1;plan_ready=1);IFERROR(PLAN.BATH(tub;cold;plan_jars;volume;start;plan_mean_rate;"
                + minutes + ";room;;scale);cold);cold)";
    }

    private void kind(int i) throws com.sun.star.uno.Exception {
        int line = HEAD + i;
        String before = i == 1 ? "0" : "BA" + (line - 1);
        String wrap = "INDEX(wraps;" + i + ")";
        page.formula(
                "BA" + line,
                "=" + before + "+IF(LEN(" + wrap + ")=0;0;IF(SUMPRODUCT(--(INDEX(wraps;1):" + wrap + "=" + wrap
                        + "))=1;1;0))");
        page.formula("BB" + line, "=" + ready("IFERROR(MATCH(" + i + ";plan_order;0);\"\")"));
        of("BC", line, "INDEX(wraps;BB" + line + ")");
        of("BD", line, "SUMPRODUCT(--(wraps=BC" + line + "))");
        of("BE", line, "INDEX(expected;BB" + line + ")");
        page.formula(
                "BF" + line,
                "=IF(ISNUMBER(BE" + line
                        + ");IFERROR(TEMP.CONVERT(COOL.TEMP(lesson;start;plan_around;BE" + line
                        + ";scale);scale;shown);\"\");\"\")");
        String thick = "INDEX(thicknesses;BB" + line + ")";
        of(
                "BG",
                line,
                "IF(BC" + line + "=bare_word;\"\";BC" + line + "&IF(ISNUMBER(" + thick + ");\" \"&" + thick
                        + "&\" mm\";\"\")&\" × \"&BD" + line + ")");
        // Two wraps of which the same is expected keep their order.
        page.formula("BH" + line, "=IF(ISNUMBER(BE" + line + ");BE" + line + "*(1+" + i + "E-9);\"\")");
        page.formula("BI" + line, "=IFERROR(SMALL(plan_keys;" + i + ");\"\")");
        page.formula("BJ" + line, i == plan.jars() ? "=\"\"" : "=IFERROR(BI" + (line + 1) + "/BI" + line + ";\"\")");
        page.look("BA" + line + ":BJ" + line, CellStyleName.RESULT);
    }

    private void of(String column, int line, String formula) throws com.sun.star.uno.Exception {
        page.formula(column + line, "=IF(ISNUMBER(BB" + line + ");" + formula + ";\"\")");
    }

    private void pair(String pair, String first, String second) throws com.sun.star.uno.Exception {
        String a = pair + "_a";
        String b = pair + "_b";
        setting(a, known(first));
        setting(b, known(second));
        setting(pair + FIRST, known("INDEX(plan_kinds;" + a + ")"));
        setting(pair + SECOND, known("INDEX(plan_kinds;" + b + ")"));
        String rates = "INDEX(plan_rates;" + a + ");INDEX(plan_rates;" + b + ");start;plan_around;";
        setting(pair + EACH, known("MIN(INDEX(plan_jars_of;" + a + ");INDEX(plan_jars_of;" + b + "))"));
        setting(pair + MINUTES, known("PLAN.TELLAPART(" + rates + "mark;scale)"));
        String plan = rates + "lesson;interval;";
        // Said once where there are no more than two.
        String also = pair.equals(NEAREST) ? "IF(plan_known=2;\"\";" : "(";
        // Single jars are judged with the usual spread of jars, by the normal distribution; several by their own, as
        // PLAN.POWER does.
        String apart = pair + "_apart";
        setting(
                apart,
                known("ABS(INDEX(plan_rates;" + a + ")-INDEX(plan_rates;" + b + "))/SQRT(" + variance(a) + "+"
                        + variance(b) + ")"));
        setting(
                pair + POWER,
                known(also + "IF(" + pair + EACH + "=1;NORM.S.DIST(" + apart + "-" + NINETY_FIVE + ";1)+NORM.S.DIST(-"
                        + apart + "-" + NINETY_FIVE + ";1);PLAN.POWER(" + pair + EACH + ";" + plan
                        + "spread;mark;;scale)))"));
        setting(
                pair + REPEATS,
                "IF(ISNUMBER(" + pair + POWER + ");IF(" + pair + POWER + "<" + OFTEN_ENOUGH + ";"
                        + known("PLAN.REPEATS(" + plan + OFTEN_ENOUGH + ";spread;mark;;scale)") + ";\"\");\"\")");
    }

    private static String variance(String kind) {
        String rate = "INDEX(plan_rates;" + kind + ")";
        return rate + "^2*(spread^2+PLAN.CERTAINTY(" + rate + ";start;plan_around;lesson;interval;mark;;scale)^2)";
    }

    private static String known(String formula) {
        return "IF(plan_known>1;IFERROR(" + formula + ";\"\");\"\")";
    }

    private static String ready(String formula) {
        return "IF(plan_ready=1;" + formula + ";\"\")";
    }

    private void setting(String name, String formula) throws com.sun.star.uno.Exception {
        row++;
        page.text("BL" + row, name).look("BL" + row, CellStyleName.LABEL);
        names.fixed(name, page, "BM" + row);
        page.formula("BM" + row, "=" + formula).look("BM" + row, CellStyleName.RESULT);
    }

    private void curves() throws com.sun.star.uno.Exception {
        for (String column : new String[] {"BB", "BG"}) {
            page.formula(column + curves, "=" + named(PlanBehind.FARTHEST + FIRST));
        }
        for (String column : new String[] {"BC", "BH"}) {
            page.formula(column + curves, "=" + named(PlanBehind.FARTHEST + SECOND));
        }
        page.text("BD" + curves, language.words(PlanWords.AROUND));
        for (int i = 0; i <= STEPS; i++) {
            int line = curves + 1 + i;
            page.formula("BA" + line, "=" + i + "*lesson/" + STEPS);
            curve("BB", "BA" + line, line, "farthest_a");
            curve("BC", "BA" + line, line, "farthest_b");
            page.formula("BD" + line, "=" + known("TEMP.CONVERT(plan_around;scale;shown)"));
        }
        for (int i = 0; i < plan.readings(); i++) {
            int line = curves + 1 + i;
            page.formula("BF" + line, "=INDEX(planned;" + (i + 1) + ")");
            curve("BG", "BF" + line, line, "farthest_a");
            curve("BH", "BF" + line, line, "farthest_b");
        }
    }

    private static String named(String name) {
        return "IF(" + name + "=\"\";\"–\";" + name + "&\", °\"&shown)";
    }

    /** Newton’s law between temperatures that are on the scale that is shown already. */
    private void curve(String column, String minutes, int line, String kind) throws com.sun.star.uno.Exception {
        page.formula(
                column + line,
                "=IF(ISNUMBER(" + minutes + ");"
                        + known("TEMP.CONVERT(plan_around+(start-plan_around)*EXP(-INDEX(plan_rates;" + kind + ")*"
                                + minutes + ");scale;shown)")
                        + ";\"\")");
    }

    /** The chart of what to expect. */
    ScatterChart chart(Book book) {
        return new ScatterChart(
                language.words(PlanWords.CHART),
                language.words(PlanWords.CHART_MINUTES),
                language.words(PlanWords.CHART_DEGREES),
                language.words(PlanWords.CHART_IN_WORDS),
                java.util.List.of(
                        plot(Plot.Form.GUIDE, "BA", "BD", STEPS + 1, SeriesColor.GRAY),
                        plot(Plot.Form.LINE, "BA", "BB", STEPS + 1, SeriesColor.BLACK),
                        plot(Plot.Form.LINE, "BA", "BC", STEPS + 1, SeriesColor.VERMILION),
                        plot(Plot.Form.POINTS, "BF", "BG", plan.readings(), SeriesColor.BLACK),
                        plot(Plot.Form.POINTS, "BF", "BH", plan.readings(), SeriesColor.VERMILION)));
    }

    private Plot plot(Plot.Form form, String across, String up, int rows, SeriesColor ink) {
        return new Plot(form, below(across, rows), below(up, rows), new Plot.Cells(page, up + curves), ink);
    }

    private Plot.Cells below(String column, int rows) {
        return new Plot.Cells(page, column + (curves + 1) + ":" + column + (curves + rows));
    }
}
