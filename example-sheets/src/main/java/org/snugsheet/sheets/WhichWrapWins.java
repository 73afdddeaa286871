package org.snugsheet.sheets;

import java.util.List;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Look;
import org.snugsheet.office.page.Names;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.sheets.builder.Book;

/**
 * Which wrap wins? Up to eight groups, each with a jar of its own: readings, ranking, verdict, and bars for the wall.
 *
 * @see Ranked
 * @see ClassDisplay
 */
final class WhichWrapWins implements WorkedSheet {

    static final String PAGE = "Groups";

    /** The jars, from left to right; the readings of each follow from its wrap. */
    static final List<Jar> JARS = List.of(
            Jar.bare("bare jar"),
            Jar.wrapped("cardboard", 4, "cardboard"),
            Jar.wrapped("wool sock", 4, "wool"),
            Jar.wrapped("newspaper", 8, "newspaper"),
            Jar.wrapped("bubble wrap", 10, "small bubble wrap"),
            Jar.wrapped("fleece", 12, "fleece"),
            Jar.wrapped("dry leaves", 25, "leaves"),
            Jar.wrapped("feathers", 20, "feathers"));

    static final List<Integer> MINUTES = List.of(0, 5, 10, 15, 20, 25, 30);

    /** The row of the first reading, and how many rows there are. */
    static final int FIRST_ROW = 8;

    static final int ROWS = 8;

    static final String OF_ALL = "times;used_block;used_groups;surroundings;mark;scale";

    private static final String TITLE = "Which wrap wins?";
    private static final String INVENTED = "invented readings";
    private static final double SURROUNDINGS = 2;
    // Warm tap water: common practice, no source.
    private static final double START = 40;
    private static final double MARK = 0.5;
    private static final long SEED = 20_261_208;

    private static final String LAST = "I";

    @Override
    public String fileName() {
        return "which-wrap-wins";
    }

    @Override
    public String results() {
        return PAGE + ".A24:I32";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        defineNames(book.names(), page);
        Page display = book.page(ClassDisplay.NAME);
        Page ranked = Ranked.add(book);
        setSizes(page);
        new Top(
                        TITLE,
                        "Each group types what its thermometer read. The sheet ranks the wraps, says where the readings cannot"
                                + " tell, and draws bars for the whole class to see.",
                        "warm tap water of about 40 °C (104 °F) is enough, never hot or boiling water. An adult pours."
                                + " Glass breaks: carry jars with both hands. Wipe up water and melted snow at once. Follow"
                                + " the safety policy of your school.")
                .write(page, "K");
        writeReadings(page);
        writeSettings(page);
        writeCheck(page);
        writeRanking(page);
        writeVerdict(page);
        rule(page);
        ClassDisplay.fill(display, ranked);
        new PrintSetup(PrintSetup.Way.LYING, TITLE + " " + INVENTED).apply(page, "A1:K32");
        page.protect();
        book.describe(
                TITLE,
                "Wraps compared by the readings of several groups",
                "A worked sheet of Snugsheet with " + INVENTED
                        + ": eight groups, one jar each, ranked by how slowly they cool, with a page for the wall.",
                "insulation",
                "fair test",
                "ranking",
                "cooling curve",
                INVENTED);
        book.openAt(page, "B7");
    }

