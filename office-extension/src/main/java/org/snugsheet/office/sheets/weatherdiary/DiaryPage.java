package org.snugsheet.office.sheets.weatherdiary;

import static org.snugsheet.office.sheets.weatherdiary.WeatherDiary.FIRST_ROW;
import static org.snugsheet.office.sheets.weatherdiary.WeatherDiary.LAST_ROW;

import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.words.Language;

/** The page that is typed into: one line a day. What is set once stands in the first column, so that Enter goes down the days. */
final class DiaryPage {

    static final String FIRST_DAY = "A7";
    static final String SCALE = "A8";

    private static final String MESSAGE = "A9";
    private static final int HEADS = FIRST_ROW - 1;

    // From here on there is a risk of frostbite: see COLD.FROSTBITE.
    private static final String FREEZING = "IF(UPPER(scale)=\"F\";0;-18)";

    private final Page page;
    private final BehindTheDiary behind;
    private final Book book;
    private final Language language;

    DiaryPage(Page page, BehindTheDiary behind, Book book) {
        this.page = page;
        this.behind = behind;
        this.book = book;
        this.language = book.language();
    }

    void write() throws com.sun.star.uno.Exception {
        sizes();
        top();
        settings();
        heads();
        days();
        message();
        rules();
        new PrintSetup(PrintSetup.Way.LANDSCAPE, words(DiaryWords.TITLE)).apply(page, "A1:H" + LAST_ROW);
        page.protect();
    }

    private void sizes() throws com.sun.star.uno.Exception {
        page.width("A1", 27).width("B1", 32).width("C1", 15).width("D1", 26).width("E1", 26);
        page.width("F1", 38).width("G1", 30).width("H1", 56);
        page.height("A1", 10)
                .height("A2", 7)
                .height("A3", 10.5)
                .height("A4", 1.5)
                .height("A5:A8", 6.5);
        page.height("A9", 11).height("A10", 2).height("A" + HEADS, 9);
        page.height("A" + FIRST_ROW + ":A" + LAST_ROW, 6.5);
    }

    private void top() throws com.sun.star.uno.Exception {
        page.text("A1", words(DiaryWords.TITLE)).look("A1", CellStyleName.TITLE);
        page.merge("A2:H2").look("A2:H2", CellStyleName.PURPOSE).text("A2", words(DiaryWords.PURPOSE));
        page.merge("A3:H3")
                .look("A3:H3", CellStyleName.CAUTION)
                .paragraphs("A3", words(DiaryWords.CAUTION_WORD), words(DiaryWords.CAUTION));
        page.look("A5", CellStyleName.SAMPLE).text("A5", words(DiaryWords.BOXES));
        page.text("B5", words(DiaryWords.BOXES_TYPE)).look("B5:H5", CellStyleName.FOLLOWS);
    }

    private void settings() throws com.sun.star.uno.Exception {
        page.look(FIRST_DAY, CellStyleName.INPUT).numbers(FIRST_DAY, words(DiaryWords.DATE_CODE));
        page.text("B7", words(DiaryWords.FIRST_DAY)).look("B7:H7", CellStyleName.HINT);
        page.look(SCALE, CellStyleName.INPUT).text(SCALE, book.setting().scale() == Scale.FAHRENHEIT ? "F" : "C");
        page.text("B8", words(DiaryWords.SCALE)).look("B8:H8", CellStyleName.HINT);
    }

    private void heads() throws com.sun.star.uno.Exception {
        page.look("A" + HEADS + ":H" + HEADS, CellStyleName.HEAD).wrapped("A" + HEADS + ":H" + HEADS);
        page.text("A" + HEADS, words(DiaryWords.DAY_HEAD));
        page.text("B" + HEADS, words(DiaryWords.SKY_HEAD));
        page.formula("D" + HEADS, degrees(DiaryWords.MORNING_HEAD));
        page.formula("E" + HEADS, degrees(DiaryWords.NOON_HEAD));
        page.text("F" + HEADS, words(DiaryWords.WIND_HEAD));
        page.formula("G" + HEADS, degrees(DiaryWords.FEELS_HEAD));
        page.text("H" + HEADS, words(DiaryWords.WORE_HEAD));
    }

    private String degrees(Phrase words) {
        return "=" + FormulaText.sentence(language, words, "\"°\"&UPPER(scale)");
    }

