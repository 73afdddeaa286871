package org.snugsheet.office.sheets.windowsilljars;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Scale;
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
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.ReadingsMessage;
import org.snugsheet.office.sheets.shared.ExampleJar;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.InventedReadings;
import org.snugsheet.office.sheets.shared.SheetLines;

/**
 * Four wrapped jars of warm water, and a bare one, on a snowy windowsill: readings, curves, half-times, R-values.
 *
 * <p>One column for each jar from top to bottom: what was read, whether it can be used, what the curve says, what the wrap is
 * made of. The chart is beside them, so that whoever changes a reading sees its curve move.
 */
public final class WindowsillJars implements WorkedSheet {

    /** The jars, from left to right. */
    public static final List<ExampleJar> JARS = List.of(
            ExampleJar.bare("bare jar"),
            ExampleJar.wrapped("wool sock", 4, "wool"),
            ExampleJar.wrapped("newspaper", 6.7, "newspaper"),
            ExampleJar.wrapped("fleece", 13, "fleece"),
            ExampleJar.wrapped("dry leaves", 25, "leaves"));

    /** When the thermometers are read. */
    static final List<Integer> MINUTES = List.of(0, 5, 10, 15, 20, 25, 30, 35, 40);

    private static final double SURROUNDINGS = 2;
    private static final double MARK = 1;
    // Warm tap water: common practice, no source.
    private static final double START = 40;
    private static final double LATER = 30;
    private static final long SEED = 20_261_221;

    private static final String PAGE = "Jars";
    private static final String INVENTED = "invented readings";

    static final Grid GRID = new Grid('A', 'B', 'F', 7, 9);

    // The readings somebody forgot to take, and took with the other thermometer.
    private static final int FORGOTTEN_JAR = 2;
    private static final int FORGOTTEN_ROW = 5;
    private static final int OTHER_JAR = 3;
    private static final int OTHER_ROW = 7;

    @Override
    public String fileName() {
        return "four-wrapped-jars";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.WRAPPED_JARS;
    }

    @Override
    public String results() {
        return PAGE + ".A24:F33";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        defineNames(book.names(), page);
        setSizes(page);
        writeTop(page);
        writeReadings(page);
        writeSettings(page);
        writeJars(page);
        Page sure = book.page(HowSureAreWe.NAME);
        Page read = AsRead.add(book, page, GRID, "\"C\"", "surroundings;mark");
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeCheck(page);
        CurveResults.write(page);
        writeQuestions(page);
        rule(page);
        HowSureAreWe.fill(sure);
        Page behind = BehindTheChart.add(book, page);
        HowSureAreWe.drawChart(book, sure, behind);
        BehindTheChart.chart(page, behind).draw(book.office(), page, "cooling_curves", "H17:J32");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Four wrapped jars on a snowy windowsill").apply(page, "A1:J35");
        page.protect();
        sure.protect();
        read.protect();
        behind.protect();
        book.describe(
                "Four wrapped jars on a snowy windowsill",
                "Cooling curves and R-values from thermometer readings",
                "A worked sheet of Snugsheet with " + INVENTED
                        + ": which wrap keeps a jar of warm water warm longest, and how sure can we be?",
                "cooling curve",
                "insulation",
                "R-value",
                "worked sheet",
                INVENTED);
        book.openAt(page, "B8");
    }

