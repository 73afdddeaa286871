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
import org.snugsheet.office.sheets.shared.SharedWords;
import org.snugsheet.office.words.Language;

/**
 * The last page of a sheet about one jar, with what its chart draws. Nobody types here.
 *
 * <p>It speaks of the names {@code times}, {@code temps} and {@code check} of {@link OneJarRead}, and of {@code surroundings},
 * {@code mark} and {@code scale} of the first page.
 */
public final class BehindOneJar {

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
        Language language = book.language();
        Page page = book.page(language.words(ReadWords.CURVE_PAGE));
        page.width("A1:D1", 26)
                .width("E1", 6)
                .width("F1:G1", 26)
                .width("H1", 6)
                .width("I1:J1", 26)
                .width("K1", 6)
                .width("L1", 26);
        page.text("A1", language.words(ReadWords.BEHIND_CHART))
                .look("A1", CellStyleName.TITLE)
                .height("A1", 10);
        page.text("A2", language.words(ReadWords.CURVE_PURPOSE)).merge("A2:L2").look("A2:L2", CellStyleName.PURPOSE);
        writeCurve(page, language);
        writePoints(page, language, grid.rows());
        writeSurroundings(page, language);
        page.look("L4", CellStyleName.SECTION).text("L4", language.words(SharedWords.SCALES));
        page.text("L6", "C").text("L7", "F").look("L6:L7", CellStyleName.LABEL);
        book.names().fixed("scales", page, "L6:L7");
        page.text("L9", language.words(ReadWords.BAND_FROM)).text("L10", language.words(ReadWords.BAND_TO));
        page.look("L9:L10", CellStyleName.LABEL);
        new PrintSetup(PrintSetup.Way.LANDSCAPE, language.words(ReadWords.BEHIND_CHART)).applyUnprinted(page);
        page.protect();
        return page;
    }

    private static void writeCurve(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("A4:D4", CellStyleName.SECTION).text("A4", language.words(ReadWords.CURVE_BAND));
        page.look("A5:D5", CellStyleName.NARROW_HEAD).height("A5", 9.5).text("A5", language.words(ReadWords.MINUTES));
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

    private static void writePoints(Page page, Language language, int readings) throws com.sun.star.uno.Exception {
        page.look("F4:G4", CellStyleName.SECTION).text("F4", language.words(ReadWords.READINGS));
        page.look("F5:G5", CellStyleName.HEAD)
                .text("F5", language.words(ReadWords.MINUTES))
                .text("G5", language.words(ReadWords.READINGS_HEAD));
        page.look("F6:G" + (5 + readings), CellStyleName.RESULT).numbers("G6:G" + (5 + readings), "0.0");
        for (int row = 0; row < readings; row++) {
            page.formula("F" + (FIRST_ROW + row), "=INDEX(times;" + (row + 1) + ")");
            page.formula("G" + (FIRST_ROW + row), "=TEMP.READ(INDEX(temps;" + (row + 1) + ");scale)");
        }
    }

    private static void writeSurroundings(Page page, Language language) throws com.sun.star.uno.Exception {
        page.look("I4:J4", CellStyleName.SECTION).text("I4", language.words(ReadWords.SURROUNDINGS));
        page.look("I5:J5", CellStyleName.HEAD)
                .text("I5", language.words(ReadWords.MINUTES))
                .text("J5", language.words(ReadWords.SURROUNDINGS_HEAD));
        page.look("I6:J8", CellStyleName.RESULT).numbers("J6:J8", "0.0");
        page.number("I6", 0).formula("I7", "=MAX(times)/2").formula("I8", "=MAX(times)");
        page.formula("J6:J8", OrDash.of("COOL.SURROUNDINGS(" + OneJarRead.JAR + ")"));
    }

    /**
     * The chart of the readings, the curve, and the surroundings.
     *
     * @param behind this page
     * @param language what it is written in
     * @param readings how many rows there are for readings
     * @param band whether the 95 % band of the curve is drawn
     * @return the chart
     */
    public static ScatterChart chart(Page behind, Language language, int readings, boolean band) {
        String minutes = "A" + FIRST_ROW + ":A" + LAST_ROW;
        List<Plot> plots = new ArrayList<>();
        plots.add(plot(Plot.Form.GUIDE, behind, "I6:I8", "J6:J8", "J5", SeriesColor.GRAY));
        if (band) {
            plots.add(plot(Plot.Form.LIMIT, behind, minutes, column("C"), "L9", SeriesColor.GRAY));
            plots.add(plot(Plot.Form.LIMIT, behind, minutes, column("D"), "L10", SeriesColor.GRAY));
        }
        plots.add(plot(Plot.Form.LINE, behind, minutes, column("B"), "B5", SeriesColor.BLACK));
        int last = 5 + readings;
        plots.add(plot(Plot.Form.POINTS, behind, "F6:F" + last, "G6:G" + last, "G5", SeriesColor.BLACK));
        return new ScatterChart(
                language.words(ReadWords.CHART),
                language.words(ReadWords.MINUTES_AXIS),
                language.words(ReadWords.TEMPERATURE_AXIS),
                language.say(band ? ReadWords.CHART_WORDS_BAND : ReadWords.CHART_WORDS, behind.name()),
                plots);
    }

    private static String column(String letter) {
        return letter + FIRST_ROW + ":" + letter + LAST_ROW;
    }

    private static Plot plot(Plot.Form form, Page page, String across, String up, String name, SeriesColor ink) {
        return new Plot(form, new Plot.Cells(page, across), new Plot.Cells(page, up), new Plot.Cells(page, name), ink);
    }
}
