package org.snugsheet.office.sheets.wintercoats;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.NamedRanges;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.ExampleThermometer;
import org.snugsheet.office.sheets.shared.Invented;
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;
import org.snugsheet.office.words.Language;

/**
 * Winter coats: how cold the wind makes it feel, whether an outfit is enough, and how the coats of animals compare with it.
 *
 * <p>Clothing is described for adults, as the standards do; children lose heat faster, and the sheet says so beside the numbers.
 *
 * @see BehindTheCoats
 */
public final class WinterCoats implements WorkedSheet {

    static final int GARMENTS = 8;

    /** Where COLD.NEEDED has no answer, it is too cold from here on; milder than this, too warm: shoveling makes that much heat. */
    private static final int FEELS_TOO_COLD = -5;

    private static final int FIRST_GARMENT = 15;

    private static final List<Phrase> PLACES = List.of(
            CoatsWords.SKIN,
            CoatsWords.OVER,
            CoatsWords.OUTERMOST,
            CoatsWords.LEGS_SKIN,
            CoatsWords.LEGS_OUTERMOST,
            CoatsWords.FEET,
            CoatsWords.SHOES,
            CoatsWords.HANDS);

    private static final List<Phrase> SNOWMAN = List.of(
            GarmentWords.UNDER_TOP,
            GarmentWords.THICK_SWEATER,
            GarmentWords.PARKA,
            GarmentWords.UNDER_BOTTOMS,
            GarmentWords.SNOW_PANTS,
            GarmentWords.THICK_LONG_SOCKS,
            GarmentWords.BOOTS,
            GarmentWords.GLOVES);
    // Who is in a hurry wears nothing below the pants.
    private static final int LEFT_OUT = 3;
    private static final List<Phrase> IN_A_HURRY = List.of(
            GarmentWords.T_SHIRT,
            GarmentWords.HOODIE,
            GarmentWords.COAT,
            GarmentWords.UNDER_BOTTOMS,
            GarmentWords.THICK_PANTS,
            GarmentWords.ANKLE_SOCKS,
            GarmentWords.BOOTS,
            GarmentWords.GLOVES);

    private static final double AIR = -6;
    private static final double KILOMETERS_PER_HOUR = 15;
    private static final double MILES_PER_HOUR = 10;

    @Override
    public String fileName() {
        return "winter-coats";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.COATS;
    }

    @Override
    public Set<Language> languages() {
        return EnumSet.allOf(Language.class);
    }

