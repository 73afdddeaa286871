package org.snugsheet.office.sheets.whichwrapwins;

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
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.ReadingsMessage;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.ExampleJar;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.InventedReadings;
import org.snugsheet.office.sheets.shared.SafeWater;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;

/**
 * Which wrap wins? Up to eight groups, each with a jar of its own: readings, ranking, verdict, and bars for the wall.
 *
 * @see Ranked
 * @see ClassDisplay
 */
public final class WhichWrapWins implements WorkedSheet {

    static final String PAGE = "Groups";

    /** The jars, from left to right; the readings of each follow from its wrap. */
    static final List<ExampleJar> JARS = List.of(
            ExampleJar.bare("bare jar"),
            ExampleJar.wrapped("cardboard", 4, "cardboard"),
            ExampleJar.wrapped("wool sock", 4, "wool"),
            ExampleJar.wrapped("newspaper", 6.7, "newspaper"),
            ExampleJar.wrapped("bubble wrap", 10, "small bubble wrap"),
            ExampleJar.wrapped("fleece", 13, "fleece"),
            ExampleJar.wrapped("dry leaves", 25, "leaves"),
            ExampleJar.wrapped("feathers", 18.43, "feathers"));

    static final List<Integer> MINUTES = List.of(0, 5, 10, 15, 20, 25, 30);

    /** The row of the first reading, and how many rows there are. */
    static final int FIRST_ROW = 8;

    static final int ROWS = 8;

    static final Grid GRID = new Grid('A', 'B', 'I', FIRST_ROW - 1, ROWS);

    /** Jars wrapped alike by children differ by about a tenth, and a wrap has one jar here; see Power.USUAL_SPREAD. */
    static final String SPREAD = "0.1";

    static final String OF_ALL = "times;all_readings;jars;surroundings;mark;scale";

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
    public Phrase menuLine() {
        return SheetLines.WHICH_WRAP;
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
        setSizes(page);
        new Top(
                        TITLE,
                        "Each group types what its thermometer read. The sheet ranks the wraps, says where the"
                                + " readings cannot tell, and draws bars for the whole class to see.",
                        "warm tap water of about 40 °C (104 °F) is enough, never hot or boiling water. An adult pours."
                                + " Glass breaks: carry jars with both hands. Wipe up water and melted snow at once."
                                + " Follow the safety policy of your school.")
                .write(page, "L");
        writeReadings(page);
        writeSettings(page);
        Page read = AsRead.add(book, page, GRID, "scale", "surroundings;mark;scale");
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        Page ranked = Ranked.add(book);
        writeCheck(page);
        writeRanking(page);
        writeVerdict(page);
        rule(page);
        ClassDisplay.fill(display, ranked);
        new PrintSetup(PrintSetup.Way.LANDSCAPE, TITLE).apply(page, "A1:L32");
        page.protect();
        read.protect();
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
        book.openAt(page, "B" + FIRST_ROW);
    }

