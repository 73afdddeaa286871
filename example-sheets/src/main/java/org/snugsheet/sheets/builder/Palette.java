package org.snugsheet.sheets.builder;

/** The colours of the pages, as 0xRRGGBB. All text is dark enough on its ground to be read in a grey print too. */
final class Palette {
    static final int TEXT = 0x1A1A1A;
    static final int QUIET = 0x4A4A4A;
    static final int HEADING = 0x17375E;
    static final int RULE = 0xB8C2CC;
    static final int INPUT_PAPER = 0xFFF6D5;
    static final int INPUT_FRAME = 0x7A6A2F;
    static final int CAUTION_PAPER = 0xFDEDE3;
    static final int CAUTION = 0x9C2A00;
    static final int GRID = 0xD9D9D9;

    private Palette() {}
}