    private void days() throws com.sun.star.uno.Exception {
        page.look(all("A", "A"), CellStyleName.LABEL).numbers(all("A", "A"), words(DiaryWords.DATE_CODE));
        page.look(all("B", "B"), CellStyleName.INPUT);
        page.look(all("C", "C"), CellStyleName.LARGE).size(all("C", "C"), 13);
        page.look(all("D", "F"), CellStyleName.INPUT);
        page.look(all("G", "G"), CellStyleName.RESULT);
        page.look(all("H", "H"), CellStyleName.INPUT);
        for (int row = FIRST_ROW; row <= LAST_ROW; row++) {
            int number = row - FIRST_ROW + 1;
            String day = "WORKDAY(first_day-1;" + number + ")";
            // The days of one month, and no more.
            page.formula(
                    "A" + row,
                    "=IF(ISNUMBER(first_day);IF(AND(MONTH(" + day + ")=MONTH(first_day);YEAR(" + day
                            + ")=YEAR(first_day));" + day + ";\"\");"
                            + FormulaText.quoted(language.say(DiaryWords.DAY, number)) + ")");
            String sky = behind.cell(BehindTheDiary.SKY + row);
            page.formula("C" + row, "=IF(" + sky + "=0;\"\";INDEX(pictures;" + sky + "))");
            page.formula("G" + row, "=" + behind.cell(BehindTheDiary.FEELS + row));
        }
    }

    private void message() throws com.sun.star.uno.Exception {
        String felt = behind.days(BehindTheDiary.COLDEST_FELT);
        String coldest = "MIN(" + felt + ")";
        String isCold = "AND(COUNT(" + felt + ")>0;" + coldest + "<=" + FREEZING + ")";
        String problems = behind.days(BehindTheDiary.PROBLEM);
        page.merge("A9:H9").look("A9:H9", CellStyleName.MESSAGE);
        page.formula(
                MESSAGE,
                "=IF(" + isCold + ";"
                        + FormulaText.sentence(
                                language,
                                DiaryWords.VERY_COLD,
                                dateOf("MATCH(" + coldest + ";" + felt + ";0)"),
                                FoundPage.degrees(coldest))
                        + ";IF(COUNTIF(" + problems + ";1)>0;" + unreadable(1, "typed_mornings")
                        + ";IF(COUNTIF(" + problems + ";2)>0;" + unreadable(2, "typed_noons")
                        + ";IF(COUNTIF(" + problems + ";3)>0;"
                        + FormulaText.sentence(language, DiaryWords.UNKNOWN_WIND, dateOf("MATCH(3;" + problems + ";0)"))
                        + ";IF(" + behind.daysWritten() + "=0;" + FormulaText.quoted(language, DiaryWords.EMPTY) + ";"
                        + FormulaText.sentence(language, DiaryWords.WRITTEN, behind.daysWritten())
                        + ")))))");
        Highlight.when(page, "A9:H9", isCold, CellStyleName.HOT);
        Highlight.when(page, "A9:H9", "SUM(" + problems + ")>0", CellStyleName.TROUBLE_MESSAGE);
        for (String column : new String[] {"D", "E", "F"}) {
            for (int row = FIRST_ROW; row <= LAST_ROW; row++) {
                String cell = "$" + column + "$" + row;
                Highlight.when(
                        page,
                        column + row,
                        "AND(" + cell + "<>\"\";" + behind.cell(cell) + "=\"\")",
                        CellStyleName.FOUND);
            }
        }
    }

    private String unreadable(int problem, String column) {
        String at = "MATCH(" + problem + ";" + behind.days(BehindTheDiary.PROBLEM) + ";0)";
        String typed = "INDEX(" + column + ";" + at + ")";
        return FormulaText.sentence(language, DiaryWords.UNREADABLE, dateOf(at), typed);
    }

    private String dateOf(String at) {
        return "INDEX(" + behind.days(BehindTheDiary.DATE) + ";" + at + ")";
    }

    private void rules() throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .hint(FIRST_DAY, words(DiaryWords.DAY_HEAD), words(DiaryWords.DATE_HINT))
                .only(SCALE, "scales", "°C, °F", words(DiaryWords.SCALE_HINT))
                .only(all("B", "B"), "skies", words(DiaryWords.SKY_HEAD), words(DiaryWords.SKY_HINT))
                .hint(all("D", "E"), "°C, °F", words(DiaryWords.TEMPERATURE_HINT))
                .choice(all("F", "F"), "winds", words(DiaryWords.WIND_HEAD), words(DiaryWords.WIND_HINT))
                .choice(all("H", "H"), "clothes", words(DiaryWords.WORE_HEAD), words(DiaryWords.WORE_HINT));
    }

    private static String all(String from, String to) {
        return from + FIRST_ROW + ":" + to + LAST_ROW;
    }

    private String words(Phrase phrase) {
        return language.words(phrase);
    }
}
