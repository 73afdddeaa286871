package org.snugsheet.office.sheets.pupilpages;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.Phrase;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Highlight;
import org.snugsheet.office.page.InputRules;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.ShapeGroup;
import org.snugsheet.office.sheets.builder.WorkedSheet;
import org.snugsheet.office.sheets.shared.Degrees;
import org.snugsheet.office.sheets.shared.SafeWater;
import org.snugsheet.office.sheets.shared.SheetLines;
import org.snugsheet.office.sheets.shared.Top;

/**
 * Pages to print for pupils: a thermometer to color in for each reading, also for children who cannot read yet; two large
 * ones for the first and the last reading; and numbers with a graph for those who can write.
 *
 * @see PupilPaper
 */
public final class PupilPages implements WorkedSheet {

    static final String PAGE = "Thermometers";

    private static final String TITLE = "My thermometers";
    private static final String INVENTED = "invented words and numbers";
    private static final List<Integer> MINUTES = List.of(0, 5, 10, 15, 20, 25, 30);
    private static final double COLUMN = 38;
    private static final Strip STRIP = new Strip(-5, 50, 1.65, 11);

    @Override
    public String fileName() {
        return "pupil-pages";
    }

    @Override
    public Phrase menuLine() {
        return SheetLines.PUPILS;
    }

    @Override
    public String results() {
        return PAGE + ".A6:G7";
    }

    @Override
    public void fill(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page(PAGE);
        book.names()
                .fixed("group", page, "B6")
                .fixed("wrap", page, "D6")
                .fixed("warm", page, "F6")
                .fixed("scale", page, "G6")
                .fixed("minutes", page, "A9:G9");
        page.width("A1:G1", COLUMN);
        page.height("A6", 10).height("A7", 17).height("A8", 17).height("A9", 10).height("A10", STRIP.height() + 3);
        new Top(
                        TITLE,
                        "Draw the hand of the clock for each reading, and color up to where the thermometer stands."
                                + " (The words are invented: type yours.)",
                        "an adult pours the water, and it is no warmer than 43 °C (109 °F), the thick line with the"
                                + " “!”. Glass breaks: carry jars with both hands. Wipe up water at once. No bag or film"
                                + " over a face, nothing small in a mouth. Ask who is allergic to a wrap. The rules of"
                                + " your school come first.")
                .write(page, "G");
        writeWords(page);
        writeMinutes(page);
        Page large = PupilPaper.firstAndLast(book);
        Page numbers = PupilPaper.numbers(book);
        rule(page, numbers, book);
        draw(book, page);
        new PrintSetup(PrintSetup.Way.LANDSCAPE, "My thermometers").apply(page, "A1:G10");
        page.protect();
        large.protect();
        numbers.protect();
        book.describe(
                "Recording pages for pupils",
                "Thermometers to color in, and a graph to draw",
                "Pages of Snugsheet to print for pupils, with " + INVENTED
                        + ": a thermometer in °C and °F for each reading, usable by children who cannot read yet.",
                "recording sheet",
                "thermometer",
                "graph",
                "pupils",
                INVENTED);
        book.openAt(page, "B6");
    }

    private static void writeWords(Page page) throws com.sun.star.uno.Exception {
        page.look("A6:G6", CellStyleName.HEAD)
                .look("B6", CellStyleName.INPUT)
                .look("D6", CellStyleName.INPUT)
                .look("F6:G6", CellStyleName.INPUT);
        page.text("A6", "Our group").text("B6", "Snow owls");
        page.text("C6", "Our wrap").text("D6", "wool sock");
        page.formula("E6", Degrees.label("Warm water, ")).number("F6", 40).text("G6", "C");
        page.merge("A7:G7").look("A7:G7", CellStyleName.MESSAGE);
        page.formula("A7", "=IFERROR(PLAN.SAFE(warm;scale);\"How warm is the water at the start? Type a number.\")");
        Highlight.when(page, "A7:G7", SafeWater.TOO_HOT, CellStyleName.ALARM);
    }

    private static void writeMinutes(Page page) throws com.sun.star.uno.Exception {
        page.look("A9:G9", CellStyleName.INPUT_LARGE).numbers("A9:G9", "0\" min\"");
        for (int i = 0; i < MINUTES.size(); i++) {
            page.number((char) ('A' + i) + "9", MINUTES.get(i));
        }
    }

    private static void draw(Book book, Page page) throws com.sun.star.uno.Exception {
        for (int i = 0; i < MINUTES.size(); i++) {
            char column = (char) ('A' + i);
            double[] clock = CellFrame.corner(page, column + "8");
            clock(book, page, clock[0] + COLUMN / 2, clock[1] + 8.5, 7.5);
            double[] strip = CellFrame.corner(page, column + "10");
            STRIP.draw(book, page, strip[0] + COLUMN / 2, strip[1] + 2);
        }
    }

    /** A clock face without a hand. */
    static void clock(Book book, Page page, double x, double y, double radius) throws com.sun.star.uno.Exception {
        ShapeGroup drawing = ShapeGroup.on(book, page).circle(x, y, radius);
        List<ShapeGroup.Stroke> hours = new ArrayList<>();
        for (int hour = 0; hour < 12; hour++) {
            double across = Math.sin(Math.PI * hour / 6);
            double up = -Math.cos(Math.PI * hour / 6);
            double from = hour % 3 == 0 ? 0.7 * radius : 0.82 * radius;
            hours.add(new ShapeGroup.Stroke(x + from * across, y + from * up, x + radius * across, y + radius * up));
        }
        drawing.lines(0.3, hours).circle(x, y, 0.5);
        drawing.finish("A clock face", "A clock face without hands, on which the minute of the reading is drawn.");
    }

    private static void rule(Page page, Page numbers, Book book) throws com.sun.star.uno.Exception {
        numbers.text("T2", "Scales").text("T3", "C").text("T4", "F").look("T2:T4", CellStyleName.HINT);
        book.names().fixed("scales", numbers, "T3:T4");
        InputRules.on(page)
                .hint("B6", "Our group", "The name of the group; it is on all pages.")
                .hint("D6", "Our wrap", "What the jar is wrapped in; or leave it blank for children to write or draw.")
                .hint(
                        "F6",
                        "Warm water",
                        "How warm the water is at the start. The line below says whether that is safe.")
                .only("G6", "scales", "Scale", "C for degrees Celsius, F for degrees Fahrenheit.")
                .atLeast("A9:G9", 0, "Minutes", "When this thermometer is read, in minutes since the start.");
    }
}
