package org.snugsheet.sheets;

import java.util.List;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Look;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.sheets.builder.Book;

/**
 * One block for the readings of all groups, some in °C and some in °F, with live checks beside it and results below.
 *
 * <p>It opens with invented readings, two of them with a slip, so that a teacher sees at once what the checks say.
 */
final class TypeYourReadings implements WorkedSheet {

    static final String PAGE = "Readings";

    private static final String INVENTED = "invented readings";
    private static final List<Integer> MINUTES = List.of(0, 3, 6, 9, 12, 15, 18, 21, 24, 27);
    static final int JARS = 6;
    static final int FIRST_RESULT = 26;
    private static final int FIRST_ROW = 8;
    private static final double SURROUNDINGS = 3;
    private static final long SEED = 20_261_125;

    private static final String BLOCK = "block;surroundings;mark";
    private static final int CHECKS = 12;

    // The fourth reading of the bare jar with its digits swapped, the sixth of the leaves without its comma.
    private static final int SWAPPED_ROW = 3;
    private static final int NO_COMMA_ROW = 5;

    private record Group(String header, double perMinute, Scale scale) {}

    private static final List<Group> GROUPS = List.of(
            new Group("bare jar", 0.045, Scale.CELSIUS),
            new Group("wool sock °F", 0.026, Scale.FAHRENHEIT),
            new Group("newspaper", 0.024, Scale.CELSIUS),
            new Group("dry leaves", 0.017, Scale.CELSIUS));

    @Override
    public String fileName() {
        return "type-your-readings";
    }

