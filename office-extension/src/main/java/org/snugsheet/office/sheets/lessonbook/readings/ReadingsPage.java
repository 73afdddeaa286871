package org.snugsheet.office.sheets.lessonbook.readings;

import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.lessonbook.layout.BookPage;
import org.snugsheet.office.sheets.lessonbook.layout.BookPlan;
import org.snugsheet.office.uno.CellName;

/**
 * Nothing but the grid: a column for each jar. Enter runs down a column and on to the top of the next, for no other cell on the page can
 * be typed into.
 */
public final class ReadingsPage extends BookPage {

    /** The row of the first readings. */
    public static final int FIRST_ROW = 5;

    private static final int HEAD = FIRST_ROW - 1;
    // What is left across Letter paper beside the times, in millimeters: more would be printed smaller.
    private static final double ACROSS = 219;
    private static final String PLANNED = "A";
    private static final String CLOCK = "B";

    /**
     * The page.
     *
     * @param page the page that is written
     * @param plan how large the book is
     * @param book the book
     */
    public ReadingsPage(Page page, BookPlan plan, Book book) {
        super(page, plan, book, column(plan.jars()));
    }

    /** The column of a jar, counted from 0. */
    public static String column(int jar) {
        return CellName.column(2 + jar);
    }

    /** Where a reading is typed; jars and readings are counted from 0. */
    public static String cell(int jar, int reading) {
        return column(jar) + (FIRST_ROW + reading);
    }

    private String around() {
        return column(plan.jars());
    }

    /** The cells with the readings of all jars. */
    public String jars() {
        return below(column(0), column(plan.jars() - 1));
    }

    private int lastRow() {
        return FIRST_ROW + plan.readings() - 1;
    }

    private String below(String from, String to) {
        return from + FIRST_ROW + ":" + to + lastRow();
    }

    /** Names what is typed, before any formula speaks of it. */
    public void name() throws com.sun.star.uno.Exception {
        book.names()
                .fixed("typed_times", page, below(CLOCK, CLOCK))
                .fixed("typed_readings", page, jars())
                .fixed("typed_around", page, below(around(), around()))
                .fixed("grid", page, below(CLOCK, around()));
    }

    /**
     * Writes it.
     *
     * @throws com.sun.star.uno.Exception if the office fails
     */
    public void write() throws com.sun.star.uno.Exception {
        String last = around();
        page.width("A1", 17)
                .width("B1", 22)
                .width(column(0) + "1:" + last + "1", Math.min(34, ACROSS / (plan.jars() + 1)));
        page.height("A1", 10).height("A2:A3", 8.2).height("A" + HEAD, isNarrow() ? 30 : 15.5);
        page.height(below("A", "A"), 6);
        // While the page is empty: later the office would look how it falls on paper.
        new PrintSetup(PrintSetup.Way.LANDSCAPE, words(ReadingWords.TITLE)).applyStyle(page);
        page.text("A1", words(ReadingWords.TITLE)).look("A1", CellStyleName.TITLE);
        hint("A2", ReadingWords.HINT);
        hint("A3", ReadingWords.OTHER_HINT);
        heads();
        page.look(below(PLANNED, PLANNED), CellStyleName.RESULT);
        for (int i = 0; i < plan.readings(); i++) {
            page.formula(PLANNED + (FIRST_ROW + i), "=INDEX(planned;" + (i + 1) + ")");
        }
        page.look(below(CLOCK, last), CellStyleName.INPUT);
        checks();
        message();
        PrintSetup.print(page, "A1:" + last + (lastRow() + 2));
        page.protect();
    }

    private void hint(String cell, Phrase words) throws com.sun.star.uno.Exception {
        String cells = cell + ":" + around() + cell.substring(1);
        page.merge(cells).look(cells, CellStyleName.HINT).wrapped(cells).text(cell, words(words));
    }

