package org.snugsheet.office.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The pictures of the menu can be seen on light and on dark menus, and no two are alike. */
class MenuPicturesTest {

    private static final Path EXTENSION = Path.of("src", "main", "oxt");

    /** WCAG 2.2, success criterion 1.4.11: graphics need a contrast of 3 to 1. */
    private static final double CONTRAST = 3;

    /** A light and a dark menu. */
    private static final Color LIGHT = new Color(0xFAFAFA);

    private static final Color DARK = new Color(0x2B2B2B);

    @Test
    void theUsualColorsStandOutFromLightAndDark() throws IOException {
        for (MenuLine line : MenuLine.all()) {
            for (int size : MenuLine.PICTURE_SIZES) {
                for (Color color : solidColors(line, size, false)) {
                    assertTrue(contrast(color, LIGHT) >= CONTRAST, line.name() + " " + color);
                    assertTrue(contrast(color, DARK) >= CONTRAST, line.name() + " " + color);
                }
                for (Color color : solidColors(line, size, true)) {
                    assertTrue(contrast(color, Color.BLACK) >= 2 * CONTRAST, line.name() + " " + color);
                }
            }
        }
    }

    @Test
    void noTwoPicturesAreAlikeAndNoneIsEmpty() throws IOException {
        for (boolean highContrast : new boolean[] {false, true}) {
            for (int size : MenuLine.PICTURE_SIZES) {
                Set<Integer> seen = new HashSet<>();
                for (MenuLine line : MenuLine.all()) {
                    int[] pixels = pixels(line.picture(size, highContrast), size);
                    assertTrue(Arrays.stream(pixels).filter(pixel -> pixel != 0).count() > size, line.name());
                    seen.add(Arrays.hashCode(pixels));
                }
                assertEquals(MenuLine.all().size(), seen.size());
            }
        }
    }

    /** The Extension Manager asks for 42 by 42 pixels. */
    @Test
    void thePicturesOfTheExtensionHaveTheSizeAskedFor() throws IOException {
        for (String path : List.of("icons/icon.png", "icons/icon-high-contrast.png")) {
            assertTrue(Arrays.stream(pixels(path, 42)).anyMatch(pixel -> pixel != 0), path);
        }
    }

    /** The colors that nothing shines through; at smooth edges the menu does. */
    private static List<Color> solidColors(MenuLine line, int size, boolean highContrast) throws IOException {
        List<Color> colors = Arrays.stream(pixels(line.picture(size, highContrast), size))
                .mapToObj(pixel -> new Color(pixel, true))
                .filter(color -> color.getAlpha() == 255)
                .distinct()
                .toList();
        assertTrue(colors.size() >= 2, line.name() + ": lines and wrap");
        return colors;
    }

    private static int[] pixels(String path, int size) throws IOException {
        BufferedImage image = ImageIO.read(EXTENSION.resolve(path).toFile());
        assertEquals(size, image.getWidth(), path);
        assertEquals(size, image.getHeight(), path);
        return image.getRGB(0, 0, size, size, null, 0, size);
    }

    private static double contrast(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** WCAG 2.2, relative luminance. */
    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int eightBits) {
        double part = eightBits / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
