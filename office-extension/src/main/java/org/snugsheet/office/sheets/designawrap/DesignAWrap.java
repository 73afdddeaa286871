package org.snugsheet.office.sheets.designawrap;

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
import org.snugsheet.office.sheets.readings.Grid;
import org.snugsheet.office.sheets.readings.ReadingsMessage;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.ExampleThermometer;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.words.Language;

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

    /** When the thermometers are read. */
    static final List<Integer> MINUTES = List.of(0, 5, 10, 15, 20, 25, 30);

    /** A whole jar as the WRAP functions take it, with the wrap and without; both end before unit, vessel and scale. */
    static final String WRAPPED = "volume;radius;thicknesses;layers;halfway;cold;place;lid_r;base_r;";

    static final String BARE = "volume;radius;wall_mm;wall;halfway_bare;cold;place;lid_r;base_r;";

    static final double VOLUME = 250;
    static final double RADIUS = 35;
    static final double GLASS = 200;
    static final double COLD = 2;
    static final String PLACE = DesignBehindWords.STILL_AIR.english();
    // Warm tap water: common practice, no source.
    static final double START = 40;
    static final double LESSON = 30;
    static final double MARK = 1;

    static final Grid GRID = new Grid('F', 'G', 'H', 32, MINUTES.size());

    @Override
    public String fileName() {
        return "design-a-wrap";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.DESIGN;
    }

    @Override
    public Set<Language> languages() {
        return EnumSet.allOf(Language.class);
    }

    @Override
    public String results() {
        return DesignWords.PAGE.english() + ".J32:N41";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        ExampleThermometer thermometer = new ExampleThermometer(book.setting().scale(), MARK);
        Page page = book.page(language.words(DesignWords.PAGE));
        defineNames(book.names(), page);
        Page read = DesignRead.add(book, page);
        Page behind = BehindTheDesign.add(book, page);
        Page materials = MaterialsPage.add(book);
        setSizes(page);
        writeTop(page, language);
        new JarBoxes(page, language, thermometer).write();
        LayersTable.write(page, language);
        writeReadings(page, language, thermometer);
        Invented.keep(book, read, AsRead.below(GRID), page, GRID.readings());
        writeCheck(page, language);
        ExpectedAndMeasured.write(page, language);
        rule(page, language);
        BehindTheDesign.bars(behind, language).draw(page, "r_by_layer", "J6:N15");
        BehindTheDesign.curves(behind, language).draw(book.office(), page, "expected_curves", "J16:N29");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(DesignWords.TITLE)).apply(page, "A1:N41");
        page.protect();
        read.protect();
        behind.protect();
        materials.protect();
        book.describe(
                language.words(DesignWords.TITLE),
                language.words(DesignWords.SUBJECT),
                language.words(DesignWords.DESCRIPTION),
                language.words(DesignWords.R_VALUE),
                language.words(DesignWords.KEYWORD),
                language.words(DesignWords.WRAP_ADDS));
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
                .width("B1", 44)
                .width("C1", 21)
                .width("D1", 19)
                .width("E1", 20)
                .width("F1", 24)
                .width("G1:H1", 21);
        page.width("I1", 4).width("J1", 58).width("K1:N1", 25);
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

    private static void writeTop(Page page, Language language) throws com.sun.star.uno.Exception {
        page.text("A1", language.words(DesignWords.TITLE)).look("A1", CellStyleName.TITLE);
        page.merge("A2:N2").look("A2:N2", CellStyleName.PURPOSE).text("A2", language.words(DesignWords.PURPOSE));
        page.merge("A3:N3").look("A3:N3", CellStyleName.CAUTION);
        page.paragraphs("A3", language.words(SharedWords.CAUTION_WORD), language.words(DesignWords.CAUTION));
        page.text("A5", language.words(SharedWords.BOXES)).look("A5", CellStyleName.SAMPLE);
        page.text("B5", language.words(SharedWords.BOXES_TYPE)).look("B5:N5", CellStyleName.FOLLOWS);
    }

    private static void writeReadings(Page page, Language language, ExampleThermometer thermometer)
            throws com.sun.star.uno.Exception {
        page.look("A31:H31", CellStyleName.SECTION);
        page.formula("A31", Degrees.label(language, DesignWords.READ) + "&" + Invented.words(language));
        page.text("A32", language.words(DesignWords.BARE_BESIDE)).look("A32:E32", CellStyleName.HINT);
        page.look("F32:H32", CellStyleName.HEAD)
                .text("F32", language.words(DesignWords.MINUTES))
                .text("G32", language.words(DesignWords.BARE))
                .text("H32", language.words(DesignWords.WRAPPED));
        page.wrapped("F32:H32").look(GRID.typed(), CellStyleName.INPUT);
        double[] bare = ReadingsOfTheClass.bare(thermometer);
        double[] wrapped = ReadingsOfTheClass.wrapped(thermometer);
        for (int i = 0; i < MINUTES.size(); i++) {
            int row = GRID.firstRow() + i;
            page.number("F" + row, MINUTES.get(i));
            page.number("G" + row, bare[i]);
            page.number("H" + row, wrapped[i]);
        }
        page.text("A33", language.words(DesignWords.CAN_BE_USED)).look("A33:E33", CellStyleName.LABEL);
    }

    private static void writeCheck(Page page, Language language) throws com.sun.star.uno.Exception {
        page.merge("A34:E38").look("A34:E38", CellStyleName.MESSAGE);
        String usable = "IF(caution_bare&caution_wrapped=\"\";\"OK: \";\"\")";
        page.formula(
                "A34",
                "=" + said(language, "hot_bare", DesignWords.BARE_SAYS) + "&"
                        + said(language, "hot_wrapped", DesignWords.WRAPPED_SAYS) + "&IF(COUNTA(typed_readings)=0;"
                        + FormulaText.quoted(language, DesignWords.NOTHING_READ) + ";IF(" + notFine("bare") + ";"
                        + says(language, "check_bare", DesignWords.BARE_SAYS) + ";IF(" + notFine("wrapped") + ";"
                        + says(language, "check_wrapped", DesignWords.WRAPPED_SAYS) + ";"
                        + said(language, "caution_bare", DesignWords.BARE_SAYS) + "&"
                        + said(language, "caution_wrapped", DesignWords.WRAPPED_SAYS) + "&" + usable + "&"
                        + FormulaText.quoted(language, DesignWords.ALL_USED) + ")))");
        Highlight.when(page, "A34:E38", "hot_bare&hot_wrapped<>\"\"", CellStyleName.HOT);
        Highlight.when(
                page,
                "A34:E38",
                "AND(COUNTA(typed_readings)>0;OR(" + notFine("bare") + ";" + notFine("wrapped")
                        + ";caution_bare&caution_wrapped<>\"\"))",
                CellStyleName.TROUBLE_MESSAGE);
        DesignRead.mark(page);
    }

    /** A formula for what is found in a jar, with its name before and a blank behind; nothing if nothing is found. */
    private static String said(Language language, String found, Phrase jar) {
        return "IF(" + found + "<>\"\";" + says(language, found, jar) + "&\" \";\"\")";
    }

    private static String says(Language language, String found, Phrase jar) {
        return FormulaText.sentence(language, jar, ReadingsMessage.asSeen(language, found));
    }

    private static String notFine(String jar) {
        return "AND(check_" + jar + "<>\"OK\";check_" + jar + "<>\"\")";
    }

    private static void rule(Page page, Language language) throws com.sun.star.uno.Exception {
        InputRules.on(page)
                .choice(
                        "B19:B24",
                        "materials",
                        language.words(DesignWords.MATERIAL),
                        language.words(DesignWords.MATERIAL_HINT))
                .aboveZero(
                        "C19:C24",
                        language.words(DesignWords.THICKNESS_TITLE),
                        language.words(DesignWords.THICKNESS_HINT))
                .choice(
                        "B27:B28",
                        "materials",
                        language.words(DesignWords.MATERIAL),
                        language.words(DesignWords.COVER_HINT))
                .aboveZero(
                        "C27:C28",
                        language.words(DesignWords.THICKNESS_TITLE),
                        language.words(DesignWords.COVER_THICKNESS_HINT));
    }
}
