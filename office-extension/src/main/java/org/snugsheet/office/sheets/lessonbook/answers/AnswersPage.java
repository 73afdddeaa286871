package org.snugsheet.office.sheets.lessonbook.answers;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.ScatterChart;
import org.snugsheet.office.page.SeriesColor;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.sheets.lessonbook.layout.BookWords;
import org.snugsheet.office.sheets.lessonbook.layout.JarsRows;
import org.snugsheet.office.sheets.lessonbook.layout.Names;
import org.snugsheet.office.sheets.lessonbook.readings.ReadingWords;
import org.snugsheet.office.sheets.lessonbook.start.StartPage;
import org.snugsheet.office.words.Language;

/** For the teacher: who wins, or why nobody does yet; the order, the curves, and on a second sheet each jar and how sure all of it is. */
public final class AnswersPage extends BookPage {

    static final String LAST = "G";

    /** Millimeters. */
    static final double SECTION_HEIGHT = 7.5;

    private static final int CAUTION = 3;
    private static final int ANSWER = 4;
    private static final int HELD = 5;
    private static final int ORDER = 7;
    private static final int FIRST_PLACE = ORDER + 2;

    private static final int FEW = 8;

    private final Page behind;
    private final JarsRows rows;

    /**
     * The page.
     *
     * @param page the page that is written
     * @param behind the page behind the others
     * @param plan how large the book is
     * @param book the book
     */
    public AnswersPage(Page page, Page behind, BookPlan plan, Book book) {
        super(page, plan, book, LAST);
        this.behind = behind;
        this.rows = new JarsRows(plan);
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        page.width("A1", 13).width("B1", 35).width("C1", 15).width("D1", 33).width("E1", 18);
        page.width("F1", 18).width("G1", 56);
        top();
        order();
        int row = FIRST_PLACE + plan.jars() + 1;
        AnswerDetails details = new AnswerDetails(page, plan, book);
        if (hasMany()) {
            page.newPaperAt("A" + row);
            row = details.compare(details.sure(curves(row)));
            page.newPaperAt("A" + row);
            row = details.jars(row);
        } else {
            row = details.sure(row);
            page.newPaperAt("A" + row);
            row = details.compare(details.jars(curves(row)));
        }
        new PrintSetup(PrintSetup.Way.PORTRAIT, words(AnswerWords.TITLE))
                .withBreaks()
                .apply(page, "A1:" + LAST + (row - 1));
        page.protect();
    }

    /** Many lines fill a sheet of paper by themselves. */
    private boolean hasMany() {
        return plan.jars() > FEW;
    }

    private void top() throws com.sun.star.uno.Exception {
        page.height("A1", 10).height("A2", 6).height("A" + CAUTION, 13);
        page.height("A" + ANSWER, 25).height("A" + HELD, 8).height("A" + (ORDER - 1), 2);
        page.text("A1", words(AnswerWords.TITLE)).look("A1", CellStyleName.TITLE);
        page.text("A2", language.say(AnswerWords.PURPOSE, words(BookWords.START_PAGE), words(BookWords.READINGS_PAGE)));
        page.look("A2", CellStyleName.FOLLOWS);
        caution();
        across(ANSWER, CellStyleName.SENTENCE);
        String answer = row(ANSWER);
        page.formula("A" + ANSWER, "=" + answer());
        Highlight.when(page, answer, "ranked_count=0", CellStyleName.MESSAGE);
        across(HELD, CellStyleName.MESSAGE);
        String held = row(HELD);
        page.formula(
                "A" + HELD,
                "=TRIM(IF(held_names=\"\";\"\";" + sentence(AnswerWords.HELD, Names.HELD_NAMES) + ")&\" \"&"
                        + "IF(OR(waiting_names=\"\";COUNTIF(states;2)=0);\"\";"
                        + sentence(AnswerWords.STILL_WAITING, Names.WAITING_NAMES) + "))");
        Highlight.when(page, held, "held_names<>\"\"", CellStyleName.TROUBLE_MESSAGE);
    }

    /** What can hurt comes before any answer: water that is too hot, then the first jar with a reading that says so. */
    private void caution() throws com.sun.star.uno.Exception {
        across(CAUTION, CellStyleName.MESSAGE);
        String cells = row(CAUTION);
        String jar = "MATCH(\"?*\";hurts;0)";
        page.formula(
                "A" + CAUTION,
                "=TRIM(IF(too_hot=1;IFERROR(PLAN.SAFE(start;scale);\"\");\"\")&\" \"&IFERROR("
                        + sentence(ReadingWords.NAMED, jar, "INDEX(wraps;" + jar + ")", "INDEX(hurts;" + jar + ")")
                        + ";\"\"))");
        Highlight.when(page, cells, "OR(too_hot=1;COUNTIF(hurts;\"?*\")>0)", CellStyleName.HOT);
    }

