package org.snugsheet.office.sheets.pupilpages;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.office.page.CellFrame;
import org.snugsheet.office.page.CellStyleName;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.PrintSetup;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.ShapeGroup;

/** The second and third page of {@link PupilPages}, for pencils. Nobody types here; the words come from the first page. */
final class PupilPaper {

    private static final Strip LARGE = new Strip(-5, 50, 2.7, 14);
    // One minute to the right, two degrees Celsius up, in millimeters.
    private static final double MINUTE = 3.7;
    private static final double TWO_DEGREES = 5.2;
    private static final int ACROSS = 40;
    private static final int UP = 25;

    private PupilPaper() {}

    /** The first and the last reading, large, with a jar to draw the wrap on. */
    static Page firstAndLast(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page("First and last");
        page.width("A1:B1", 93);
        page.height("A1", 14).height("A2", 8).height("A3", 62).height("A4", 16).height("A5", LARGE.height() + 2);
        page.merge("A1:B1").look("A1:B1", CellStyleName.WALL).formula("A1", "=group&\": \"&wrap");
        page.merge("A2:B2").look("A2:B2", CellStyleName.PURPOSE);
        page.text(
                "A2",
                "Draw the wrap around the jar. Color the first and the last reading. Is it still warm? Ring a jar.");
        page.look("A4:B4", CellStyleName.LARGE)
                .formula("A4", "=MIN(minutes)&\" min\"")
                .formula("B4", "=MAX(minutes)&\" min\"");
        jar(book, page, 46, 30, 35, 50, "A jar to draw the wrap on");
        jar(book, page, 115, 46, 18, 27, "A jar that is still warm");
        jar(book, page, 158, 46, 18, 27, "A jar that is cold");
        waves(book, page, 115, 43);
        flakes(book, page, 158, 40);
        for (int i = 0; i < 2; i++) {
            double[] corner = CellFrame.corner(page, (char) ('A' + i) + "4");
            PupilPages.clock(book, page, corner[0] + 16, corner[1] + 8, 7);
            double[] strip = CellFrame.corner(page, (char) ('A' + i) + "5");
            LARGE.draw(book, page, strip[0] + 46.5, strip[1]);
        }
        new PrintSetup(PrintSetup.Way.PORTRAIT, "My thermometers: first and last").apply(page, "A1:B5");
        return page;
    }

    private static void jar(Book book, Page page, double x, double y, double across, double down, String title)
            throws com.sun.star.uno.Exception {
        ShapeGroup.on(book, page)
                .box(x - across / 2, y, across, down, across / 8)
                .box(x - across * 0.4, y - down * 0.09, across * 0.8, down * 0.09, 0.5)
                .lines(
                        0.3,
                        List.of(new ShapeGroup.Stroke(x - across / 2, y + down * 0.2, x + across / 2, y + down * 0.2)))
                .finish(title, "The outline of a jar with a lid and water in it, for a child to draw on.");
    }

    // Three wavy lines, as warm things have them in picture books.
    private static void waves(Book book, Page page, double x, double bottom) throws com.sun.star.uno.Exception {
        List<ShapeGroup.Stroke> strokes = new ArrayList<>();
        for (int wave = -1; wave <= 1; wave++) {
            for (int part = 0; part < 24; part++) {
                strokes.add(new ShapeGroup.Stroke(
                        x + 6 * wave + Math.sin(part * 0.6),
                        bottom - part * 0.4,
                        x + 6 * wave + Math.sin((part + 1) * 0.6),
                        bottom - (part + 1) * 0.4));
            }
        }
        ShapeGroup.on(book, page)
                .lines(0.6, strokes)
                .finish("Warm: waves", "Three wavy lines above a jar: it is still warm.");
    }

