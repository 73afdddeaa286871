package org.snugsheet.office.sheets.designawrap;

import java.util.List;
import org.snugsheet.engine.Phrase;
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
import org.snugsheet.office.sheets.readings.JarFindings;
import org.snugsheet.office.sheets.readings.ReadingsMessage;
import org.snugsheet.office.sheets.shared.BitterCold;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.SheetLines;

/**
 * Design a wrap: choose layers from a list, see what each adds, what curve to expect, and what the class measured beside it.
 *
 * <p>All of it is worked out half-way through the lesson: the films on the surfaces grow thinner with the difference to the
 * surroundings, so that one temperature represents them all.
 *
 * @see LayersTable
 * @see ExpectedAndMeasured
 * @see BehindTheDesign
 * @see MaterialsPage
 */
public final class DesignAWrap implements WorkedSheet {

    static final String PAGE = "Design";

    /** When the thermometers are read. */
    static final List<Integer> MINUTES = List.of(0, 5, 10, 15, 20, 25, 30);

    /** A whole jar as the WRAP functions take it, with the wrap and without; both end before unit, vessel and scale. */
    static final String WRAPPED = "volume;radius;thicknesses;layers;halfway;cold;place;lid_r;base_r;";

    static final String BARE = "volume;radius;wall_mm;wall;halfway_bare;cold;place;lid_r;base_r;";

    static final double VOLUME = 250;
    static final double RADIUS = 35;
    static final double GLASS = 200;
    static final double COLD = 2;
    static final String PLACE = "still air";
    // Warm tap water: common practice, no source.
    static final double START = 40;
    static final double LESSON = 30;
    static final double MARK = 1;

    static final Grid GRID = new Grid('F', 'G', 'H', 32, MINUTES.size());

    private static final String TITLE = "Design a wrap";
    private static final String INVENTED = "invented readings";

    @Override
    public String fileName() {
        return "design-a-wrap";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.DESIGN;
    }

