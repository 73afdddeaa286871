package org.snugsheet.office.sheets.onejar;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.readings.AsRead;
import org.snugsheet.office.sheets.readings.BehindOneJar;
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.OneJarRead;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.ExampleJar;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.InventedReadings;
import org.snugsheet.office.sheets.shared.OrDash;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;

/**
 * One jar, one curve: all that the readings of one jar tell, with the uncertainty of each number; what halving means; and two
 * questions to the curve, forwards and backwards.
 */
public final class OneJarOneCurve implements WorkedSheet {

    static final String PAGE = "Jar";

    static final int FIRST_ROW = 8;
    static final int ROWS = 12;

    private static final Grid GRID = new Grid('A', 'B', 'B', FIRST_ROW - 1, ROWS);

    private static final String TITLE = "One jar, one curve";
    private static final String INVENTED = "invented readings";
    private static final List<Integer> MINUTES = List.of(0, 4, 8, 12, 16, 20, 25, 30, 35, 40);
    private static final double SURROUNDINGS = -3;
    // Warm tap water: common practice, no source.
    private static final double START = 41;
    private static final double MARK = 0.5;
    private static final double MILLILITERS = 150;
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
    public String results() {
        return PAGE + ".D7:F14";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        defineNames(book.names(), page);
        setSizes(page);
        new Top(
                        TITLE,
                        "All that the readings of one jar tell: how fast it cools, how sure that is, when half of its"
                                + " warmth is gone, and what comes next.",
                        "warm tap water of about 40 °C (104 °F) is enough, never hot or boiling water. An adult pours."
                                + " Glass breaks: carry jars with both hands. Do not hold snow or ice in bare hands for"
                                + " long. Follow the safety policy of your school.")
                .write(page, "H");
        writeReadings(page);
        writeSettings(page);
        Page read = OneJarRead.add(book, page, GRID);
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeCheck(page);
        writeResults(page);
        writeHalves(page);
        writeQuestions(page);
        writeNotes(page);
        rule(page);
        Page behind = BehindOneJar.add(book, GRID);
        BehindOneJar.chart(behind, ROWS, true).draw(book.office(), page, "cooling_curve", "H6:H20");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, TITLE).apply(page, "A1:H28");
        page.protect();
        read.protect();
        book.describe(
                TITLE,
                "Cooling constant, half-time and heat of one jar, with their uncertainties",
                "A worked sheet of Snugsheet with " + INVENTED
                        + ": one jar in the snow, its curve, its half-times, the heat it gives off, and questions to"
                        + " the curve.",
                "cooling curve",
                "half-time",
                "uncertainty",
                INVENTED);
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