    private String answer() {
        String last = "INDEX(ranked;ranked_count)";
        String shared = "INDEX(shared_with;1)";
        String best = "INDEX(times_as_long;1)";
        String least = "INDEX(times_as_long;first_count)";
        String winner = "IF(" + shared + "<>\"\";" + sentence(AnswerWords.WINNER_BUT, "INDEX(ranked;1)", shared)
                + ";IF(AND(ISNUMBER(" + best + ");N(" + best + ")>0;N(" + best + ")<20);"
                + sentence(AnswerWords.WINNER, "INDEX(ranked;1)", tenths(best), last) + ";"
                + sentence(AnswerWords.WINNER_BY_FAR, "INDEX(ranked;1)", last) + "))";
        // Only if the last one is surely worse than each of them. Gnumeric would look into one cell with FIND.
        String beaten = "AND(ranked_count>first_count;COUNTIFS(places;1;shared_with;\"*\"&" + last + "&\"*\")=0;N("
                + best + ")>0;N(" + best + ")<20;N(" + least + ")>0)";
        String tie = sentence(AnswerWords.TIE, Names.FIRST_NAMES) + "&IF(" + beaten + ";\" \"&IF(" + tenths(least) + "="
                + tenths(best) + ";" + sentence(AnswerWords.TIE_TIMES_SAME, tenths(best), last) + ";"
                + sentence(AnswerWords.TIE_TIMES, tenths(least), tenths(best), last) + ");\"\")";
        return "IF(ranked_count=0;" + missing() + ";IF(first_count=1;" + winner + ";" + tie + ")&" + invented(language)
                + ")";
    }

    /** Why there is no order yet, the first step first. */
    private String missing() {
        return "IF(COUNTIF(states;\">0\")=0;" + page(AnswerWords.NO_JARS, BookWords.START_PAGE)
                + ";IF(COUNTIF(states;\">1\")=0;" + page(AnswerWords.NO_READINGS, BookWords.READINGS_PAGE)
                + ";IF(around_known=0;" + page(AnswerWords.NO_COLD, BookWords.START_PAGE)
                + ";IF(COUNTIF(states;2)=0;" + quoted(AnswerWords.NONE_USABLE)
                + ";IF(COUNTIF(states;2)=1;"
                + sentence(AnswerWords.ONE_USABLE, "INDEX(jar_labels;MATCH(2;states;0))") + ";"
                + quoted(AnswerWords.ONE_WRAP) + ")))))";
    }

    private String page(Phrase pattern, Phrase tab) {
        return FormulaText.quoted(language.say(pattern, words(tab)));
    }

    private void order() throws com.sun.star.uno.Exception {
        section(ORDER, SECTION_HEIGHT, AnswerWords.ORDER);
        int head = ORDER + 1;
        page.height("A" + head, 15.5).look(row(head), CellStyleName.NARROW_HEAD);
        page.merge("E" + head + ":F" + head);
        page.text("A" + head, words(AnswerWords.PLACE)).text("B" + head, words(AnswerWords.WRAP));
        page.text("C" + head, words(AnswerWords.JARS)).text("D" + head, words(AnswerWords.HALF));
        page.formula(
                "E" + head, "=" + sentence(AnswerWords.LOST, Names.LESSON, Names.SHOWN, StartPage.degrees("start")));
        page.text("G" + head, words(AnswerWords.SHARED)).size(row(head), 9);
        for (int i = 1; i <= plan.jars(); i++) {
            int row = FIRST_PLACE + i - 1;
            page.height("A" + row, hasMany() ? 13.8 : 11.5);
            page.merge("E" + row + ":F" + row);
            page.look("A" + row + ":F" + row, CellStyleName.RESULT).look("B" + row, CellStyleName.LABEL);
            page.look("G" + row, CellStyleName.LABEL).size("G" + row, 9);
            page.wrapped("B" + row).wrapped("G" + row);
            page.formula("A" + row, "=INDEX(places;" + i + ")").formula("B" + row, "=INDEX(ranked;" + i + ")");
            page.formula("C" + row, "=INDEX(jars_of;" + i + ")");
            page.formula("D" + row, ranged(i, Names.RANKED_HALF, Names.HALF_FROM, Names.HALF_TO, 0));
            page.formula("E" + row, ranged(i, Names.LOST, Names.LOST_FROM, Names.LOST_TO, 1));
            String shared = "INDEX(shared_with;" + i + ")";
            page.formula(
                    "G" + row, "=IF(INDEX(ranked;" + i + ")=\"\";\"\";IF(" + shared + "=\"\";\"–\";" + shared + "))");
        }
    }

