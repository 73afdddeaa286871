package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

class LawDoubtTest {

    private static final Graduation DEGREE = Graduation.of(1, Scale.CELSIUS);

    /** An invented jar that settles at 8 °C, read to the degree. */
    private static final double[] SETTLING = {40, 27, 20, 15, 12, 11, 10, 9, 9, 8};

    /**
     * The sum of squares, and the surroundings within which it grows by no more than 0.5 K², with the exponent fixed. SciPy 1.10.1 says so:
     * {@code /usr/bin/python3 engine/src/test/scipy/falling_rate_reference.py}.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0.85587529, 7.7146, 8.6071",
        "0.125, 0.79214866, 6.9964, 7.9898",
        "0.25, 1.03891530, 6.1766, 7.2761",
        "0.4, 1.52134679, 5.0963, 6.3272"
    })
    void lawsWithFreeSurroundingsAgreeWithSciPy(double exponent, double ssr, double low, double high) {
        FallingRate laws = new FallingRate(readings(SETTLING), 0.05 / 60);

        assertEquals(ssr, laws.sumOfSquares(exponent), 1e-7);
        Interval levels = laws.levels(exponent, 0.5);
        assertEquals(low, levels.low(), 2e-3);
        assertEquals(high, levels.high(), 2e-3);
    }

    /** What rival laws leave open widens everything that is made from the surroundings, and each error goes with its limits. */
    @Test
    void allLimitsAndErrorsReachAsFarAsAnyLaw() {
        CoolingFit alone = new FittedSurroundings().fit(readings(SETTLING), DEGREE);
        CoolingFit fit = CoolingFit.of(readings(SETTLING), new Surroundings.Unknown(), DEGREE);
        CoolingIntervals limits = fit.intervals(0.95);
        CoolingIntervals narrow = alone.intervals(0.95);

        assertEquals(alone.surroundings(), fit.surroundings());
        assertEquals(alone.constant(), fit.constant());
        assertTrue(limits.surroundings().low() < narrow.surroundings().low() - 2);
        assertTrue(limits.rate().low() < 0.8 * narrow.rate().low());
        assertTrue(fit.surroundingsError().kelvins()
                > 2 * alone.surroundingsError().kelvins());
        assertTrue(fit.constantError().perSecond() > 2 * alone.constantError().perSecond());
        assertTrue(fit.conservativeEstimate().standardError()
                > 2 * alone.conservativeEstimate().standardError());
        assertTrue(fit.halfTimeError() > 2 * alone.halfTimeError());
        // Student’s t for 7 degrees of freedom is 2.36 (any table).
        assertEquals(
                limits.surroundings().low(),
                fit.surroundings().celsius() - 2.365 * fit.surroundingsError().kelvins(),
                0.5);
        assertTrue(fit.errorAt(12_000).kelvins() > 2 * alone.errorAt(12_000).kelvins(), "long after the last reading");
        assertTrue(fit.errorAt(1200).kelvins() < 0.4 * fit.errorAt(12_000).kelvins(), "amid the readings it is known");
        // As if somebody had typed the coldest room that is left.
        CoolingFit typed = CoolingFit.of(
                readings(SETTLING),
                Surroundings.constant(new Temperature(limits.surroundings().low())),
                DEGREE);
        assertEquals(limits.rate().low(), typed.constant().perSecond(), 1e-9);
    }

    /** A cold jar in a warm room is the same thing upside down. */
    @Test
    void aJarThatWarmsIsJudgedAlike() {
        double[] warming = new double[SETTLING.length];
        for (int i = 0; i < warming.length; i++) {
            warming[i] = 48 - SETTLING[i];
        }
        Interval cooled = CoolingFit.of(readings(SETTLING), new Surroundings.Unknown(), DEGREE)
                .intervals(0.95)
                .surroundings();
        Interval warmed = CoolingFit.of(readings(warming), new Surroundings.Unknown(), DEGREE)
                .intervals(0.95)
                .surroundings();

        assertEquals(48 - cooled.low(), warmed.high(), 1e-4);
        assertEquals(48 - cooled.high(), warmed.low(), 1e-4);
        assertEquals(
                CoolingFit.of(readings(SETTLING), new Surroundings.Unknown(), DEGREE)
                        .surroundingsError()
                        .kelvins(),
                CoolingFit.of(readings(warming), new Surroundings.Unknown(), DEGREE)
                        .surroundingsError()
                        .kelvins(),
                1e-4);
    }

