package org.snugsheet.office.sheets.typeyourreadings;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.readings.AsRead;
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.ReadingsMessage;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.InventedReadings;
import org.snugsheet.office.sheets.shared.SheetLines;

/**
 * One block for the readings of all groups, some in °C and some in °F, with live checks beside it and results below.
 *
 * <p>It opens with invented readings, two of them with a slip, so that a teacher sees at once what the checks say.
 */
public final class TypeYourReadings implements WorkedSheet {

    static final String PAGE = "Readings";

    private static final String INVENTED = "invented readings";
    private static final List<Integer> MINUTES = List.of(0, 3, 6, 9, 12, 15, 18, 21, 24, 27);
    static final int JARS = 6;
    static final int FIRST_RESULT = 26;
    private static final int FIRST_ROW = 8;
    static final Grid GRID = new Grid('D', 'E', 'J', FIRST_ROW - 1, 12);
    private static final double SURROUNDINGS = 3;
    private static final long SEED = 20_261_125;

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
    public Phrase menuLine() {
        return SheetLines.READINGS;
    }

    @Override
    public String results() {
        return PAGE + ".D25:J29";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        book.names()
                .fixed("names", page, "B8:B13")
                .fixed("surroundings", page, "B15")
                .fixed("mark", page, "B16");
        setSizes(page);
        writeTop(page);
        writeBlock(page);
        Page read = AsRead.add(book, page, GRID, "\"C\"", "surroundings;mark");
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeChecks(page);
        writeResults(page);
        rule(page);
        HalfTimes.add(book).draw(page, "half_times", "L20:P31");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Type your readings here").apply(page, "A1:P31");
        page.protect();
        read.protect();
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
        book.openAt(page, "E8");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 26).width("B1", 36).width("C1", 3).width("D1", 22).width("E1:J1", 21);
        page.width("K1", 4);
        page.width("L1", 24).width("M1", 14).width("N1", 76).width("O1", 22).width("P1", 56);
        page.height("A1:A31", 5.5)
                .height("A1", 10)
                .height("A2", 7)
                .height("A3", 10.5)
                .height("A4", 1.5);
        page.height("A5", 6)
                .height("A6", 6.5)
                // Three lines of a check.
                .height("A8:A19", 11.4)
                // With the row above, four lines of the message.
                .height("A22", 14)
                .height("A23", 6.5);
    }

    private static void writeTop(Page page) throws com.sun.star.uno.Exception {
        page.text("A1", "Type your readings here").look("A1", CellStyleName.TITLE);
        page.merge("A2:P2").look("A2:P2", CellStyleName.PURPOSE);
        page.text("A2", "One column for each jar. What the checks find is said on the right.");
        page.merge("A3:P3").look("A3:P3", CellStyleName.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "start no warmer than 43 °C (109 °F), and let an adult pour. Glass breaks: carry jars with both hands."
                        + " Wipe up water at once. Use no mercury thermometers. Follow the safety policy of your school.");
        page.text("A5", "a boxed cell").look("A5", CellStyleName.SAMPLE);
        page.text("B5", "is for you to type in. The results below follow by themselves.")
                .look("B5:C5", CellStyleName.FOLLOWS)
                .text("I5", "Missed a reading? Leave it blank. A °F thermometer? End the jar’s name with °F.")
                .look("I5", CellStyleName.HINT);
    }

    private static void writeBlock(Page page) throws com.sun.star.uno.Exception {
        page.look("D6:J6", CellStyleName.SECTION).formula("D6", Invented.heading("2  What the thermometers read"));
        page.text("D7", "Minutes")
                .look("D7", CellStyleName.HEAD)
                .look("E7:J7", CellStyleName.HEAD)
                .wrapped("E7:J7")
                .height("A7", 10);
        page.look(GRID.typed(), CellStyleName.INPUT);
        page.look("A6:B6", CellStyleName.SECTION).text("A6", "1  Your jars");
        page.look("A8:A13", CellStyleName.LABEL).look("B8:B13", CellStyleName.INPUT);
        for (int jar = 0; jar < JARS; jar++) {
            page.text("A" + (8 + jar), "jar " + (jar + 1)).formula(column(jar) + "7", "=B" + (8 + jar) + "&\"\"");
        }
        for (int row = 0; row < MINUTES.size(); row++) {
            page.number("D" + (FIRST_ROW + row), MINUTES.get(row));
        }
        for (int jar = 0; jar < GROUPS.size(); jar++) {
            Group group = GROUPS.get(jar);
            page.text("B" + (8 + jar), group.header());
            double[] celsius = new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(41), 0.5, SEED)
                    .of(group.header(), CoolingConstant.ofPerMinute(group.perMinute()), MINUTES);
            for (int row = 0; row < celsius.length; row++) {
                page.number(column(jar) + (FIRST_ROW + row), typed(jar, row, celsius[row], group.scale()));
            }
        }
        page.look("A15:A16", CellStyleName.LABEL)
                .look("B15:B16", CellStyleName.INPUT)
                .wrapped("A15:A16");
        page.text("A15", "Surroundings, °C").number("B15", SURROUNDINGS);
        page.text("A16", "Smallest mark").number("B16", 1);
    }

    private static double typed(int jar, int row, double celsius, Scale scale) {
        double shown = Math.rint(new Temperature(celsius).in(scale));
        if (jar == 0 && row == SWAPPED_ROW) {
            return shown % 10 * 10 + Math.floor(shown / 10);
        }
        return jar == 3 && row == NO_COMMA_ROW ? Math.rint(celsius * 10) : shown;
    }

    private static void writeChecks(Page page) throws com.sun.star.uno.Exception {
        page.look("L6:P6", CellStyleName.SECTION).text("L6", "3  What the checks say");
        page.look("L7:P7", CellStyleName.HEAD).look("L8:P" + (7 + CHECKS), CellStyleName.SMALL_MESSAGE);
        String[] heads = {"Jar", "Minute", "What is wrong", "How sure", "What to do"};
        for (int column = 0; column < heads.length; column++) {
            char letter = (char) ('L' + column);
            page.text(letter + "7", heads[column]);
            for (int line = 1; line <= CHECKS; line++) {
                String said = "INDEX(findings;" + (line + 1) + ";" + (column + 1) + ")";
                String shown = column == 1 ? "IFERROR(INDEX(times;VALUE(" + said + "))&\"\";\"\")" : said + "&\"\"";
                page.formula(letter + "" + (7 + line), "=" + shown);
            }
        }
        for (int row = 8; row < 8 + CHECKS; row++) {
            Highlight.unlessOk(page, "L" + row + ":P" + row, "$N$" + row, CellStyleName.SMALL_TROUBLE);
        }
        page.text("D20", "usable?").look("D20", CellStyleName.LABEL).look("E20:J20", CellStyleName.RESULT);
        page.formula("E20:J20", "=IF(LEN(surroundings)=0;\"\";check)");
        Highlight.when(page, "E20:J20", ReadingsMessage.heldBack("A$20"), CellStyleName.TROUBLE);
        page.merge("D21:J22").look("D21:J22", CellStyleName.MESSAGE);
        page.formula("D21", ReadingsMessage.message(GRID, "All readings can be used."));
        Highlight.when(page, "D21:J22", ReadingsMessage.IS_HOT, CellStyleName.HOT);
        Highlight.when(page, "D21:J22", ReadingsMessage.HAS_FINDING, CellStyleName.TROUBLE_MESSAGE);
        ReadingsMessage.mark(page, GRID);
    }

    private static void writeResults(Page page) throws com.sun.star.uno.Exception {
        page.look("D23:J23", CellStyleName.SECTION).text("D23", "4  What the curves of the jars that can be used say");
        String[] heads = {"Jar", "constant, 1/min", "±", "half-time, min", "start", "scale", "usable?"};
        String[] numbers = {"", "0.0000", "\"± \"0.0000", "0.0", "0.0", "", ""};
        int[] columns = {1, 3, 4, 5, 6, 7, 9};
        page.look("D25:J25", CellStyleName.HEAD)
                .wrapped("D25:J25")
                .height("A24", 2)
                .height("A25", 10);
        int last = FIRST_RESULT + JARS - 1;
        for (int column = 0; column < heads.length; column++) {
            char letter = (char) ('D' + column);
            String cells = letter + "" + FIRST_RESULT + ":" + letter + last;
            page.text(letter + "25", heads[column])
                    .look(cells, column == 0 ? CellStyleName.LABEL : CellStyleName.RESULT);
            if (!numbers[column].isEmpty()) {
                page.numbers(cells, numbers[column]);
            }
            for (int row = FIRST_RESULT; row <= last; row++) {
                String said = "INDEX(each_jar;" + (row - FIRST_RESULT + 2) + ";" + columns[column] + ")";
                page.formula(
                        letter + "" + row,
                        column < heads.length - 1
                                ? "=" + said
                                : "=IF(LEN(D" + row
                                        + ")=0;\"\";IFERROR(INDEX({\"OK\";\"waiting\"};MATCH(INDEX(checks;1;MATCH("
                                        + (row - FIRST_RESULT + 1)
                                        + ";lines;0));{\"OK\";\"waiting\"};0));\"see checks\"))");
            }
        }
        for (int row = FIRST_RESULT; row <= last; row++) {
            Highlight.when(page, "J" + row, "$J$" + row + "=\"see checks\"", CellStyleName.TROUBLE_MESSAGE);
        }
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .name("B8:B13", "Jar", "What you call this jar. End with °F if its thermometer shows °F.")
                .hint("B15", "Surroundings", "How warm it is around the jars, in °C; or type for example 37 °F.")
                .aboveZero(
                        "B16", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.");
    }

    private static String column(int jar) {
        return String.valueOf(GRID.column(jar));
    }
}
