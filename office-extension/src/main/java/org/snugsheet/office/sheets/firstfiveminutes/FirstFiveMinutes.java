package org.snugsheet.office.sheets.firstfiveminutes;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.readings.AsRead;
import org.snugsheet.office.sheets.readings.BehindOneJar;
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.OneJarRead;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.ExampleThermometer;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;
import org.snugsheet.office.words.Language;

/**
 * The sheet to begin with: type what one thermometer read, and read off how fast the jar cooled and how sure that is.
 *
 * <p>A reader needs only what is on it: three numbered steps, from the readings to the answer.
 */
public final class FirstFiveMinutes implements WorkedSheet {

    static final int FIRST_ROW = 8;
    static final int ROWS = 10;

    private static final List<Integer> MINUTES = List.of(0, 5, 10, 15, 20, 25, 30);
    private static final double SURROUNDINGS = 3;
    // Warm tap water: common practice, no source.
    private static final double START = 40;
    private static final double MARK = 1;
    // As a jar in one woollen sock.
    private static final double PER_MINUTE = 0.026;
    private static final long SEED = 20_261_201;

    private static final String FINE = "check=\"OK\"";

    private static final Grid GRID = new Grid('B', 'C', 'C', FIRST_ROW - 1, ROWS);

    @Override
    public String fileName() {
        return "first-five-minutes";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.FIRST_FIVE_MINUTES;
    }

    @Override
    public Set<Language> languages() {
        return EnumSet.allOf(Language.class);
    }