    private static void defineNames(Names names, Page page) {
        int last = FIRST_ROW + ROWS - 1;
        names.fixed("times", page, "A" + FIRST_ROW + ":A" + last)
                .fixed("groups", page, "B7:I7")
                .fixed("block", page, "B" + FIRST_ROW + ":I" + last)
                .sameColumn("readings", page, "B" + FIRST_ROW + ":B" + last)
                .fixed("surroundings", page, "B16")
                .fixed("mark", page, "B17")
                .fixed("scale", page, "B18")
                .fixed("from", page, "B19")
                .fixed("first_jar", page, "K15")
                .fixed("second_jar", page, "K17");
        // The groups fill the columns from the left; those without a name are left out.
        names.computed("used_groups", "OFFSET(groups;0;0;1;MAX(1;COUNTA(groups)))")
                .computed("used_block", "OFFSET(block;0;0;" + ROWS + ";MAX(1;COUNTA(groups)))");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 38).width("B1:I1", 22).width("J1", 4).width("K1", 72);
        page.height("A6:A32", 5.6).height("A6", 6.5).height("A7", 9.5);
        page.height("A21", 9.5)
                .height("A22", 2)
                .height("A23", 6.5)
                .height("A24", 9.5)
                .height("A25:A32", 7.6);
    }

    private static void writeReadings(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + ROWS - 1;
        page.look("A6:" + LAST + "6", Look.SECTION);
        page.formula("A6", Degrees.label("1  What the thermometers read, ", " (invented: type your own over them)"));
        page.text("A7", "Time, minutes")
                .look("A7", Look.HEAD)
                .look("B7:I7", Look.INPUT_HEAD)
                .wrapped("B7:I7");
        page.look("A" + FIRST_ROW + ":I" + last, Look.INPUT);
        InventedReadings invented =
                new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(START), MARK, SEED);
        for (int row = 0; row < MINUTES.size(); row++) {
            page.number("A" + (FIRST_ROW + row), MINUTES.get(row));
        }
        for (int jar = 0; jar < JARS.size(); jar++) {
            String column = WindowsillJars.column(jar);
            page.text(column + "7", JARS.get(jar).name());
            double[] celsius = invented.of(JARS.get(jar), MINUTES);
            for (int row = 0; row < celsius.length; row++) {
                page.number(column + (FIRST_ROW + row), celsius[row]);
            }
        }
    }

    private static void writeSettings(Page page) throws com.sun.star.uno.Exception {
        page.look("A16:A19", Look.LABEL).look("B16:B19", Look.INPUT).look("C16:I19", Look.HINT);
        page.formula("A16", Degrees.label("Around the jars, ")).number("B16", SURROUNDINGS);
        page.text("C16", "the air over the snow, beside the jars");
        page.formula("A17", Degrees.label("Smallest mark, ")).number("B17", MARK);
        page.text("C17", "from one line of the thermometer to the next");
        page.text("A18", "Scale, C or F").text("B18", "C");
        page.text("C18", "of all numbers here; one reading in the other scale: type 95 °F");
        page.formula("A19", Degrees.label("Compare from, ")).number("B19", START);
        page.text("C19", "“lost in 10 minutes” counts from here for every jar: that is fair");
    }

    private static void writeCheck(Page page) throws com.sun.star.uno.Exception {
        page.text("A20", "Can these be used?").look("A20", Look.LABEL).look("B20:I20", Look.RESULT);
        String check = "CHECK.READINGS(times;readings;surroundings;mark;scale)";
        for (int jar = 0; jar < JARS.size(); jar++) {
            String column = WindowsillJars.column(jar);
            page.formula(column + "20", "=IF(" + column + "7=\"\";\"\";" + check + ")");
        }
        Highlight.unlessOk(page, "B20:I20", "A$20", Look.TROUBLE);
        page.merge("A21:I21").look("A21:I21", Look.MESSAGE);
        StringBuilder words = new StringBuilder();
        for (int jar = 0; jar < JARS.size(); jar++) {
            String column = WindowsillJars.column(jar);
            words.append("IF(AND(" + column + "20<>\"\";" + column + "20<>\"OK\");" + column + "7&\": \"&" + column
                    + "20&\" (Row 1 is the first reading.)\";");
        }
        page.formula(
                "A21",
                "=" + words + "\"All readings can be used. Fewer groups? Clear their columns from the right.\""
                        + ")".repeat(JARS.size()));
        Highlight.when(
                page, "A21:I21", "COUNTIF($B$20:$I$20;\"OK\")+COUNTIF($B$20:$I$20;\"\")<8", Look.TROUBLE_MESSAGE);
    }

    private static void writeRanking(Page page) throws com.sun.star.uno.Exception {
        page.look("A23:I23", Look.SECTION).text("A23", "2  The ranking: the best wrap first");
        page.look("A24:I24", Look.HEAD).wrapped("A24:I24").merge("G24:I24");
        page.text("A24", "wrap").text("B24", "place").text("C24", "jars").text("D24", "half-time, minutes");
        page.formula("E24", Degrees.label("lost in 10 min, "))
                .text("F24", "95 % sure")
                .text("G24", "cannot be told from");
        for (int place = 0; place < JARS.size(); place++) {
            int row = 25 + place;
            page.look("A" + row, Look.LABEL).look("B" + row + ":C" + row, Look.COUNT);
            page.look("D" + row + ":E" + row, Look.RESULT).look("F" + row, Look.UNCERTAINTY);
            page.merge("G" + row + ":I" + row).look("G" + row + ":I" + row, Look.HINT);
            page.wrapped("G" + row).numbers("D" + row, "0").numbers("E" + row, "0.0");
            page.formula("A" + row, "=" + Ranked.cell(place, Ranked.WRAP) + "&\"\"");
            page.formula("B" + row, "=" + Ranked.cell(place, Ranked.PLACE));
            page.formula("C" + row, "=" + Ranked.cell(place, Ranked.JARS));
            page.formula("D" + row, "=" + Ranked.cell(place, Ranked.HALFTIME));
            page.formula("E" + row, "=" + Ranked.cell(place, Ranked.LOST));
            page.formula(
                    "F" + row,
                    "=IF(A" + row + "=\"\";\"\";FIXED(" + Ranked.cell(place, Ranked.LOST_FROM) + ";1)&\" to \"&FIXED("
                            + Ranked.cell(place, Ranked.LOST_TO) + ";1))");
            page.formula("G" + row, "=" + Ranked.cell(place, Ranked.NOT_TOLD_FROM) + "&\"\"");
        }
    }

    private static void writeVerdict(Page page) throws com.sun.star.uno.Exception {
        page.look("K6", Look.SECTION).text("K6", "3  The verdict");
        page.merge("K7:K11").look("K7:K11", Look.SENTENCE).formula("K7", "=" + Ranked.WINNER);
        page.text("K13", "Is one of two jars really slower?").look("K13", Look.SECTION);
        page.text("K14", "the first jar").look("K14", Look.HINT).text("K16", "the second jar");
        page.look("K16", Look.HINT).look("K15", Look.INPUT).look("K17", Look.INPUT);
        page.text("K15", JARS.get(0).name()).text("K17", JARS.get(3).name());
        page.merge("K18:K21").look("K18:K21", Look.MESSAGE);
        page.formula(
                "K18",
                "=IFERROR(COOL.VERDICT(times;" + column("first_jar") + ";times;" + column("second_jar")
                        + ";surroundings;mark;scale);\"Choose two groups whose readings can be used.\")");
        page.look("K23", Look.SECTION).text("K23", "What to look for");
        page.merge("K24:K32").look("K24:K32", Look.NOTE);
        page.paragraphs(
                "K24",
                "Do wraps share a place?",
                "Then these readings cannot tell them apart, and a longer half-time may be chance.",
                "Was it fair?",
                "Same water, same start, same place: only the wrap may differ.",
                "For the wall:",
                "the page " + ClassDisplay.NAME + " shows the bars to the whole class.");
    }

    private static String column(String jar) {
        return "INDEX(block;0;MATCH(" + jar + ";groups;0))";
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + ROWS - 1;
        InputRules.on(page)
                .hint("B7:I7", "Wrap", "What the jar is wrapped in. Jars of one name count together.")
                .atLeast("A8:A" + last, 0, "Time", "Minutes since the start, rising: 0, 5, 10.")
                .hint("B8:I" + last, "Reading", "What the thermometer shows. Missed one? Leave it blank.")
                .hint("B16", "Around the jars", "How warm the air, the water or the snow around the jars is.")
                .aboveZero("B17", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.")
                .only("B18", "scales", "Scale", "C for degrees Celsius, F for degrees Fahrenheit.")
                .hint("B19", "Compare from", "The start temperature from which every jar is compared, such as 40 °C.")
                .choice("K15", "groups", "The first jar", "Choose a group from the list.")
                .choice("K17", "groups", "The second jar", "Choose a group from the list.");
    }
}
