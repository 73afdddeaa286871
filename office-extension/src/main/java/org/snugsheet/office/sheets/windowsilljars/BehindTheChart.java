package org.snugsheet.office.sheets.windowsilljars;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.insulation.Condition;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.ScatterChart;
import org.snugsheet.office.page.SeriesColor;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.shared.OrDash;

/**
 * The last page of {@link WindowsillJars}, with what its charts draw and its list of materials. Nobody types here.
 *
 * <p>Each jar keeps its column of the first page, so that the names of that page mean the same jar here.
 */
final class BehindTheChart {

    private static final String NAME = "Curves";
    private static final int FIRST_STEP_ROW = 6;
    private static final int STEPS = 40;

    private static final List<SeriesColor> INKS =
            List.of(SeriesColor.BLACK, SeriesColor.VERMILION, SeriesColor.BLUE, SeriesColor.GREEN, SeriesColor.PURPLE);

    private BehindTheChart() {}

    /**
     * Adds the page.
     *
     * @param book the document
     * @param jars its first page
     * @return the new page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    static Page add(Book book, Page jars) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
        page.width("A1:F1", 24)
                .width("G1", 6)
                .width("H1:M1", 24)
                .width("N1", 6)
                .width("O1", 48)
                .width("P1", 6)
                .width("Q1:S1", 24);
        page.text("A1", "Behind the chart").look("A1", CellStyleName.TITLE).height("A1", 10);
        page.text("A2", "Nothing to type here: the charts on the other pages draw these cells.")
                .merge("A2:O2")
                .look("A2:O2", CellStyleName.PURPOSE);
        writeCurves(page, jars);
        writePoints(page, jars);
        writeSurroundings(page);
        writeBand(page);
        writeMaterials(book, page);
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Behind the chart of four wrapped jars").applyUnprinted(page);
        return page;
    }

    private static void writeCurves(Page page, Page jars) throws com.sun.star.uno.Exception {
        int last = FIRST_STEP_ROW + STEPS;
        page.look("A4:F4", CellStyleName.SECTION).text("A4", "Fitted curves, °C");
        page.look("A5:F5", CellStyleName.HEAD).text("A5", "minutes");
        page.look("A" + FIRST_STEP_ROW + ":F" + last, CellStyleName.RESULT);
        page.number("A" + FIRST_STEP_ROW, 0);
        for (int row = FIRST_STEP_ROW + 1; row <= last; row++) {
            page.formula("A" + row, "=A" + (row - 1) + "+MAX(times)/" + STEPS);
        }
        for (int jar = 0; jar < WindowsillJars.JARS.size(); jar++) {
            String column = WindowsillJars.column(jar);
            page.formula(column + "5", "=$" + jars.name() + "." + column + "7");
            for (int row = FIRST_STEP_ROW; row <= last; row++) {
                page.formula(column + row, OrDash.of("COOL.TEMP($A" + row + ";start;surroundings;rate)"));
            }
        }
        page.numbers("B" + FIRST_STEP_ROW + ":F" + last, "0.0");
    }

    private static void writePoints(Page page, Page jars) throws com.sun.star.uno.Exception {
        int readings = WindowsillJars.MINUTES.size();
        page.look("H4:M4", CellStyleName.SECTION).text("H4", "Readings, all in °C");
        page.look("H5:M5", CellStyleName.HEAD).text("H5", "minutes");
        page.look("H6:M" + (5 + readings), CellStyleName.RESULT);
        for (int jar = 0; jar < WindowsillJars.JARS.size(); jar++) {
            page.formula(pointColumn(jar) + "5", "=$" + jars.name() + "." + WindowsillJars.column(jar) + "7");
        }
        for (int row = 0; row < readings; row++) {
            int here = 6 + row;
            page.formula("H" + here, "=INDEX(times;" + (row + 1) + ")");
            for (int jar = 0; jar < WindowsillJars.JARS.size(); jar++) {
                String reading = "INDEX(same_scale;" + (row + 1) + ";" + (jar + 1) + ")";
                page.formula(pointColumn(jar) + here, OrDash.of("TEMP.CONVERT(" + reading + ";\"C\";\"C\")"));
            }
        }
        page.numbers("I6:M" + (5 + readings), "0.0");
    }

    private static void writeSurroundings(Page page) throws com.sun.star.uno.Exception {
        page.look("H17:I17", CellStyleName.SECTION).text("H17", "Surroundings, °C");
        page.look("H18:I18", CellStyleName.HEAD).text("H18", "minutes").text("I18", "surroundings");
        page.look("H19:I21", CellStyleName.RESULT).numbers("I19:I21", "0.0");
        page.number("H19", 0).formula("H20", "=MAX(times)/2").formula("H21", "=MAX(times)");
        page.formula("I19:I21", OrDash.of("TEMP.CONVERT(surroundings;\"C\";\"C\")"));
    }

    private static void writeBand(Page page) throws com.sun.star.uno.Exception {
        int last = FIRST_STEP_ROW + STEPS;
        page.look("Q4:S4", CellStyleName.SECTION)
                .look("Q5:S5", CellStyleName.NARROW_HEAD)
                .height("Q5", 9.5)
                .look("Q6:S" + last, CellStyleName.RESULT);
        page.formula("Q4", "=\"Curve and 95 % band, °C: \"&" + HowSureAreWe.nameOf(HowSureAreWe.SHOWN));
        page.table(
                "Q5:S" + last,
                OrDash.of("IF(INDEX(checks;1;" + (HowSureAreWe.SHOWN + 1) + ")=\"OK\";COOL.CURVE(A" + FIRST_STEP_ROW
                        + ":A" + last + ";times;" + HowSureAreWe.readingsOf(HowSureAreWe.SHOWN) + ";surroundings;mark);"
                        + OrDash.DASH + ")"));
        page.numbers("Q" + FIRST_STEP_ROW + ":S" + last, "0.00");
    }

    private static void writeMaterials(Book book, Page page) throws com.sun.star.uno.Exception {
        page.look("O4", CellStyleName.SECTION).text("O4", "Materials to choose from");
        List<String> names = Materials.all().stream()
                .filter(material -> material.condition() == Condition.DRY)
                .map(Material::name)
                .sorted()
                .toList();
        for (int i = 0; i < names.size(); i++) {
            page.text("O" + (5 + i), names.get(i));
        }
        book.names().fixed("materials", page, "O5:O" + (4 + names.size()));
    }

    /**
     * The chart of the readings and their curves.
     *
     * @param jars the page with the names of the jars
     * @param behind this page
     * @return the chart
     */
    static ScatterChart chart(Page jars, Page behind) {
        String steps = "A" + FIRST_STEP_ROW + ":A" + (FIRST_STEP_ROW + STEPS);
        String readings = "H6:H" + (5 + WindowsillJars.MINUTES.size());
        List<Plot> plots = new ArrayList<>();
        plots.add(new Plot(
                Plot.Form.GUIDE,
                new Plot.Cells(behind, "H19:H21"),
                new Plot.Cells(behind, "I19:I21"),
                new Plot.Cells(behind, "I18"),
                SeriesColor.GRAY));
        for (Plot.Form form : List.of(Plot.Form.LINE, Plot.Form.POINTS)) {
            boolean line = form == Plot.Form.LINE;
            for (int jar = 0; jar < WindowsillJars.JARS.size(); jar++) {
                String across = line ? steps : readings;
                String column = line ? WindowsillJars.column(jar) : pointColumn(jar);
                plots.add(new Plot(
                        form,
                        new Plot.Cells(behind, across),
                        new Plot.Cells(behind, across.replaceAll("[A-Z]", column)),
                        new Plot.Cells(jars, WindowsillJars.column(jar) + "7"),
                        INKS.get(jar)));
            }
        }
        return new ScatterChart(
                "How the jars cool",
                "Time, minutes",
                "Temperature, °C",
                "Temperature of each jar against time. Symbols are the readings, lines the fitted curves, the gray"
                        + " line the surroundings. All jars begin near 40 °C; the bare jar cools fastest and the one in"
                        + " dry leaves slowest. The values are in the table beside the chart and on the"
                        + " page " + NAME + ".",
                plots);
    }

