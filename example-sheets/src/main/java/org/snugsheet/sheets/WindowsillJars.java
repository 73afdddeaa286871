package org.snugsheet.sheets;

import java.util.List;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Look;
import org.snugsheet.office.page.Names;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.sheets.builder.Book;

/**
 * Four wrapped jars of warm water, and a bare one, on a snowy windowsill: readings, curves, half-times, R-values.
 *
 * <p>One column for each jar from top to bottom: what was read, whether it can be used, what the curve says, what the wrap is
 * made of. The chart stands beside, so that a changed reading moves its curve before the eyes of whoever typed it.
 */
final class WindowsillJars implements WorkedSheet {

    /** The jars, from left to right. */
    static final List<Jar> JARS = List.of(
            Jar.bare("bare jar"),
            Jar.wrapped("wool sock", 4, "wool"),
            Jar.wrapped("newspaper", 8, "newspaper"),
            Jar.wrapped("fleece", 12, "fleece"),
            Jar.wrapped("dry leaves", 25, "leaves"));

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

    private static final String OF_ONE_JAR = "times;readings;surroundings;mark";

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
    public String results() {
        return PAGE + ".A24:F37";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        defineNames(book.names(), page);
        setSizes(page);
        writeTop(page);
        writeReadings(page);
        writeSettings(page);
        writeCheck(page);
        writeCurveResults(page);
        writeWraps(page);
        writeQuestions(page);
        rule(page);
        Page sure = HowSureAreWe.add(book);
        Page behind = BehindTheChart.add(book, page);
        HowSureAreWe.drawChart(book, sure, behind);
        BehindTheChart.chart(page, behind).draw(book.office(), page, "cooling_curves", "H6:H25");
        new PrintSetup(PrintSetup.Way.LYING, "Four wrapped jars on a snowy windowsill: " + INVENTED)
                .apply(page, "A1:H37");
        page.protect();
        sure.protect();
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

    private static void defineNames(Names names, Page page) {
        names.fixed("times", page, "A8:A16")
                .fixed("surroundings", page, "B17")
                .fixed("mark", page, "B18")
                .fixed("later", page, "B19")
                .fixed("jars", page, "B7:F7")
                .fixed("all_readings", page, "B8:F16")
                .sameColumn("readings", page, "B8:B16")
                .sameColumn("check", page, "B20")
                .sameColumn("rate", page, "B25")
                .sameColumn("start", page, "B29")
                .sameColumn("material", page, "B35")
                .sameColumn("thickness", page, "B36");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 48).width("B1:F1", 22).width("G1", 4).width("H1", 114);
        page.height("A1:A40", 5).height("A1", 10).height("A2", 7).height("A3", 10.5);
        page.height("A4", 1.5).height("A5", 6).height("A6", 8).height("A21", 13);
        page.height("A22", 2).height("A23", 6.5).height("A33", 2).height("A34", 6.5);
    }

    private static void writeTop(Page page) throws com.sun.star.uno.Exception {
        page.text("A1", "Four wrapped jars on a snowy windowsill").look("A1", Look.TITLE);
        page.merge("A2:H2").look("A2:H2", Look.PURPOSE);
        page.text(
                "A2",
                "Type what your thermometers read, and see which wrap keeps a jar of warm water warm longest, and how"
                        + " sure you can be.");
        page.merge("A3:H3").look("A3:H3", Look.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "warm tap water of about 40 °C is enough, never hot or boiling water. Glass breaks: carry jars with both"
                        + " hands, and keep them from the edge. Wipe up water and melted snow at once: wet and icy"
                        + " floors are slippery. Follow the safety policy of your school.");
        page.text("A5", "a boxed cell").look("A5", Look.SAMPLE);
        page.text(
                        "B5",
                        "is for you to type in. Everything else works itself out and is locked against slips; there is"
                                + " no password (Tools, Protect Sheet).")
                .look("B5:H5", Look.HINT);
    }

    private static void writeReadings(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:F6", Look.SECTION);
        page.text("A6", "What the thermometers read, °C (invented: type your own over them)");
        page.text("A7", "Time, minutes").look("A7", Look.HEAD).look("B7:F7", Look.INPUT_HEAD);
        page.look("A8:F16", Look.INPUT);
        InventedReadings invented =
                new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(START), MARK, SEED);
        for (int row = 0; row < MINUTES.size(); row++) {
            page.number(cell(-1, row), MINUTES.get(row));
        }
        for (int jar = 0; jar < JARS.size(); jar++) {
            page.text(column(jar) + "7", JARS.get(jar).name());
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
        page.look("A17:A19", Look.LABEL).look("B17:B19", Look.INPUT).look("C17:F19", Look.HINT);
        page.text("A17", "Surroundings, °C").number("B17", SURROUNDINGS);
        page.text("C17", "the air over the snow, beside the jars");
        page.text("A18", "Smallest mark, °C").number("B18", MARK);
        page.text("C18", "from one line of the thermometer to the next");
        page.text("A19", "A later time, minutes").number("B19", LATER);
        page.text("C19", "for “Temperature then” below");
    }

    private static void writeCheck(Page page) throws com.sun.star.uno.Exception {
        page.text("A20", "Can these be used?").look("A20", Look.LABEL).look("B20:F20", Look.RESULT);
        page.formula("B20:F20", "=CHECK.READINGS(" + OF_ONE_JAR + ")");
        Highlight.unless(page, "B20:F20", "OK", Look.TROUBLE);
        page.merge("A21:F21").look("A21:F21", Look.MESSAGE);
        page.formula("A21", "=" + firstTrouble());
        Highlight.when(page, "A21:F21", "COUNTIF($B$20:$F$20;\"OK\")<" + JARS.size(), Look.TROUBLE_MESSAGE);
    }