    private static void defineNames(NamedRanges names, Page page) {
        names.fixed("names", page, "H8:H12")
                .fixed("wraps", page, "I8:I12")
                .fixed("thicknesses", page, "J8:J12")
                .fixed("surroundings", page, "J13")
                .fixed("mark", page, "J14")
                .fixed("later", page, "J15")
                .sameColumn("rate", page, "B25")
                .sameColumn("start", page, "B29");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 48).width("B1:F1", 22).width("G1", 4);
        page.width("H1", 44).width("I1", 42).width("J1", 28);
        page.height("A1:A34", 5).height("A1", 10).height("A2", 7).height("A3", 10.5);
        page.height("A4", 1.5).height("A5", 6).height("A6", 8);
        page.height("A22", 2).height("A23", 6.5).height("A34", 6.5).height("A35", 33);
    }

    private static void writeTop(Page page) throws com.sun.star.uno.Exception {
        page.text("A1", "Four wrapped jars on a snowy windowsill").look("A1", CellStyleName.TITLE);
        page.merge("A2:J2").look("A2:J2", CellStyleName.PURPOSE);
        page.text(
                "A2",
                "Type what your thermometers read, and see which wrap keeps a jar of warm water warm longest, and how"
                        + " sure you can be.");
        page.merge("A3:J3").look("A3:J3", CellStyleName.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "warm tap water of about 40 °C is enough, never hot or boiling water. Glass breaks: carry jars with"
                        + " both hands, and stand them low, on no high or open windowsill. Wipe up water and melted snow"
                        + " at once: wet and icy floors are slippery. Follow the safety policy of your school.");
        page.text("A5", "a boxed cell").look("A5", CellStyleName.SAMPLE);
        page.text(
                        "B5",
                        "is for you to type in. Everything else works itself out and is locked against slips; there is"
                                + " no password (Tools, Protect Sheet).")
                .look("B5:J5", CellStyleName.FOLLOWS);
    }

    private static void writeReadings(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:F6", CellStyleName.SECTION);
        page.formula("A6", Invented.heading("1  What the thermometers read, °C"));
        page.text("A7", "Time, minutes").look("A7", CellStyleName.HEAD).look("B7:F7", CellStyleName.HEAD);
        page.look(GRID.typed(), CellStyleName.INPUT);
        InventedReadings invented =
                new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(START), MARK, SEED);
        for (int row = 0; row < MINUTES.size(); row++) {
            page.number(cell(-1, row), MINUTES.get(row));
        }
        for (int jar = 0; jar < JARS.size(); jar++) {
            page.formula(column(jar) + "7", "=H" + (8 + jar) + "&\"\"");
            double[] celsius = invented.of(JARS.get(jar), MINUTES);
            for (int row = 0; row < celsius.length; row++) {
                if (jar == OTHER_JAR && row == OTHER_ROW) {
                    page.text(cell(jar, row), inFahrenheit(celsius[row]));
                } else if (jar != FORGOTTEN_JAR || row != FORGOTTEN_ROW) {
                    page.number(cell(jar, row), celsius[row]);
                }
            }
        }
    }

    private static String inFahrenheit(double celsius) {
        return Math.round(new Temperature(celsius).in(Scale.FAHRENHEIT)) + " " + Scale.FAHRENHEIT.symbol();
    }

    private static void writeSettings(Page page) throws com.sun.star.uno.Exception {
        for (int row = 13; row <= 15; row++) {
            page.merge("H" + row + ":I" + row).look("H" + row + ":I" + row, CellStyleName.LABEL);
        }
        page.look("J13:J15", CellStyleName.INPUT);
        page.text("H13", "Surroundings, °C: beside the jars").number("J13", SURROUNDINGS);
        page.text("H14", "Smallest mark, °C: from line to line").number("J14", MARK);
        page.text("H15", "A later time, minutes").number("J15", LATER);
    }

    private static void writeJars(Page page) throws com.sun.star.uno.Exception {
        page.look("H6:J6", CellStyleName.SECTION).text("H6", "2  The jars, and where they stand");
        page.look("H7:J7", CellStyleName.HEAD)
                .text("H7", "jar")
                .text("I7", "wrapped in")
                .text("J7", "mm thick");
        page.look("H8:J12", CellStyleName.INPUT);
        for (int jar = 0; jar < JARS.size(); jar++) {
            int row = 8 + jar;
            page.text("H" + row, JARS.get(jar).name());
            if (JARS.get(jar).wrap().isPresent()) {
                ExampleJar.Wrap wrap = JARS.get(jar).wrap().get();
                page.text("I" + row, wrap.material()).number("J" + row, wrap.millimeters());
            }
        }
    }

    private static void writeCheck(Page page) throws com.sun.star.uno.Exception {
        page.text("A17", "Can these be used?").look("A17", CellStyleName.LABEL).look("B17:F17", CellStyleName.RESULT);
        page.formula("B17:F17", "=IF(LEN(surroundings)=0;\"\";check)");
        Highlight.when(page, "B17:F17", ReadingsMessage.heldBack("A$17"), CellStyleName.TROUBLE);
        page.merge("A18:F21").look("A18:F21", CellStyleName.MESSAGE);
        page.formula(
                "A18",
                ReadingsMessage.message(
                        GRID,
                        "All readings can be used. A missed reading stays blank; one typed with °F is read as °F."
                                + " A °F thermometer? End the jar’s name with °F."));
        Highlight.when(page, "A18:F21", ReadingsMessage.IS_HOT, CellStyleName.HOT);
        Highlight.when(page, "A18:F21", ReadingsMessage.HAS_FINDING, CellStyleName.TROUBLE_MESSAGE);
        ReadingsMessage.mark(page, GRID);
    }

    private static void writeQuestions(Page page) throws com.sun.star.uno.Exception {
        page.look("A34:J34", CellStyleName.SECTION).text("A34", "What to look for");
        page.merge("A35:J35").look("A35:J35", CellStyleName.NOTE);
        page.paragraphs(
                "A35",
                "Which wrap is best?",
                "The jar with the longest half-time stays warm longest: after one half-time, half of its difference to"
                        + " the surroundings is gone.",
                "How sure are we?",
                "± is the standard error of the value above it. Where two half-times differ by less than their two ±"
                        + " put together, these readings cannot tell the wraps apart: take more.",
                "Why does it work?",
                "A wrap makes no heat. It holds air still, and still air lets heat out slowly. The higher the R-value"
                        + " of the wrap, the smaller the cooling constant should be. Is it so here?");
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .name("H8:H12", "Jar", "What you call this jar.")
                .choice("I8:I12", "materials", "Material", "Choose from the list, or type a conductivity in W/(m·K).")
                .aboveZero("J8:J12", "Thickness", "Millimeters, as thick as it is on the jar.")
                .hint("J13", "Surroundings", "How warm it is around the jars, in °C.")
                .aboveZero("J14", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.")
                .atLeast("J15", 0, "A later time", "Minutes since the start.");
    }

    private static String cell(int jar, int reading) {
        return column(jar) + (8 + reading);
    }

    /** The column of a jar; that of the times for −1. */
    static String column(int jar) {
        return String.valueOf((char) ('B' + jar));
    }
}
