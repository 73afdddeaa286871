package org.snugsheet.office.page;

import com.sun.star.drawing.DashStyle;
import com.sun.star.drawing.LineDash;
import java.util.List;
import java.util.Locale;

/**
 * How one jar is drawn: a color, a symbol and a kind of line that differ from all others, so that a gray print and a
 * color-blind reader can tell them apart.
 *
 * <p>The colors are from M. Okabe and K. Ito, Color Universal Design (2002, revised 2008), those dark enough for a line.
 */
public enum SeriesColor {
    /** Black, circles, a full line. */
    BLACK(0x000000, 8, 0, 0, 0),
    /** Vermilion, squares, dashes. */
    VERMILION(0xD55E00, 0, 300, 120, 0),
    /** Blue, triangles, dashes and dots. */
    BLUE(0x0072B2, 3, 400, 120, 60),
    /** Bluish green, diamonds, dots. */
    GREEN(0x009E73, 1, 90, 90, 0),
    /** Reddish purple, darkened; crosses, long dashes. */
    PURPLE(0xA8467D, 10, 700, 160, 0),
    /** Ochre, triangles on their tips, even dashes. */
    OCHRE(0x946300, 2, 250, 250, 0),
    /** Sky blue, darkened; stars of lines, dashes and long dots. */
    SKY(0x2A7FB0, 12, 500, 100, 100),
    /** Slate, upright bars, sparse dots. */
    SLATE(0x4D4D4D, 14, 100, 250, 0),
    /** Wine, stars, long dashes and dots. */
    WINE(0x7B1E3B, 9, 700, 120, 60),
    /** Teal, triangles to the right, short dashes. */
    TEAL(0x1F6F6B, 4, 180, 90, 0),
    /** Brown, triangles to the left, long dashes far apart. */
    BROWN(0x6B4226, 5, 500, 300, 0),
    /** Indigo, lying bars, dots and long dots. */
    INDIGO(0x4B3F9E, 13, 90, 150, 250),
    /** Gray, no jar: for what the jars are compared with. */
    GRAY(0x6E6E6E, 11, 150, 150, 0);

    /** The office’s standard symbols, from 0 on. */
    private static final String SIGNS = "■◆▼▲▶◀⋈⧗●★✖✚✱▬▮";

    private final int color;
    private final int symbol;
    private final int dash;
    private final int gap;
    private final int dot;

    // Lengths in 1/100 mm; a dash of 0 is a solid line, a dot of 0 is no dot.
    SeriesColor(int color, int symbol, int dash, int gap, int dot) {
        this.color = color;
        this.symbol = symbol;
        this.dash = dash;
        this.gap = gap;
        this.dot = dot;
    }

    /**
     * Those for jars, in the order in which they are given out.
     *
     * @return the inks
     */
    public static List<SeriesColor> forJars() {
        return List.of(BLACK, VERMILION, BLUE, GREEN, PURPLE, OCHRE, SKY, SLATE, WINE, TEAL, BROWN, INDIGO);
    }

    int color() {
        return color;
    }

    /**
     * Its symbol as a letter, for a legend in cells.
     *
     * @return a sign of Unicode that looks like the office’s symbol
     */
    public String sign() {
        return SIGNS.substring(symbol, symbol + 1);
    }

    /** The number of the office’s standard symbol. */
    int symbol() {
        return symbol;
    }

    boolean isFullLine() {
        return dash == 0;
    }

    /** The name of its pattern in a document. Files hold it, so it keeps the spelling it was given first. */
    String patternName() {
        return "Snug " + (this == GRAY ? "grey" : name().toLowerCase(Locale.ROOT));
    }

    /** The pattern of a line that is not full. */
    LineDash pattern() {
        LineDash pattern = new LineDash();
        pattern.Style = DashStyle.RECT;
        pattern.Dashes = 1;
        pattern.DashLen = dash;
        pattern.Distance = gap;
        pattern.Dots = (short) (dot > 0 ? 1 : 0);
        pattern.DotLen = dot;
        return pattern;
    }
}
