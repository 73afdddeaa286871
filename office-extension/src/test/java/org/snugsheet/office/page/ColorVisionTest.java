package org.snugsheet.office.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The pages can be read by people who see fewer colors.
 *
 * <p>How they see them: G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, A Physiologically-based Model for Simulation of Color
 * Vision Deficiency, IEEE Trans. Vis. Comput. Graph. 15 (2009) 1291, the matrices of severity 1 for linear RGB (from memory). How much
 * two colors differ: CIE 1976 L*a*b* (ISO/CIE 11664-4); one that is just seen is about 2.3 (Mahy, Van Eycken and Oosterlinck, Color Res.
 * Appl. 19 (1994) 105, from memory).
 */
class ColorVisionTest {

    private static final double JUST_SEEN = 2.3;

    /** Lines this far apart are told apart at a glance: common practice, no source. */
    private static final double AT_A_GLANCE = 15;

    private enum Vision {
        USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
        PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
        DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
        TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

        @SuppressWarnings("ImmutableEnumChecker") // written once, and read here only
        private final double[] matrix;

        Vision(double... matrix) {
            this.matrix = matrix;
        }

        double[] sees(int color) {
            double[] linear = {linear(color >> 16), linear(color >> 8), linear(color)};
            double[] seen = new double[3];
            for (int i = 0; i < 3; i++) {
                double sum = 0;
                for (int j = 0; j < 3; j++) {
                    sum += matrix[3 * i + j] * linear[j];
                }
                seen[i] = Math.min(1, Math.max(0, sum));
            }
            return seen;
        }

        double contrast(int one, int other) {
            double first = luminance(sees(one));
            double second = luminance(sees(other));
            return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
        }

        double difference(int one, int other) {
            double[] first = lab(sees(one));
            double[] second = lab(sees(other));
            return Math.sqrt(Math.pow(first[0] - second[0], 2)
                    + Math.pow(first[1] - second[1], 2)
                    + Math.pow(first[2] - second[2], 2));
        }
    }

    /** White and grays look the same to everybody, so each row of a matrix adds up to 1. */
    @ParameterizedTest
    @EnumSource(Vision.class)
    void graysStayGrays(Vision vision) {
        for (int row = 0; row < 3; row++) {
            double sum = vision.matrix[3 * row] + vision.matrix[3 * row + 1] + vision.matrix[3 * row + 2];
            assertEquals(1, sum, 2e-6);
        }
    }

    /** Red and green of equal lightness, the classic pair, are nearly one color without the long or the middle cones. */
    @Test
    void redAndGreenFallTogether() {
        int red = 0xC04040;
        int green = 0x6E6E1E;
        assertTrue(Vision.USUAL.difference(red, green) > 50);
        assertTrue(Vision.DEUTERANOPIA.difference(red, green) < Vision.USUAL.difference(red, green) / 2);
    }

    @ParameterizedTest
    @EnumSource(Vision.class)
    void wordsCanBeRead(Vision vision) {
        for (int words : new int[] {Palette.TEXT, Palette.QUIET, Palette.HEADING, Palette.CAUTION}) {
            for (int paper : new int[] {Palette.PAPER, Palette.INPUT_PAPER, Palette.CAUTION_PAPER}) {
                assertTrue(
                        vision.contrast(words, paper) >= Contrast.OF_TEXT,
                        Integer.toHexString(words) + " on " + Integer.toHexString(paper));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Vision.class)
    void boxesAndLinesAreSeen(Vision vision) {
        for (int frame : new int[] {Palette.INPUT_FRAME, Palette.SQUARES, Palette.CAUTION}) {
            assertTrue(vision.contrast(frame, Palette.PAPER) >= Contrast.OF_GRAPHICS, Integer.toHexString(frame));
        }
        for (SeriesColor ink : SeriesColor.forJars()) {
            assertTrue(vision.contrast(ink.color(), Palette.PAPER) >= Contrast.OF_GRAPHICS, ink.name());
        }
    }

    /** A cell to type into, a caution and bare paper are three things. */
    @ParameterizedTest
    @EnumSource(Vision.class)
    void papersDiffer(Vision vision) {
        assertTrue(vision.difference(Palette.PAPER, Palette.INPUT_PAPER) > JUST_SEEN);
        assertTrue(vision.difference(Palette.PAPER, Palette.CAUTION_PAPER) > JUST_SEEN);
        assertTrue(vision.difference(Palette.INPUT_PAPER, Palette.CAUTION_PAPER) > JUST_SEEN);
        assertTrue(vision.difference(Palette.INPUT_FRAME, Palette.CAUTION) > JUST_SEEN);
    }

    /** Up to four jars differ by color alone; more than these also by their symbols and lines, see SeriesColorTest. */
    @ParameterizedTest
    @EnumSource(Vision.class)
    void fourJarsDifferByColorAlone(Vision vision) {
        List<SeriesColor> four = SeriesColor.forJars().subList(0, 4);
        for (int i = 0; i < four.size(); i++) {
            for (int j = 0; j < i; j++) {
                double difference =
                        vision.difference(four.get(i).color(), four.get(j).color());
                assertTrue(difference > AT_A_GLANCE, four.get(i) + " and " + four.get(j) + ": " + difference);
            }
        }
    }

    private static double luminance(double[] rgb) {
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    private static double linear(int eightBits) {
        double part = (eightBits & 0xFF) / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }

    /** By the white of D65 (IEC 61966-2-1). */
    private static double[] lab(double[] rgb) {
        double x = bent((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505);
        double y = bent(luminance(rgb));
        double z = bent((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.0890);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double bent(double part) {
        return part > 216.0 / 24389 ? Math.cbrt(part) : (24389.0 / 27 * part + 16) / 116;
    }
}
