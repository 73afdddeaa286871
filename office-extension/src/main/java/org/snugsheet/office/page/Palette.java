package org.snugsheet.office.page;

/** The colors of the pages, as 0xRRGGBB. All text is dark enough on its background to be read in a gray print too. */
public final class Palette {
    /** Paper. */
    public static final int PAPER = 0xFFFFFF;

    /** Words and numbers. */
    public static final int TEXT = 0x1A1A1A;

    /** Remarks. */
    public static final int QUIET = 0x4A4A4A;

    /** Headings and their rules. */
    public static final int HEADING = 0x1B3A4B;

    /** Lines between rows. */
    public static final int RULE = 0xB8C2CC;

    /** The ground of a cell to type into. */
    public static final int INPUT_PAPER = 0xFFF6D5;

    /** Its box. */
    public static final int INPUT_FRAME = 0x7A6A2F;

    /** The ground of a caution. */
    public static final int CAUTION_PAPER = 0xFDEDE3;

    /** Its words and its box. */
    public static final int CAUTION = 0x9C2A00;

    /** Lines behind a chart. */
    public static final int GRID = 0xD4DADF;

    /** The filled boxes of a graph: blue of M. Okabe and K. Ito, Color Universal Design (2008), dark in a gray print. */
    public static final int FILLED = 0x0072B2;

    /** Lines of squared paper. */
    public static final int SQUARES = 0x8C8C8C;

    private Palette() {}
}
