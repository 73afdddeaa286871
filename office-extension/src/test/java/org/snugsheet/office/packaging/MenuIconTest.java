package org.snugsheet.office.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The pictures of the menu can be seen on light and on dark menus, and no two are alike. */
class MenuIconTest {

    /** WCAG 2.2, success criterion 1.4.11: graphics need a contrast of 3 to 1. */
    private static final double CONTRAST = 3;

    /** A light and a dark menu. */
    private static final Color LIGHT = new Color(0xFAFAFA);

    private static final Color DARK = new Color(0x2B2B2B);

    @Test
    void theUsualColoursStandOutFromLightAndDark() {
        for (Color colour : MenuIcon.Ground.ANY.colours()) {
            assertTrue(contrast(colour, LIGHT) >= CONTRAST, colour.toString());
            assertTrue(contrast(colour, DARK) >= CONTRAST, colour.toString());
        }
        for (Color colour : MenuIcon.Ground.HIGH_CONTRAST.colours()) {
            assertTrue(contrast(colour, Color.BLACK) >= 2 * CONTRAST, colour.toString());
        }
    }

    @Test
    void noTwoPicturesAreAlikeAndNoneIsEmpty() {
        for (MenuIcon.Ground ground : MenuIcon.Ground.values()) {
            for (int size : MenuIcon.SIZES) {
                Set<Integer> seen = new HashSet<>();
                for (MenuLine line : MenuLine.all()) {
                    BufferedImage image = MenuIcon.drawn(line, size, ground);
                    int[] pixels = image.getRGB(0, 0, size, size, null, 0, size);
                    assertTrue(Arrays.stream(pixels).filter(pixel -> pixel != 0).count() > size, line.name());
                    seen.add(Arrays.hashCode(pixels));
                }
                assertEquals(MenuLine.all().size(), seen.size());
            }
        }
    }

    private static double contrast(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** WCAG 2.2, relative luminance. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int eightBits) {
        double part = eightBits / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
