package org.snugsheet.office.sheets.onejar;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.NamedRanges;
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
import org.snugsheet.office.sheets.shared.ExampleJar;
import org.snugsheet.office.sheets.shared.ExampleThermometer;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.OrDash;
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;
import org.snugsheet.office.words.Language;

/**
 * One jar, one curve: all that the readings of one jar tell, with the uncertainty of each number; what halving means; and two
 * questions to the curve, forwards and backwards.
 */
public final class OneJarOneCurve implements WorkedSheet {

    static final int FIRST_ROW = 8;
    static final int ROWS = 12;

    private static final List<Phrase> AFTER_HALVES = List.of(
            OneJarWords.HALVES_0,
            OneJarWords.HALVES_1,
            OneJarWords.HALVES_2,
            OneJarWords.HALVES_3,
            OneJarWords.HALVES_4);

    private static final Grid GRID = new Grid('A', 'B', 'B', FIRST_ROW - 1, ROWS);

    private static final List<Integer> MINUTES = List.of(0, 4, 8, 12, 16, 20, 25, 30, 35, 40);
    private static final double SURROUNDINGS = -3;
    // Warm tap water: common practice, no source.
    private static final double START = 41;
    private static final double MARK = 0.5;
    private static final double MILLILITERS = 150;
    // 10 °C and an hour: what the jar has not reached yet.
    private static final double ASKED = 10;
    private static final long SEED = 20_261_215;

    @Override
    public String fileName() {
        return "one-jar-one-curve";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.ONE_JAR;
    }

    @Override
    public Set<Language> languages() {
        return EnumSet.allOf(Language.class);
    }