    @Override
    public String results() {
        return CoatsWords.PAGE.english() + ".A23:C24";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page page = book.page(language.words(CoatsWords.PAGE));
        defineNames(book.names(), page);
        setSizes(page);
        new Top(
                        language,
                        language.words(CoatsWords.TITLE),
                        language.words(CoatsWords.PURPOSE),
                        language.words(CoatsWords.CAUTION))
                .write(page, "H");
        writeWeather(page, book);
        writeOutfits(page, language);
        AnimalCoats.write(page, language);
        writeNotes(page, language);
        rule(page, language);
        Page behind = BehindTheCoats.add(book, page);
        int lastGarment = FIRST_GARMENT + GARMENTS - 1;
        Invented.keep(book, behind, "P4", page, "B8:B9", "B" + FIRST_GARMENT + ":C" + lastGarment);
        behind.protect();
        // The office takes a row that is not worked out yet for a heading.
        book.calculate();
        BehindTheCoats.bars(behind, language).draw(page, "coats_compared", "E23:H33");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(CoatsWords.TITLE)).apply(page, "A1:H33");
        page.protect();
        book.describe(
                language.words(CoatsWords.TITLE),
                language.words(CoatsWords.SUBJECT),
                language.words(CoatsWords.DESCRIPTION),
                language.words(CoatsWords.KEYWORD),
                language.words(CoatsWords.GARMENT_TITLE));
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
                .fixed("animals", page, "E" + AnimalCoats.FIRST + ":G" + (AnimalCoats.FIRST + AnimalCoats.ROOM - 1))
                .fixed("needed", page, "H12");
    }

    private static void setSizes(Page page) throws com.sun.star.uno.Exception {
        page.width("A1", 44).width("B1:C1", 56).width("D1", 4);
        page.width("E1", 44).width("F1", 30).width("G1", 22).width("H1", 26);
        page.height("A6:A33", 6.2).height("A11", 8).height("A14", 7);
        page.height("A25", 12);
    }

    private static void writeWeather(Page page, Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        ExampleThermometer thermometer = new ExampleThermometer(book.setting().scale(), 1);
        page.look("A6:C6", CellStyleName.SECTION).formula("A6", Invented.heading(language, CoatsWords.WEATHER));
        page.look("A7:A10", CellStyleName.LABEL)
                .look("B7:B10", CellStyleName.INPUT)
                .look("C7:C10", CellStyleName.HINT);
        page.text("A7", language.words(CoatsWords.SCALE)).text("B7", thermometer.letter());
        page.text("C7", language.words(CoatsWords.SCALE_BESIDE));
        page.formula("A8", Degrees.label(language, CoatsWords.AIR)).number("B8", thermometer.typed(AIR));
        page.text("C8", language.words(CoatsWords.AIR_BESIDE));
        page.formula(
                "A9",
                "="
                        + FormulaText.sentence(
                                language, CoatsWords.WIND, "IF(" + Degrees.IS_FAHRENHEIT + ";\"mph\";\"km/h\")"));
        page.number("B9", book.setting().scale() == Scale.FAHRENHEIT ? MILES_PER_HOUR : KILOMETERS_PER_HOUR);
        page.text("C9", language.words(CoatsWords.WIND_BESIDE));
        page.text("A10", language.words(CoatsWords.DOING)).text("B10", language.words(CoatsWords.PLAYING));
        page.text("C10", language.words(CoatsWords.CHOOSE_BESIDE));
        page.text("E12", language.words(CoatsWords.NEEDED)).merge("E12:G12").look("E12:G12", CellStyleName.LABEL);
        page.look("H12", CellStyleName.RESULT).numbers("H12", "0.0");
        page.formula(
                "H12",
                "=IFERROR(COLD.NEEDED(air;activity;wind;scale);" + FormulaText.quoted(language, CoatsWords.NONE) + ")");
        page.text("E13", language.words(CoatsWords.ONE_CLO)).look("E13:H13", CellStyleName.HINT);
        page.look("E6:H6", CellStyleName.SECTION).text("E6", language.words(CoatsWords.FEEL));
        page.merge("E7:H8").look("E7:H8", CellStyleName.SENTENCE);
        page.formula(
                "E7",
                "=IFERROR("
                        + FormulaText.sentence(
                                language,
                                CoatsWords.FEELS_LIKE,
                                "ROUND(COLD.WINDCHILL(air;wind;scale);0)&" + Degrees.UNIT)
                        + ";" + FormulaText.quoted(language, CoatsWords.NO_CHILL) + ")");
        page.merge("E9:H11").look("E9:H11", CellStyleName.MESSAGE);
        page.formula(
                "E9",
                "=IFERROR(COLD.FROSTBITE(air;wind;scale);" + FormulaText.quoted(language, CoatsWords.TYPE_NUMBERS)
                        + ")");
        // From −18 °C on children’s skin is at risk; see the engine’s Frostbite. Not asked by its words: they follow
        // the
        // language of the document.
        Highlight.when(page, "E9:H11", "ROUND(chill;0)<=-18", CellStyleName.TROUBLE_MESSAGE);
    }

    private static void writeOutfits(Page page, Language language) throws com.sun.star.uno.Exception {
        int last = FIRST_GARMENT + GARMENTS - 1;
        page.look("A11:C11", CellStyleName.SECTION).formula("A11", Invented.heading(language, CoatsWords.OUTFITS));
        page.text("A12", language.words(CoatsWords.FIRST)).text("A13", language.words(CoatsWords.SECOND));
        page.look("A12:A13", CellStyleName.LABEL).look("B12:B13", CellStyleName.INPUT);
        page.text("B12", language.words(CoatsWords.SNOWMAN)).text("B13", language.words(CoatsWords.IN_A_HURRY));
        page.text("A14", language.words(CoatsWords.WORN)).look("A14:C14", CellStyleName.HEAD);
        page.formula("B14", "=INDEX(wearers;1)&\"\"").formula("C14", "=INDEX(wearers;2)&\"\"");
        page.look("A" + FIRST_GARMENT + ":A" + last, CellStyleName.LABEL)
                .look("B" + FIRST_GARMENT + ":C" + last, CellStyleName.INPUT);
        for (int i = 0; i < GARMENTS; i++) {
            int row = FIRST_GARMENT + i;
            page.text("A" + row, language.words(PLACES.get(i))).text("B" + row, language.words(SNOWMAN.get(i)));
            if (i != LEFT_OUT) {
                page.text("C" + row, language.words(IN_A_HURRY.get(i)));
            }
        }
        page.text("A23", language.words(CoatsWords.KEEPS_IN))
                .text("A24", language.words(CoatsWords.ENOUGH))
                .look("A23:A24", CellStyleName.LABEL);
        page.look("B23:C23", CellStyleName.RESULT)
                .look("B24:C25", CellStyleName.MESSAGE)
                .numbers("B23:C23", "0.0");
        page.merge("A24:A25").merge("B24:B25").merge("C24:C25");
        page.formula(
                "B23:C23",
                "=IFERROR(COLD.OUTFIT(garments_worn);" + FormulaText.quoted(language, CoatsWords.CHOOSE_GARMENTS)
                        + ")");
        page.formula(
                "B24:C24",
                "=IF(ISTEXT(keeps_in);" + FormulaText.quoted(language, CoatsWords.NOT_IN_LIST)
                        + ";IF(ISTEXT(needed);IF(chill<=" + FEELS_TOO_COLD + ";"
                        + FormulaText.quoted(language, CoatsWords.NO_OUTFIT) + ";"
                        + FormulaText.quoted(language, CoatsWords.NOT_COLD) + ");IF(keeps_in>=needed;"
                        + FormulaText.quoted(language, CoatsWords.YES) + ";"
                        + FormulaText.sentence(language, CoatsWords.SHORT, "FIXED(needed-keeps_in;1)") + ")))");
        Highlight.when(
                page,
                "B24:C25",
                "IF(ISNUMBER(A$23);IF(ISTEXT(needed);chill<=" + FEELS_TOO_COLD + ";A$23<needed);FALSE())",
                CellStyleName.TROUBLE_MESSAGE);
    }

    private static void writeNotes(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("A26:C26", CellStyleName.SECTION).text("A26", language.words(CoatsWords.LOOK_FOR));
        page.merge("A27:C33").look("A27:C33", CellStyleName.NOTE);
        page.paragraphs(
                "A27",
                language.words(CoatsWords.CLO),
                language.words(CoatsWords.CLO_TEXT),
                language.words(CoatsWords.AHEAD),
                language.words(CoatsWords.AHEAD_TEXT),
                language.words(CoatsWords.THICK),
                language.words(CoatsWords.THICK_TEXT));
    }

    private static void rule(Page page, Language language) throws com.sun.star.uno.Exception {
        int last = FIRST_GARMENT + GARMENTS - 1;
        int lastAnimal = AnimalCoats.FIRST + AnimalCoats.ROOM - 1;
        InputRules.on(page)
                .only("B7", "scales", language.words(SharedWords.SCALE), language.words(CoatsWords.SCALE_HINT))
                .hint("B8", language.words(CoatsWords.AIR_TITLE), language.words(CoatsWords.AIR_HINT))
                .atLeast("B9", 0, language.words(CoatsWords.WIND_TITLE), language.words(CoatsWords.WIND_HINT))
                .choice("B10", "activities", language.words(CoatsWords.DOING), language.words(CoatsWords.CHOOSE_HINT))
                .name("B12:B13", language.words(CoatsWords.OUTFIT_TITLE), language.words(CoatsWords.OUTFIT_HINT))
                .choice(
                        "B" + FIRST_GARMENT + ":C" + last,
                        "garments",
                        language.words(CoatsWords.GARMENT_TITLE),
                        language.words(CoatsWords.GARMENT_HINT))
                .name(
                        "E" + AnimalCoats.FIRST + ":E" + lastAnimal,
                        language.words(CoatsWords.ANIMAL),
                        language.words(CoatsWords.ANIMAL_HINT))
                .choice(
                        "F" + AnimalCoats.FIRST + ":F" + lastAnimal,
                        "coverings",
                        language.words(CoatsWords.COVERING),
                        language.words(CoatsWords.CHOOSE_HINT))
                .aboveZero(
                        "G" + AnimalCoats.FIRST + ":G" + lastAnimal,
                        language.words(CoatsWords.THICKNESS_TITLE),
                        language.words(CoatsWords.THICKNESS_HINT));
    }
}
