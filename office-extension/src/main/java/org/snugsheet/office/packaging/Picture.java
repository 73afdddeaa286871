package org.snugsheet.office.packaging;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.imageio.ImageIO;

/** Small square pictures, drawn by the build and never by hand. */
final class Picture {

    private Picture() {}

    /** Draws with smooth edges on a ground that can be seen through. */
    static BufferedImage drawn(int size, Consumer<Graphics2D> drawing) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        drawing.accept(pen);
        pen.dispose();
        return image;
    }

    /** A line with round ends. */
    static BasicStroke round(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    static void write(BufferedImage image, Path file) throws IOException {
        Files.createDirectories(file.getParent());
        try (OutputStream out = Files.newOutputStream(file)) {
            ImageIO.write(image, "png", out);
        }
    }
}
