package org.snugsheet.office.sheets.builder;

import com.sun.star.awt.FontWeight;
import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.drawing.TextHorizontalAdjust;
import com.sun.star.drawing.TextVerticalAdjust;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.drawing.XShapeGrouper;
import com.sun.star.drawing.XShapes;
import com.sun.star.style.ParagraphAdjust;
import com.sun.star.text.XText;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Palette;
import org.snugsheet.office.page.StyleSheet;
import org.snugsheet.office.uno.Uno;

/**
 * A drawing on a page, put together from simple shapes and then made one. Places and lengths are in millimeters from the
 * upper left corner of the page.
 */
public final class ShapeGroup {
    private static final int HUNDREDTHS = 100;

    private final Page page;
    private final XShapes paper;
    private final XShapes parts;

    private ShapeGroup(Page page, XShapes paper, XShapes parts) {
        this.page = page;
        this.paper = paper;
        this.parts = parts;
    }

    /**
     * Begins a drawing.
     *
     * @param book the document
     * @param page the page it is on
     * @return the drawing, still empty
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public static ShapeGroup on(Book book, Page page) throws com.sun.star.uno.Exception {
        XShapes paper = Uno.as(
                XShapes.class, Uno.as(XDrawPageSupplier.class, page.sheet()).getDrawPage());
        Object parts = book.office()
                .getServiceManager()
                .createInstanceWithContext("com.sun.star.drawing.ShapeCollection", book.office());
        return new ShapeGroup(page, paper, Uno.as(XShapes.class, parts));
    }

    /** One straight line of a drawing, from one point to another. */
    public record Stroke(double fromX, double fromY, double toX, double toY) {
        private Point[] points() {
            return new Point[] {at(fromX, fromY), at(toX, toY)};
        }
    }

    /**
     * Draws straight lines, all of the same width.
     *
     * @param width of the lines
     * @param strokes the lines
     * @return this drawing
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public ShapeGroup lines(double width, List<Stroke> strokes) throws com.sun.star.uno.Exception {
        ink(polyLine(strokes), width);
        return this;
    }

    /**
     * Draws thin gray lines, as on squared paper.
     *
     * @param strokes the lines
     * @return this drawing
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public ShapeGroup faintLines(List<Stroke> strokes) throws com.sun.star.uno.Exception {
        Object lines = polyLine(strokes);
        ink(lines, 0.1);
        Uno.set(lines, "LineColor", Palette.SQUARES);
        return this;
    }

    private Object polyLine(List<Stroke> strokes) throws com.sun.star.uno.Exception {
        Object lines = add("PolyLineShape");
        Uno.set(lines, "PolyPolygon", strokes.stream().map(Stroke::points).toArray(Point[][]::new));
        return lines;
    }

    /**
     * Draws the outline of a rectangle.
     *
     * @param x its left side
     * @param y its upper side
     * @param across how wide it is
     * @param down how high it is
     * @param round the radius of its corners
     * @return this drawing
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public ShapeGroup box(double x, double y, double across, double down, double round)
            throws com.sun.star.uno.Exception {
        Object box = place(add("RectangleShape"), x, y, across, down);
        Uno.set(box, "CornerRadius", hundredths(round));
        Uno.set(box, "FillStyle", FillStyle.NONE);
        ink(box, 0.5);
        return this;
    }

    /**
     * Draws a circle, white inside, so that it covers what was drawn before.
     *
     * @param x its middle
     * @param y its middle
     * @param radius its radius
     * @return this drawing
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public ShapeGroup circle(double x, double y, double radius) throws com.sun.star.uno.Exception {
        Object circle = place(add("EllipseShape"), x - radius, y - radius, 2 * radius, 2 * radius);
        Uno.set(circle, "FillStyle", FillStyle.SOLID);
        Uno.set(circle, "FillColor", Palette.PAPER);
        ink(circle, 0.5);
        return this;
    }

    /**
     * Writes a word or a number around a point.
     *
     * @param x the middle
     * @param y the middle
     * @param points the size of the type
     * @param words what is written
     * @return this drawing
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public ShapeGroup write(double x, double y, double points, String words) throws com.sun.star.uno.Exception {
        // A line of type is about as high as 0.5 mm for each point, and no letter is wider than that.
        double high = 0.5 * points;
        double wide = Math.max(2, words.length()) * high;
        Object text = place(add("TextShape"), x - wide / 2, y - high / 2, wide, high);
        Uno.as(XText.class, text).setString(words);
        Uno.setAll(
                text,
                Map.ofEntries(
                        Map.entry("TextLeftDistance", 0),
                        Map.entry("TextRightDistance", 0),
                        Map.entry("TextUpperDistance", 0),
                        Map.entry("TextLowerDistance", 0),
                        Map.entry("TextAutoGrowHeight", false),
                        Map.entry("TextAutoGrowWidth", false),
                        Map.entry("TextHorizontalAdjust", TextHorizontalAdjust.BLOCK),
                        Map.entry("TextVerticalAdjust", TextVerticalAdjust.CENTER),
                        Map.entry("ParaAdjust", ParagraphAdjust.CENTER),
                        Map.entry("CharFontName", StyleSheet.FONT),
                        Map.entry("CharHeight", (float) points),
                        Map.entry("CharWeight", FontWeight.BOLD),
                        Map.entry("CharColor", Palette.TEXT)));
        return this;
    }

    /**
     * Makes one thing of all that was drawn.
     *
     * @param title what it is
     * @param inWords what it shows, for somebody who cannot see it
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    public void finish(String title, String inWords) throws com.sun.star.uno.Exception {
        Object group = Uno.as(XShapeGrouper.class, paper).group(parts);
        Uno.set(group, "Title", title);
        Uno.set(group, "Description", inWords);
        Uno.set(group, "MoveProtect", true);
        Uno.set(group, "SizeProtect", true);
    }

    private Object add(String kind) throws com.sun.star.uno.Exception {
        XShape shape = Uno.as(XShape.class, Uno.make(page.document(), "com.sun.star.drawing." + kind));
        paper.add(shape);
        parts.add(shape);
        return shape;
    }

    private static Object place(Object object, double x, double y, double across, double down)
            throws com.sun.star.uno.Exception {
        XShape shape = Uno.as(XShape.class, object);
        shape.setPosition(at(x, y));
        try {
            shape.setSize(new Size(hundredths(across), hundredths(down)));
        } catch (com.sun.star.beans.PropertyVetoException e) {
            throw new IllegalStateException("The office lets no shape be sized", e);
        }
        return shape;
    }

    private static void ink(Object shape, double width) throws com.sun.star.uno.Exception {
        Uno.setAll(
                shape, Map.of("LineStyle", LineStyle.SOLID, "LineColor", Palette.TEXT, "LineWidth", hundredths(width)));
    }

    private static Point at(double x, double y) {
        return new Point(hundredths(x), hundredths(y));
    }

    private static int hundredths(double millimeters) {
        return (int) Math.round(millimeters * HUNDREDTHS);
    }
}