    /** A number with its 95 % limits, which may be missing at the upper end. */
    private String ranged(int place, String value, String from, String to, int decimals) {
        String v = "INDEX(" + value + ";" + place + ")";
        String f = "INDEX(" + from + ";" + place + ")";
        String t = "INDEX(" + to + ";" + place + ")";
        return "=IF(INDEX(ranked;" + place + ")=\"\";\"\";IF(NOT(ISNUMBER(" + v + "));\"–\";IF(NOT(ISNUMBER(" + f
                + "));"
                + fixed(v, decimals) + ";IF(ISNUMBER(" + t + ");"
                + sentence(AnswerWords.RANGE, fixed(v, decimals), fixed(f, decimals), fixed(t, decimals)) + ";"
                + sentence(AnswerWords.RANGE_OPEN, fixed(v, decimals), fixed(f, decimals)) + "))))";
    }

    /** A legend of cells: those of jars that are not there stay empty, which entries of a chart cannot. */
    private int curves(int head) throws com.sun.star.uno.Exception {
        page.height("A" + head, SECTION_HEIGHT);
        page.look(row(head), CellStyleName.SECTION);
        page.formula("A" + head, "=" + sentence(AnswerWords.CURVES, Names.SHOWN));
        int first = head + 1;
        int legend = hasMany() ? BookPlan.MOST_JARS : FEW;
        page.height("A" + first + ":A" + (first + legend), hasMany() ? 7.6 : 8.6);
        for (int jar = 0; jar < plan.jars(); jar++) {
            SeriesColor ink = SeriesColor.forJars().get(jar);
            String cell = "G" + (first + jar);
            String state = "INDEX(states;" + (jar + 1) + ")";
            page.look(cell, CellStyleName.MESSAGE).ink(cell, ink);
            page.formula(
                    cell,
                    "=IF(OR(" + state + "=2;" + state + "=4);\"" + ink.sign() + "  \"&INDEX(jar_labels;" + (jar + 1)
                            + ");\"\")");
        }
        String key = "G" + (first + legend);
        page.look(key, CellStyleName.SMALL_MESSAGE).text(key, words(AnswerWords.CHART_KEY));
        page.height(key, 9);
        draw("A" + first + ":F" + (first + legend));
        page.height("A" + (first + legend + 1), 2);
        return first + legend + 2;
    }

    private void draw(String cells) throws com.sun.star.uno.Exception {
        List<Plot> plots = new ArrayList<>();
        for (int line = 2; line >= 0; line--) {
            for (int jar = 0; jar < plan.jars(); jar++) {
                Plot.Form form = line == 0 ? Plot.Form.LINE : Plot.Form.EDGE;
                plots.add(plot(form, rows.curveMinutes(), rows.curve(jar, line), jar));
            }
        }
        for (int jar = 0; jar < plan.jars(); jar++) {
            plots.add(plot(Plot.Form.POINTS, rows.shownTimes(), rows.shown(jar), jar));
        }
        new ScatterChart(
                        words(AnswerWords.CHART),
                        words(AnswerWords.MINUTES_AXIS),
                        words(AnswerWords.TEMPERATURE_AXIS),
                        words(AnswerWords.CHART_WORDS),
                        plots)
                .drawWithoutLegend(book.office(), page, "Curves", cells);
    }

    private Plot plot(Plot.Form form, String across, String up, int jar) {
        return new Plot(
                form,
                new Plot.Cells(behind, across),
                new Plot.Cells(behind, up),
                new Plot.Cells(behind, rows.name(jar)),
                SeriesColor.forJars().get(jar));
    }

    /** For a formula: the words behind an answer while the readings are invented. */
    public static String invented(Language language) {
        return "IF(invented;\" \"&" + FormulaText.quoted(language, AnswerWords.INVENTED) + ";\"\")";
    }

    private static String tenths(String number) {
        return fixed(number, 1);
    }

    private static String fixed(String number, int decimals) {
        return "FIXED(" + number + ";" + decimals + ";TRUE())";
    }
}
