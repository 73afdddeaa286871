package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * Properties of a fit, on curves made by Newton’s law; that rounding leaves mark/√12 is of the GUM, JCGM 100:2008, 4.3.7. Published
 * readings are in {@link CoolingFitReferenceTest}.
 */
class CoolingFitTest {

    private static final Graduation MARK = Graduation.usual(Scale.CELSIUS);

    @Test
    void exactReadingsGiveTheCurveTheyCameFrom() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 300; i++) {
            double start = random.nextDouble(25, 60);
            double room = random.nextDouble(-20, 20);
            double perMinute = Math.log(2) / Math.exp(random.nextDouble(Math.log(3), Math.log(300)));
            double first = random.nextDouble(0, 5);
            double[] minutes =
                    IntStream.range(0, 10).mapToDouble(j -> first + 4 * j).toArray();
            double[] exact = Arrays.stream(minutes)
                    .map(t -> room + (start - room) * Math.exp(-perMinute * t))
                    .toArray();

            CoolingFit fit = fit(minutes, exact, room);

            assertEquals(perMinute, fit.constant().perMinute(), 1e-9 * perMinute);
            assertEquals(start, fit.start().celsius(), 1e-8);
            assertEquals(0, fit.misfit().kelvins(), 1e-9);
        }
    }

    /** With readings on one curve only rounding is left: σ = mark/√12 (GUM, JCGM 100:2008, 4.3.7). */
    @Test
    void theErrorNeverFallsBelowTheRoundingOfTheMark() {
        double[] minutes = {0, 10, 20, 30};
        double[] exact =
                Arrays.stream(minutes).map(t -> 40 * Math.exp(-0.02 * t)).toArray();
        // JᵀJ written out for T = A·e^(−kt), surroundings 0
        double aa = 0;
        double ak = 0;
        double kk = 0;
        for (double t : minutes) {
            double left = Math.exp(-0.02 * t);
            aa += left * left;
            ak += left * -40 * t * left;
            kk += 40 * t * left * 40 * t * left;
        }
        double expected = Math.sqrt(0.25 / 12 * aa / (aa * kk - ak * ak));

        CoolingFit fit =
                CoolingFit.of(readings(minutes, exact), Surroundings.meltingIce(), Graduation.of(0.5, Scale.CELSIUS));

        assertEquals(expected, fit.constantError().perMinute(), 1e-7 * expected);
    }

    @Test
    void aCoarserMarkNeverGivesASmallerError() {
        double[] minutes = {0, 5, 10, 15, 20};
        double[] read = {40, 34.2, 29.7, 26.1, 23.7};
        double before = 0;
        for (double mark : new double[] {0.1, 0.5, 1, 2, 5}) {
            double error = CoolingFit.of(readings(minutes, read), around(10), Graduation.of(mark, Scale.CELSIUS))
                    .constantError()
                    .perMinute();
            assertTrue(error >= before);
            before = error;
        }
        assertTrue(before > 0);
    }

    @Test
    void anotherStartOfTheClockChangesNeitherRateNorMisfit() {
        double[] read = {40, 34, 30, 26, 24};
        CoolingFit early = fit(new double[] {0, 5, 10, 15, 20}, read, 10);
        CoolingFit late = fit(new double[] {545, 550, 555, 560, 565}, read, 10);

        assertEquals(early.constant().perSecond(), late.constant().perSecond(), 1e-15);
        assertEquals(early.misfit().kelvins(), late.misfit().kelvins(), 1e-12);
        InvalidInputException refusal = assertThrows(InvalidInputException.class, late::start);
        assertEquals(Problem.START_OUT_OF_REACH, refusal.problem());
        assertThrows(InvalidInputException.class, late::startError);
    }

    @Test
    void aJarThatWarmsIsFittedAsWell() {
        CoolingFit fit = fit(new double[] {0, 10, 20}, new double[] {0, 10, 15}, 20);

        assertEquals(10, fit.constant().halfTime() / 60, 1e-9);
    }

    @Test
    void readingsAFewTenthsBelowTheSurroundingsAreRounding() {
        CoolingFit fit = fit(new double[] {0, 10, 20, 60}, new double[] {20, 10, 5, -0.5}, 0);

        assertTrue(fit.constant().perMinute() > 0.06);
    }

    @Test
    void aSteadyJarHasNoHalfTime() {
        CoolingFit fit = fit(new double[] {0, 10, 20}, new double[] {40, 40, 40}, 10);

        assertEquals(0, fit.constant().perSecond(), 1e-12);
        assertTrue(fit.constantError().perSecond() > 0);
        assertEquals(
                Problem.HARDLY_COOLS,
                assertThrows(InvalidInputException.class, fit::halfTime).problem());
        assertThrows(InvalidInputException.class, fit::halfTimeError);
    }

    @Test
    void aFallSmallerThanItsErrorHasNoHalfTime() {
        CoolingFit fit = fit(new double[] {0, 1, 2}, new double[] {40, 40, 39.9}, 10);

        assertTrue(fit.constant().perSecond() > 0);
        assertThrows(InvalidInputException.class, fit::halfTime);
    }

    @Test
    void tooFewReadingsAreRefused() {
        refused(Problem.NO_READINGS, OptionalInt.empty(), new double[0], new double[0], 10);
        refused(Problem.TOO_FEW_READINGS, OptionalInt.empty(), new double[] {0, 5}, new double[] {40, 35}, 10);
    }

    @Test
    void aReadingBeyondTheSurroundingsIsRefusedByItsRow() {
        refused(Problem.WRONG_SIDE, OptionalInt.of(4), new double[] {0, 5, 10, 15}, new double[] {40, 34, 30, 26}, 29);
    }

    @Test
    void readingsThatMoveAwayAreRefused() {
        refused(Problem.MOVES_AWAY, OptionalInt.of(1), new double[] {0, 5, 10, 15}, new double[] {40, 34, 30, 26}, 50);
        refused(Problem.MOVES_AWAY, OptionalInt.of(1), new double[] {0, 5, 10, 15}, new double[] {26, 30, 34, 40}, 10);
    }

    @Test
    void readingsAtTheSurroundingsAreRefused() {
        refused(
                Problem.ALREADY_AT_SURROUNDINGS,
                OptionalInt.empty(),
                new double[] {0, 5, 10},
                new double[] {10, 10, 11},
                10);
    }

    private static void refused(
            Problem problem, OptionalInt row, double[] minutes, double[] celsius, double surroundings) {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> fit(minutes, celsius, surroundings));
        assertEquals(problem, refusal.problem());
        assertEquals(row, refusal.row());
    }

    private static CoolingFit fit(double[] minutes, double[] celsius, double surroundings) {
        return CoolingFit.of(readings(minutes, celsius), around(surroundings), MARK);
    }

    private static Surroundings around(double celsius) {
        return Surroundings.constant(new Temperature(celsius));
    }

    private static Readings readings(double[] minutes, double[] celsius) {
        return Readings.ofMinutes(entries(minutes), entries(celsius), Scale.CELSIUS);
    }

    private static List<Entry> entries(double[] values) {
        return Arrays.stream(values).mapToObj(Entry::of).toList();
    }
}