    @Override
    public String results() {
        return FirstWords.PAGE.english() + ".F14:H16";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page page = book.page(language.words(FirstWords.PAGE));
        book.names()
                .fixed("scale", page, "D20")
                .fixed("surroundings", page, "D21")
                .fixed("mark", page, "D22")
                .fixed("answers", page, "G14:G16");
        setSizes(page);
        new Top(
                        language,
                        language.words(FirstWords.TITLE),
                        language.words(FirstWords.PURPOSE),
                        language.words(FirstWords.CAUTION))
                .write(page, "B", "C", "H");
        ExampleThermometer thermometer = new ExampleThermometer(book.setting().scale(), MARK);
        writeReadings(page, language, thermometer);
        writeSettings(page, language, thermometer);
        Page read = OneJarRead.add(book, page, GRID);
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeAnswer(page, language);
        writeNext(page, language);
        rule(page, language);
        Page behind = BehindOneJar.add(book, GRID);
        BehindOneJar.chart(behind, language, ROWS, false).draw(book.office(), page, "cooling_curve", "F17:H25");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(FirstWords.TITLE)).apply(page, "A1:H25");
        page.protect();
        read.protect();
        book.describe(
                language.words(FirstWords.TITLE),
                language.words(FirstWords.SUBJECT),
                language.words(FirstWords.DESCRIPTION),
                language.words(FirstWords.KEYWORD),
                language.words(FirstWords.HALF_TIME));
        book.openAt(page, "C" + FIRST_ROW);
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 12).width("B1", 30).width("C1", 34).width("D1", 62).width("E1", 5);
        page.width("F1", 62).width("G1", 26).width("H1", 46);
        page.height("A6:A25", 6.5).height("A7", 12.5).height("A18", 3).height("A19", 7);
        page.height("A24", 7).height("A25", 47);
    }

    private static void writeReadings(Page page, Language language, ExampleThermometer thermometer)
            throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + ROWS - 1;
        page.look("A6:D6", CellStyleName.SECTION).formula("A6", Invented.heading(language, FirstWords.STEP_READ));
        page.text("B7", language.words(FirstWords.MINUTES)).look("B7:C7", CellStyleName.HEAD);
        page.formula("C7", Degrees.label(language, FirstWords.THERMOMETER));
        page.look("B8:C" + last, CellStyleName.INPUT).look("D8:D" + last, CellStyleName.HINT);
        double[] read = thermometer.shown(thermometer
                .readings(SURROUNDINGS, START, SEED)
                .of("first jar", CoolingConstant.ofPerMinute(PER_MINUTE), MINUTES));
        for (int row = 0; row < read.length; row++) {
            page.number("B" + (FIRST_ROW + row), MINUTES.get(row)).number("C" + (FIRST_ROW + row), read[row]);
        }
        page.text("D8", language.words(FirstWords.HINT_FIRST));
        page.text("D9", language.words(FirstWords.HINT_NEXT));
        page.text("D11", language.words(FirstWords.HINT_MISSED));
        page.text("D12", language.words(FirstWords.HINT_OTHER));
        page.text("D13", language.words(FirstWords.HINT_FIVE));
        page.text("D15", language.words(FirstWords.HINT_MORE));
        page.text("D16", language.words(FirstWords.HINT_FEWER));
    }

    private static void writeSettings(Page page, Language language, ExampleThermometer thermometer)
            throws com.sun.star.uno.Exception {
        page.look("A19:D19", CellStyleName.SECTION).text("A19", language.words(FirstWords.STEP_HOW));
        for (int row = 20; row <= 22; row++) {
            page.merge("A" + row + ":C" + row).look("A" + row + ":C" + row, CellStyleName.LABEL);
        }
        page.look("D20:D22", CellStyleName.INPUT);
        page.text("A20", language.words(FirstWords.SCALE)).text("D20", thermometer.letter());
        page.formula("A21", Degrees.label(language, FirstWords.BESIDE)).number("D21", thermometer.typed(SURROUNDINGS));
        page.formula("A22", Degrees.label(language, FirstWords.MARK)).number("D22", thermometer.mark());
    }

    private static void writeAnswer(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("F6:H6", CellStyleName.SECTION).text("F6", language.words(FirstWords.STEP_ANSWER));
        page.merge("F7:H8").look("F7:H8", CellStyleName.MESSAGE);
        page.formula("F7", OneJarRead.message(language));
        Highlight.when(page, "F7:H8", OneJarRead.IS_HOT, CellStyleName.HOT);
        Highlight.when(page, "F7:H8", OneJarRead.HAS_FINDING, CellStyleName.TROUBLE_MESSAGE);
        OneJarRead.mark(page, GRID);
        page.merge("F9:H11").look("F9:H11", CellStyleName.SENTENCE);
        page.formula(
                "F9",
                "=IF(" + FINE + ";IFERROR("
                        + FormulaText.sentence(
                                language, FirstWords.HALF, "ROUND(COOL.HALFTIME(" + OneJarRead.JAR + ");0)")
                        + ";" + FormulaText.quoted(language, FirstWords.HARDLY) + ");"
                        + FormulaText.quoted(language, FirstWords.COMES) + ")");
        page.merge("F12:H13").look("F12:H13", CellStyleName.MESSAGE);
        page.formula("F12", "=IF(" + FINE + ";IFERROR(" + howSure(language) + ";\"\");\"\")");
        row(page, 14, language.words(FirstWords.HALF_TIME), "0.0", "COOL.HALFTIME(" + OneJarRead.JAR + ")");
        row(page, 15, language.words(FirstWords.RATE), "0.0000", "COOL.RATE(" + OneJarRead.JAR + ")");
        row(page, 16, "", "0.0", "");
        page.formula("F16", Degrees.label(language, FirstWords.LOST));
        String start = "COOL.START(" + OneJarRead.JAR + ")";
        page.formula(
                "G16",
                ifUsable(start + "-COOL.TEMP(10;" + start + ";COOL.SURROUNDINGS(" + OneJarRead.JAR + ");COOL.RATE("
                        + OneJarRead.JAR + ");scale)"));
        page.formula("H14", ifUsable("COOL.HALFTIME.ERROR(" + OneJarRead.JAR + ")"))
                .numbers("H14", "\"± \"0.0");
        page.formula("H15", ifUsable("COOL.RATE.ERROR(" + OneJarRead.JAR + ")")).numbers("H15", "\"± \"0.0000");
        page.text("H16", language.words(FirstWords.BY_CURVE));
    }

    private static String howSure(Language language) {
        String half = "INDEX(COOL.REPORT(" + OneJarRead.JAR + ");3;";
        return FormulaText.sentence(language, FirstWords.SURE, "ROUND(" + half + "4);0)", "ROUND(" + half + "5);0)");
    }

    private static void row(Page page, int row, String label, String numbers, String function)
            throws com.sun.star.uno.Exception {
        page.text("F" + row, label).look("F" + row, CellStyleName.LABEL).look("G" + row, CellStyleName.RESULT);
        page.look("H" + row, CellStyleName.UNCERTAINTY).numbers("G" + row, numbers);
        if (!function.isEmpty()) {
            page.formula("G" + row, ifUsable(function));
        }
    }

    // The dash is for show only: the words above it say what is wrong.
    private static String ifUsable(String function) {
        return "=IF(" + FINE + ";IFERROR(" + function + ";\"–\");\"–\")";
    }

    private static void writeNext(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("A24:D24", CellStyleName.SECTION).text("A24", language.words(FirstWords.NEXT));
        page.merge("A25:D25").look("A25:D25", CellStyleName.NOTE);
        page.paragraphs(
                "A25",
                language.words(FirstWords.TRY),
                language.words(FirstWords.TRY_TEXT),
                language.words(FirstWords.WHAT),
                language.words(FirstWords.WHAT_TEXT),
                language.words(FirstWords.SEVERAL),
                language.words(FirstWords.SEVERAL_TEXT));
    }

    private static void rule(Page page, Language language) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .only("D20", "scales", language.words(SharedWords.SCALE), language.words(SharedWords.SCALE_HINT))
                .hint("D21", language.words(SharedWords.AROUND_JAR), language.words(FirstWords.AROUND_HINT))
                .aboveZero("D22", language.words(SharedWords.MARK), language.words(SharedWords.MARK_HINT));
    }
}
