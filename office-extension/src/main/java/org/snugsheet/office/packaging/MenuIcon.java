package org.snugsheet.office.packaging;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.snugsheet.office.menu.MenuItem;

/**
 * The pictures beside the lines of our menu, our own drawings on a square of 24 by 24.
 *
 * <p>The office asks for one picture whether its menus are light or dark, so the usual colours stand out from both; for an office
 * in high contrast there are brighter ones.
 */
final class MenuIcon {

    /** Sizes the office asks for, in pixels: in menus, and large. */
    static final List<Integer> SIZES = List.of(16, 26);

    private static final double GRID = 24;
    private static final double WIDTH = 2.1;

    /** The colours of a picture. */
    enum Ground {
        /** Menus as most people have them, light or dark. */
        ANY("", 0x4A86B8, 0xC9702E),
        /** White on black. */
        HIGH_CONTRAST("h", 0xFFFFFF, 0xFFD23F);

        private final String ending;
        private final Color line;
        private final Color wrap;

        Ground(String ending, int line, int wrap) {
            this.ending = ending;
            this.line = new Color(line);
            this.wrap = new Color(wrap);
        }

        List<Color> colours() {
            return List.of(line, wrap);
        }
    }

    private MenuIcon() {}

    /** Where a picture is in the extension. */
    static String path(MenuLine line, int size, Ground ground) {
        return "icons/menu/" + line.name() + "_" + size + ground.ending + ".png";
    }

    static void writeAll(Path folder) throws IOException {
        for (MenuLine line : MenuLine.all()) {
            for (Ground ground : Ground.values()) {
                for (int size : SIZES) {
                    Picture.write(drawn(line, size, ground), folder.resolve(path(line, size, ground)));
                }
            }
        }
    }

    static BufferedImage drawn(MenuLine line, int size, Ground ground) {
        return Picture.drawn(size, pen -> {
            pen.scale(size / GRID, size / GRID);
            pen.setStroke(Picture.round(WIDTH));
            Drawing drawing = new Drawing(pen, ground);
            line.item().ifPresentOrElse(drawing::of, drawing::ofSetUp);
        });
    }

    private record Drawing(Graphics2D pen, Ground ground) {

        void of(MenuItem item) {
            switch (item) {
                case LAY_OUT -> {
                    sheet(2, 2, 20, 20);
                    line(2, 8, 22, 8);
                    line(9, 8, 9, 22);
                    wrap(new Rectangle2D.Double(12, 11.5, 7, 7));
                }
                case DRAW -> {
                    line(3, 2, 3, 21);
                    line(3, 21, 22, 21);
                    Path2D curve = new Path2D.Double();
                    curve.moveTo(6, 4);
                    curve.curveTo(8.5, 13, 13, 16, 21, 16.5);
                    outline(curve, ground.wrap);
                    dot(7, 7.2);
                    dot(11.5, 13.4);
                    dot(18, 16.4);
                }
                case EXPLAIN -> {
                    jar(2, 8, 11, 14);
                    Path2D ask = new Path2D.Double();
                    ask.moveTo(15.5, 5.5);
                    ask.curveTo(15.5, 1.2, 22, 1.2, 22, 5.2);
                    ask.curveTo(22, 8.2, 18.8, 8.2, 18.8, 12);
                    outline(ask, ground.line);
                    dot(18.8, 16.8);
                }
                case TABLE -> {
                    wrap(new Rectangle2D.Double(3, 3, 8, 6));
                    line(13.5, 6, 21, 6);
                    sheet(2, 2, 20, 20);
                    line(2, 12, 22, 12);
                    line(12, 12, 12, 22);
                    line(2, 17, 22, 17);
                }
                case SHARE -> {
                    sheet(2, 2, 12, 13.5);
                    outline(new Line2D.Double(9, 19.9, 21.5, 19.9), ground.wrap);
                    arrow(21.5, 19.9, -4);
                }
                case BRING_BACK -> {
                    sheet(10, 2, 12, 13.5);
                    outline(new Line2D.Double(2.5, 19.9, 15, 19.9), ground.wrap);
                    arrow(2.5, 19.9, 4);
                }
                case REFERENCE -> {
                    page(12, 2);
                    page(12, 22);
                    wrap(new Rectangle2D.Double(14.8, 9, 4.4, 3));
                }
                case CAUTIONS -> {
                    Path2D triangle = new Path2D.Double();
                    triangle.moveTo(12, 2.5);
                    triangle.lineTo(22, 20.5);
                    triangle.lineTo(2, 20.5);
                    triangle.closePath();
                    outline(triangle, ground.wrap);
                    line(12, 9.5, 12, 13.5);
                    dot(12, 17.2);
                }
            }
        }

        /** A tick in a ring: it is there. */
        void ofSetUp() {
            outline(new Ellipse2D.Double(2, 2, 20, 20), ground.line);
            Path2D tick = new Path2D.Double();
            tick.moveTo(7, 12.5);
            tick.lineTo(10.8, 16.3);
            tick.lineTo(17, 8);
            outline(tick, ground.wrap);
        }

        private void sheet(double left, double top, double width, double height) {
            outline(new RoundRectangle2D.Double(left, top, width, height, 3, 3), ground.line);
        }

        /** A jar with its lid and a wrap round it. */
        private void jar(double left, double top, double width, double height) {
            wrap(new Rectangle2D.Double(left, top + 5, width, height - 8));
            outline(new RoundRectangle2D.Double(left, top, width, height, 4, 4), ground.line);
            line(left + 1.5, top - 3.5, left + width - 1.5, top - 3.5);
        }

        /** One half of an open book. */
        private void page(double spine, double edge) {
            Path2D half = new Path2D.Double();
            half.moveTo(spine, 6);
            half.quadTo((spine + edge) / 2, 2.5, edge, 4.5);
            half.lineTo(edge, 19.5);
            half.quadTo((spine + edge) / 2, 17.5, spine, 21);
            half.closePath();
            outline(half, ground.line);
        }

        /** The head of an arrow; back leads from its tip to its shaft. */
        private void arrow(double x, double y, double back) {
            outline(new Line2D.Double(x, y, x + back, y - 3), ground.wrap);
            outline(new Line2D.Double(x, y, x + back, y + 3), ground.wrap);
        }

        private void line(double fromX, double fromY, double toX, double toY) {
            outline(new Line2D.Double(fromX, fromY, toX, toY), ground.line);
        }

        private void dot(double x, double y) {
            pen.setColor(ground.line);
            pen.fill(new Ellipse2D.Double(x - 1.9, y - 1.9, 3.8, 3.8));
        }

        private void outline(Shape shape, Color colour) {
            pen.setColor(colour);
            pen.draw(shape);
        }

        private void wrap(Shape shape) {
            pen.setColor(ground.wrap);
            pen.fill(shape);
        }
    }
}
