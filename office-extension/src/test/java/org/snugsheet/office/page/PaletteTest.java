package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The colors of the pages can be read (WCAG 2.2). */
class PaletteTest {

    /** WCAG 2.2: black on white is 21, the largest there is; #777777 on white falls just short of 4.5, at 4.48 (from memory). */
    @Test
    void contrastIsThatOfTheStandard() {
        assertEquals(21, Contrast.between(0x000000, 0xFFFFFF), 1e-9);
        assertEquals(4.48, Contrast.between(0x777777, 0xFFFFFF), 0.005);
    }

    @ParameterizedTest
    @ValueSource(ints = {Palette.TEXT, Palette.QUIET, Palette.HEADING})
    void wordsStandOutFromEveryPaper(int words) {
        for (int paper : new int[] {Palette.PAPER, Palette.INPUT_PAPER, Palette.CAUTION_PAPER}) {
            assertTrue(
                    Contrast.between(words, paper) >= Contrast.OF_TEXT,
                    Integer.toHexString(words) + " on " + Integer.toHexString(paper));
        }
    }

    @Test
    void aCautionStandsOutFromItsPaper() {
        assertTrue(Contrast.between(Palette.CAUTION, Palette.CAUTION_PAPER) >= Contrast.OF_TEXT);
        assertTrue(Contrast.between(Palette.CAUTION, Palette.PAPER) >= Contrast.OF_TEXT);
    }

    @Test
    void theBoxOfACellToTypeIntoIsSeen() {
        assertTrue(Contrast.between(Palette.INPUT_FRAME, Palette.PAPER) >= Contrast.OF_GRAPHICS);
        assertTrue(Contrast.between(Palette.SQUARES, Palette.PAPER) >= Contrast.OF_GRAPHICS);
    }
}