    private static void flakes(Book book, Page page, double x, double y) throws com.sun.star.uno.Exception {
        List<ShapeGroup.Stroke> strokes = new ArrayList<>();
        for (int arm = 0; arm < 6; arm++) {
            double angle = Math.PI * arm / 3;
            strokes.add(new ShapeGroup.Stroke(x, y - 4, x + 4 * Math.sin(angle), y - 4 - 4 * Math.cos(angle)));
            for (int side = -1; side <= 1; side += 2) {
                double twig = angle + side * 0.6;
                strokes.add(new ShapeGroup.Stroke(
                        x + 2.2 * Math.sin(angle),
                        y - 4 - 2.2 * Math.cos(angle),
                        x + 2.2 * Math.sin(angle) + 1.5 * Math.sin(twig),
                        y - 4 - 2.2 * Math.cos(angle) - 1.5 * Math.cos(twig)));
            }
        }
        ShapeGroup.on(book, page)
                .lines(0.6, strokes)
                .finish("Cold: a flake", "A snowflake above a jar: it has grown cold.");
    }

    /** A table to write numbers into, and squared paper for the curve. */
    static Page numbers(Book book) throws com.sun.star.uno.Exception {
        Page page = book.page("Numbers");
        page.width("A1", 40).width("B1:H1", 20);
        page.height("A1", 14)
                .height("A2", 8)
                .height("A3:A5", 14)
                .height("A6", 8)
                .height("A7", UP * TWO_DEGREES + 28);
        page.merge("A1:H1").look("A1:H1", CellStyleName.WALL).formula("A1", "=group&\": \"&wrap");
        page.merge("A2:H2").look("A2:H2", CellStyleName.PURPOSE);
        page.text("A2", "Write down each reading. Then put a cross for it on the squares, and join the crosses.");
        page.look("A3:A5", CellStyleName.LARGE)
                .text("A3", "min")
                .text("A4", "°C")
                .text("A5", "°F");
        page.look("B3:H5", CellStyleName.BOX).numbers("B3:H3", "0");
        for (int i = 0; i < 7; i++) {
            page.formula((char) ('B' + i) + "3", "=INDEX(minutes;1;" + (i + 1) + ")");
        }
        double[] corner = CellFrame.corner(page, "A7");
        squares(book, page, corner[0] + 16, corner[1] + 12);
        new PrintSetup(PrintSetup.Way.PORTRAIT, "My thermometers: numbers").apply(page, "A1:H7");
        return page;
    }

    private static void squares(Book book, Page page, double left, double top) throws com.sun.star.uno.Exception {
        double right = left + ACROSS * MINUTE;
        double bottom = top + UP * TWO_DEGREES;
        List<ShapeGroup.Stroke> fine = new ArrayList<>();
        List<ShapeGroup.Stroke> bold = new ArrayList<>();
        ShapeGroup drawing = ShapeGroup.on(book, page);
        for (int i = 0; i <= ACROSS; i++) {
            double x = left + i * MINUTE;
            (i % 5 == 0 ? bold : fine).add(new ShapeGroup.Stroke(x, top, x, bottom));
            if (i % 5 == 0) {
                drawing.write(x, bottom + 4, 11, String.valueOf(i));
            }
        }
        for (int i = 0; i <= UP; i++) {
            double y = bottom - i * TWO_DEGREES;
            (i % 5 == 0 ? bold : fine).add(new ShapeGroup.Stroke(left, y, right, y));
            if (i % 5 == 0) {
                drawing.write(left - 6, y, 11, String.valueOf(2 * i));
                // 10 °C are 18 °F, counted from 32 °F.
                drawing.write(right + 7, y, 11, String.valueOf(32 + i / 5 * 18));
            }
        }
        drawing.faintLines(fine).lines(0.4, bold);
        drawing.write(left - 6, top - 6, 12, "°C")
                .write(right + 7, top - 6, 12, "°F")
                .write((left + right) / 2, bottom + 11, 12, "minutes");
        drawing.finish(
                "Squared paper for the curve",
                "Squared paper with minutes from 0 to 40 along the bottom, 0 to 50 °C on the left and 32 to 122 °F on"
                        + " the right, for drawing a cooling curve by hand.");
    }
}