    private static String firstTrouble() {
        String otherwise =
                "\"All readings can be used. A missed reading stays blank; one typed with °F is read as °F.\"";
        for (int jar = JARS.size() - 1; jar >= 0; jar--) {
            String check = column(jar) + "20";
            otherwise = "IF(" + check + "<>\"OK\";" + column(jar) + "7&\": \"&" + check
                    + "&\" (Row 1 is the first reading.)\";" + otherwise + ")";
        }
        return otherwise;
    }

    private static void writeCurveResults(Page page) throws com.sun.star.uno.Exception {
        page.look("A23:F23", Look.SECTION).text("A23", "What the curves say");
        page.look("A24:F24", Look.HEAD);
        for (int jar = 0; jar < JARS.size(); jar++) {
            page.formula(column(jar) + "24", "=" + column(jar) + "7");
        }
        result(page, 25, "Cooling constant, per minute", "0.0000", fit("COOL.RATE"));
        uncertainty(page, 26, "0.0000", fit("COOL.RATE.ERROR"));
        result(page, 27, "Half-time, minutes", "0", fit("COOL.HALFTIME"));
        uncertainty(page, 28, "0", fit("COOL.HALFTIME.ERROR"));
        result(page, 29, "Start, °C", "0.0", fit("COOL.START"));
        uncertainty(page, 30, "0.0", fit("COOL.START.ERROR"));
        result(page, 31, "Misfit of the curve, °C", "0.00", fit("COOL.MISFIT"));
        result(page, 32, "", "0.0", OrDash.of("COOL.TEMP(later;start;surroundings;rate)"));
        page.formula("A32", "=\"Temperature then (\"&later&\" min), °C\"");
    }

    private static String fit(String function) {
        return OrDash.of(function + "(" + OF_ONE_JAR + ")");
    }

    private static void writeWraps(Page page) throws com.sun.star.uno.Exception {
        page.look("A34:F34", Look.SECTION).text("A34", "What the wraps are made of");
        page.text("A35", "Material").text("A36", "Thickness, mm").look("A35:A36", Look.LABEL);
        page.look("B35:F36", Look.INPUT);
        for (int jar = 0; jar < JARS.size(); jar++) {
            if (JARS.get(jar).wrap().isPresent()) {
                Jar.Wrap wrap = JARS.get(jar).wrap().get();
                page.text(column(jar) + "35", wrap.material());
                page.number(column(jar) + "36", wrap.millimetres());
            }
        }
        result(
                page,
                37,
                "R-value of the wrap, m²·K/W",
                "0.000",
                "=IF(AND(ISBLANK(material);ISBLANK(thickness));\"no wrap\";IFERROR(WRAP.LAYER(thickness;material);\"look again\"))");
    }

    private static void writeQuestions(Page page) throws com.sun.star.uno.Exception {
        page.look("H27", Look.SECTION).text("H27", "What to look for");
        page.merge("H28:H37").look("H28:H37", Look.NOTE);
        page.paragraphs(
                "H28",
                "Which wrap is best?",
                "The jar with the longest half-time stays warm longest: after one half-time, half of its difference to"
                        + " the surroundings is gone.",
                "How sure are we?",
                "± is the standard error of the value above it. Where two half-times differ by less than their two ±"
                        + " put together, these readings cannot tell the wraps apart: take more.",
                "Why does it work?",
                "A wrap makes no heat. It holds air still, and still air lets heat out slowly. The higher the R-value of"
                        + " the wrap, the smaller the cooling constant should be. Is it so here?");
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .hint("B7:F7", "Jar", "What you call this jar.")
                .atLeast("A8:A16", 0, "Time", "Minutes since the start, rising: 0, 5, 10.")
                .hint("B8:F16", "Reading", "°C; blank if missed. In °F: type 95 °F.")
                .hint("B17", "Surroundings", "How warm it is around the jars, in °C.")
                .aboveZero("B18", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.")
                .atLeast("B19", 0, "A later time", "Minutes since the start.")
                .choice("B35:F35", "materials", "Material", "Choose from the list, or type a conductivity in W/(m·K).")
                .aboveZero("B36:F36", "Thickness", "Millimetres, as thick as it is on the jar.");
    }

    private static void result(Page page, int row, String label, String numbers, String formula)
            throws com.sun.star.uno.Exception {
        page.text("A" + row, label).look("A" + row, Look.LABEL);
        fillRow(page, row, Look.RESULT, numbers, formula);
    }

    private static void uncertainty(Page page, int row, String numbers, String formula)
            throws com.sun.star.uno.Exception {
        page.text("A" + row, "standard error").look("A" + row, Look.SUBLABEL);
        fillRow(page, row, Look.UNCERTAINTY, "\"± \"" + numbers, formula);
    }

    private static void fillRow(Page page, int row, Look look, String numbers, String formula)
            throws com.sun.star.uno.Exception {
        String cells = "B" + row + ":F" + row;
        page.look(cells, look).numbers(cells, numbers).formula(cells, formula);
    }

    private static String cell(int jar, int reading) {
        return column(jar) + (8 + reading);
    }

    /** The column of a jar; that of the times for −1. */
    static String column(int jar) {
        return String.valueOf((char) ('B' + jar));
    }
}
