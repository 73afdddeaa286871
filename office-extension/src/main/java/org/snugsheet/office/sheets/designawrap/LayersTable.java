package org.snugsheet.office.sheets.designawrap;

import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.FormulaText;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.OrDash;
import org.snugsheet.office.words.Language;

/**
 * The layers in {@link DesignAWrap}: the way out of the jar through its side, one row for each film and layer, with what it
 * adds and the temperatures on both of its sides. Lid and base are below, for they lie flat and are separate ways out.
 */
final class LayersTable {

    /** A layer that the sheet begins with. */
    record Chosen(String material, double millimeters) {}

    /** The first is the jar’s own wall. */
    static final List<Chosen> LAYERS = List.of(
            new Chosen("glass", 3),
            new Chosen("wool", 3),
            new Chosen("newspaper", 3.3),
            new Chosen("small bubble wrap", 5));

    static final Chosen LID = new Chosen("felt", 6);
    static final Chosen BASE = new Chosen("corrugated cardboard", 8);

    /** The rows of the layers on the page. */
    static final int FIRST_ROW = 19;

    static final int LAST_ROW = 24;
    private static final int LID_ROW = 27;
    private static final int BASE_ROW = 28;

    private LayersTable() {}

    static void write(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("A16:H16", CellStyleName.SECTION).text("A16", language.words(DesignWords.WRAP));
        page.look("A17:H17", CellStyleName.HEAD).wrapped("A17:H17");
        page.text("A17", language.words(DesignWords.FROM_INSIDE))
                .text("B17", language.words(DesignWords.MATERIAL))
                .text("C17", language.words(DesignWords.THICKNESS));
        page.text("D17", language.words(DesignWords.USUAL)).text("E17", language.words(DesignWords.R_VALUE));
        page.formula("F17", Degrees.label(language, DesignWords.INSIDE))
                .formula("G17", Degrees.label(language, DesignWords.OUTSIDE));
        page.text("H17", language.words(DesignWords.SHARE));
        page.look("A18:A28", CellStyleName.LABEL).look("B18:H28", CellStyleName.RESULT);
        page.look("B19:C24", CellStyleName.INPUT).look("B27:C28", CellStyleName.INPUT);
        // Some materials have long names, and any of them can be chosen.
        page.shrunk("B19:B24").shrunk("B27:B28");
        page.numbers("E18:E28", "0.000").numbers("F18:G26", "0.0").numbers("H18:H26", "0 %");

        page.text("A18", language.words(DesignWords.FILM_WATER));
        film(page, 18, "2");
        for (int row = FIRST_ROW; row <= LAST_ROW; row++) {
            int number = row - FIRST_ROW + 1;
            page.text(
                    "A" + row,
                    number == 1 ? language.words(DesignWords.WALL_LAYER) : language.say(DesignWords.LAYER, number));
            layer(page, row);
            if (number <= LAYERS.size()) {
                type(page, language, row, LAYERS.get(number - 1));
            }
        }
        page.text("A25", language.words(DesignWords.FILM_OUTSIDE));
        film(page, 25, "used+2");
        // A table without an answer adds up to no answer, not to zero.
        page.text("A26", language.words(DesignWords.SIDE))
                .formula("E26", "=IF(ISNUMBER(E18);SUM(E18:E25);E18)")
                .formula("H26", "=IF(ISNUMBER(H18);SUM(H18:H25);H18)");
        page.formula("F26", "=F18").formula("G26", "=G25");
        cover(page, language, LID_ROW, DesignWords.LID, "lid", LID);
        cover(page, language, BASE_ROW, DesignWords.BASE, "base", BASE);
        writeMessage(page, language);
    }

    private static void type(Page page, Language language, int row, Chosen chosen) throws com.sun.star.uno.Exception {
        page.text("B" + row, Materials.nameIn(Materials.find(chosen.material()), language.locale()))
                .number("C" + row, chosen.millimeters());
    }

    private static void film(Page page, int row, String ofTable) throws com.sun.star.uno.Exception {
        // The table begins under its heading: the first row is the film of water.
        String index = ofTable.equals("2") ? "1" : ofTable;
        for (int column = 2; column <= 4; column++) {
            page.formula(
                    (char) ('E' + column - 2) + "" + row, OrDash.of("INDEX(between;" + index + ";" + column + ")"));
        }
        page.formula("H" + row, OrDash.of("E" + row + "/side_r"));
    }

    private static void layer(Page page, int row) throws com.sun.star.uno.Exception {
        page.formula("D" + row, usual("$B" + row));
        String above = "SUMPRODUCT((ROW(layers)<=" + row + ")*(LEN(layers)+LEN(thicknesses)>0))";
        for (int column = 2; column <= 4; column++) {
            page.formula(
                    (char) ('E' + column - 2) + "" + row,
                    OrDash.of("IF(" + blank(row) + ";\"\";INDEX(between;" + above + "+1;" + column + "))"));
        }
        page.formula("H" + row, OrDash.of("IF(" + blank(row) + ";\"\";E" + row + "/side_r)"));
    }

    private static void cover(Page page, Language language, int row, Phrase label, String name, Chosen chosen)
            throws com.sun.star.uno.Exception {
        page.text("A" + row, language.words(label));
        type(page, language, row, chosen);
        page.formula("D" + row, usual(name));
        page.formula("E" + row, OrDash.of(name + "_r"));
        page.look("F" + row + ":H" + row, CellStyleName.HINT).text("F" + row, language.words(DesignWords.LEFT_BARE));
    }

    /** Blank, too, where no layer of the material is usual. */
    private static String usual(String material) {
        return "=IF(LEN(" + material + ")=0;\"\";IFERROR(WRAP.USUAL(" + material + ");\"\"))";
    }

    /** Whether nothing is named for the lid, or for the base. */
    static String bare(String cover) {
        return "LEN(" + cover + ")+LEN(" + cover + "_mm)=0";
    }

    static String blank(int row) {
        return "LEN($B" + row + ")+LEN($C" + row + ")=0";
    }

    private static void writeMessage(Page page, Language language) throws com.sun.star.uno.Exception {
        page.merge("A29:H29").look("A29:H29", CellStyleName.MESSAGE);
        page.formula(
                "A29",
                "=IF(check_layers<>\"OK\";check_layers;IF(check_lid<>\"OK\";"
                        + FormulaText.sentence(language, DesignWords.LID_SAYS, "check_lid")
                        + ";IF(check_base<>\"OK\";"
                        + FormulaText.sentence(language, DesignWords.BASE_SAYS, "check_base")
                        + ";IF(ISERROR(halfway);" + FormulaText.quoted(language, DesignWords.JAR_UNUSABLE) + ";"
                        + FormulaText.quoted(language, DesignWords.LAYERS_OK) + "))))");
        Highlight.when(
                page,
                "A29:H29",
                "OR(check_layers<>\"OK\";check_lid<>\"OK\";check_base<>\"OK\";ISERROR(halfway))",
                CellStyleName.TROUBLE_MESSAGE);
    }
}