    private static void defineNames(NamedRanges names, Page page) {
        names.fixed("scale", page, "L7")
                .fixed("surroundings", page, "L8")
                .fixed("mark", page, "L9")
                .fixed("from", page, "L10")
                .fixed("groups", page, "L12:L19")
                .fixed("first_jar", page, "L21")
                .fixed("second_jar", page, "L22");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 38).width("B1:I1", 22).width("J1", 4).width("K1", 46).width("L1", 36);
        page.height("A6:A32", 5.6).height("A6", 6.5).height("A7", 9.5);
        page.height("A17", 15).height("A18", 6.5);
        page.height("A19:A21", 5.6)
                .height("A22", 6.5)
                .height("A23", 6.5)
                .height("A24", 9.5)
                .height("A25:A32", 7.6);
    }

    private static void writeReadings(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:" + LAST + "6", CellStyleName.SECTION);
        page.formula("A6", Degrees.label("1  What the thermometers read, ") + "&" + Invented.WORDS);
        page.text("A7", "Time, minutes")
                .look("A7", CellStyleName.HEAD)
                .look("B7:I7", CellStyleName.HEAD)
                .wrapped("B7:I7");
        page.look(GRID.typed(), CellStyleName.INPUT);
        InventedReadings invented =
                new InventedReadings(new Temperature(SURROUNDINGS), new Temperature(START), MARK, SEED);
        for (int row = 0; row < MINUTES.size(); row++) {
            page.number("A" + (FIRST_ROW + row), MINUTES.get(row));
        }
        for (int jar = 0; jar < JARS.size(); jar++) {
            String column = String.valueOf(GRID.column(jar));
            page.formula(column + "7", "=L" + (12 + jar) + "&\"\"");
            page.text("K" + (12 + jar), "group " + (jar + 1))
                    .text("L" + (12 + jar), JARS.get(jar).name());
            double[] celsius = invented.of(JARS.get(jar), MINUTES);
            for (int row = 0; row < celsius.length; row++) {
                page.number(column + (FIRST_ROW + row), celsius[row]);
            }
        }
    }

    private static void writeSettings(Page page) throws com.sun.star.uno.Exception {
        page.look("K6:L6", CellStyleName.SECTION).text("K6", "2  Say how it was measured");
        page.look("K7:K10", CellStyleName.LABEL).look("L7:L10", CellStyleName.INPUT);
        page.text("K7", "Scale, C or F").text("L7", "C");
        page.formula("K8", Degrees.label("Around the jars, ")).number("L8", SURROUNDINGS);
        page.formula("K9", Degrees.label("Smallest mark, ")).number("L9", MARK);
        String tooHot = SafeWater.tooHot("from", "scale");
        page.formula(
                        "K10",
                        "=IF(" + tooHot + ";\"Too hot: at most \"&IF(scale=\"F\";\"109 °F\";\"43 °C\");"
                                + Degrees.label("Compare all from, ").substring(1) + ")")
                .number("L10", START);
        Highlight.when(page, "K10", tooHot, CellStyleName.HOT);
        page.look("K11:L11", CellStyleName.SECTION).text("K11", "The wraps, named once");
        page.look("K12:K19", CellStyleName.LABEL).look("L12:L19", CellStyleName.INPUT);
    }

    private static void writeCheck(Page page) throws com.sun.star.uno.Exception {
        page.text("A16", "Can these be used?").look("A16", CellStyleName.LABEL).look("B16:I16", CellStyleName.RESULT);
        page.formula("B16:I16", "=IF(LEN(surroundings)=0;\"\";check)");
        Highlight.when(page, "B16:I16", ReadingsMessage.heldBack("A$16"), CellStyleName.TROUBLE);
        page.merge("A17:I17").look("A17:I17", CellStyleName.MESSAGE);
        page.formula(
                "A17",
                ReadingsMessage.message(GRID, "All readings can be used. Fewer groups? Leave their columns blank."));
        Highlight.when(page, "A17:I17", ReadingsMessage.IS_HOT, CellStyleName.HOT);
        Highlight.when(page, "A17:I17", ReadingsMessage.HAS_FINDING, CellStyleName.TROUBLE_MESSAGE);
        ReadingsMessage.mark(page, GRID);
    }

    private static void writeRanking(Page page) throws com.sun.star.uno.Exception {
        page.look("A23:I23", CellStyleName.SECTION).text("A23", "4  The ranking: the best wrap first");
        page.look("A24:I24", CellStyleName.HEAD).wrapped("A24:I24").merge("G24:I24");
        page.text("A24", "wrap").text("B24", "place").text("C24", "jars").text("D24", "half-time, minutes");
        page.formula("E24", Degrees.label("lost in 10 min, "))
                .text("F24", "95 % sure")
                .text("G24", "cannot be told from; or why held back");
        for (int place = 0; place < JARS.size(); place++) {
            int row = 25 + place;
            page.look("A" + row, CellStyleName.LABEL).look("B" + row + ":C" + row, CellStyleName.COUNT);
            page.look("D" + row + ":E" + row, CellStyleName.RESULT).look("F" + row, CellStyleName.UNCERTAINTY);
            page.merge("G" + row + ":I" + row).look("G" + row + ":I" + row, CellStyleName.HINT);
            page.wrapped("G" + row).numbers("D" + row, "0").numbers("E" + row, "0.0");
            page.formula("A" + row, "=" + Ranked.cell(place, Ranked.WRAP) + "&\"\"");
            page.formula("B" + row, "=" + Ranked.cell(place, Ranked.PLACE));
            page.formula("C" + row, "=" + Ranked.cell(place, Ranked.JARS));
            page.formula("D" + row, "=" + Ranked.cell(place, Ranked.HALFTIME));
            page.formula("E" + row, "=" + Ranked.cell(place, Ranked.LOST));
            page.formula(
                    "F" + row,
                    "=IF(ISNUMBER(B" + row + ");FIXED(" + Ranked.cell(place, Ranked.LOST_FROM) + ";1)&\" to \"&FIXED("
                            + Ranked.cell(place, Ranked.LOST_TO) + ";1);\"\")");
            page.formula("G" + row, "=" + Ranked.cell(place, Ranked.NOT_TOLD_FROM) + "&\"\"");
        }
    }

    private static void writeVerdict(Page page) throws com.sun.star.uno.Exception {
        page.look("A18:I18", CellStyleName.SECTION).text("A18", "3  The verdict");
        page.merge("A19:I21").look("A19:I21", CellStyleName.SENTENCE).formula("A19", "=" + Ranked.WINNER);
        page.text("K20", "Is one of two jars really slower?").look("K20:L20", CellStyleName.SECTION);
        page.text("K21", "the first jar").text("K22", "the second jar").look("K21:K22", CellStyleName.LABEL);
        page.look("L21:L22", CellStyleName.INPUT);
        page.text("L21", JARS.get(0).name()).text("L22", JARS.get(3).name());
        page.merge("K23:L25").look("K23:L25", CellStyleName.MESSAGE);
        page.formula("K23", "=" + Ranked.VERDICT);
        page.look("K26:L26", CellStyleName.SECTION).text("K26", "What to look for");
        page.merge("K27:L32").look("K27:L32", CellStyleName.NOTE);
        page.paragraphs(
                "K27",
                "Do wraps share a place?",
                "Then these readings cannot tell them apart. Jars wrapped alike differ by about a tenth, so only more"
                        + " than that counts for a wrap that has one jar.",
                "Was it fair?",
                "Same water, same start, same place: only the wrap may differ.",
                "A °F thermometer?",
                "End the wrap’s name with °F.");
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .only("L7", "scales", "Scale", "C for degrees Celsius, F for degrees Fahrenheit.")
                .hint("L8", "Around the jars", "How warm the air, the water or the snow around the jars is.")
                .aboveZero("L9", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.")
                .hint("L10", "Compare from", "“Lost in 10 minutes” counts from here for every jar: that is fair.")
                .name("L12:L19", "Wrap", "What the jar is wrapped in; jars of one name count together.")
                .choice("L21", "groups", "The first jar", "Choose a wrap from the list.")
                .choice("L22", "groups", "The second jar", "Choose a wrap from the list.");
    }
}
