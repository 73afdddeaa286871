package org.snugsheet.office.sheets.builder;

import com.sun.star.drawing.Hatch;
import com.sun.star.drawing.HatchStyle;
import org.snugsheet.office.page.Palette;

/**
 * How one part of a {@link StackedBar} is filled: light and dark by turns, and every other one ruled with lines, so that a
 * gray print and a color-blind reader can tell each part from its neighbors.
 *
 * <p>The colors are from M. Okabe and K. Ito, Color Universal Design (2002, revised 2008), with a gray for the dark wall of a
 * jar and white for air.
 */
enum Fill {
    SKY_BLUE(0x56B4E9, 0, 0, false),
    DARK_GRAY(0x4A4A4A, 0, 0, false),
    ORANGE(0xE69F00, 450, 120, false),
    BLUE(0x0072B2, 0, 0, false),
    YELLOW(0xF0E442, 1350, 120, false),
    VERMILION(0xD55E00, 900, 120, true),
    PALE_PURPLE(0xE6BFD5, 0, 0, false),
    WHITE(0xFFFFFF, 900, 180, false);

    private final int color;
    private final int angle;
    private final int distance;
    private final boolean crossed;

    // The angle in tenths of a degree, the distance of the lines in 1/100 mm; a distance of 0 is no lines.
    Fill(int color, int angle, int distance, boolean crossed) {
        this.color = color;
        this.angle = angle;
        this.distance = distance;
        this.crossed = crossed;
    }

    int color() {
        return color;
    }

    boolean isRuled() {
        return distance > 0;
    }

    /** The lines of a part that is ruled. */
    Hatch lines() {
        return new Hatch(crossed ? HatchStyle.DOUBLE : HatchStyle.SINGLE, Palette.TEXT, distance, angle);
    }
}
