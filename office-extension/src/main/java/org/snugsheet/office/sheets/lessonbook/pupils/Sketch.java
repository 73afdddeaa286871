package org.snugsheet.office.sheets.lessonbook.pupils;

import com.sun.star.awt.Point;
import com.sun.star.drawing.LineStyle;
import com.sun.star.drawing.PolyPolygonBezierCoords;
import com.sun.star.drawing.PolygonFlags;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.drawing.XShapes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.page.Palette;
import org.snugsheet.office.uno.Uno;

/**
 * A line drawing on a page. All of its strokes are one shape, for a book has pages of a dozen groups, and the office is slow with many
 * shapes. Places and lengths are in millimeters from the upper left corner of the page.
 */
final class Sketch {

    private static final int HUNDREDTHS = 100;
    private static final int LINE = 40;
    // How far the control points of a quarter of a circle are from its ends, as a share of the radius.
    private static final double QUARTER = 0.5523;

    private final List<Point[]> strokes = new ArrayList<>();
    private final List<PolygonFlags[]> flags = new ArrayList<>();

    /** Straight lines from point to point, given as x, y, x, y, … */
    Sketch line(double... places) {
        Point[] points = new Point[places.length / 2];
        PolygonFlags[] kinds = new PolygonFlags[points.length];
        for (int i = 0; i < points.length; i++) {
            points[i] = at(places[2 * i], places[2 * i + 1]);
            kinds[i] = PolygonFlags.NORMAL;
        }
        return add(points, kinds);
    }

    /** Curves: a point, then for each curve two control points and its end, given as x, y, x, y, … */
    Sketch curve(double... places) {
        Point[] points = new Point[places.length / 2];
        PolygonFlags[] kinds = new PolygonFlags[points.length];
        for (int i = 0; i < points.length; i++) {
            points[i] = at(places[2 * i], places[2 * i + 1]);
            kinds[i] = i % 3 == 0 ? PolygonFlags.NORMAL : PolygonFlags.CONTROL;
        }
        return add(points, kinds);
    }

    /** A circle around a point. */
    Sketch circle(double x, double y, double radius) {
        double c = QUARTER * radius;
        double r = radius;
        return curve(
                x, y - r, x + c, y - r, x + r, y - c, x + r, y, x + r, y + c, x + c, y + r, x, y + r, x - c, y + r,
                x - r, y + c, x - r, y, x - r, y - c, x - c, y - r, x, y - r);
    }

    /** A rectangle with round corners. */
    Sketch box(double x, double y, double across, double down, double round) {
        double right = x + across;
        double bottom = y + down;
        double c = round * (1 - QUARTER);
        corner(x, y + round, x, y + c, x + c, y, x + round, y);
        corner(right - round, y, right - c, y, right, y + c, right, y + round);
        corner(right, bottom - round, right, bottom - c, right - c, bottom, right - round, bottom);
        corner(x + round, bottom, x + c, bottom, x, bottom - c, x, bottom - round);
        line(x + round, y, right - round, y).line(x + round, bottom, right - round, bottom);
        return line(x, y + round, x, bottom - round).line(right, y + round, right, bottom - round);
    }

    private void corner(double... places) {
        curve(places);
    }

    private Sketch add(Point[] points, PolygonFlags[] kinds) {
        strokes.add(points);
        flags.add(kinds);
        return this;
    }

    /**
     * Puts it on a page.
     *
     * @param page the page
     * @param title what it is
     * @param inWords what it shows, for somebody who cannot see it
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    void finish(Page page, String title, String inWords) throws com.sun.star.uno.Exception {
        XShapes paper = Uno.as(
                XShapes.class, Uno.as(XDrawPageSupplier.class, page.sheet()).getDrawPage());
        Object shape = Uno.make(page.document(), "com.sun.star.drawing.OpenBezierShape");
        paper.add(Uno.as(XShape.class, shape));
        PolyPolygonBezierCoords path = new PolyPolygonBezierCoords();
        path.Coordinates = strokes.toArray(Point[][]::new);
        path.Flags = flags.toArray(PolygonFlags[][]::new);
        Uno.set(shape, "PolyPolygonBezier", path);
        Uno.setAll(
                shape,
                Map.of(
                        "LineStyle",
                        LineStyle.SOLID,
                        "LineColor",
                        Palette.TEXT,
                        "LineWidth",
                        LINE,
                        "Title",
                        title,
                        "Description",
                        inWords,
                        "MoveProtect",
                        true,
                        "SizeProtect",
                        true));
    }

    private static Point at(double x, double y) {
        return new Point((int) Math.round(x * HUNDREDTHS), (int) Math.round(y * HUNDREDTHS));
    }
}
