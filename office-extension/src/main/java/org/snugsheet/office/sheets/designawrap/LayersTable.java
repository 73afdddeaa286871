package org.snugsheet.office.sheets.designawrap;

import java.util.List;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.OrDash;

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

    static void write(Page page) throws com.sun.star.uno.Exception {
        page.look("A16:H16", CellStyleName.SECTION)
                .text("A16", "2  The wrap: the way out through the side, and lid and base");
        page.look("A17:H17", CellStyleName.HEAD).wrapped("A17:H17");
        page.text("A17", "from inside to outside").text("B17", "material").text("C17", "thickness, mm");
        page.text("D17", "usual layer, mm").text("E17", "R-value, m²·K/W");
        page.formula("F17", Degrees.label("inside, ")).formula("G17", Degrees.label("outside, "));
        page.text("H17", "share of R");
        page.look("A18:A28", CellStyleName.LABEL).look("B18:H28", CellStyleName.RESULT);
        page.look("B19:C24", CellStyleName.INPUT).look("B27:C28", CellStyleName.INPUT);
        page.numbers("E18:E28", "0.000").numbers("F18:G26", "0.0").numbers("H18:H26", "0 %");

        page.text("A18", "film of water on the inside");
        film(page, 18, "2");
        for (int row = FIRST_ROW; row <= LAST_ROW; row++) {
            int number = row - FIRST_ROW + 1;
            page.text("A" + row, "layer " + number + (number == 1 ? ": the jar’s own wall" : ""));
            layer(page, row);
            if (number <= LAYERS.size()) {
                type(page, row, LAYERS.get(number - 1));
            }
        }
        page.text("A25", "film on the outside");
        film(page, 25, "used+2");
        // A table without an answer adds up to no answer, not to zero.
        page.text("A26", "side, all together")
                .formula("E26", "=IF(ISNUMBER(E18);SUM(E18:E25);E18)")
                .formula("H26", "=IF(ISNUMBER(H18);SUM(H18:H25);H18)");
        page.formula("F26", "=F18").formula("G26", "=G25");
        cover(page, LID_ROW, "over the lid", "lid", LID);
        cover(page, BASE_ROW, "under the base", "base", BASE);
        writeMessage(page);
    }

    private static void type(Page page, int row, Chosen chosen) throws com.sun.star.uno.Exception {
        page.text("B" + row, chosen.material()).number("C" + row, chosen.millimeters());
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

    private static void cover(Page page, int row, String label, String name, Chosen chosen)
            throws com.sun.star.uno.Exception {
        page.text("A" + row, label);
        type(page, row, chosen);
        page.formula("D" + row, usual(name));
        page.formula("E" + row, OrDash.of(name + "_r"));
        page.look("F" + row + ":H" + row, CellStyleName.HINT).text("F" + row, "blank: left bare");
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

    private static void writeMessage(Page page) throws com.sun.star.uno.Exception {
        page.merge("A29:H29").look("A29:H29", CellStyleName.MESSAGE);
        page.formula(
                "A29",
                "=IF(check_layers<>\"OK\";check_layers;IF(check_lid<>\"OK\";\"Lid:"
                        + " \"&check_lid;IF(check_base<>\"OK\";\"Base: \"&check_base;IF(ISERROR(halfway);\"The layers can"
                        + " be used, but not the jar or its place above. Water and surroundings must differ, and volume"
                        + " and radius be above zero.\";\"OK: these layers can be used. A layer that is left blank is left"
                        + " out.\"))))");
        Highlight.when(page, "A29:H29", "LEFT($A$29;3)<>\"OK:\"", CellStyleName.TROUBLE_MESSAGE);
    }
}
