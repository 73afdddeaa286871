package org.snugsheet.engine.cooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

class ModelChoiceTest {

    private static final Surroundings ROOM = Surroundings.constant(new Temperature(5));
    private static final Graduation FINE = Graduation.of(0.1, Scale.CELSIUS);
    private static final Graduation COARSE = Graduation.usual(Scale.CELSIUS);

    /** A jar in still air of 22 °C, by {@code θ = A·(1 + k·t/4)^(−4)}, and 18 typed: Newton’s law with a room of its own fits best. */
    @Test
    void surroundingsThatAnotherLawExplainsAreNotBelieved() {
        List<Entry> times = new ArrayList<>();
        List<Entry> seen = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            times.add(Entry.of(3 * i));
            seen.add(Entry.of(Math.rint(22 + 20 * Math.pow(1 + 0.05 * 3 * i / 4, -4))));
        }
        ModelChoice choice = ModelChoice.of(
                Readings.ofMinutes(times, seen, Scale.CELSIUS),
                Surroundings.constant(new Temperature(18)),
                Graduation.of(1, Scale.CELSIUS),
                List.of());

        assertTrue(choice.candidates().stream().noneMatch(c -> c.fit().model() instanceof FittedSurroundings));
    }

    @Test
    void newtonsLawIsKeptForReadingsThatFollowIt() {
        int kept = 0;
        for (int seed = 0; seed < 200; seed++) {
            Readings readings = readings(seed, 12, 0.3, t -> 5 + 35 * Math.exp(-0.03 * t));
            kept += chosen(readings, ROOM, FINE) instanceof ConstantSurroundings ? 1 : 0;
        }
        assertTrue(kept >= 180, "kept in " + kept + " of 200");
    }

    @Test
    void aSecondStageIsSeenWhereItIsPlain() {
        Readings readings = readings(1, 31, 0.05, t -> 5 + 20 * Math.exp(-0.02 * t) + 15 * Math.exp(-0.3 * t));

        assertInstanceOf(TwoStage.class, chosen(readings, ROOM, FINE));
    }

    @Test
    void freeConvectionIsSeenOverALongFineRun() {
        Readings readings = readings(2, 40, 0.05, t -> 5 + 55 * Math.pow(1 + 0.06 * t / 4, -4));

        assertInstanceOf(FreeConvection.class, chosen(readings, ROOM, FINE));
    }

    @Test
    void wrongSurroundingsShow() {
        Readings readings = readings(3, 30, 0.05, t -> 9 + 31 * Math.exp(-0.06 * t));

        assertInstanceOf(FittedSurroundings.class, chosen(readings, ROOM, FINE));
    }

    @Test
    void noLawIsPraisedForFollowingTheRounding() {
        for (int seed = 0; seed < 50; seed++) {
            Readings readings = readings(seed, 12, 0, t -> Math.rint(5 + 35 * Math.exp(-0.03 * t)));
            assertInstanceOf(ConstantSurroundings.class, chosen(readings, ROOM, COARSE));
        }
    }

    @Test
    void threeReadingsAreTooFewToChoose() {
        ModelChoice choice =
                ModelChoice.of(readings(4, 3, 0.1, t -> 5 + 35 * Math.exp(-0.03 * t)), ROOM, FINE, List.of());

        assertInstanceOf(ConstantSurroundings.class, choice.chosen().fit().model());
        assertEquals(Double.POSITIVE_INFINITY, choice.chosen().criterion());
    }

    /** AICc of a straight least-squares fit by its definition, written out for two parameters and the variance. */
    @Test
    void theCriterionIsAsDefined() {
        Readings readings = readings(5, 10, 0.5, t -> 5 + 35 * Math.exp(-0.03 * t));
        CoolingFit fit = CoolingFit.of(readings, ROOM, FINE);
        double n = 10;
        double expected = n * (Math.log(2 * Math.PI * fit.sumOfSquares() / n) + 1) + 2 * 3 + 2 * 3 * 4 / (n - 4);

        assertEquals(expected, ModelChoice.Candidate.of(fit, FINE).criterion(), 1e-9);
    }

    @Test
    void aReadingThatStandsOutIsPointedOut() {
        Readings clean = readings(6, 12, 0.2, t -> 5 + 35 * Math.exp(-0.03 * t));
        List<Reading> spoiled = new ArrayList<>(clean.all());
        Reading fifth = spoiled.get(4);
        spoiled.set(
                4,
                new Reading(
                        fifth.row(),
                        fifth.seconds(),
                        new Temperature(fifth.temperature().celsius() + 4)));

        assertEquals(List.of(), Outliers.in(CoolingFit.of(clean, ROOM, FINE), FINE));
        assertEquals(
                List.of(spoiled.get(4)),
                Outliers.in(CoolingFit.of(new Readings(spoiled, Scale.CELSIUS), ROOM, FINE), FINE));
    }

    private static CoolingModel chosen(Readings readings, Surroundings surroundings, Graduation mark) {
        return ModelChoice.of(readings, surroundings, mark, List.of())
                .chosen()
                .fit()
                .model();
    }

    private static Readings readings(long seed, int n, double noise, DoubleUnaryOperator law) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Entry> minutes = new ArrayList<>();
        List<Entry> celsius = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double time = 60.0 * i / (n - 1);
            minutes.add(Entry.of(time));
            celsius.add(Entry.of(law.applyAsDouble(time) + noise * random.nextGaussian()));
        }
        return Readings.ofMinutes(minutes, celsius, Scale.CELSIUS);
    }
}
