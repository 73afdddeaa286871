package org.snugsheet.engine.slips;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.solver.LinearFit;

/**
 * The laws of the finder and their fits, against SciPy (scipy-laws.csv: laws integrated from their differential equations, fitted by
 * curve_fit).
 */
class LawFitTest {

    private static final double MINUTES_PER_ROW = 5;

    @ParameterizedTest
    @CsvSource({
        "NEWTON, plain, 2",
        "NEWTON, drifting, 2",
        "NEWTON, wild, 2",
        "NEWTON, stirred, 3",
        "NEWTON, stuck, 3",
        "LEVEL, plain, 3",
        "LEVEL, drifting, 3",
        "LEVEL, unread, 3",
        "STILL_AIR, airy, 2",
        "STILL_AIR, wild, 2",
        "TWO_STAGES, two, 3",
        "TWO_STAGES_FAR, two, 3"
    })
    void fitsAgreeWithSciPy(Law law, String set, int parameters) {
        List<Map<String, String>> rows = rows(law, set);
        boolean[] trusted = new boolean[rows.size()];
        for (int i = 0; i < trusted.length; i++) {
            trusted[i] = number(rows, i, "trusted") > 0;
        }

        LawFit fit = LawFit.of(LawGrid.of(Sample.of(column(rows, set)), law), trusted);

        assertEquals(law, fit.law());
        assertEquals(parameters, fit.parameters());
        assertEquals(number(rows, 0, "squares"), fit.sumOfSquares(), 1e-7);
        double[] leverages = fit.leverages();
        for (int i = 0; i < trusted.length; i++) {
            assertEquals(number(rows, i, "fitted"), fit.fitted(i), 1e-4, "row " + (i + 1));
            assertEquals(number(rows, i, "reading") - fit.fitted(i), fit.residual(i), 1e-12);
            assertEquals(number(rows, i, "leverage"), leverages[i], 2e-4, "leverage of row " + (i + 1));
        }
        double around = set.equals("unread") ? 0 : number(rows, 0, "around");
        assertEquals(number(rows, 0, "fitted") - around, fit.difference(), 1e-4);
    }

    /** The slopes by the rate, against central differences. */
    @ParameterizedTest
    @EnumSource(Law.class)
    void slopesAgreeWithDifferences(Law law) {
        for (String set : List.of("plain", "drifting")) {
            Sample sample = Sample.of(column(rows(Law.NEWTON, set), set));
            double rate = 0.035;
            double h = 1e-6;
            LawValues at = law.at(sample, rate);
            LawValues below = law.at(sample, rate - h);
            LawValues above = law.at(sample, rate + h);
            for (int i = 0; i < sample.size(); i++) {
                assertEquals((above.offset()[i] - below.offset()[i]) / (2 * h), at.offsetSlope()[i], 1e-5);
                assertEquals(
                        (above.first()[i] - below.first()[i]) / (2 * h), law.firstSlope(sample, rate, at, i), 1e-5);
                assertEquals((above.second()[i] - below.second()[i]) / (2 * h), law.secondSlope(sample, at, i), 1e-5);
            }
        }
    }

    /** A jar that cools 1 K a minute at first, at 4 °C in water that warms by a tenth a minute: worked out by hand from the law. */
    @Test
    void aJarFollowsSurroundingsThatWarm() {
        Column column = new Column(
                List.of(line(1, 0, 24, 4), line(2, 10, 18, 5), line(3, 20, 14, 6), line(4, 30, 12, 7)),
                Graduation.of(1, Scale.CELSIUS),
                Scale.CELSIUS);
        LawValues values = Law.NEWTON.at(Sample.of(column), 0.05);
        // θ′ = −kθ − b with b = 0.1 K/min lags behind by b/k = 2 K in the end: T = Tₛ − (b/k)(1 − e^(−kt)).
        for (int i = 0; i < 4; i++) {
            double t = 10 * i;
            assertEquals(4 + 0.1 * t - 2 * (1 - Math.exp(-0.05 * t)), values.offset()[i], 1e-12);
            assertEquals(Math.exp(-0.05 * t), values.first()[i], 1e-15);
        }
    }

    /** Which laws are asked: two stages need more than six readings, still air needs steady surroundings, all but LEVEL known ones. */
    @Test
    void lawsAreAskedOnlyWhereTheyMakeSense() {
        assertEquals(List.of(Law.values()), asked(column(rows(Law.NEWTON, "plain"), "plain")));
        assertEquals(
                List.of(Law.NEWTON, Law.LEVEL, Law.TWO_STAGES_NEAR, Law.TWO_STAGES, Law.TWO_STAGES_FAR),
                asked(column(rows(Law.NEWTON, "drifting"), "drifting")));
        assertEquals(List.of(Law.LEVEL), asked(column(rows(Law.LEVEL, "unread"), "unread")));
        List<Map<String, String>> plain = rows(Law.NEWTON, "plain");
        assertEquals(List.of(Law.NEWTON, Law.LEVEL, Law.STILL_AIR), asked(column(plain.subList(0, 6), "plain")));
        assertEquals(List.of(Law.values()), asked(column(plain.subList(0, 7), "plain")));
    }

