package org.snugsheet.office.sheets.designawrap;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.ScatterChart;
import org.snugsheet.office.page.SeriesColor;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.StackedBar;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.OrDash;
import org.snugsheet.office.sheets.shared.SafeWater;
import org.snugsheet.office.words.Language;

/** The page of {@link DesignAWrap} with what its charts draw and its sums between. Nobody types here. */
final class BehindTheDesign {

    private static final int FIRST_STEP_ROW = 6;
    private static final int STEPS = 30;
    private static final int LAST_STEP_ROW = FIRST_STEP_ROW + STEPS;
    private static final int LAST_READING_ROW = FIRST_STEP_ROW + DesignAWrap.MINUTES.size() - 1;

    /** Of a film, every layer, and a film. */
    private static final int WAYS = LayersTable.LAST_ROW - LayersTable.FIRST_ROW + 3;

    private static final String BEFORE_WARM = "volume;radius;thicknesses;layers;";
    private static final String BEFORE_WARM_BARE = "volume;radius;wall_mm;wall;";
    private static final String AFTER_WARM = ";cold;place;lid_r;base_r;";

    private BehindTheDesign() {}

    static Page add(Book book, Page design) throws com.sun.star.uno.Exception {
        Language language = book.language();
        Page page = book.page(language.words(DesignBehindWords.CURVES_PAGE));
        page.width("A1:C1", 24)
                .width("D1", 5)
                .width("E1:G1", 28)
                .width("H1", 20)
                .width("I1", 64);
        page.width("J1:M1", 28);
        page.text("A1", language.words(DesignBehindWords.CURVES_TITLE))
                .look("A1", CellStyleName.TITLE)
                .height("A1", 10);
        page.merge("A2:M2").look("A2:M2", CellStyleName.PURPOSE).height("A2", 7);
        page.text("A2", language.words(DesignBehindWords.CURVES_PURPOSE));
        writeWorkings(book, page);
        writeWayOut(book, page);
        writeCurves(page, language);
        writePoints(page, language);
        writeSurroundings(book, page);
        writeBars(page, design, language);
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(DesignBehindWords.CURVES_FOOT)).applyUnprinted(page);
        return page;
    }

    private static void writeWorkings(Book book, Page page) throws com.sun.star.uno.Exception {
        Language language = book.language();
        page.look("I16:J16", CellStyleName.SECTION).text("I16", language.words(DesignBehindWords.SUMS));
        page.look("I17:I29", CellStyleName.LABEL).look("J17:J29", CellStyleName.RESULT);
        // VesselMaterial.GLASS; each function that takes a vessel says the same.
        sum(book, page, 17, "vessel", DesignBehindWords.VESSEL, "0.84*glass");
        sum(book, page, 18, "area", DesignBehindWords.AREA, "(2*volume*1000/radius+2*PI()*radius^2)/100");
        sum(book, page, 19, "used", DesignBehindWords.USED, "SUMPRODUCT(--(LEN(layers)+LEN(thicknesses)>0))");
        page.text("I20", language.words(DesignBehindWords.RATE_WRAPPED));
        page.formula("J20", "=WRAP.EXPECT(" + BEFORE_WARM + "start" + AFTER_WARM + ";vessel;scale)");
        page.text("I21", language.words(DesignBehindWords.SAME_BARE));
        page.formula("J21", "=WRAP.EXPECT(" + BEFORE_WARM_BARE + "start" + AFTER_WARM + ";vessel;scale)");
        sum(book, page, 22, "halfway", DesignBehindWords.HALFWAY_WRAPPED, "COOL.TEMP(lesson/2;start;cold;J20;scale)");
        sum(book, page, 23, "halfway_bare", DesignBehindWords.SAME_BARE, "COOL.TEMP(lesson/2;start;cold;J21;scale)");
        // A surface resistance, so that a bare jar is no refusal: ISO 6946:2017, Table 7, inside, horizontal.
        sum(book, page, 24, "check_layers", DesignBehindWords.LAYERS_OK, "CHECK.WRAP(thicknesses;layers;0.13)");
        sum(book, page, 25, "check_lid", DesignBehindWords.LID_OK, checkCover("lid"));
        sum(book, page, 26, "check_base", DesignBehindWords.BASE_OK, checkCover("base"));
        // Not those of the first page: a dash there would be taken for a bare lid.
        sum(book, page, 27, "lid_r", DesignBehindWords.LID_R, cover("lid"));
        sum(book, page, 28, "base_r", DesignBehindWords.BASE_R, cover("base"));
        sum(book, page, 29, "too_hot", DesignBehindWords.TOO_HOT, SafeWater.tooHot("start", "scale"));
        page.numbers("J17:J18", "0")
                .numbers("J20:J21", "0.0000")
                .numbers("J22:J23", "0.0")
                .numbers("J27:J28", "0.000");
    }

    private static void sum(Book book, Page page, int row, String name, Phrase label, String formula)
            throws com.sun.star.uno.Exception {
        book.names().fixed(name, page, "J" + row);
        page.text("I" + row, book.language().words(label)).formula("J" + row, "=" + formula);
    }

    private static String cover(String cover) {
        return "IF(" + LayersTable.bare(cover) + ";0;WRAP.LAYER(" + cover + "_mm;" + cover + "))";
    }

    private static String checkCover(String cover) {
        return "IF(" + LayersTable.bare(cover) + ";\"OK\";CHECK.WRAP(" + cover + "_mm;" + cover + "))";
    }

    private static void writeWayOut(Book book, Page page) throws com.sun.star.uno.Exception {
        Language language = book.language();
        page.look("I4:L4", CellStyleName.SECTION).text("I4", language.words(DesignBehindWords.WAY_OUT));
        page.look("I5:L5", CellStyleName.HEAD)
                .text("I5", language.words(DesignWords.FROM_INSIDE))
                .text("J5", language.words(DesignWords.R_VALUE));
        page.formula("K5", Degrees.label(language, DesignWords.INSIDE))
                .formula("L5", Degrees.label(language, DesignWords.OUTSIDE));
        int last = 5 + WAYS;
        book.names().fixed("between", page, "I6:L" + last);
        page.look("I6:I" + last, CellStyleName.LABEL).look("J6:L" + last, CellStyleName.RESULT);
        page.numbers("J6:J" + last, "0.0000").numbers("K6:L" + last, "0.0");
        for (int way = 1; way <= WAYS; way++) {
            for (int column = 1; column <= 4; column++) {
                page.formula(
                        (char) ('I' + column - 1) + "" + (5 + way),
                        "=IF(" + way + "<=used+2;INDEX(WRAP.BETWEEN(" + DesignAWrap.WRAPPED + ";scale);" + (way + 1)
                                + ";" + column + ");\"\")");
            }
        }
    }

    private static void writeCurves(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("A4:C4", CellStyleName.SECTION)
                .formula("A4", Degrees.label(language, DesignBehindWords.EXPECTED_CURVES));
        page.look("A5:C5", CellStyleName.HEAD)
                .text("A5", language.words(DesignWords.MINUTES))
                .text("B5", language.words(DesignWords.BARE))
                .text("C5", language.words(DesignWords.WRAPPED));
        page.look("A" + FIRST_STEP_ROW + ":C" + LAST_STEP_ROW, CellStyleName.RESULT);
        for (int row = FIRST_STEP_ROW; row <= LAST_STEP_ROW; row++) {
            page.formula("A" + row, "=" + (row - FIRST_STEP_ROW) + "*lesson/" + STEPS);
            page.formula("B" + row, "=COOL.TEMP($A" + row + ";start;toward_bare;bare_rate;scale)");
            page.formula("C" + row, "=COOL.TEMP($A" + row + ";start;toward;wrapped_rate;scale)");
        }
        page.numbers("A" + FIRST_STEP_ROW + ":C" + LAST_STEP_ROW, "0.0");
    }

    private static void writePoints(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("E4:G4", CellStyleName.SECTION).formula("E4", Degrees.label(language, DesignBehindWords.CLASS_READ));
        page.look("E5:G5", CellStyleName.HEAD)
                .text("E5", language.words(DesignWords.MINUTES))
                .text("F5", language.words(DesignWords.BARE))
                .text("G5", language.words(DesignWords.WRAPPED));
        page.look("E6:G" + LAST_READING_ROW, CellStyleName.RESULT).numbers("F6:G" + LAST_READING_ROW, "0.0");
        for (int i = 0; i < DesignAWrap.MINUTES.size(); i++) {
            int row = FIRST_STEP_ROW + i;
            page.formula("E" + row, "=INDEX(times;" + (i + 1) + ")");
            page.formula("F" + row, OrDash.of("TEMP.CONVERT(INDEX(bare;" + (i + 1) + ");scale;scale)"));
            page.formula("G" + row, OrDash.of("TEMP.CONVERT(INDEX(wrapped;" + (i + 1) + ");scale;scale)"));
        }
    }

    private static void writeSurroundings(Book book, Page page) throws com.sun.star.uno.Exception {
        Language language = book.language();
        page.look("E15:F15", CellStyleName.SECTION).formula("E15", Degrees.label(language, DesignWords.SURROUNDINGS));
        page.look("E16:F16", CellStyleName.HEAD)
                .text("E16", language.words(DesignWords.MINUTES))
                .text("F16", language.words(DesignBehindWords.SURROUNDINGS_HEAD));
        page.look("E17:F19", CellStyleName.RESULT).numbers("F17:F19", "0.0");
        page.number("E17", 0).formula("E18", "=lesson/2").formula("E19", "=lesson");
        page.formula("F17:F19", "=TEMP.CONVERT(cold;scale;scale)");
        // In a tub the lid is in the air of the room, and so the jar does not cool toward the tub alone.
        page.look("E21:E22", CellStyleName.LABEL)
                .look("F21:F22", CellStyleName.RESULT)
                .numbers("F21:F22", "0.0");
        page.text("E21", language.words(DesignBehindWords.COOLS_TOWARD))
                .formula("F21", "=WRAP.END(" + DesignAWrap.WRAPPED + ";scale)");
        page.text("E22", language.words(DesignBehindWords.SAME_BARE))
                .formula("F22", "=WRAP.END(" + DesignAWrap.BARE + ";scale)");
        book.names().fixed("toward", page, "F21");
        book.names().fixed("toward_bare", page, "F22");
    }

    private static void writeBars(Page page, Page design, Language language) throws com.sun.star.uno.Exception {
        page.look("E29:M29", CellStyleName.SECTION).text("E29", language.words(DesignBehindWords.PARTS));
        page.look("E30:M30", CellStyleName.HEAD).wrapped("E30:M30").height("E30", 9.5);
        page.look("E31:E32", CellStyleName.LABEL)
                .look("F31:M32", CellStyleName.RESULT)
                .numbers("F31:M32", "0.0000");
        page.text("E31", language.words(DesignWords.BARE)).text("E32", language.words(DesignWords.WRAPPED));
        String bare = "INDEX(WRAP.BETWEEN(" + DesignAWrap.BARE + ";scale);";
        String there = "$'" + design.name() + "'.";
        String hasNoWall = "LEN(wall)+LEN(wall_mm)=0";
        page.text("F30", language.words(DesignBehindWords.FILM_WATER))
                .formula("F31", "=" + bare + "2;2)")
                .formula("F32", "=" + there + "E18");
        for (int row = LayersTable.FIRST_ROW; row <= LayersTable.LAST_ROW; row++) {
            int number = row - LayersTable.FIRST_ROW + 1;
            String column = String.valueOf((char) ('F' + number));
            page.formula(column + "30", "=\"" + number + " \"&" + inShort(there + "B" + row));
            page.formula(column + "31", number > 1 ? "=0" : "=IF(" + hasNoWall + ";0;" + bare + "3;2))");
            page.formula(column + "32", "=IF(" + there + "E" + row + "=\"\";0;" + there + "E" + row + ")");
        }
        page.text("M30", language.words(DesignBehindWords.FILM_OUTSIDE));
        page.formula("M31", "=" + bare + "IF(" + hasNoWall + ";3;4);2)").formula("M32", "=" + there + "E25");
    }

    /** A long name in the legend would lay it over the bars. */
    private static String inShort(String material) {
        return "IF(LEN(" + material + ")=0;\"–\";IF(LEN(" + material + ")>20;LEFT(" + material + ";18)&\"…\";"
                + material + "))";
    }

    static StackedBar bars(Page behind, Language language) {
        return new StackedBar(
                language.words(DesignBehindWords.BARS),
                language.words(DesignBehindWords.BARS_AXIS),
                language.words(DesignBehindWords.BARS_WORDS),
                new Plot.Cells(behind, "E30:M32"));
    }

    static ScatterChart curves(Page behind, Language language) {
        List<Plot> plots = new ArrayList<>();
        plots.add(plot(Plot.Form.GUIDE, behind, "E17:E19", "F17:F19", "F16", SeriesColor.GRAY));
        String steps = "A" + FIRST_STEP_ROW + ":A" + LAST_STEP_ROW;
        String times = "E" + FIRST_STEP_ROW + ":E" + LAST_READING_ROW;
        plots.add(plot(Plot.Form.LINE, behind, steps, steps.replace('A', 'B'), "B5", SeriesColor.BLACK));
        plots.add(plot(Plot.Form.LINE, behind, steps, steps.replace('A', 'C'), "C5", SeriesColor.VERMILION));
        plots.add(plot(Plot.Form.POINTS, behind, times, times.replace('E', 'F'), "F5", SeriesColor.BLACK));
        plots.add(plot(Plot.Form.POINTS, behind, times, times.replace('E', 'G'), "G5", SeriesColor.VERMILION));
        return new ScatterChart(
                language.words(DesignBehindWords.CURVES),
                language.words(DesignBehindWords.MINUTES_AXIS),
                language.words(DesignBehindWords.TEMPERATURE_AXIS),
                language.say(DesignBehindWords.CURVES_WORDS, behind.name()),
                plots);
    }

    private static Plot plot(Plot.Form form, Page page, String across, String up, String name, SeriesColor ink) {
        return new Plot(form, new Plot.Cells(page, across), new Plot.Cells(page, up), new Plot.Cells(page, name), ink);
    }
}
