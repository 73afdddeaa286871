package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Jars can be told apart without any color, and every line is seen on white paper. */
class SeriesColorTest {

    @Test
    void noTwoJarsShareASymbolOrAKindOfLine() {
        Set<Integer> symbols = new HashSet<>();
        Set<String> lines = new HashSet<>();
        for (SeriesColor ink : SeriesColor.forJars()) {
            symbols.add(ink.symbol());
            lines.add(
                    ink.isFullLine()
                            ? "full"
                            : ink.pattern().DashLen + " " + ink.pattern().Distance + " " + ink.pattern().DotLen);
        }
        assertEquals(SeriesColor.forJars().size(), symbols.size());
        assertEquals(SeriesColor.forJars().size(), lines.size());
    }

    @Test
    void everyLineStandsOutFromThePaper() {
        for (SeriesColor ink : SeriesColor.forJars()) {
            assertTrue(Contrast.between(ink.color(), Palette.PAPER) >= Contrast.OF_GRAPHICS, ink.name());
        }
    }
}