    private static void writeReadings(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + ROWS - 1;
        page.look("A6:B6", CellStyleName.SECTION).formula("A6", Invented.heading("1  The readings"));
        page.look("A7:B7", CellStyleName.HEAD).text("A7", "Minutes").formula("B7", Degrees.label("reading, "));
        page.look("A" + FIRST_ROW + ":B" + last, CellStyleName.INPUT);
        double[] celsius = new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(START), MARK, SEED)
                .of(ExampleJar.wrapped("jar in a mitten", 1, "wool"), MINUTES);
        for (int row = 0; row < celsius.length; row++) {
            page.number("A" + (FIRST_ROW + row), MINUTES.get(row)).number("B" + (FIRST_ROW + row), celsius[row]);
        }
    }

    private static void writeSettings(Page page) throws com.sun.star.uno.Exception {
        for (int row = 20; row <= 23; row++) {
            page.merge("A" + row + ":B" + row).look("A" + row + ":B" + row, CellStyleName.LABEL);
        }
        page.look("C20:C23", CellStyleName.INPUT);
        page.text("A20", "Scale, C or F").text("C20", "C");
        page.formula("A21", Degrees.label("Around the jar, ")).number("C21", SURROUNDINGS);
        page.formula("A22", Degrees.label("Smallest mark, ")).number("C22", MARK);
        page.text("A23", "Water, milliliters").number("C23", MILLILITERS);
    }

    private static void writeCheck(Page page) throws com.sun.star.uno.Exception {
        page.merge("A24:C28").look("A24:C28", CellStyleName.MESSAGE).formula("A24", OneJarRead.message());
        Highlight.when(page, "A24:C28", OneJarRead.IS_HOT, CellStyleName.HOT);
        Highlight.when(page, "A24:C28", OneJarRead.HAS_FINDING, CellStyleName.TROUBLE_MESSAGE);
        OneJarRead.mark(page, GRID);
    }

    private static void writeResults(Page page) throws com.sun.star.uno.Exception {
        page.look("D6:F6", CellStyleName.SECTION).text("D6", "2  What the curve says");
        fitted(page, 7, "Half-time, minutes", "0.0", "COOL.HALFTIME");
        fitted(page, 8, "Cooling constant, per minute", "0.0000", "COOL.RATE");
        fitted(page, 9, "", "0.0", "COOL.START");
        page.formula("D9", Degrees.label("At minute 0, "));
        fitted(page, 10, "", "0.0", "COOL.SURROUNDINGS");
        page.formula("D10", Degrees.label("Surroundings, "));
        row(page, 11, "", "0.00", "COOL.MISFIT(" + OneJarRead.JAR + ")");
        page.formula("D11", Degrees.label("Misfit of the curve, ")).text("F11", "below a mark is good");
        row(page, 12, "Heat given off so far, kilojoules", "0.0", "");
        page.formula(
                "E12", ifUsable("COOL.HEAT(volume;start;COOL.TEMP(MAX(times);start;cold;rate;scale);;scale)/1000"));
        page.formula("F12", "=\"in \"&MAX(times)&\" minutes\"");
        row(page, 13, "Heat lost at the start, watts", "0.0", "COOL.POWER(volume;rate;start;cold;;scale)");
        page.text("F13", "joules each second");
        page.text("D14", "Law that the readings support").merge("D14:D15").look("D14:D15", CellStyleName.LABEL);
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

    private static void writeHalves(Page page) throws com.sun.star.uno.Exception {
        page.look("D16:F16", CellStyleName.SECTION).text("D16", "3  Half, and half, and half again");
        page.look("D17:F17", CellStyleName.HEAD).text("D17", "after").text("E17", "minutes");
        page.formula("F17", Degrees.label("warmer by, "));
        String[] words = {"the start", "one half-time", "two half-times", "three half-times", "four half-times"};
        for (int n = 0; n < words.length; n++) {
            int row = 18 + n;
            page.text("D" + row, words[n])
                    .look("D" + row, CellStyleName.LABEL)
                    .look("E" + row + ":F" + row, CellStyleName.RESULT);
            page.formula("E" + row, OrDash.of(n + "*halftime")).numbers("E" + row, "0");
            page.formula("F" + row, OrDash.of("(start-cold)/2^" + n)).numbers("F" + row, "0.0");
        }
    }

    private static void writeQuestions(Page page) throws com.sun.star.uno.Exception {
        page.look("D24:F24", CellStyleName.SECTION).text("D24", "4  Ask the curve");
        page.look("D25:D26", CellStyleName.LABEL)
                .look("E25:E26", CellStyleName.INPUT)
                .look("F25:F26", CellStyleName.RESULT);
        page.text("D25", "How warm after … minutes?").number("E25", 60);
        page.formula("F25", OrDash.of("FIXED(COOL.TEMP(minutes_asked;start;cold;rate;scale);1)&" + Degrees.UNIT));
        page.formula("D26", Degrees.label("When is it down to … ", "?")).number("E26", 10);
        page.formula(
                "F26",
                "=IF(ISTEXT(rate);rate;IFERROR(FIXED(COOL.TIME(degrees_asked;start;cold;rate;scale);0)&\""
                        + " minutes\";\"never\"))");
        page.merge("D27:F28").look("D27:F28", CellStyleName.HINT).wrapped("D27:F28");
        page.text(
                "D27",
                "Beyond the last reading this is a forecast: it holds if nothing changes. “Never” means that the jar"
                        + " does not get as cold, or is colder from the start.");
    }

    private static void writeNotes(Page page) throws com.sun.star.uno.Exception {
        page.look("H21", CellStyleName.SECTION).text("H21", "What to look for");
        page.merge("H22:H28").look("H22:H28", CellStyleName.NOTE);
        page.paragraphs(
                "H22",
                "Why does the curve grow flat?",
                "The less warmer the jar is than its surroundings, the less heat leaves it each minute.",
                "What does ± mean?",
                "Do the same again, and the answer will be within ± of the true one about two times in three. It"
                        + " leaves out what no reading shows, such as a thermometer that reads high.",
                "Nobody read the surroundings?",
                "Type fit in their box; the ± grows.");
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .only("C20", "scales", "Scale", "C for degrees Celsius, F for degrees Fahrenheit.")
                .hint("C21", "Around the jar", "How cold it is around the jar. Nobody read it? Type fit.")
                .aboveZero("C22", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.")
                .aboveZero("C23", "Water", "Milliliters of water in the jar.")
                .atLeast("E25", 0, "Minutes", "Minutes since the first reading.")
                .hint("E26", "Temperature", "A temperature between the start and the surroundings.");
    }
}