    /**
     * The chart of one jar, its curve and the band in which the curve lies.
     *
     * @param behind this page
     * @return the chart
     */
    static ScatterChart band(Page behind) {
        int last = FIRST_STEP_ROW + STEPS;
        String points = pointColumn(HowSureAreWe.SHOWN);
        int lastReading = FIRST_STEP_ROW + WindowsillJars.MINUTES.size() - 1;
        Plot.Cells steps = new Plot.Cells(behind, "A" + FIRST_STEP_ROW + ":A" + last);
        List<Plot> plots = new ArrayList<>();
        for (String limit : List.of("R", "S")) {
            plots.add(new Plot(
                    Plot.Form.LIMIT,
                    steps,
                    new Plot.Cells(behind, limit + FIRST_STEP_ROW + ":" + limit + last),
                    new Plot.Cells(behind, limit + "5"),
                    SeriesColor.GRAY));
        }
        plots.add(new Plot(
                Plot.Form.LINE,
                steps,
                new Plot.Cells(behind, "Q" + FIRST_STEP_ROW + ":Q" + last),
                new Plot.Cells(behind, "Q5"),
                SeriesColor.BLACK));
        plots.add(new Plot(
                Plot.Form.POINTS,
                new Plot.Cells(behind, "H" + FIRST_STEP_ROW + ":H" + lastReading),
                new Plot.Cells(behind, points + FIRST_STEP_ROW + ":" + points + lastReading),
                new Plot.Cells(behind, points + "5"),
                SeriesColor.BLACK));
        return new ScatterChart(
                "One jar, its curve and the 95 % band",
                "Time, minutes",
                "Temperature, °C",
                "Temperature of one jar against time. Circles are the readings, the full line is the fitted curve, two"
                        + " thin dashed lines just below and above it are the limits between which the curve lies with 95"
                        + " % certainty. The values are on the page " + NAME + ".",
                plots);
    }

    private static String pointColumn(int jar) {
        return String.valueOf((char) ('I' + jar));
    }
}
