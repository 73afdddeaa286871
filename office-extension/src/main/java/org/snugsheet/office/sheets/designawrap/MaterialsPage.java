package org.snugsheet.office.sheets.designawrap;

import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.words.Language;

/**
 * The lists that the cells of {@link DesignAWrap} are chosen from. The materials come from WRAP.MATERIALS itself: what can be
 * chosen is what the functions know, also in an extension that knows more materials than the one that built the sheet.
 */
final class MaterialsPage {

    static final int FIRST_ROW = 6;

    // The materials that a later extension may add before this list is too short.
    private static final int ROOM = 20;

    private MaterialsPage() {}

    static Page add(Book book) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page page = book.page(language.words(DesignBehindWords.MATERIALS_PAGE));
        page.width("A1", 46)
                .width("B1", 4)
                .width("C1", 34)
                .width("D1", 4)
                .width("E1", 20)
                .width("F1", 4);
        // The sources are long, and come last so that they may run on.
        page.width("G1", 40)
                .width("H1", 22)
                .width("I1:K1", 34)
                .width("L1:M1", 38)
                .width("N1", 110);
        page.text("A1", language.words(DesignBehindWords.MATERIALS_PAGE))
                .look("A1", CellStyleName.TITLE)
                .height("A1", 10);
        page.merge("A2:N2").look("A2:N2", CellStyleName.PURPOSE).height("A2", 7);
        page.text("A2", language.words(DesignBehindWords.MATERIALS_PURPOSE));
        page.merge("A3:N3").look("A3:N3", CellStyleName.CAUTION_LINE).height("A3", 7);
        page.text("A3", language.words(DesignBehindWords.ALLERGIES));
        page.look("A4", CellStyleName.SECTION).text("A4", language.words(DesignBehindWords.TO_CHOOSE_FROM));
        page.look("G4:N4", CellStyleName.SECTION).text("G4", language.words(DesignBehindWords.KNOWN));
        writeMaterials(page, language);
        writeWords(
                page,
                "C",
                language.words(DesignBehindWords.PLACES),
                language.words(DesignBehindWords.STILL_AIR),
                wind(book, "10 km/h", "5 mph"),
                wind(book, "20 km/h", "10 mph"),
                wind(book, "40 km/h", "25 mph"),
                language.words(DesignBehindWords.STILL_WATER),
                language.words(DesignBehindWords.STIRRED_WATER),
                language.words(DesignBehindWords.CONTACT));
        writeWords(page, "E", language.words(SharedWords.SCALES), "C", "F");
        int last = FIRST_ROW + Materials.all().size() + ROOM - 1;
        String list = "$'" + page.name() + "'.$A$" + FIRST_ROW;
        String all = list + ":$A$" + last;
        book.names()
                .computed("materials", "OFFSET(" + list + ";0;0;SUMPRODUCT(--(LEN(" + all + ")>0));1)")
                .fixed("places", page, "C" + FIRST_ROW + ":C" + (FIRST_ROW + 6))
                .fixed("scales", page, "E" + FIRST_ROW + ":E" + (FIRST_ROW + 1));
        new PrintSetup(PrintSetup.Way.PORTRAIT, language.words(DesignBehindWords.MATERIALS_PAGE)).applyUnprinted(page);
        return page;
    }

    private static void writeMaterials(Page page, Language language) throws com.sun.star.uno.Exception {
        int known = Materials.all().size();
        int head = FIRST_ROW - 1;
        page.look("A" + head, CellStyleName.HEAD).text("A" + head, language.words(DesignBehindWords.HOW_WET));
        page.look("G" + head + ":N" + head, CellStyleName.NARROW_HEAD).height("A" + head, 9.5);
        page.table("G" + head + ":N" + (head + known), "=WRAP.MATERIALS()");
        page.look("G" + FIRST_ROW + ":G" + (head + known), CellStyleName.LABEL);
        page.look("H" + FIRST_ROW + ":M" + (head + known), CellStyleName.RESULT);
        page.look("N" + FIRST_ROW + ":N" + (head + known), CellStyleName.HINT);
        page.look("A" + FIRST_ROW + ":A" + (head + known), CellStyleName.LABEL);
        // Asked of the first material, which is dry, for the word follows the language of the document.
        String dry = "$H$" + FIRST_ROW;
        // A text out of a function’s table equals no other text until "" is joined to it: hence the &"".
        for (int row = FIRST_ROW; row <= head + known + ROOM; row++) {
            String index = String.valueOf(row - head + 1);
            String name = row <= head + known ? "G" + row : "INDEX(WRAP.MATERIALS();" + index + ";1)";
            String condition = row <= head + known ? "H" + row : "INDEX(WRAP.MATERIALS();" + index + ";2)";
            page.formula(
                    "A" + row,
                    "=IFERROR(IF(" + condition + "&\"\"=" + dry + "&\"\";" + name + ";"
                            + FormulaText.sentence(language, DesignBehindWords.CONDITION_FIRST, condition, name)
                            + ");\"\")");
        }
    }

    private static String wind(Book book, String kilometers, String miles) {
        return book.language()
                .say(DesignBehindWords.WIND, book.setting().scale() == Scale.FAHRENHEIT ? miles : kilometers);
    }

    private static void writeWords(Page page, String column, String title, String... words)
            throws com.sun.star.uno.Exception {
        page.look(column + "4", CellStyleName.SECTION).text(column + "4", title);
        for (int i = 0; i < words.length; i++) {
            page.text(column + (FIRST_ROW + i), words[i]).look(column + (FIRST_ROW + i), CellStyleName.LABEL);
        }
    }
}
