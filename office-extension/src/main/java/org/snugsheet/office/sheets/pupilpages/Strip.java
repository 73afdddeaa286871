package org.snugsheet.office.sheets.pupilpages;

import java.util.ArrayList;
import java.util.List;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.office.page.Page;
import org.snugsheet.office.sheets.builder.Book;
import org.snugsheet.office.sheets.builder.ShapeGroup;

/**
 * An empty thermometer to color in: °C on its left, °F on its right, both on the same height.
 *
 * @param lowest the lowest mark, in °C
 * @param highest the highest mark, in °C
 * @param degree how many millimeters one °C is high
 * @param points the size of the numbers
 */
record Strip(int lowest, int highest, double degree, double points) {

    private static final double TUBE = 9;
    private static final double BULB = 7;
    // As warm as pupils may have it; the source is in the engine’s SafeStart.
    private static final double SAFE = 43;

    /** How much room it takes downwards, in millimeters. */
    double height() {
        return head() + (highest - lowest) * degree + 2 * BULB + 1;
    }

    private double head() {
        return points * 0.7;
    }

    /**
     * Draws one.
     *
     * @param book the document
     * @param page the page
     * @param middle the middle of its tube, in millimeters from the left
     * @param top its upper end
     * @throws com.sun.star.uno.Exception if the office refuses
     */
    void draw(Book book, Page page, double middle, double top) throws com.sun.star.uno.Exception {
        double first = top + head();
        double last = first + (highest - lowest) * degree;
        ShapeGroup drawing = ShapeGroup.on(book, page);
        drawing.box(middle - TUBE / 2, first - 3, TUBE, last - first + 3 + BULB, TUBE / 2);
        drawing.circle(middle, last + BULB, BULB);
        ticks(drawing, middle, last, Scale.CELSIUS, -1, 1, 5);
        ticks(drawing, middle, last, Scale.FAHRENHEIT, 1, 2, 10);
        double numbers = TUBE / 2 + 4 + points * 0.4;
        drawing.write(middle - numbers, top + 1, points, "°C").write(middle + numbers, top + 1, points, "°F");
        stop(drawing, middle, last - (SAFE - lowest) * degree);
        drawing.finish(
                "A thermometer to color in",
                "An empty thermometer from " + lowest + " to " + highest
                        + " °C, with °C on the left and °F on the right,"
                        + " and a line across at 43 °C (109 °F): no warmer than that.");
    }

    private void ticks(ShapeGroup drawing, double middle, double bottom, Scale scale, int side, int step, int longStep)
            throws com.sun.star.uno.Exception {
        List<ShapeGroup.Stroke> fine = new ArrayList<>();
        List<ShapeGroup.Stroke> bold = new ArrayList<>();
        int from = (int) Math.ceil(new Temperature(lowest).in(scale) / step) * step;
        int to = (int) Math.floor(new Temperature(highest).in(scale));
        double edge = middle + side * TUBE / 2;
        for (int mark = from; mark <= to; mark += step) {
            double y = bottom - (Temperature.of(mark, scale).celsius() - lowest) * degree;
            boolean isLong = Math.floorMod(mark, longStep) == 0;
            (isLong ? bold : fine).add(new ShapeGroup.Stroke(edge, y, edge + side * (isLong ? 3.5 : 2), y));
            if (isLong) {
                drawing.write(
                        edge + side * (4 + points * 0.4),
                        y,
                        points,
                        String.valueOf(mark).replace('-', '−'));
            }
        }
        drawing.lines(0.15, fine).lines(0.4, bold);
    }

    private static void stop(ShapeGroup drawing, double middle, double y) throws com.sun.star.uno.Exception {
        drawing.lines(0.9, List.of(new ShapeGroup.Stroke(middle - TUBE / 2, y, middle + TUBE / 2, y)));
        drawing.write(middle, y - 3.5, 14, "!");
    }
}
