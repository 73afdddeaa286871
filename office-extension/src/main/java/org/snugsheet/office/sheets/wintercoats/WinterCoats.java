package org.snugsheet.office.sheets.wintercoats;

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
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;

/**
 * Winter coats: how cold the wind makes it feel, whether an outfit is enough, and how the coats of animals compare with it.
 *
 * <p>Clothing is described for adults, as the standards do; children lose heat faster, and the sheet says so beside the numbers.
 *
 * @see BehindTheCoats
 */
public final class WinterCoats implements WorkedSheet {

    static final String PAGE = "Coats";
    static final int GARMENTS = 8;
    static final int ANIMALS = 6;

    private static final String TITLE = "Winter coats";
    private static final String INVENTED = "invented outfits and animals";
    /** Where COLD.NEEDED has no answer, it is too cold from here on; milder than this, too warm: shovelling makes that much heat. */
    private static final int FEELS_TOO_COLD = -5;

    private static final int FIRST_GARMENT = 15;
    private static final int FIRST_ANIMAL = 16;

    private static final List<String> PLACES = List.of(
            "next to the skin",
            "over it",
            "outermost",
            "legs, next to the skin",
            "legs, outermost",
            "socks",
            "shoes or boots",
            "hands");

    private static final List<String> SNOWMAN = List.of(
            "Long underwear top",
            "Thick sweater",
            "Parka",
            "Long underwear bottoms",
            "snow pants",
            "Thick long socks",
            "Boots",
            "Gloves");
    private static final List<String> IN_A_HURRY = List.of(
            "T-shirt", "Long-sleeve sweat shirt", "Coat", "", "Thick trousers", "Ankle socks", "Boots", "Gloves");

    /**
     * Thickness, as published. Reindeer and musk deer, measured: Blix and others, Rangifer 35 (2015), 53, abstract
     * (https://doi.org/10.7557/2.35.1.3575). Of two others the hair was measured, which lies at a slant, so that the coat is no thicker:
     * sea otter, underhair up to 26 mm: Williams and others 1992, as told at https://wildliferesearch.com/rehab_course/ch6-structure;
     * arctic fox in winter, 45 to 60 mm: Arctic Fox Center, Iceland, as told at
     * http://maxyweb.blogspot.com/2015/10/an-arctic-fox-vulpes-lagopus-in-norway.html.
     */
    private record Animal(String name, String covering, double millimeters) {}

    private static final List<Animal> COATS = List.of(
            new Animal("reindeer", "fur", 40),
            new Animal("musk deer", "fur", 30),
            new Animal("arctic fox, hair", "fur", 45),
            new Animal("sea otter, hair", "fur", 26));

    @Override
    public String fileName() {
        return "winter-coats";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.COATS;
    }

