package org.snugsheet.office.sheets.wintercoats;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.clothing.Covering;
import org.snugsheet.engine.clothing.Garments;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.BigBars;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.words.Language;

/** The last page of {@link WinterCoats}: the lists to choose from, and what its chart draws. Nobody types here. */
public final class BehindTheCoats {

    private static final int FIRST_ROW = 6;
    /** By the words that COLD.NEEDED takes. */
    private static final List<Phrase> ACTIVITIES = List.of(
            CoatsWords.SITTING,
            CoatsWords.STANDING,
            CoatsWords.WALKING_ABOUT,
            CoatsWords.WALKING_SLOWLY,
            CoatsWords.WALKING,
            CoatsWords.WALKING_FAST,
            CoatsWords.PLAYING,
            CoatsWords.SHOVELING);

    // Room for garments of later versions.
    private static final int ROOM = 20;

    private BehindTheCoats() {}

    /**
     * The name on its tab.
     *
     * @param language the language
     * @return the name
     */
    public static String name(Language language) {
        return language.words(CoatsWords.LISTS_PAGE);
    }

    static Page add(Book book, Page coats) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page page = book.page(name(language));
        page.width("A1", 76)
                .width("B1", 18)
                .width("C1", 110)
                .width("D1", 4)
                .width("E1", 44)
                .width("F1", 4);
        page.width("G1", 26)
                .width("H1", 4)
                .width("I1", 16)
                .width("J1", 4)
                .width("K1", 50)
                .width("L1", 30)
                .width("M1", 4)
                .width("N1", 44)
                .width("O1", 4)
                .width("P1:Z1", 24);
        page.text("A1", name(language)).look("A1", CellStyleName.TITLE).height("A1", 10);
        page.merge("A2:L2").look("A2:L2", CellStyleName.PURPOSE).height("A2", 7);
        page.text("A2", language.words(CoatsWords.LISTS_PURPOSE));
        writeGarments(book, page);
        list(book, page, "E", CoatsWords.ACTIVITIES, "activities", words(ACTIVITIES, language));
        list(book, page, "G", CoatsWords.COVERINGS, "coverings", coverings(language));
        list(book, page, "I", SharedWords.SCALES, "scales", List.of("C", "F"));
        writeChill(book, page);
        writeBars(page, coats, language);
        new PrintSetup(PrintSetup.Way.PORTRAIT, language.words(CoatsWords.LISTS_FOOT)).applyUnprinted(page);
        return page;
    }

    /** What covers an animal, as the functions call it in a language. */
    static String covering(String english, Language language) {
        return Materials.nameIn(Covering.find(english).material(), language.locale());
    }

    private static List<String> coverings(Language language) {
        return Covering.all().stream()
                .map(covering -> Materials.nameIn(covering.material(), language.locale()))
                .toList();
    }

    private static List<String> words(List<? extends Phrase> phrases, Language language) {
        return phrases.stream().map(language::words).toList();
    }

    private static void writeGarments(Book book, Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + Garments.all().size() + ROOM - 1;
        page.look("A4:C4", CellStyleName.SECTION).text("A4", book.language().words(CoatsWords.KNOWN));
        page.look("A5:C5", CellStyleName.HEAD).look("A" + FIRST_ROW + ":A" + last, CellStyleName.LABEL);
        page.look("B" + FIRST_ROW + ":B" + last, CellStyleName.RESULT)
                .look("C" + FIRST_ROW + ":C" + last, CellStyleName.HINT);
        page.growingTable("A5:C" + last, "COLD.GARMENTS()");
        list(
                book,
                page,
                "N",
                CoatsWords.TO_CHOOSE_FROM,
                "garments",
                words(List.of(GarmentWords.values()), book.language()));
    }

    private static void writeChill(Book book, Page page) throws com.sun.star.uno.Exception {
        page.look("K17", CellStyleName.LABEL)
                .text("K17", book.language().words(CoatsWords.CHILL))
                .look("L17", CellStyleName.RESULT)
                .numbers("L17", "0.0");
        String celsius =
                "IF(UPPER(scale)=\"F\";TEMP.CONVERT(COLD.WINDCHILL(air;wind;scale);\"F\";\"C\");COLD.WINDCHILL(air;wind;scale))";
        // In calm air it is as cold as it is.
        page.formula(
                "L17",
                "=IFERROR(" + celsius + ";IFERROR(TEMP.CONVERT(TEMP.READ(air;scale);scale;\"C\");"
                        + FormulaText.quoted(book.language(), CoatsWords.NONE) + "))");
        book.names().fixed("chill", page, "L17");
    }

    private static void list(Book book, Page page, String column, Phrase title, String name, List<String> words)
            throws com.sun.star.uno.Exception {
        page.look(column + "4", CellStyleName.SECTION)
                .text(column + "4", book.language().words(title));
        for (int i = 0; i < words.size(); i++) {
            page.text(column + (FIRST_ROW + i), words.get(i)).look(column + (FIRST_ROW + i), CellStyleName.LABEL);
        }
        book.names().fixed(name, page, column + FIRST_ROW + ":" + column + (FIRST_ROW + words.size() - 1));
    }

    // A zero shows no bar and no number; a text in its place would be taken for a heading.
    private static void writeBars(Page page, Page coats, Language language) throws com.sun.star.uno.Exception {
        page.look("K4:L4", CellStyleName.SECTION).text("K4", language.words(CoatsWords.DRAWN));
        page.look("K5:L5", CellStyleName.HEAD)
                .text("K5", language.words(CoatsWords.COAT))
                .text("L5", "clo");
        String first = "$'" + coats.name() + "'.";
        page.text("K6", language.words(CoatsWords.NEEDED_BAR)).formula("L6", "=IF(ISNUMBER(needed);needed;0)");
        for (int i = 0; i < 2; i++) {
            String column = i == 0 ? "B" : "C";
            page.formula("K" + (7 + i), "=INDEX(wearers;" + (i + 1) + ")&\"\"");
            page.formula("L" + (7 + i), numberOrZero(first + column + "23"));
        }
        for (int i = 0; i < AnimalCoats.ROOM; i++) {
            page.formula("K" + (9 + i), "=INDEX(animals;" + (i + 1) + ";1)&\"\"");
            page.formula("L" + (9 + i), numberOrZero(first + "H" + (AnimalCoats.FIRST + i)));
        }
        int last = lastBar();
        page.look("K6:K" + last, CellStyleName.LABEL)
                .look("L6:L" + last, CellStyleName.RESULT)
                .numbers("L6:L" + last, "0.0;;");
    }

    private static String numberOrZero(String cell) {
        return "=IF(ISNUMBER(" + cell + ");" + cell + ";0)";
    }

    private static int lastBar() {
        return 8 + AnimalCoats.ROOM;
    }

    static BigBars bars(Page behind, Language language) {
        return new BigBars(
                language.words(CoatsWords.CHART),
                "clo",
                language.say(CoatsWords.CHART_WORDS, behind.name()),
                10,
                new Plot.Cells(behind, "K5:L" + lastBar()));
    }
}
