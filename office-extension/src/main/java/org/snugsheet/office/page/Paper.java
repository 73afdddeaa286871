package org.snugsheet.office.page;

import java.util.Locale;

/** What is in the printer (ISO 216; ANSI/ASME Y14.1 for Letter). Lengths in 1/100 mm. */
public enum Paper {
    /** A4, 210 mm by 297 mm. */
    A4(21000, 29700),
    /** US Letter, 8.5 in by 11 in. */
    LETTER(21590, 27940);

    /** Files round inches and millimeters. */
    private static final int AS_WIDE = 100;

    private final int shortSide;
    private final int longSide;

    Paper(int shortSide, int longSide) {
        this.shortSide = shortSide;
        this.longSide = longSide;
    }

    /**
     * The paper of a name.
     *
     * @param name {@code a4} or {@code letter}
     * @return the paper
     * @throws IllegalArgumentException if there is no such paper
     */
    public static Paper named(String name) {
        return valueOf(name.toUpperCase(Locale.ROOT));
    }

    /**
     * The paper that is as wide as somebody’s; A4 if it is another one.
     *
     * @param shortSide the short side of somebody’s paper
     * @return the paper
     */
    public static Paper withShortSide(int shortSide) {
        return Math.abs(shortSide - LETTER.shortSide) < AS_WIDE ? LETTER : A4;
    }

    /**
     * What it is called, in small letters.
     *
     * @return the name
     */
    public String shortName() {
        return name().toLowerCase(Locale.ROOT);
    }

    int width(boolean lying) {
        return lying ? longSide : shortSide;
    }

    int height(boolean lying) {
        return lying ? shortSide : longSide;
    }
}
