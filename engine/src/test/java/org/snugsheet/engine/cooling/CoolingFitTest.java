package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /** 46 °C, and then 10 in 10 °C: any fast rate brings it there. */
    @Test
    void aJarThatSettledBeforeItsSecondReadingIsRefused() {
        InvalidInputException refusal = assertThrows(
                InvalidInputException.class,
                () -> CoolingFit.of(
                        Readings.ofMinutes(new double[] {0, 20, 30, 40}, new double[] {46, 10, 10, 10}, Scale.CELSIUS),
                        Surroundings.constant(new Temperature(10)),
                        Graduation.usual(Scale.CELSIUS)));
        assertEquals(Problem.UNDETERMINED, refusal.problem());
        // A jar that keeps its temperature to the last digit has a rate, none.
        CoolingFit constant = CoolingFit.of(
                Readings.ofMinutes(new double[] {0, 20, 30, 40}, new double[] {46, 46, 46, 46}, Scale.CELSIUS),
                Surroundings.constant(new Temperature(10)),
                Graduation.usual(Scale.CELSIUS));
        assertEquals(0, constant.constant().perSecond(), 1e-15);
    }

    /** The law of propagation, by differences: how far the half-time moves if the constant moves by a little of its error. */
    @Test
    void theErrorOfTheHalfTimeIsThatOfTheConstantCarriedOver() {
        CoolingFit fit = CoolingFit.of(
                Readings.ofMinutes(
                        new double[] {0, 10, 20, 30, 40, 50},
                        new double[] {40, 30.5, 23.2, 18, 14.8, 11.9},
                        Scale.CELSIUS),
                Surroundings.constant(new Temperature(5)),
                Graduation.of(0.1, Scale.CELSIUS));
        double k = fit.constant().perSecond();
        double step = 1e-4 * fit.constantError().perSecond();
        double moved = (Math.log(2) / (k - step) - Math.log(2) / (k + step)) / 2e-4;

        assertEquals(moved, fit.halfTimeError(), 1e-6 * moved);
    }

    /** The error of the curve from its definition: how far it moves with each reading, found by moving each a little and fitting anew. */
    @Test
    void theErrorOfTheCurveIsThatOfTheReadingsCarriedOver() {
        double[] minutes = {10, 20, 30, 40, 50, 60};
        double[] read = {40.3, 30.1, 23.4, 18.2, 14.1, 12.2};
        List<Entry> times = Arrays.stream(minutes).mapToObj(Entry::of).toList();
        Surroundings warming = Surroundings.of(
                Stream.of(3.0, 4.0, 5.5, 6.0, 7.5, 8.0).map(Entry::of).toList(), times, Scale.CELSIUS);
        Graduation fine = Graduation.of(1e-6, Scale.CELSIUS);
        CoolingFit fit = CoolingFit.of(Readings.ofMinutes(minutes, read, Scale.CELSIUS), warming, fine);
        for (double seconds : new double[] {0, 600, 1500, 4200}) {
            double squares = 0;
            for (int i = 0; i < read.length; i++) {
                double h = 1e-3;
                double[] up = read.clone();
                double[] down = read.clone();
                up[i] += h;
                down[i] -= h;
                double above = CoolingFit.of(Readings.ofMinutes(minutes, up, Scale.CELSIUS), warming, fine)
                        .at(seconds)
                        .celsius();
                double below = CoolingFit.of(Readings.ofMinutes(minutes, down, Scale.CELSIUS), warming, fine)
                        .at(seconds)
                        .celsius();
                squares += Math.pow((above - below) / (2 * h), 2);
            }
            double expected = Math.sqrt(fit.sumOfSquares() / 4 * squares);
            // The linear error and the curvature of so bent a curve differ by less than a tenth.
            assertEquals(expected, fit.errorAt(seconds).kelvins(), 0.1 * expected, "at " + seconds);
        }
    }

    /** The refusals name the row, what was read there and the surroundings of that time, on the scale of the class. */
    @Test
    void refusalsSayWhatWasReadAndWhere() {
        double[] minutes = {60, 70, 80, 90};
        List<Entry> times = Arrays.stream(minutes).mapToObj(Entry::of).toList();
        Surroundings warming =
                Surroundings.of(Stream.of(41.0, 50.0, 59.0, 68.0).map(Entry::of).toList(), times, Scale.FAHRENHEIT);
        InvalidInputException wrongSide = assertThrows(
                InvalidInputException.class,
                () -> CoolingFit.of(
                        Readings.ofMinutes(minutes, new double[] {104, 86, 77, 50}, Scale.FAHRENHEIT),
                        warming,
                        Graduation.of(1, Scale.FAHRENHEIT)));
        assertEquals(Problem.WRONG_SIDE, wrongSide.problem());
        assertEquals(4, wrongSide.row().orElse(0));
        assertEquals(50, (double) wrongSide.finding().arguments().get(1), 1e-9);
        assertEquals(68, (double) wrongSide.finding().arguments().get(2), 1e-9);
        InvalidInputException settled = assertThrows(
                InvalidInputException.class,
                () -> CoolingFit.of(
                        Readings.ofMinutes(minutes, new double[] {50, 50.5, 51, 50}, Scale.FAHRENHEIT),
                        Surroundings.constant(Temperature.of(50, Scale.FAHRENHEIT)),
                        Graduation.of(2, Scale.FAHRENHEIT)));
        assertEquals(Problem.ALREADY_AT_SURROUNDINGS, settled.problem());
        assertEquals(50, (double) settled.finding().arguments().get(0), 1e-9);
        InvalidInputException late = assertThrows(
                InvalidInputException.class,
                () -> CoolingFit.of(
                                Readings.ofMinutes(minutes, new double[] {104, 86, 77, 70}, Scale.FAHRENHEIT),
                                Surroundings.constant(Temperature.of(50, Scale.FAHRENHEIT)),
                                Graduation.of(1, Scale.FAHRENHEIT))
                        .start());
        assertEquals(Problem.START_OUT_OF_REACH, late.problem());
        assertEquals(60, (double) late.finding().arguments().get(0), 1e-9);
    }

    /** What a programmer sees. */
    @Test
    void theFitSaysItsNumbers() {
        CoolingFit fit = CoolingFit.of(
                Readings.ofMinutes(new double[] {0, 10, 20}, new double[] {40, 30, 23}, Scale.CELSIUS),
                Surroundings.constant(new Temperature(5)),
                Graduation.of(1, Scale.CELSIUS));
        assertTrue(fit.toString().startsWith("k = 0.0"), fit::toString);
        assertTrue(fit.toString().contains("surroundings given: 5.000 °C"), fit::toString);
    }
}
