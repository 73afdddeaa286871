package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Jars can be told apart without any colour, and every line is seen on white paper. */
class InkTest {

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
            assertTrue(Contrast.between(ink.colour(), Palette.PAPER) >= Contrast.OF_GRAPHICS, ink.name());
        }
    }
}
