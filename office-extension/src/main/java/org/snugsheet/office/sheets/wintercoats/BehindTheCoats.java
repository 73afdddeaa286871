package org.snugsheet.office.sheets.wintercoats;

import java.util.Arrays;
import java.util.List;
import org.snugsheet.engine.clothing.Activity;
import org.snugsheet.engine.clothing.Garments;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.BigBars;
import org.snugsheet.office.sheets.builder.Book;

/** The last page of {@link WinterCoats}: the lists to choose from, and what its chart draws. Nobody types here. */
public final class BehindTheCoats {

    public static final String NAME = "Lists";

    private static final int FIRST_ROW = 6;
    // What children wear outdoors, by the names that COLD.OUTFIT takes. Underwear is for nobody’s list in a classroom;
    // the
    // functions know it.
    public static final List<String> TO_CHOOSE_FROM = List.of(
            "T-shirt",
            "Long underwear top",
            "Long-sleeve flannel shirt",
            "hoodie",
            "Thin sweater",
            "Sweater",
            "Thick sweater",
            "fleece jacket",
            "Sleeveless vest (thick)",
            "thin jacket",
            "Coat",
            "padded jacket",
            "Down jacket",
            "Parka",
            "snowsuit",
            "Long underwear bottoms",
            "leggings",
            "jeans",
            "Thick trousers",
            "Sweatpants",
            "Overalls",
            "snow pants",
            "winter skirt",
            "Ankle socks",
            "Knee socks (thick)",
            "Thick ankle socks",
            "Thick long socks",
            "sneakers",
            "Shoes, thick soled",
            "Boots",
            "rubber boots",
            "Gloves",
            "mittens");

    // Room for garments of later versions.
    private static final int ROOM = 20;

    private BehindTheCoats() {}

    static Page add(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
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
        page.text("A1", "Lists").look("A1", CellStyleName.TITLE).height("A1", 10);
        page.merge("A2:L2").look("A2:L2", CellStyleName.PURPOSE).height("A2", 7);
        page.text("A2", "Nothing to type here: the lists to choose from, and the values of the chart.");
        writeGarments(book, page);
        list(book, page, "E", "Activities", "activities", activities());
        list(book, page, "G", "Coverings", "coverings", List.of("fur", "wool", "down", "feathers", "blubber"));
        list(book, page, "I", "Scales", "scales", List.of("C", "F"));
        writeChill(book, page);
        writeBars(page);
        new PrintSetup(PrintSetup.Way.PORTRAIT, "Lists of winter coats").applyUnprinted(page);
        return page;
    }

    private static List<String> activities() {
        return Arrays.stream(Activity.Usual.values())
                .map(Activity.Usual::english)
                .toList();
    }

    private static void writeGarments(Book book, Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_ROW + Garments.all().size() + ROOM - 1;
        page.look("A4:C4", CellStyleName.SECTION).text("A4", "What COLD.GARMENTS knows");
        page.look("A5:C5", CellStyleName.HEAD).look("A" + FIRST_ROW + ":A" + last, CellStyleName.LABEL);
        page.look("B" + FIRST_ROW + ":B" + last, CellStyleName.RESULT)
                .look("C" + FIRST_ROW + ":C" + last, CellStyleName.HINT);
        page.growingTable("A5:C" + last, "COLD.GARMENTS()");
        list(book, page, "N", "To choose from", "garments", TO_CHOOSE_FROM);
    }

    private static void writeChill(Book book, Page page) throws com.sun.star.uno.Exception {
        page.look("K17", CellStyleName.LABEL)
                .text("K17", "what it feels like, °C")
                .look("L17", CellStyleName.RESULT)
                .numbers("L17", "0.0");
        String celsius =
                "IF(scale=\"F\";TEMP.CONVERT(COLD.WINDCHILL(air;wind;scale);\"F\";\"C\");COLD.WINDCHILL(air;wind;scale))";
        // In calm air it is as cold as it is.
        page.formula(
                "L17",
                "=IFERROR(" + celsius + ";IFERROR(TEMP.CONVERT(TEMP.READ(air;scale);scale;\"C\");\"none told\"))");
        book.names().fixed("chill", page, "L17");
    }

    private static void list(Book book, Page page, String column, String title, String name, List<String> words)
            throws com.sun.star.uno.Exception {
        page.look(column + "4", CellStyleName.SECTION).text(column + "4", title);
        for (int i = 0; i < words.size(); i++) {
            page.text(column + (FIRST_ROW + i), words.get(i)).look(column + (FIRST_ROW + i), CellStyleName.LABEL);
        }
        book.names().fixed(name, page, column + FIRST_ROW + ":" + column + (FIRST_ROW + words.size() - 1));
    }

    // A zero shows no bar and no number; a text in its place would be taken for a heading.
    private static void writeBars(Page page) throws com.sun.star.uno.Exception {
        page.look("K4:L4", CellStyleName.SECTION).text("K4", "What the chart draws");
        page.look("K5:L5", CellStyleName.HEAD).text("K5", "coat").text("L5", "clo");
        String first = "$" + WinterCoats.PAGE + ".";
        page.text("K6", "needed").formula("L6", "=IF(ISNUMBER(needed);needed;0)");
        for (int i = 0; i < 2; i++) {
            String column = i == 0 ? "B" : "C";
            page.formula("K" + (7 + i), "=INDEX(wearers;" + (i + 1) + ")&\"\"");
            page.formula("L" + (7 + i), numberOrZero(first + column + "23"));
        }
        for (int i = 0; i < WinterCoats.ANIMALS; i++) {
            page.formula("K" + (9 + i), "=INDEX(animals;" + (i + 1) + ";1)&\"\"");
            page.formula("L" + (9 + i), numberOrZero(first + "H" + (16 + i)));
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
        return 8 + WinterCoats.ANIMALS;
    }

    static BigBars bars(Page behind) {
        return new BigBars(
                "Outfits and animals",
                "clo",
                "One horizontal bar for what the cold asks for, for each outfit, and for each animal: how well it keeps"
                        + " warmth in, in clo. The longer the bar, the warmer the coat. The values are on"
                        + " the page " + NAME + ".",
                10,
                new Plot.Cells(behind, "K5:L" + lastBar()));
    }
}
