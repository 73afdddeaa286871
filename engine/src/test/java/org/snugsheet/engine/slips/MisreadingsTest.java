package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Graduation;

/**
 * From which size on a reading is left out, how many may be, and what is said of them. An invented jar on an exact curve, {@code 6 + 35·e^(−
 * 0.03·t)}, every five minutes, a mark of 1 °C.
 */
class MisreadingsTest {

    private static final int ROWS = 9;

    /**
     * A reading is left out where twice the logarithm of its likelihood ratio exceeds 14, or 12 for a first reading on the side where a
     * thermometer reads that has not settled (both common practice, no source). Just there, Student’s t of its distance from the curve
     * through the others, with the ten degrees of freedom of eight readings, four that the prior counts for and two parameters, has that
     * ratio: {@code 10·ln(1 + t²/10)}. The readings lie on the curve, so their scatter is no less than rounding.
     */
    @ParameterizedTest
    @CsvSource({"4, 1, 14", "4, -1, 14", "0, 1, 14", "0, -1, 12"})
    void aReadingIsLeftOutFromItsThresholdOn(int row, int side, double threshold) {
        double below = 0;
        double above = 9;
        for (int i = 0; i < 40; i++) {
            double middle = (below + above) / 2;
            if (fit(off(row, side * middle)).isMisread(row)) {
                above = middle;
            } else {
                below = middle;
            }
        }
        RobustFit out = fit(off(row, side * above));
        assertEquals(1, out.misreadings());
        assertFalse(fit(off(row, side * below)).isMisread(row));
        double residual = out.fit().residual(row);
        assertEquals(side * above, residual, 1e-6, "the others follow the curve");
        double t = residual / Math.sqrt((1 + out.fit().leverages()[row]) / 12);
        // As of the curve through all, of which the threshold is reckoned, that ratio is a little different.
        assertEquals(threshold, 10 * Math.log1p(t * t / 10), 0.12 * threshold);
    }

    /** Three wild readings of nine are all found. Of four, each of which shows once the wilder ones are gone, no more than a third is left out. */
    @Test
    void atMostAThirdIsLeftOut() {
        double[] wild = curve();
        wild[1] -= 9;
        wild[3] += 12;
        wild[6] -= 8;
        RobustFit three = RobustFit.of(column(wild));
        assertEquals(3, three.misreadings());
        assertTrue(three.isMisread(1) && three.isMisread(3) && three.isMisread(6));
        double[] wilder = curve();
        wilder[2] += 12;
        wilder[4] += 50;
        wilder[5] += 250;
        assertEquals(3, fit(wilder).misreadings());
        wilder[6] += 1500;
        RobustFit four = fit(wilder);
        assertEquals(3, four.misreadings());
        assertTrue(four.isMisread(4) && four.isMisread(5) && four.isMisread(6));
    }

    /** What is said of a reading in row 6, where 22.5 was read; the surroundings are at 6 °C, and 25.2 is in the row before. */
    @ParameterizedTest
    @CsvSource({
        "4.9, BEYOND_SURROUNDINGS",
        // not beyond by more than a mark
        "5, OFF_THE_CURVE",
        "5.5, OFF_THE_CURVE",
        "6.5, OFF_THE_CURVE",
        // not warmer than the 25.2 by more than a mark
        "26.1, OFF_THE_CURVE",
        "26.5, GOES_BACK"
    })
    void whatIsSaidOfAReadingFollowsFromItsNeighbors(double read, SlipKind kind) {
        double[] wild = curve();
        wild[5] = read;
        Slip slip = only(column(wild));
        assertEquals(kind, slip.kind(), slip.finding()::sentence);
        assertEquals(6, slip.row().orElse(0));
        // The same in a cold jar that warms, as far below a room of 30 °C as this one was above 6 °C.
        for (int i = 0; i < ROWS; i++) {
            wild[i] = 36 - wild[i];
        }
        slip = only(column(wild).withAllFrom(0, line -> line.withAround(30)));
        assertEquals(kind, slip.kind(), slip.finding()::sentence);
    }

    /** A number that nobody typed is no number to compare with. */
    @Test
    void aReadingIsNotHeldAgainstOneThatWasCorrected() {
        double[] wild = curve();
        wild[5] = 30;
        Column column = column(wild);
        assertEquals(SlipKind.GOES_BACK, only(column).kind());
        assertEquals(
                SlipKind.OFF_THE_CURVE,
                only(column.with(4, line -> line.withTyped(line.typed()))).kind());
        assertEquals(
                SlipKind.GOES_BACK,
                only(column.with(6, line -> line.withTyped(line.typed()))).kind());
        assertEquals(
                List.of(), Misreadings.in(column.with(5, line -> line.withTyped(line.typed())), RobustFit.of(column)));
    }

    /** The first reading has nothing before it; how sure it is follows from the odds, of which one slip in 150 readings takes ten. */
    @Test
    void theFirstReadingIsJudgedByTheCurveAlone() {
        double[] hot = curve();
        hot[0] += 10;
        Column column = column(hot);
        RobustFit robust = RobustFit.of(column);
        Slip slip = only(column);
        assertEquals(SlipKind.OFF_THE_CURVE, slip.kind());
        assertEquals(1 / (1 + Math.exp(5 - robust.surprise(0) / 2)), slip.certainty(), 1e-12);
        hot[0] -= 17;
        assertEquals(SlipKind.NOT_SETTLED, only(column(hot)).kind());
    }

    /** Digits are looked at only where a reading is off, and once. */
    @Test
    void onlyWrongReadingsHaveWrongDigits() {
        double[] wild = curve();
        wild[3] = 100;
        Column column = column(wild);
        RobustFit robust = RobustFit.of(column);
        List<SlipHypothesis> hypotheses =
                new DigitSlips().hypotheses(column, robust).toList();
        assertTrue(hypotheses.stream().allMatch(hypothesis -> hypothesis.accused() == 3));
        // 10.0 with its decimal point lost is a hundred.
        assertTrue(hypotheses.stream()
                .anyMatch(hypothesis -> hypothesis.kind() == SlipKind.COMMA_LOST
                        && hypothesis.corrected().at(3).typed() == 10));
        Column corrected = column.with(3, line -> line.withTyped(100));
        assertEquals(0, new DigitSlips().hypotheses(corrected, robust).count());
    }

    private static Slip only(Column column) {
        List<Slip> slips = Misreadings.in(column, RobustFit.of(column));
        assertEquals(1, slips.size(), slips::toString);
        return slips.get(0);
    }

    private static RobustFit fit(double... celsius) {
        return RobustFit.byOneLaw(column(celsius), Law.NEWTON);
    }

    private static double[] off(int row, double by) {
        double[] celsius = curve();
        celsius[row] += by;
        return celsius;
    }

    private static double[] curve() {
        double[] celsius = new double[ROWS];
        for (int i = 0; i < ROWS; i++) {
            celsius[i] = 6 + 35 * Math.exp(-0.03 * 5 * i);
        }
        return celsius;
    }

    private static Column column(double... celsius) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            lines.add(new Line(i + 1, 5 * i, 5 * i, celsius[i], Scale.CELSIUS, 6, 0, false, false));
        }
        return new Column(lines, Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS);
    }
}