    /** Too narrow for a word such as “newspaper”. */
    private boolean isNarrow() {
        return ACROSS / (plan.jars() + 1) < 22;
    }

    private void heads() throws com.sun.star.uno.Exception {
        page.look("A" + HEAD + ":" + around() + HEAD, CellStyleName.NARROW_HEAD);
        page.text(PLANNED + HEAD, words(ReadingWords.MINUTE)).text(CLOCK + HEAD, words(ReadingWords.CLOCK));
        for (int jar = 0; jar < plan.jars(); jar++) {
            String scale = "INDEX(own_scales;" + (jar + 1) + ")";
            page.formula(
                    column(jar) + HEAD,
                    "=" + (jar + 1) + "&\" \"&INDEX(wraps;" + (jar + 1) + ")&IF(" + scale + "=scale;\"\";\" °\"&"
                            + scale + ")");
        }
        if (isNarrow()) {
            page.turned(column(0) + HEAD + ":" + around() + HEAD);
        }
        page.formula(around() + HEAD, "=" + FormulaText.quoted(language, ReadingWords.AROUND) + "&\" °\"&scale");
    }

    private void checks() throws com.sun.star.uno.Exception {
        int row = lastRow() + 1;
        page.text("A" + row, words(ReadingWords.CHECK))
                .look("A" + row, CellStyleName.LABEL)
                .height("A" + row, 9);
        for (int jar = 0; jar < plan.jars(); jar++) {
            String cell = column(jar) + row;
            page.formula(cell, "=INDEX(words;" + (jar + 1) + ")").look(cell, CellStyleName.NARROW_HEAD);
            Highlight.when(page, cell, "INDEX(states;" + (jar + 1) + ")=3", CellStyleName.SMALL_TROUBLE);
            Highlight.when(
                    page,
                    below(column(jar), column(jar)),
                    "AND(INDEX(states;" + (jar + 1) + ")=3;ROW()-" + HEAD + "=INDEX(found_rows;" + (jar + 1) + "))",
                    CellStyleName.FOUND);
        }
    }

    /** What can hurt first, then the first jar that is held back. */
    private void message() throws com.sun.star.uno.Exception {
        int row = lastRow() + 2;
        String cells = "A" + row + ":" + around() + row;
        page.merge(cells).look(cells, CellStyleName.MESSAGE).height("A" + row, 16);
        String hot = "MATCH(\"?*\";hurts;0)";
        String held = "COUNTIF(states;3)";
        String first = "MATCH(3;states;0)";
        page.formula(
                "A" + row,
                "=IFERROR(" + named(hot, "INDEX(hurts;" + hot + ")")
                        + "&\" \";\"\")&IFERROR(INDEX(also_cold;MATCH(\"?*\";also_cold;0))&\" \";\"\")&IF(COUNTA(typed_readings)=0;"
                        + quoted(ReadingWords.EMPTY)
                        + ";IF(AND(around_known=0;COUNTIF(states;5)>0);INDEX(findings;MATCH(5;states;0));IF("
                        + held + "=0;IF(COUNTIF(hurts;\"?*\")=0;" + quoted(ReadingWords.ALL_WELL) + ";\"\");"
                        + named(first, "INDEX(findings;" + first + ")") + "&IF(" + held + "=1;\"\";\" \"&IF(" + held
                        + "=2;"
                        + quoted(ReadingWords.MORE) + ";"
                        + FormulaText.sentence(language, ReadingWords.MANY_MORE, "(" + held + "-1)") + ")))))");
        Highlight.when(page, cells, "COUNTIF(hurts;\"?*\")>0", CellStyleName.HOT);
        Highlight.when(page, cells, held + ">0", CellStyleName.TROUBLE_MESSAGE);
    }

    private String named(String jar, String said) {
        return FormulaText.sentence(language, ReadingWords.NAMED, jar, "INDEX(wraps;" + jar + ")", said);
    }
}
