package org.snugsheet.office.sheets.weatherdiary;

import static org.snugsheet.office.sheets.weatherdiary.WeatherDiary.DAYS;

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
import org.snugsheet.office.uno.CellName;
import org.snugsheet.office.words.Language;

/** What the month tells: a bar of boxes for each kind of day, the temperatures in a chart, and sentences that a class can read. */
final class FoundPage {

    private static final int FIRST_KIND = 4;
    private static final int LAST_KIND = FIRST_KIND + Kinds.SKIES.size() - 1;
    private static final int WARMTH = LAST_KIND + 3;
    private static final int CHART_END = WARMTH + 14;
    private static final int SENTENCES = CHART_END + 2;
    private static final int LAST_SENTENCE = SENTENCES + 4;
    // The boxes begin in the fourth column.
    private static final int BOXES = 3;
    private static final String LAST = CellName.column(BOXES + DAYS - 1);

    private final Page page;
    private final BehindTheDiary behind;
    private final Book book;
    private final Language language;

    FoundPage(Page page, BehindTheDiary behind, Book book) {
        this.page = page;
        this.behind = behind;
        this.book = book;
        this.language = book.language();
    }

    void write() throws com.sun.star.uno.Exception {
        page.width("A1", 34).width("B1", 17).width("C1", 12).width("D1:" + LAST + "1", 5.3);
        page.text("A1", words(DiaryWords.TITLE)).look("A1", CellStyleName.TITLE).height("A1", 11);
        kinds();
        section(WARMTH, DiaryWords.WARMTH);
        chart();
        sentences();
        new PrintSetup(PrintSetup.Way.PORTRAIT, words(DiaryWords.TITLE)).apply(page, "A1:" + LAST + LAST_SENTENCE);
        page.protect();
    }

    private void section(int row, Phrase title) throws com.sun.star.uno.Exception {
        page.look("A" + row + ":" + LAST + row, CellStyleName.SECTION).text("A" + row, words(title));
        page.height("A" + row, 8);
    }

    private void kinds() throws com.sun.star.uno.Exception {
        section(3, DiaryWords.KINDS);
        for (int i = 0; i < Kinds.SKIES.size(); i++) {
            int row = FIRST_KIND + i;
            page.height("A" + row, 8);
            page.text("A" + row, words(Kinds.SKIES.get(i).words())).look("A" + row, CellStyleName.LABEL);
            page.text("B" + row, Kinds.SKIES.get(i).picture()).look("B" + row, CellStyleName.LARGE);
            page.formula("C" + row, "=COUNTIF(" + behind.days(BehindTheDiary.SKY) + ";" + (i + 1) + ")")
                    .look("C" + row, CellStyleName.COUNT);
            page.look("D" + row + ":" + LAST + row, CellStyleName.BOX);
            Highlight.when(
                    page, "D" + row + ":" + LAST + row, "COLUMN()-" + BOXES + "<=$C$" + row, CellStyleName.FILLED);
        }
        int row = LAST_KIND + 1;
        page.text("A" + row, words(DiaryWords.ALL_DAYS)).look("A" + row, CellStyleName.LABEL);
        page.formula("C" + row, "=SUM(C" + FIRST_KIND + ":C" + LAST_KIND + ")").look("C" + row, CellStyleName.COUNT);
    }

    private void chart() throws com.sun.star.uno.Exception {
        new ScatterChart(
                        words(DiaryWords.WARMTH),
                        words(DiaryWords.DAYS_AXIS),
                        words(DiaryWords.UP_AXIS),
                        words(DiaryWords.CHART_WORDS),
                        List.of(
                                plot(Plot.Form.LINE, BehindTheDiary.MORNING, SeriesColor.BLUE),
                                plot(Plot.Form.LINE, BehindTheDiary.NOON, SeriesColor.VERMILION),
                                plot(Plot.Form.POINTS, BehindTheDiary.MORNING, SeriesColor.BLUE),
                                plot(Plot.Form.POINTS, BehindTheDiary.NOON, SeriesColor.VERMILION)))
                .draw(book.office(), page, "temperatures", "A" + (WARMTH + 1) + ":" + LAST + CHART_END);
    }

