package org.snugsheet.office.sheets.firstfiveminutes;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.readings.AsRead;
import org.snugsheet.office.sheets.readings.BehindOneJar;
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.OneJarRead;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.InventedReadings;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;

/**
 * The sheet to begin with: type what one thermometer read, and read off how fast the jar cooled and how sure that is.
 *
 * <p>A reader needs only what is on it: three numbered steps, from the readings to the answer.
 */
public final class FirstFiveMinutes implements WorkedSheet {

    static final String PAGE = "Start";

    static final int FIRST_ROW = 8;
    static final int ROWS = 10;

    private static final String TITLE = "Your first five minutes";
    private static final String INVENTED = "invented readings";
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
    public String results() {
        return PAGE + ".F14:H16";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        book.names()
                .fixed("scale", page, "D20")
                .fixed("surroundings", page, "D21")
                .fixed("mark", page, "D22")
                .fixed("answers", page, "G14:G16");
        setSizes(page);
        new Top(
                        TITLE,
                        "Type what one thermometer read in one jar of warm water, and see how fast it cooled, and how"
                                + " sure you can be.",
                        "warm tap water of about 40 °C (104 °F) is enough, never hot or boiling water. An adult pours."
                                + " Glass breaks: carry jars with both hands. Wipe up water at once. Follow the safety"
                                + " policy of your school.")
                .write(page, "B", "C", "H");
        writeReadings(page);
        writeSettings(page);
        Page read = OneJarRead.add(book, page, GRID);
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeAnswer(page);
        writeNext(page);
        rule(page);
        Page behind = BehindOneJar.add(book, GRID);
        BehindOneJar.chart(behind, ROWS, false).draw(book.office(), page, "cooling_curve", "F17:H25");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, TITLE).apply(page, "A1:H25");
        page.protect();
        read.protect();
        book.describe(
                TITLE,
                "How fast one jar cools, from the readings of one thermometer",
                "The sheet of Snugsheet to begin with, with " + INVENTED
                        + ": from the readings of one thermometer to an answer in three steps.",
                "first steps",
                "cooling curve",
                "half-time",
                INVENTED);
        book.openAt(page, "C" + FIRST_ROW);
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 12).width("B1", 30).width("C1", 34).width("D1", 62).width("E1", 5);
        page.width("F1", 62).width("G1", 26).width("H1", 46);
        page.height("A6:A25", 6.5).height("A7", 12.5).height("A18", 3).height("A19", 7);
        page.height("A24", 7).height("A25", 47);
    }

    private static void writeReadings(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + ROWS - 1;
        page.look("A6:D6", CellStyleName.SECTION).formula("A6", Invented.heading("1  Type what your thermometer read"));
        page.text("B7", "Minutes").look("B7:C7", CellStyleName.HEAD).formula("C7", Degrees.label("Thermometer, "));
        page.look("B8:C" + last, CellStyleName.INPUT).look("D8:D" + last, CellStyleName.HINT);
        double[] celsius = new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(START), MARK, SEED)
                .of("first jar", CoolingConstant.ofPerMinute(PER_MINUTE), MINUTES);
        for (int row = 0; row < celsius.length; row++) {
            page.number("B" + (FIRST_ROW + row), MINUTES.get(row)).number("C" + (FIRST_ROW + row), celsius[row]);
        }
        page.text("D8", "← the first reading, when the clock starts");
        page.text("D9", "← five minutes later, and so on");
        page.text("D11", "Missed one? Leave its box blank.");
        page.text("D12", "Other minutes? Type over them too.");
        page.text("D13", "Five readings or more tell a curve well.");
        page.text("D15", "More readings go into the blank boxes;");
        page.text("D16", "with fewer, clear the boxes left over.");
    }

    private static void writeSettings(Page page) throws com.sun.star.uno.Exception {
        page.look("A19:D19", CellStyleName.SECTION).text("A19", "2  Say how it was measured");
        for (int row = 20; row <= 22; row++) {
            page.merge("A" + row + ":C" + row).look("A" + row + ":C" + row, CellStyleName.LABEL);
        }
        page.look("D20:D22", CellStyleName.INPUT);
        page.text("A20", "Scale of all temperatures, C or F").text("D20", "C");
        page.formula("A21", Degrees.label("Measured beside the jar, ")).number("D21", SURROUNDINGS);
        page.formula("A22", Degrees.label("From one line to the next, ")).number("D22", MARK);
    }

    private static void writeAnswer(Page page) throws com.sun.star.uno.Exception {
        page.look("F6:H6", CellStyleName.SECTION).text("F6", "3  Read the answer");
        page.merge("F7:H8").look("F7:H8", CellStyleName.MESSAGE);
        page.formula("F7", OneJarRead.message());
        Highlight.when(page, "F7:H8", OneJarRead.IS_HOT, CellStyleName.HOT);
        Highlight.when(page, "F7:H8", OneJarRead.HAS_FINDING, CellStyleName.TROUBLE_MESSAGE);
        OneJarRead.mark(page, GRID);
        page.merge("F9:H11").look("F9:H11", CellStyleName.SENTENCE);
        page.formula(
                "F9",
                "=IF(" + FINE + ";IFERROR(\"Every \"&ROUND(COOL.HALFTIME(" + OneJarRead.JAR
                        + ");0)&\" minutes, half of its warmth above the surroundings is gone.\";"
                        + "\"This jar does not cool enough to tell how fast.\");"
                        + "\"The answer comes here.\")");
        page.merge("F12:H13").look("F12:H13", CellStyleName.MESSAGE);
        page.formula("F12", "=IF(" + FINE + ";IFERROR(" + howSure() + ";\"\");\"\")");
        row(page, 14, "Half-time, minutes", "0.0", "COOL.HALFTIME(" + OneJarRead.JAR + ")");
        row(page, 15, "Cooling constant, per minute", "0.0000", "COOL.RATE(" + OneJarRead.JAR + ")");
        row(page, 16, "", "0.0", "");
        page.formula("F16", Degrees.label("Lost in the first 10 minutes, "));
        String start = "COOL.START(" + OneJarRead.JAR + ")";
        page.formula(
                "G16",
                ifUsable(start + "-COOL.TEMP(10;" + start + ";COOL.SURROUNDINGS(" + OneJarRead.JAR + ");COOL.RATE("
                        + OneJarRead.JAR + ");scale)"));
        page.formula("H14", ifUsable("COOL.HALFTIME.ERROR(" + OneJarRead.JAR + ")"))
                .numbers("H14", "\"± \"0.0");
        page.formula("H15", ifUsable("COOL.RATE.ERROR(" + OneJarRead.JAR + ")")).numbers("H15", "\"± \"0.0000");
        page.text("H16", "by the curve");
    }

    private static String howSure() {
        String half = "INDEX(COOL.REPORT(" + OneJarRead.JAR + ");3;";
        return "\"With 95 % certainty between \"&ROUND(" + half + "4);0)&\" and \"&ROUND(" + half
                + "5);0)&\" minutes. More readings, or longer ones, narrow this down.\"";
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

    private static void writeNext(Page page) throws com.sun.star.uno.Exception {
        page.look("A24:D24", CellStyleName.SECTION).text("A24", "And then?");
        page.merge("A25:D25").look("A25:D25", CellStyleName.NOTE);
        page.paragraphs(
                "A25",
                "Try it out:",
                "change one reading by a few degrees, and watch the curve and the ±. Swap two digits, 53 for 35: what"
                        + " do the words say?",
                "What is a half-time?",
                "The jar cools toward what is around it, never below. In each half-time it loses half of what it"
                        + " still is warmer. A good wrap makes it long.",
                "Several jars?",
                "A lesson book plans the lesson for the whole class and compares all groups.");
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .only("D20", "scales", "Scale", "C for degrees Celsius, F for degrees Fahrenheit.")
                .hint("D21", "Around the jar", "How warm the air, the water or the snow is, not the jar.")
                .aboveZero("D22", "Smallest mark", "Degrees from line to line: 1, 2 or 0.5.");
    }
}