    @Override
    public String results() {
        return OneJarWords.PAGE.english() + ".D7:F14";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page page = book.page(language.words(OneJarWords.PAGE));
        defineNames(book.names(), page);
        setSizes(page);
        new Top(
                        language,
                        language.words(OneJarWords.TITLE),
                        language.words(OneJarWords.PURPOSE),
                        language.words(OneJarWords.CAUTION))
                .write(page, "H");
        ExampleThermometer thermometer = new ExampleThermometer(book.setting().scale(), MARK);
        writeReadings(page, language, thermometer);
        writeSettings(page, language, thermometer);
        Page read = OneJarRead.add(book, page, GRID);
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeCheck(page, language);
        writeResults(page, language);
        writeHalves(page, language);
        writeQuestions(page, language, thermometer);
        writeNotes(page, language);
        rule(page, language);
        Page behind = BehindOneJar.add(book, GRID);
        BehindOneJar.chart(behind, language, ROWS, true).draw(book.office(), page, "cooling_curve", "H6:H20");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(OneJarWords.TITLE)).apply(page, "A1:H28");
        page.protect();
        read.protect();
        book.describe(
                language.words(OneJarWords.TITLE),
                language.words(OneJarWords.SUBJECT),
                language.words(OneJarWords.DESCRIPTION),
                language.words(OneJarWords.KEYWORD),
                language.words(OneJarWords.HALF_TIME));
        book.openAt(page, "B" + FIRST_ROW);
    }

    private static void defineNames(NamedRanges names, Page page) {
        names.fixed("scale", page, "C20")
                .fixed("surroundings", page, "C21")
                .fixed("mark", page, "C22")
                .fixed("volume", page, "C23")
                .fixed("halftime", page, "E7")
                .fixed("rate", page, "E8")
                .fixed("start", page, "E9")
                .fixed("cold", page, "E10")
                .fixed("minutes_asked", page, "E25")
                .fixed("degrees_asked", page, "E26");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 24)
                .width("B1", 28)
                .width("C1", 26)
                .width("D1", 64)
                .width("E1", 26)
                .width("F1", 36);
        page.width("G1", 4).width("H1", 88);
        page.height("A6:A28", 6.2).height("A6", 6.5).height("A27:A28", 8);
    }

    private static void writeReadings(Page page, Language language, ExampleThermometer thermometer)
            throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + ROWS - 1;
        page.look("A6:B6", CellStyleName.SECTION).formula("A6", Invented.heading(language, OneJarWords.READINGS));
        page.look("A7:B7", CellStyleName.HEAD)
                .text("A7", language.words(OneJarWords.MINUTES))
                .formula("B7", Degrees.label(language, OneJarWords.READING));
        page.look("A" + FIRST_ROW + ":B" + last, CellStyleName.INPUT);
        double[] read = thermometer.shown(thermometer
                .readings(SURROUNDINGS, START, SEED)
                .of(ExampleJar.wrapped("jar in a mitten", 1, "wool"), MINUTES));
        for (int row = 0; row < read.length; row++) {
            page.number("A" + (FIRST_ROW + row), MINUTES.get(row)).number("B" + (FIRST_ROW + row), read[row]);
        }
    }

    private static void writeSettings(Page page, Language language, ExampleThermometer thermometer)
            throws com.sun.star.uno.Exception {
        for (int row = 20; row <= 23; row++) {
            page.merge("A" + row + ":B" + row).look("A" + row + ":B" + row, CellStyleName.LABEL);
        }
        page.look("C20:C23", CellStyleName.INPUT);
        page.text("A20", language.words(OneJarWords.SCALE)).text("C20", thermometer.letter());
        page.formula("A21", Degrees.label(language, OneJarWords.AROUND)).number("C21", thermometer.typed(SURROUNDINGS));
        page.formula("A22", Degrees.label(language, OneJarWords.MARK)).number("C22", thermometer.mark());
        page.formula("A23", Degrees.waterLabel(language)).number("C23", MILLILITERS);
    }

    private static void writeCheck(Page page, Language language) throws com.sun.star.uno.Exception {
        page.merge("A24:C28").look("A24:C28", CellStyleName.MESSAGE).formula("A24", OneJarRead.message(language));
        Highlight.when(page, "A24:C28", OneJarRead.IS_HOT, CellStyleName.HOT);
        Highlight.when(page, "A24:C28", OneJarRead.HAS_FINDING, CellStyleName.TROUBLE_MESSAGE);
        OneJarRead.mark(page, GRID);
    }

    private static void writeResults(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("D6:F6", CellStyleName.SECTION).text("D6", language.words(OneJarWords.CURVE));
        fitted(page, 7, language.words(OneJarWords.HALF_TIME), "0.0", "COOL.HALFTIME");
        fitted(page, 8, language.words(OneJarWords.RATE), "0.0000", "COOL.RATE");
        fitted(page, 9, "", "0.0", "COOL.START");
        page.formula("D9", Degrees.label(language, OneJarWords.START));
        fitted(page, 10, "", "0.0", "COOL.SURROUNDINGS");
        page.formula("D10", Degrees.label(language, OneJarWords.SURROUNDINGS));
        row(page, 11, "", "0.00", "COOL.MISFIT(" + OneJarRead.JAR + ")");
        page.formula("D11", Degrees.label(language, OneJarWords.MISFIT))
                .text("F11", language.words(OneJarWords.MISFIT_GOOD));
        row(page, 12, language.words(OneJarWords.HEAT), "0.0", "");
        page.formula(
                "E12", ifUsable("COOL.HEAT(volume;start;COOL.TEMP(MAX(times);start;cold;rate;scale);;scale)/1000"));
        page.formula("F12", "=" + FormulaText.sentence(language, OneJarWords.HEAT_IN, "MAX(times)"));
        row(page, 13, language.words(OneJarWords.POWER), "0.0", "COOL.POWER(volume;rate;start;cold;;scale)");
        page.text("F13", language.words(OneJarWords.POWER_IN));
        page.text("D14", language.words(OneJarWords.LAW)).merge("D14:D15").look("D14:D15", CellStyleName.LABEL);
        page.merge("E14:F15")
                .look("E14:F15", CellStyleName.RESULT)
                .wrapped("E14:F15")
                .formula("E14", ifUsable("COOL.MODEL(" + OneJarRead.JAR + ")"));
    }

    private static void fitted(Page page, int row, String label, String numbers, String function)
            throws com.sun.star.uno.Exception {
        row(page, row, label, numbers, function + "(" + OneJarRead.JAR + ")");
        page.formula("F" + row, ifUsable(function + ".ERROR(" + OneJarRead.JAR + ")"));
        page.numbers("F" + row, "\"± \"" + numbers);
    }

    private static void row(Page page, int row, String label, String numbers, String formula)
            throws com.sun.star.uno.Exception {
        page.text("D" + row, label).look("D" + row, CellStyleName.LABEL).look("E" + row, CellStyleName.RESULT);
        page.look("F" + row, CellStyleName.UNCERTAINTY).numbers("E" + row, numbers);
        if (!formula.isEmpty()) {
            page.formula("E" + row, ifUsable(formula));
        }
    }

    // The dash is for show only: the message says what is wrong.
    private static String ifUsable(String formula) {
        return OrDash.of("IF(check=\"OK\";" + formula + ";" + OrDash.DASH + ")");
    }

    private static void writeHalves(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("D16:F16", CellStyleName.SECTION).text("D16", language.words(OneJarWords.HALVES));
        page.look("D17:F17", CellStyleName.HEAD)
                .text("D17", language.words(OneJarWords.AFTER))
                .text("E17", language.words(OneJarWords.AFTER_MINUTES));
        page.formula("F17", Degrees.label(language, OneJarWords.WARMER_BY));
        for (int n = 0; n < AFTER_HALVES.size(); n++) {
            int row = 18 + n;
            page.text("D" + row, language.words(AFTER_HALVES.get(n)))
                    .look("D" + row, CellStyleName.LABEL)
                    .look("E" + row + ":F" + row, CellStyleName.RESULT);
            page.formula("E" + row, OrDash.of(n + "*halftime")).numbers("E" + row, "0");
            page.formula("F" + row, OrDash.of("(start-cold)/2^" + n)).numbers("F" + row, "0.0");
        }
    }

    private static void writeQuestions(Page page, Language language, ExampleThermometer thermometer)
            throws com.sun.star.uno.Exception {
        page.look("D24:F24", CellStyleName.SECTION).text("D24", language.words(OneJarWords.ASK));
        page.look("D25:D26", CellStyleName.LABEL)
                .look("E25:E26", CellStyleName.INPUT)
                .look("F25:F26", CellStyleName.RESULT);
        page.text("D25", language.words(OneJarWords.HOW_WARM)).number("E25", 60);
        page.formula("F25", OrDash.of("FIXED(COOL.TEMP(minutes_asked;start;cold;rate;scale);1)&" + Degrees.UNIT));
        page.formula("D26", Degrees.label(language, OneJarWords.WHEN)).number("E26", thermometer.typed(ASKED));
        page.formula(
                "F26",
                "=IF(ISTEXT(rate);rate;IFERROR("
                        + FormulaText.sentence(
                                language,
                                OneJarWords.IN_MINUTES,
                                "FIXED(COOL.TIME(degrees_asked;start;cold;rate;scale);0)")
                        + ";" + FormulaText.quoted(language, OneJarWords.NEVER) + "))");
        page.merge("D27:F28").look("D27:F28", CellStyleName.HINT).wrapped("D27:F28");
        page.text("D27", language.words(OneJarWords.FORECAST));
    }

    private static void writeNotes(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("H21", CellStyleName.SECTION).text("H21", language.words(OneJarWords.LOOK_FOR));
        page.merge("H22:H28").look("H22:H28", CellStyleName.NOTE);
        page.paragraphs(
                "H22",
                language.words(OneJarWords.FLAT),
                language.words(OneJarWords.FLAT_TEXT),
                language.words(OneJarWords.PLUS_MINUS),
                language.words(OneJarWords.PLUS_MINUS_TEXT),
                language.words(OneJarWords.NOT_READ),
                language.words(OneJarWords.NOT_READ_TEXT));
    }

    private static void rule(Page page, Language language) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .only("C20", "scales", language.words(SharedWords.SCALE), language.words(SharedWords.SCALE_HINT))
                .hint("C21", language.words(SharedWords.AROUND_JAR), language.words(OneJarWords.AROUND_HINT))
                .aboveZero("C22", language.words(SharedWords.MARK), language.words(SharedWords.MARK_HINT))
                .aboveZero("C23", language.words(OneJarWords.WATER), language.words(OneJarWords.WATER_HINT))
                .atLeast("E25", 0, language.words(OneJarWords.MINUTES), language.words(OneJarWords.MINUTES_HINT))
                .hint("E26", language.words(OneJarWords.TEMPERATURE), language.words(OneJarWords.TEMPERATURE_HINT));
    }
}