    @Override
    public String results() {
        return PAGE + ".J32:N41";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        defineNames(book.names(), page);
        Page read = DesignRead.add(book, page);
        Page behind = BehindTheDesign.add(book, page);
        Page materials = MaterialsPage.add(book);
        setSizes(page);
        writeTop(page);
        writeJar(page);
        LayersTable.write(page);
        writeReadings(page);
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeCheck(page);
        ExpectedAndMeasured.write(page);
        rule(page);
        BehindTheDesign.bars(behind).draw(page, "r_by_layer", "J6:N15");
        BehindTheDesign.curves(page, behind).draw(book.office(), page, "expected_curves", "J16:N29");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, TITLE).apply(page, "A1:N41");
        page.protect();
        read.protect();
        behind.protect();
        materials.protect();
        book.describe(
                TITLE,
                "R-values and cooling curves expected from layers, and measured by thermometer",
                "A worked sheet of Snugsheet with " + INVENTED
                        + ": choose the layers round a jar of warm water, see what each adds to the R-value and what"
                        + " cooling curve to expect, and hold the class’s readings against it.",
                "R-value",
                "insulation",
                "layers",
                "cooling curve",
                "worked sheet",
                INVENTED);
        book.openAt(page, "B20");
    }

    private static void defineNames(NamedRanges names, Page page) {
        names.fixed("scale", page, "B7")
                .fixed("volume", page, "B8")
                .fixed("radius", page, "B9")
                .fixed("glass", page, "B10")
                .fixed("start", page, "B11")
                .fixed("cold", page, "B12")
                .fixed("place", page, "B13")
                .fixed("lesson", page, "B14")
                .fixed("wall", page, "B19")
                .fixed("wall_mm", page, "C19")
                .fixed("layers", page, "B19:B24")
                .fixed("thicknesses", page, "C19:C24")
                .fixed("side_r", page, "E26")
                .fixed("lid", page, "B27")
                .fixed("lid_mm", page, "C27")
                .fixed("base", page, "B28")
                .fixed("base_mm", page, "C28")
                .fixed("mark", page, "B15")
                .fixed("bare_rate", page, "K33")
                .fixed("wrapped_rate", page, "M33");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 46)
                .width("B1", 38)
                .width("C1", 21)
                .width("D1", 19)
                .width("E1", 20)
                .width("F1", 24)
                .width("G1:H1", 18);
        page.width("I1", 4).width("J1", 54).width("K1:N1", 24);
        page.height("A1:A40", 5.5)
                .height("A41", 11)
                .height("A1", 10)
                .height("A2", 7)
                .height("A3", 10.5);
        page.height("A4", 1.5).height("A5", 6).height("A6", 7).height("A16", 7);
        page.height("A17", 9.5)
                .height("A29", 9.5)
                .height("A30", 2)
                .height("A31", 7)
                .height("A32", 9.5);
    }

    private static void writeTop(Page page) throws com.sun.star.uno.Exception {
        page.text("A1", TITLE).look("A1", CellStyleName.TITLE);
        page.merge("A2:N2").look("A2:N2", CellStyleName.PURPOSE);
        page.text(
                "A2",
                "Choose layers from the lists: see what each adds, how the jar should cool, and whether the class’s own"
                        + " readings agree.");
        page.merge("A3:N3").look("A3:N3", CellStyleName.CAUTION);
        page.paragraphs(
                "A3",
                "Caution:",
                "warm tap water of about 40 °C is enough, never hot or boiling water. Glass breaks, sooner where it"
                        + " goes from warm to icy: carry jars with both hands, and never use a cracked one. Ice and wet"
                        + " floors are slippery, and bare hands get cold in snow and ice. The safety rules of your school"
                        + " come first.");
        page.text("A5", "a boxed cell").look("A5", CellStyleName.SAMPLE);
        page.text(
                        "B5",
                        "is for you to choose or type in. Everything else works itself out and is locked against slips;"
                                + " there is no password (Tools, Protect Sheet).")
                .look("B5:N5", CellStyleName.FOLLOWS);
    }

    private static void writeJar(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:H6", CellStyleName.SECTION).text("A6", "1  The jar, and where it stands");
        page.look("A7:A15", CellStyleName.LABEL)
                .look("B7:B15", CellStyleName.INPUT)
                .look("C7:H15", CellStyleName.HINT);
        page.text("A7", "Scale, C or F").text("B7", "C");
        page.text("C7", "for all temperatures here; type them again if you change it");
        page.text("A8", "Water, milliliters").number("B8", VOLUME);
        page.text("C8", "as much as a teacup holds");
        page.text("A9", "Inside radius, mm").number("B9", RADIUS);
        page.text("C9", "half of the way across the inside of the jar");
        page.text("A10", "Empty glass jar, grams").number("B10", GLASS);
        page.text("C10", "glass keeps heat too; 0 for a jar that weighs next to nothing");
        page.formula("A11", Degrees.label("Water at the start, ")).number("B11", START);
        page.formula(
                "C11", "=IF(too_hot;\"too hot for pupils: never above " + JarFindings.LIMIT + "\";\"warm tap water\")");
        page.merge("C11:H11");
        Highlight.when(page, "C11:H11", "too_hot", CellStyleName.HOT);
        page.formula("A12", Degrees.label("Surroundings, ")).number("B12", COLD);
        BitterCold.hint(page, "C12", "cold", "scale", "the air over the snow, or the tub of water");
        page.text("A13", "Where it stands").text("B13", PLACE);
        page.text("C13", "contact is packed in snow; for wind, type its speed");
        page.formula("A15", Degrees.label("Smallest mark, ")).number("B15", MARK);
        page.text("C15", "from one line of the thermometer to the next");
        page.text("A14", "Lesson, minutes").number("B14", LESSON);
        page.formula(
                "C14",
                "=IFERROR(\"half-way, the wrapped water should be at \"&FIXED(halfway;1)&" + Degrees.UNIT + ";"
                        + "\"see the message under the layers\")");
    }

    private static void writeReadings(Page page) throws com.sun.star.uno.Exception {
        page.look("A31:H31", CellStyleName.SECTION);
        page.formula("A31", Degrees.label("3  What the class read, ") + "&" + Invented.WORDS);
        page.text("A32", "The bare jar has the same lid and base, but no wrap round its side.")
                .look("A32:E32", CellStyleName.HINT);
        page.look("F32:H32", CellStyleName.HEAD)
                .text("F32", "minutes")
                .text("G32", "bare jar")
                .text("H32", "wrapped jar");
        page.wrapped("F32:H32").look(GRID.typed(), CellStyleName.INPUT);
        double[] bare = ReadingsOfTheClass.bare();
        double[] wrapped = ReadingsOfTheClass.wrapped();
        for (int i = 0; i < MINUTES.size(); i++) {
            int row = GRID.firstRow() + i;
            page.number("F" + row, MINUTES.get(i));
            page.number("G" + row, bare[i]);
            page.number("H" + row, wrapped[i]);
        }
        page.text("A33", "Can these be used?").look("A33:E33", CellStyleName.LABEL);
    }

    private static void writeCheck(Page page) throws com.sun.star.uno.Exception {
        page.merge("A34:E38").look("A34:E38", CellStyleName.MESSAGE);
        page.formula(
                "A34",
                "=" + said("hot_bare", "Bare jar", said("hot_wrapped", "Wrapped jar", "\"\""))
                        + "&IF(COUNTA(typed_readings)=0;\"Nothing is read yet. A jar nobody reads stays blank.\";IF("
                        + notFine("bare") + ";\"Bare jar: \"&" + ReadingsMessage.asSeen("check_bare") + ";IF("
                        + notFine("wrapped")
                        + ";\"Wrapped jar: \"&" + ReadingsMessage.asSeen("check_wrapped") + ";"
                        + said("caution_bare", "Bare jar", said("caution_wrapped", "Wrapped jar", "\"OK: \""))
                        + "&\"All readings can be used. A missed one stays blank.\")))");
        Highlight.when(page, "A34:E38", "hot_bare&hot_wrapped<>\"\"", CellStyleName.HOT);
        Highlight.when(
                page,
                "A34:E38",
                "NOT(OR(LEFT($A$34;3)=\"OK:\";LEFT($A$34;7)=\"Nothing\"))",
                CellStyleName.TROUBLE_MESSAGE);
        DesignRead.mark(page);
    }

    /** A formula for what is found in a jar, with its name before and a blank behind; otherwise another text. */
    private static String said(String found, String jar, String otherwise) {
        return "IF(" + found + "<>\"\";\"" + jar + ": \"&" + ReadingsMessage.asSeen(found) + "&\" \";" + otherwise
                + ")";
    }

    private static String notFine(String jar) {
        return "AND(check_" + jar + "<>\"OK\";check_" + jar + "<>\"\")";
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .only("B7", "scales", "Scale", "C for degrees Celsius, F for degrees Fahrenheit.")
                .aboveZero("B8", "Water", "Milliliters of water in the jar.")
                .aboveZero("B9", "Inside radius", "Millimeters from the middle of the jar to its inside.")
                .atLeast("B10", 0, "Empty glass jar", "Grams, as the kitchen scales say.")
                .hint("B11", "Water at the start", "How warm the water is when the clock starts.")
                .hint("B12", "Surroundings", "How warm it is around the jar.")
                .choice("B13", "places", "Where it stands", "Choose from the list, or type for example wind 15 km/h.")
                .aboveZero("B14", "Lesson", "Minutes from the first reading to the last.")
                .choice(
                        "B19:B24",
                        "materials",
                        "Material",
                        "Choose from the list, or type a conductivity in W/(m·K). Blank: no layer here. Glass or rock"
                                + " wool: only sealed in, by an adult.")
                .aboveZero(
                        "C19:C24",
                        "Thickness",
                        "Millimeters, as thick as it is on the jar. The usual one is beside it.")
                .choice(
                        "B27:B28",
                        "materials",
                        "Material",
                        "Choose from the list. Blank: a thin lid or base, left bare.")
                .aboveZero("C27:C28", "Thickness", "Millimeters. The usual thickness of one layer is beside it.")
                .aboveZero(
                        "B15", "Smallest mark", "Degrees from one line of the thermometer to the next: 1, 2 or 0.5.");
    }
}