    private Plot plot(Plot.Form form, String column, SeriesColor color) {
        int first = WeatherDiary.FIRST_ROW;
        return new Plot(
                form,
                cells(BehindTheDiary.NUMBER + first + ":" + BehindTheDiary.NUMBER + WeatherDiary.LAST_ROW),
                cells(column + first + ":" + column + WeatherDiary.LAST_ROW),
                cells(column + (first - 1)),
                color);
    }

    private Plot.Cells cells(String address) {
        return new Plot.Cells(behind.page(), address);
    }

    private void sentences() throws com.sun.star.uno.Exception {
        section(SENTENCES, DiaryWords.SAY);
        String morning = behind.days(BehindTheDiary.MORNING);
        String noon = behind.days(BehindTheDiary.NOON);
        String feels = behind.days(BehindTheDiary.FEELS);
        String both = "SUMPRODUCT(ISNUMBER(" + morning + ")*ISNUMBER(" + noon + "))";
        String warmer = "SUMPRODUCT(ISNUMBER(" + morning + ")*ISNUMBER(" + noon + ")*(" + noon + ">" + morning + "))";
        sentence(1, "C" + (LAST_KIND + 1) + "<2", mostOften());
        sentence(2, both + "<2", FormulaText.sentence(language, DiaryWords.WARMER, warmer, both));
        sentence(
                3,
                "OR(COUNT(" + morning + ")<2;COUNT(" + noon + ")<2)",
                FormulaText.sentence(
                        language,
                        DiaryWords.EXTREMES,
                        degrees("MIN(" + morning + ")"),
                        dateOf("MIN(" + morning + ")", morning),
                        degrees("MAX(" + noon + ")"),
                        dateOf("MAX(" + noon + ")", noon)));
        String colder = "SUMPRODUCT(ISNUMBER(" + feels + ")*ISNUMBER(" + noon + ")*(" + feels + "<" + noon + "))";
        sentence(
                4,
                "COUNT(" + feels + ")<2",
                FormulaText.sentence(language, DiaryWords.FELT_COLDER, colder, "COUNT(" + feels + ")"));
    }

    private String mostOften() {
        String counts = "$C$" + FIRST_KIND + ":$C$" + LAST_KIND;
        String most = "MAX(" + counts + ")";
        return "IF(COUNTIF(" + counts + ";" + most + ")>1;" + FormulaText.sentence(language, DiaryWords.TIED, most)
                + ";"
                + FormulaText.sentence(
                        language,
                        DiaryWords.MOST,
                        "INDEX(skies;MATCH(" + most + ";" + counts + ";0))",
                        most,
                        "$C$" + (LAST_KIND + 1))
                + ")";
    }

    private void sentence(int place, String tooFew, String sentence) throws com.sun.star.uno.Exception {
        int row = SENTENCES + place;
        String cells = "A" + row + ":" + LAST + row;
        page.merge(cells).look(cells, CellStyleName.SENTENCE).height("A" + row, 13);
        page.formula(
                "A" + row,
                "=IF(" + tooFew + ";" + FormulaText.quoted(language, DiaryWords.NOT_YET) + ";" + sentence + ")");
    }

    private String dateOf(String value, String column) {
        return "INDEX(" + behind.days(BehindTheDiary.DATE) + ";MATCH(" + value + ";" + column + ";0))";
    }

    /** A temperature in a sentence, with its unit. */
    static String degrees(String formula) {
        return "ROUND(" + formula + ";1)&\" °\"&UPPER(scale)";
    }

    private String words(Phrase phrase) {
        return language.words(phrase);
    }
}
