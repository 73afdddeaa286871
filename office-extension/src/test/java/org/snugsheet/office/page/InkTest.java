package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Jars can be told apart without any colour, and every line is seen on white paper. */
class InkTest {

    /** WCAG 2.2, success criterion 1.4.11: graphics need a contrast of 3 to 1. */
    private static final double CONTRAST = 3;

    @Test
    void noTwoJarsShareASymbolOrAKindOfLine() {
        Set<Integer> symbols = new HashSet<>();
        Set<String> lines = new HashSet<>();
        for (Ink ink : Ink.forJars()) {
            symbols.add(ink.symbol());
            lines.add(
                    ink.isFullLine()
                            ? "full"
                            : ink.pattern().DashLen + " " + ink.pattern().Distance + " " + ink.pattern().DotLen);
        }
        assertEquals(Ink.forJars().size(), symbols.size());
        assertEquals(Ink.forJars().size(), lines.size());
    }

    @Test
    void everyLineStandsOutFromThePaper() {
        for (Ink ink : Ink.forJars()) {
            assertTrue(1.05 / (luminance(ink.colour()) + 0.05) >= CONTRAST, ink.name());
        }
    }

    /** WCAG 2.2, relative luminance. */
    private static double luminance(int colour) {
        return 0.2126 * linear(colour >> 16) + 0.7152 * linear(colour >> 8) + 0.0722 * linear(colour);
    }

    private static double linear(int eightBits) {
        double part = (eightBits & 0xFF) / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
