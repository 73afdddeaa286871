package org.snugsheet.office.page;

/** How well a color stands out, by WCAG 2.2. */
final class Contrast {

    /** Success criterion 1.4.3: text of any size on its ground. */
    static final double OF_TEXT = 4.5;

    /** Success criterion 1.4.11: what one must see to read a chart or find a box. */
    static final double OF_GRAPHICS = 3;

    private Contrast() {}

    /** The contrast ratio of two colors, 1 to 21. */
    static double between(int one, int other) {
        double brighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (brighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(int color) {
        return 0.2126 * linear(color >> 16) + 0.7152 * linear(color >> 8) + 0.0722 * linear(color);
    }

    private static double linear(int eightBits) {
        double part = (eightBits & 0xFF) / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