    @Override
    public String results() {
        return PAGE + ".A23:C24";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        defineNames(book.names(), page);
        setSizes(page);
        new Top(
                        TITLE,
                        "How cold does the wind make it, is an outfit warm enough for it, and how do the coats of"
                                + " animals compare?",
                        "frost bites bare skin, and children cool faster than adults: cover faces, ears and hands, and"
                                + " go in to warm up before anybody shivers. These numbers are for adults and a lesson,"
                                + " not for deciding who may go out: your school’s rules for outdoor play come first.")
                .write(page, "H");
        writeWeather(page);
        writeOutfits(page);
        writeAnimals(page);
        writeNotes(page);
        rule(page);
        Page behind = BehindTheCoats.add(book);
        int lastGarment = FIRST_GARMENT + GARMENTS - 1;
        Invented.keep(book, behind, "P4", page, "B8:B9", "B" + FIRST_GARMENT + ":C" + lastGarment);
        behind.protect();
        BehindTheCoats.bars(behind).draw(page, "coats_compared", "E23:H33");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, TITLE).apply(page, "A1:H33");
        page.protect();
        book.describe(
                TITLE,
                "Wind chill, clothing and animal coverings",
                "A worked sheet of Snugsheet with " + INVENTED
                        + ": the wind chill, two outfits against what the cold asks for, and fur, wool, down, feathers"
                        + " and blubber in the same unit.",
                "wind chill",
                "clothing",
                "animals in winter",
                "insulation",
                INVENTED);
        book.openAt(page, "B7");
    }

    private static void defineNames(NamedRanges names, Page page) {
        int last = FIRST_GARMENT + GARMENTS - 1;
        names.fixed("scale", page, "B7")
                .fixed("air", page, "B8")
                .fixed("wind", page, "B9")
                .fixed("activity", page, "B10")
                .fixed("wearers", page, "B12:B13")
                .sameColumn("garments_worn", page, "B" + FIRST_GARMENT + ":B" + last)
                .sameColumn("keeps_in", page, "B23")
                .fixed("grid", page, "B" + FIRST_GARMENT + ":C" + last)
                .fixed("outfits", page, "B" + FIRST_GARMENT + ":C" + last)
                .fixed("animals", page, "E" + FIRST_ANIMAL + ":G" + (FIRST_ANIMAL + ANIMALS - 1))
                .fixed("needed", page, "H12");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 44).width("B1:C1", 56).width("D1", 4);
        page.width("E1", 44).width("F1", 30).width("G1", 22).width("H1", 26);
        page.height("A6:A33", 6.2).height("A11", 8).height("A14", 7);
        page.height("A25", 12);
    }

    private static void writeWeather(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:C6", CellStyleName.SECTION).formula("A6", Invented.heading("1  The weather"));
        page.look("A7:A10", CellStyleName.LABEL)
                .look("B7:B10", CellStyleName.INPUT)
                .look("C7:C10", CellStyleName.HINT);
        page.text("A7", "Scale, C or F").text("B7", "C").text("C7", "F: wind is in mph then");
        page.formula("A8", Degrees.label("Air, ")).number("B8", -6).text("C8", "out of the sun");
        page.formula("A9", "=\"Wind, \"&IF(scale=\"F\";\"mph\";\"km/h\")").number("B9", 15);
        page.text("C9", "as the weather report says");
        page.text("A10", "What people do").text("B10", "playing in the snow").text("C10", "choose from the list");
        page.text("E12", "Clothing needed by an adult, clo").merge("E12:G12").look("E12:G12", CellStyleName.LABEL);
        page.look("H12", CellStyleName.RESULT).numbers("H12", "0.0");
        page.formula("H12", "=IFERROR(COLD.NEEDED(air;activity;wind;scale);\"none told\")");
        page.text("E13", "1 clo: a suit indoors").look("E13:H13", CellStyleName.HINT);
        page.look("E6:H6", CellStyleName.SECTION).text("E6", "How cold does it feel?");
        page.merge("E7:H8").look("E7:H8", CellStyleName.SENTENCE);
        page.formula(
                "E7",
                "=IFERROR(\"On an adult’s bare face it feels like \"&ROUND(COLD.WINDCHILL(air;wind;scale);0)&"
                        + Degrees.UNIT + "&\".\";"
                        + "\"No wind chill: that is for a wind in air up to 10 °C (50 °F).\")");
        page.merge("E9:H11").look("E9:H11", CellStyleName.MESSAGE);
        page.formula("E9", "=IFERROR(COLD.FROSTBITE(air;wind;scale);\"Type the air and the wind as numbers.\")");
        // From −18 °C on children’s skin is at risk; see the engine’s Frostbite. Not asked by its words: they follow
        // the
        // language of the document.
        Highlight.when(page, "E9:H11", "ROUND(chill;0)<=-18", CellStyleName.TROUBLE_MESSAGE);
    }

    private static void writeOutfits(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_GARMENT + GARMENTS - 1;
        page.look("A11:C11", CellStyleName.SECTION).formula("A11", Invented.heading("2  Two outfits for an adult"));
        page.text("A12", "Who wears the first?").text("A13", "Who wears the second?");
        page.look("A12:A13", CellStyleName.LABEL).look("B12:B13", CellStyleName.INPUT);
        page.text("B12", "snowman builder").text("B13", "in a hurry");
        page.text("A14", "worn").look("A14:C14", CellStyleName.HEAD);
        page.formula("B14", "=INDEX(wearers;1)&\"\"").formula("C14", "=INDEX(wearers;2)&\"\"");
        page.look("A" + FIRST_GARMENT + ":A" + last, CellStyleName.LABEL)
                .look("B" + FIRST_GARMENT + ":C" + last, CellStyleName.INPUT);
        for (int i = 0; i < GARMENTS; i++) {
            int row = FIRST_GARMENT + i;
            page.text("A" + row, PLACES.get(i)).text("B" + row, SNOWMAN.get(i)).text("C" + row, IN_A_HURRY.get(i));
        }
        page.text("A23", "Keeps in, clo").text("A24", "Warm enough?").look("A23:A24", CellStyleName.LABEL);
        page.look("B23:C23", CellStyleName.RESULT)
                .look("B24:C25", CellStyleName.MESSAGE)
                .numbers("B23:C23", "0.0");
        page.merge("A24:A25").merge("B24:B25").merge("C24:C25");
        page.formula("B23:C23", "=IFERROR(COLD.OUTFIT(garments_worn);\"choose garments\")");
        page.formula(
                "B24:C24",
                "=IF(ISTEXT(keeps_in);\"Every garment must be one of the list.\";IF(ISTEXT(needed);IF(chill<="
                        + FEELS_TOO_COLD
                        + ";\"No outfit keeps an adult warm in this for long: go in.\";\"It is not cold enough to"
                        + " ask.\");IF(keeps_in>=needed;\"Yes, for an adult. A child needs more.\";\"No:"
                        + " \"&FIXED(needed-keeps_in;1)&\" clo short. Add a layer, move more, or go in sooner.\")))");
        Highlight.when(page, "B24:C25", "LEFT(A$24;2)=\"No\"", CellStyleName.TROUBLE_MESSAGE);
    }

    private static void writeAnimals(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ANIMAL + ANIMALS - 1;
        page.look("E14:H14", CellStyleName.SECTION).text("E14", "3  Coats of animals, as published");
        page.look("E15:H15", CellStyleName.HEAD).text("E15", "animal").text("F15", "covering");
        page.text("G15", "mm thick").text("H15", "keeps in, clo");
        page.look("E" + FIRST_ANIMAL + ":G" + last, CellStyleName.INPUT);
        page.look("H" + FIRST_ANIMAL + ":H" + last, CellStyleName.RESULT)
                .numbers("H" + FIRST_ANIMAL + ":H" + last, "0.0");
        for (int i = 0; i < ANIMALS; i++) {
            int row = FIRST_ANIMAL + i;
            if (i < COATS.size()) {
                Animal animal = COATS.get(i);
                page.text("E" + row, animal.name()).text("F" + row, animal.covering());
                page.number("G" + row, animal.millimeters());
            }
            page.formula(
                    "H" + row,
                    "=IF(F" + row + "=\"\";\"\";IFERROR(COLD.ANIMAL(F" + row + ";G" + row
                            + ";\"typical\";\"clo\");\"look again\"))");
        }
    }

    private static void writeNotes(Page page) throws com.sun.star.uno.Exception {
        page.look("A26:C26", CellStyleName.SECTION).text("A26", "What to look for");
        page.merge("A27:C33").look("A27:C33", CellStyleName.NOTE);
        page.paragraphs(
                "A27",
                "What is a clo?",
                "The warmth of a suit indoors: 0.155 m²·K/W. It measures fur as well as coats.",
                "Why are animals ahead?",
                "The figure of an outfit is for a whole adult, bare face and gaps included; that of an animal is for"
                        + " the thickness of its covering alone, dry and in still air. Fur that is wet, or pressed flat,"
                        + " keeps in far less.",
                "How thick are coats?",
                "Those of reindeer and musk deer were measured (Blix and others 2015). Of fox and otter it is the"
                        + " length of the hair (Arctic Fox Center; Williams and others 1992): the coat itself is a little"
                        + " thinner. Add your own, such as down.");
    }

    private static void rule(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_GARMENT + GARMENTS - 1;
        int lastAnimal = FIRST_ANIMAL + ANIMALS - 1;
        InputRules.on(page)
                .only("B7", "scales", "Scale", "C for degrees Celsius and km/h, F for degrees Fahrenheit and mph.")
                .hint("B8", "Air", "The temperature outside, out of the sun.")
                .atLeast("B9", 0, "Wind", "Its speed as the weather report says: km/h, or mph with F.")
                .choice("B10", "activities", "What people do", "Choose from the list.")
                .name("B12:B13", "Outfit", "Who wears it.")
                .choice(
                        "B" + FIRST_GARMENT + ":C" + last,
                        "garments",
                        "Garment",
                        "Choose from the list, or type its usual name, such as hoodie.")
                .name("E" + FIRST_ANIMAL + ":E" + lastAnimal, "Animal", "Any animal.")
                .choice("F" + FIRST_ANIMAL + ":F" + lastAnimal, "coverings", "Covering", "Choose from the list.")
                .aboveZero(
                        "G" + FIRST_ANIMAL + ":G" + lastAnimal,
                        "Thickness",
                        "Millimeters, as thick as it is on the animal.");
    }
}
