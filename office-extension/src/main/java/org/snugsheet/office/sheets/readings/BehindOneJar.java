package org.snugsheet.office.sheets.readings;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Plot;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.page.ScatterChart;
import org.snugsheet.office.page.SeriesColor;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.shared.OrDash;

/**
 * The last page of a sheet about one jar, with what its chart draws. Nobody types here.
 *
 * <p>It speaks of the names {@code times}, {@code temps} and {@code check} of {@link OneJarRead}, and of {@code surroundings},
 * {@code mark} and {@code scale} of the first page.
 */
public final class BehindOneJar {

    static final String NAME = "Curve";

    private static final int FIRST_ROW = 6;
    private static final int STEPS = 40;
    private static final int LAST_ROW = FIRST_ROW + STEPS;

    private BehindOneJar() {}

    /**
     * Adds the page, and the name {@code scales} for the two scales to choose from.
     *
     * @param book the document
     * @param grid where the readings are typed
     * @return the new page
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static Page add(Book book, Grid grid) throws com.sun.star.uno.Exception {
        Page page = book.page(NAME);
        page.width("A1:D1", 26)
                .width("E1", 6)
                .width("F1:G1", 26)
                .width("H1", 6)
                .width("I1:J1", 26)
                .width("K1", 6)
                .width("L1", 26);
        page.text("A1", "Behind the chart").look("A1", CellStyleName.TITLE).height("A1", 10);
        page.text("A2", "Nothing to type here: the chart on the first page draws these cells.")
                .merge("A2:L2")
                .look("A2:L2", CellStyleName.PURPOSE);
        writeCurve(page);
        writePoints(page, grid.rows());
        writeSurroundings(page);
        page.look("L4", CellStyleName.SECTION).text("L4", "Scales");
        page.text("L6", "C").text("L7", "F").look("L6:L7", CellStyleName.LABEL);
        book.names().fixed("scales", page, "L6:L7");
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "Behind the chart").applyUnprinted(page);
        page.protect();
        return page;
    }

    private static void writeCurve(Page page) throws com.sun.star.uno.Exception {
        page.look("A4:D4", CellStyleName.SECTION).text("A4", "Curve and its 95 % band");
        page.look("A5:D5", CellStyleName.NARROW_HEAD).height("A5", 9.5).text("A5", "minutes");
        page.look("A" + FIRST_ROW + ":D" + LAST_ROW, CellStyleName.RESULT);
        for (int step = 0; step <= STEPS; step++) {
            page.formula("A" + (FIRST_ROW + step), "=" + step + "*MAX(times)/" + STEPS);
        }
        // Texts while the readings cannot be used: nothing is drawn of them, and the legend shows a dash.
        page.table(
                "B5:D" + LAST_ROW,
                OrDash.of("IF(check=\"OK\";COOL.CURVE(A" + FIRST_ROW + ":A" + LAST_ROW + ";" + OneJarRead.JAR + ");"
                        + OrDash.DASH + ")"));
        page.numbers("A" + FIRST_ROW + ":D" + LAST_ROW, "0.0");
    }

    private static void writePoints(Page page, int readings) throws com.sun.star.uno.Exception {
        page.look("F4:G4", CellStyleName.SECTION).text("F4", "Readings");
        page.look("F5:G5", CellStyleName.HEAD).text("F5", "minutes").text("G5", "readings");
        page.look("F6:G" + (5 + readings), CellStyleName.RESULT).numbers("G6:G" + (5 + readings), "0.0");
        for (int row = 0; row < readings; row++) {
            page.formula("F" + (FIRST_ROW + row), "=INDEX(times;" + (row + 1) + ")");
            page.formula("G" + (FIRST_ROW + row), "=TEMP.READ(INDEX(temps;" + (row + 1) + ");scale)");
        }
    }

    private static void writeSurroundings(Page page) throws com.sun.star.uno.Exception {
        page.look("I4:J4", CellStyleName.SECTION).text("I4", "Surroundings");
        page.look("I5:J5", CellStyleName.HEAD).text("I5", "minutes").text("J5", "surroundings");
        page.look("I6:J8", CellStyleName.RESULT).numbers("J6:J8", "0.0");
        page.number("I6", 0).formula("I7", "=MAX(times)/2").formula("I8", "=MAX(times)");
        page.formula("J6:J8", OrDash.of("COOL.SURROUNDINGS(" + OneJarRead.JAR + ")"));
    }

    /**
     * The chart of the readings, the curve, and the surroundings.
     *
     * @param behind this page
     * @param readings how many rows there are for readings
     * @param band whether the 95 % band of the curve is drawn
     * @return the chart
     */
    public static ScatterChart chart(Page behind, int readings, boolean band) {
        String minutes = "A" + FIRST_ROW + ":A" + LAST_ROW;
        List<Plot> plots = new ArrayList<>();
        plots.add(plot(Plot.Form.GUIDE, behind, "I6:I8", "J6:J8", "J5", SeriesColor.GRAY));
        if (band) {
            plots.add(plot(Plot.Form.LIMIT, behind, minutes, column("C"), "C5", SeriesColor.GRAY));
            plots.add(plot(Plot.Form.LIMIT, behind, minutes, column("D"), "D5", SeriesColor.GRAY));
        }
        plots.add(plot(Plot.Form.LINE, behind, minutes, column("B"), "B5", SeriesColor.BLACK));
        int last = 5 + readings;
        plots.add(plot(Plot.Form.POINTS, behind, "F6:F" + last, "G6:G" + last, "G5", SeriesColor.BLACK));
        return new ScatterChart(
                "How the jar cools",
                "Time, minutes",
                "Temperature, degrees",
                "Temperature of one jar against time. Circles are the readings, the full line is the fitted curve"
                        + (band
                                ? ", two thin dashed lines beside it are the limits between which the curve lies with"
                                        + " 95 % certainty"
                                : "")
                        + ". The lowest dashed line is the surroundings. The values are on the page " + NAME + ".",
                plots);
    }

    private static String column(String letter) {
        return letter + FIRST_ROW + ":" + letter + LAST_ROW;
    }

    private static Plot plot(Plot.Form form, Page page, String across, String up, String name, SeriesColor ink) {
        return new Plot(form, new Plot.Cells(page, across), new Plot.Cells(page, up), new Plot.Cells(page, name), ink);
    }
}