    /** Seven readings to the degree that stop at 12 °C: 8.2 °C by Newton’s law, 5.0 by that of still air (SciPy), and both fit. */
    @Test
    void readingsThatStopTooEarlyAreRefused() {
        Readings seen = readings(40, 31, 24, 19, 16, 14, 12);
        FallingRate laws = new FallingRate(seen, 0.05 / 60);

        assertTrue(Math.sqrt(laws.sumOfSquares(0) / 7) < 0.4);
        assertTrue(Math.sqrt(laws.sumOfSquares(0.25) / 7) < 0.4);
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class, () -> CoolingFit.of(seen, new Surroundings.Unknown(), DEGREE));
        assertEquals(Problem.SURROUNDINGS_OR_LAW, refusal.problem());
        refusal = assertThrows(
                InvalidInputException.class,
                () -> CoolingFit.of(readings(40, 38, 35, 34, 31), new Surroundings.Unknown(), DEGREE));
        assertEquals(Problem.SURROUNDINGS_OUT_OF_REACH, refusal.problem());
    }

    /** Ten minutes apart. */
    private static Readings readings(double... celsius) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (int i = 0; i < celsius.length; i++) {
            minutes.add(Entry.of(10 * i));
            temperatures.add(Entry.of(celsius[i]));
        }
        return Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS);
    }

    /**
     * Twenty readings that rule the steeper laws out: the exponents up to 0.0992 are left, and with them surroundings from 5.198 °C, where
     * Newton’s law alone says 5.811 to 6.150. SciPy 1.17.1 says so: {@code /usr/bin/python3 engine/src/test/scipy/law_doubt_reference.py}.
     */
    @Test
    void limitsReachAsFarAsTheSteepestLawThatIsLeft() {
        double[] seen = {
            39.9, 32.5, 26.9, 22.2, 18.3, 15.7, 13.5, 11.9, 10.4, 9.6, 8.8, 8.4, 7.7, 7.4, 6.8, 7.1, 6.3, 6.7, 6.3, 6.2
        };
        List<Entry> minutes = new ArrayList<>();
        List<Entry> temperatures = new ArrayList<>();
        for (int i = 0; i < seen.length; i++) {
            minutes.add(Entry.of(30 + 5 * i));
            temperatures.add(Entry.of(seen[i]));
        }
        Readings readings = Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS);
        Graduation tenth = Graduation.of(0.1, Scale.CELSIUS);

        Interval alone =
                new FittedSurroundings().fit(readings, tenth).intervals(0.95).surroundings();
        assertEquals(5.8114, alone.low(), 1e-3);
        assertEquals(6.1501, alone.high(), 1e-3);
        CoolingFit fit = CoolingFit.of(readings, new Surroundings.Unknown(), tenth);
        Interval all = fit.intervals(0.95).surroundings();
        assertEquals(5.9821, fit.surroundings().celsius(), 1e-4);
        assertEquals(5.1981, all.low(), 2e-3);
        assertEquals(6.1501, all.high(), 1e-3);
        // The error grows as the wider side of the limits does.
        double wider = (5.9821 - 5.1981) / (5.9821 - 5.8114);
        assertEquals(
                wider,
                fit.surroundingsError().kelvins()
                        / new FittedSurroundings()
                                .fit(readings, tenth)
                                .surroundingsError()
                                .kelvins(),
                0.02 * wider);
    }

    /** Readings on a straight line lead to no level, whatever the law: nothing limits the surroundings. */
    @Test
    void aStraightLineSetsNoLimits() {
        FallingRate laws = new FallingRate(readings(40, 39, 38, 37, 36), 0.001 / 60);

        assertEquals(new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), laws.levels(0.25, 0.5));
    }

    /** Amid the readings every law follows them, and long after only the surroundings count, whatever the clock said at first. */
    @Test
    void theDoubtGrowsFromTheReadingsOnAndNoFarther() {
        CoolingFit alone = new FittedSurroundings().fit(readings(SETTLING), DEGREE);
        CoolingFit fit = CoolingFit.of(readings(SETTLING), new Surroundings.Unknown(), DEGREE);
        for (double amid : new double[] {0, 1200, 5400}) {
            assertEquals(alone.errorAt(amid).kelvins(), fit.errorAt(amid).kelvins(), 1e-9, "at " + amid);
            assertEquals(
                    alone.intervals(0.95).at(amid).high(),
                    fit.intervals(0.95).at(amid).high(),
                    1e-9,
                    "at " + amid);
        }
        assertEquals(fit.surroundingsError().kelvins(), fit.errorAt(1e6).kelvins(), 1e-6);
        double before = fit.errorAt(-600).kelvins();
        assertTrue(before > alone.errorAt(-600).kelvins());

        List<Entry> minutes = new ArrayList<>();
        List<Entry> celsius = new ArrayList<>();
        for (int i = 0; i < SETTLING.length; i++) {
            minutes.add(Entry.of(45 + 10 * i));
            celsius.add(Entry.of(SETTLING[i]));
        }
        CoolingFit later =
                CoolingFit.of(Readings.ofMinutes(minutes, celsius, Scale.CELSIUS), new Surroundings.Unknown(), DEGREE);
        for (double seconds : new double[] {-600, 0, 1200, 5400, 7200, 20_000}) {
            assertEquals(
                    fit.errorAt(seconds).kelvins(),
                    later.errorAt(seconds + 45 * 60).kelvins(),
                    1e-6,
                    "at " + seconds);
        }
        assertEquals(
                fit.intervals(0.95).surroundings().low(),
                later.intervals(0.95).surroundings().low(),
                1e-6);
    }
}
