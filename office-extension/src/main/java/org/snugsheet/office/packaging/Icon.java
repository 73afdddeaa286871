package org.snugsheet.office.packaging;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.io.IOException;
import java.nio.file.Path;

/** The picture of this extension in the Extension Manager: a jar in a striped wrap with a thermometer in it, our own drawing. */
enum Icon {
    /** On a light ground. */
    DEFAULT("icons/icon.png", 0x35506B, 0xBFE0F2, 0xD9622B, 0xF6C18B, 0xB83A26),
    /** For an office in high contrast: light lines on a dark ground. */
    HIGH_CONTRAST("icons/icon-high-contrast.png", 0xFFFFFF, 0x24506B, 0xFFD23F, 0x000000, 0xFFFFFF);

    /** What the office asks for: 42 by 42 pixels. */
    static final int SIZE = 42;

    private final String path;
    private final Color line;
    private final Color water;
    private final Color wrap;
    private final Color stripe;
    private final Color mercury;

    Icon(String path, int line, int water, int wrap, int stripe, int mercury) {
        this.path = path;
        this.line = new Color(line);
        this.water = new Color(water);
        this.wrap = new Color(wrap);
        this.stripe = new Color(stripe);
        this.mercury = new Color(mercury);
    }

    /** Where it is in the extension. */
    String path() {
        return path;
    }

    void writeInto(Path folder) throws IOException {
        Picture.write(Picture.drawn(SIZE, this::draw), folder.resolve(path));
    }

    private void draw(Graphics2D pen) {
        Shape jar = new RoundRectangle2D.Double(8, 10, 26, 29, 9, 9);
        pen.setColor(water);
        pen.fill(jar);
        thermometer(pen);
        wrap(pen, jar);
        stroke(pen, line, 2, jar);
        pen.fill(new RoundRectangle2D.Double(9, 7, 24, 5, 3, 3));
    }

    private void thermometer(Graphics2D pen) {
        Line2D glass = new Line2D.Double(26, 3, 22, 22);
        stroke(pen, line, 5, glass);
        stroke(pen, mercury.equals(line) ? Color.BLACK : Color.WHITE, 2.8, glass);
        stroke(pen, mercury, 1.4, new Line2D.Double(24.5, 10, 22, 22));
    }

    private static void stroke(Graphics2D pen, Color color, double width, Shape shape) {
        pen.setColor(color);
        pen.setStroke(Picture.round(width));
        pen.draw(shape);
    }

    private void wrap(Graphics2D pen, Shape jar) {
        pen.clip(jar);
        pen.setColor(wrap);
        pen.fill(new Rectangle2D.Double(8, 19, 26, 20));
        for (int y = 23; y < 39; y += 6) {
            Path2D wave = new Path2D.Double();
            wave.moveTo(7, y);
            wave.curveTo(13, y - 4, 16, y + 4, 21, y);
            wave.curveTo(26, y - 4, 29, y + 4, 35, y);
            stroke(pen, stripe, 2, wave);
        }
        pen.setClip(null);
    }
}