    private static List<Law> asked(Column column) {
        Sample sample = Sample.of(column);
        return Arrays.stream(Law.values()).filter(law -> law.fits(sample)).toList();
    }

    /**
     * A first stage that takes more than half as much heat as the rest, or is over before the second reading ({@code e^(−2.5)} is left),
     * is no wrap, though a curve with one would meet every reading.
     */
    @ParameterizedTest
    @CsvSource({
        "0.03, 12, true",
        "0.03, 14.9, true",
        "0.03, 15.2, false",
        "0.03, 25, false",
        "0.03, -2, false",
        "0.043, 12, false"
    })
    void twoStagesAreThoseOfAWrap(double rate, double firstStage, boolean isWrap) {
        List<Line> lines = new ArrayList<>();
        boolean[] all = new boolean[9];
        for (int i = 0; i < all.length; i++) {
            all[i] = true;
            double t = MINUTES_PER_ROW * i;
            lines.add(line(i + 1, t, 6 + 30 * Math.exp(-rate * t) + firstStage * Math.exp(-12 * rate * t), 6));
        }
        Sample sample = Sample.of(new Column(lines, Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS));
        double squares = LawFit.of(LawGrid.of(sample, Law.TWO_STAGES_FAR), all).sumOfSquares();
        assertEquals(isWrap, squares < 1e-7, "sum of squares " + squares);
    }

    /** What the search asks for again and again is what the general way says, some of the readings not trusted. */
    @ParameterizedTest
    @EnumSource(Law.class)
    void aSumOfSquaresIsThatOfTheGeneralFit(Law law) {
        Sample sample = Sample.of(column(rows(Law.NEWTON, "wild"), "wild"));
        boolean[] trusted = new boolean[sample.size()];
        Arrays.fill(trusted, true);
        trusted[3] = false;
        LawCurve curve = new LawCurve(LawGrid.of(sample, law), trusted);
        double[] observed = new double[curve.observations()];
        for (int i = 0, r = 0; i < trusted.length; i++) {
            if (trusted[i]) {
                observed[r++] = sample.celsius[i];
            }
        }
        int sensible = 0;
        for (double rate = 0.001; rate < 0.2; rate *= 1.3) {
            double found = curve.squaresAt(rate);
            LinearFit general = LinearFit.at(curve, observed, rate);
            double toSecond = general.coefficient(curve.columns() - 1) / general.coefficient(0);
            boolean isSensible =
                    !law.hasTwoStages() || (toSecond >= 0 && toSecond <= 0.5 && !LawGrid.isTooFast(sample, law, rate));
            sensible += isSensible ? 1 : 0;
            assertEquals(isSensible ? general.sumOfSquares() : Double.POSITIVE_INFINITY, found, "rate " + rate);
        }
        assertTrue(sensible > 0);
    }

    /** Few wild readings cannot draw the start along: the median of the residuals is what counts. */
    @ParameterizedTest
    @EnumSource(Law.class)
    void aRobustStartTrustsAllButTheWildReading(Law law) {
        List<Map<String, String>> rows = rows(Law.NEWTON, "wild");
        Sample sample = Sample.of(column(rows, "wild"));
        boolean[] trusted = RobustStart.of(LawGrids.of(sample), law, 0.05);
        assertFalse(trusted[3]);
        assertArrayEquals(trusted, RobustStart.of(LawGrids.of(sample), law, 1e-6), "wherever it begins to look");
        assertArrayEquals(trusted, RobustStart.of(LawGrids.of(sample), law, 100), "wherever it begins to look");
        for (int i = 1; i < trusted.length; i++) {
            assertTrue(i == 3 || trusted[i], "row " + (i + 1));
        }
    }

    private static List<Map<String, String>> rows(Law law, String set) {
        List<Map<String, String>> rows = PublishedTable.rows(LawFitTest.class, "scipy-laws.csv").stream()
                .filter(row -> law.name().equals(row.get("law")) && set.equals(row.get("set")))
                .toList();
        assertEquals(9, rows.size(), law + " " + set);
        return rows;
    }

    private static Column column(List<Map<String, String>> rows, String set) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            double around = set.equals("unread") ? Double.NaN : number(rows, i, "around");
            Line line = line(i + 1, MINUTES_PER_ROW * i, number(rows, i, "reading"), around);
            boolean later = i >= 4;
            lines.add(
                    later && set.equals("stirred")
                            ? line.withPart(1)
                            : later && set.equals("stuck") ? line.withStuckPart(1) : line);
        }
        return new Column(lines, Graduation.of(1, Scale.CELSIUS), Scale.CELSIUS);
    }

    private static Line line(int row, double minute, double celsius, double around) {
        return new Line(row, minute, minute, celsius, Scale.CELSIUS, around, 0, false, false);
    }

    private static double number(List<Map<String, String>> rows, int i, String column) {
        return Double.parseDouble(rows.get(i).getOrDefault(column, ""));
    }
}