    @Override
    public String results() {
        return PAGE + ".A25:G29";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        book.names()
                .fixed("block", page, "A7:G19")
                .fixed("surroundings", page, "B20")
                .fixed("mark", page, "B21");
        setSizes(page);
        writeTop(page);
        writeBlock(page);
        writeChecks(page);
        writeResults(page);
        rule(page);
        HalfTimes.add(book).draw(page, "half_times", "I20:M31");
        new PrintSetup(PrintSetup.Way.LYING, "Type your readings here: " + INVENTED).apply(page, "A1:M31");
        page.protect();
        book.describe(
                "Type your readings here",
                "Thermometer readings of several groups, checked as they are typed",
                "A worked sheet of Snugsheet with " + INVENTED
                        + ": one block for all groups, in °C and °F, with live checks and results.",
                "readings",
                "slips",
                "cooling curve",
                "worked sheet",
                INVENTED);
        book.openAt(page, "B8");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 30).width("B1:G1", 23).width("H1", 4);
        page.width("I1", 24).width("J1", 9).width("K1", 84).width("L1", 24).width("M1", 72);
        page.height("A1:A31", 5.5)
                .height("A1", 10)
                .height("A2", 7)
                .height("A3", 10.5)
                .height("A4", 1.5);
        page.height("A5", 6)
                .height("A6", 6.5)
                // Three lines of a check.
                .height("A8:A19", 11.4)
                .height("A22", 2)
                .height("A23", 6.5);
    }

    private static void writeTop(Page page) throws com.sun.star.uno.Exception {
        page.text("A1", "Type your readings here").look("A1", Look.TITLE);
        page.merge("A2:M2").look("A2:M2", Look.PURPOSE);
        page.text(
                "A2",
                "One column for each jar. The checks on the right speak as you type; the results below follow by themselves.");
        page.merge("A3:M3").look("A3:M3", Look.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "start no warmer than 43 °C (109 °F), and let an adult pour. Glass breaks: carry jars with both hands. Wipe up water"
                        + " at once. Use no mercury thermometers. Follow the safety policy of your school.");
        page.text("A5", "a boxed cell").look("A5", Look.SAMPLE);
        page.text(
                        "B5",
                        "is for you to type in. Missed a reading? Leave it blank. A °F thermometer? End the jar’s name with °F.")
                .look("B5:G5", Look.HINT);
    }

    private static void writeBlock(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:G6", Look.SECTION).text("A6", "What the thermometers read (invented: type your own over them)");
        page.text("A7", "Minutes")
                .look("A7", Look.HEAD)
                .look("B7:G7", Look.INPUT_HEAD)
                .wrapped("B7:G7")
                .height("A7", 10);
        page.look("A8:G19", Look.INPUT);
        for (int row = 0; row < MINUTES.size(); row++) {
            page.number("A" + (FIRST_ROW + row), MINUTES.get(row));
        }
        for (int jar = 0; jar < GROUPS.size(); jar++) {
            Group group = GROUPS.get(jar);
            page.text(column(jar) + "7", group.header());
            double[] celsius = new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(41), 0.5, SEED)
                    .of(group.header(), CoolingConstant.ofPerMinute(group.perMinute()), MINUTES);
            for (int row = 0; row < celsius.length; row++) {
                page.number(column(jar) + (FIRST_ROW + row), typed(jar, row, celsius[row], group.scale()));
            }
        }
        page.look("A20:A21", Look.LABEL).look("B20:B21", Look.INPUT).look("C20:G21", Look.HINT);
        page.text("A20", "Surroundings, °C").number("B20", SURROUNDINGS);
        page.text("C20", "the air over the snow, beside the jars");
        page.text("A21", "Smallest mark").number("B21", 1);
        page.text("C21", "degrees from one line of the thermometer to the next");
    }

    private static double typed(int jar, int row, double celsius, Scale scale) {
        double shown = Math.rint(new Temperature(celsius).in(scale));
        if (jar == 0 && row == SWAPPED_ROW) {
            return shown % 10 * 10 + Math.floor(shown / 10);
        }
        return jar == 3 && row == NO_COMMA_ROW ? Math.rint(celsius * 10) : shown;
    }

    private static void writeChecks(Page page) throws com.sun.star.uno.Exception {
        page.look("I6:M6", Look.SECTION).text("I6", "What the checks say; row 1 is the first reading");
        page.look("I7:M7", Look.HEAD).look("I8:M" + (7 + CHECKS), Look.SMALL_MESSAGE);
        String[] heads = {"Jar", "Row", "What is wrong", "How sure", "What to do"};
        String table = "CHECK.SHEET(" + BLOCK + ")";
        for (int column = 0; column < heads.length; column++) {
            page.text((char) ('I' + column) + "7", heads[column]);
        }
        // The block has one jar at least, so that the first line is there and must not hide an error.
        page.table("I8:M8", "=" + page.part("I8:M8", table, 2, 1) + "&\"\"");
        String others = "I9:M" + (7 + CHECKS);
        page.table(others, "=IFERROR(" + page.part(others, table, 3, 1) + "&\"\";\"\")");
        for (int row = 8; row < 8 + CHECKS; row++) {
            Highlight.unlessOk(page, "I" + row + ":M" + row, "$K$" + row, Look.SMALL_TROUBLE);
        }
    }

    private static void writeResults(Page page) throws com.sun.star.uno.Exception {
        page.look("A23:G23", Look.SECTION).text("A23", "What the curves say. Mend the slips first");
        String[] heads = {"Jar", "constant, 1/min", "±", "half-time, min", "start", "scale", "usable?"};
        String[] numbers = {"", "0.0000", "\"± \"0.0000", "0.0", "0.0", "", ""};
        page.look("A25:G25", Look.HEAD).wrapped("A25:G25").height("A24", 2).height("A25", 10);
        int last = 25 + JARS;
        for (int column = 0; column < heads.length; column++) {
            char letter = (char) ('A' + column);
            String cells = letter + "26:" + letter + last;
            page.text(letter + "25", heads[column]).look(cells, column == 0 ? Look.LABEL : Look.RESULT);
            if (!numbers[column].isEmpty()) {
                page.numbers(cells, numbers[column]);
            }
        }
        String table = "COOL.SHEET(" + BLOCK + ")";
        page.table("A26", "=" + page.part("A26", table, 2, 1))
                .table("B26:F26", "=" + page.part("B26:F26", table, 2, 3));
        page.table("A27:A" + last, "=IFERROR(" + page.part("A27:A" + last, table, 3, 1) + ";\"\")");
        page.table("B27:F" + last, "=IFERROR(" + page.part("B27:F" + last, table, 3, 3) + ";\"\")");
        for (int row = 26; row <= last; row++) {
            // Beyond the last jar the first column is blank: no error has to be caught here.
            page.formula("G" + row, "=" + unlessAccused(row, "INDEX(" + table + ";" + (row - 24) + ";9)"));
        }
        for (int row = 26; row < 26 + JARS; row++) {
            Highlight.when(page, "G" + row, "$G$" + row + "=\"see checks\"", Look.TROUBLE_MESSAGE);
        }
    }

    private static String unlessAccused(int row, String cell) {
        String last = String.valueOf(7 + CHECKS);
        return "IF($A" + row + "=\"\";\"\";IF(COUNTIFS($I$8:$I$" + last + ";$A" + row + ";$K$8:$K$" + last
                + ";\"<>OK\")>0;\"see checks\";" + cell + ")";
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .hint("B7:G7", "Jar", "What you call this jar. End with °F if its thermometer shows °F.")
                .hint("A8:A19", "Minutes", "Minutes since the start, rising: 0, 3, 6.")
                .hint("B8:G19", "Reading", "What the thermometer shows. Missed one? Leave it blank.")
                .hint("B20", "Surroundings", "How warm it is around the jars, in °C; or type for example 37 °F.")
                .aboveZero(
                        "B21", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.");
    }

    private static String column(int jar) {
        return String.valueOf((char) ('B' + jar));
    }
}
