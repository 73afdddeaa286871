package org.snugsheet.engine.cooling;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * How often 95 % limits hold the truth, found by inventing jars whose truth is known.
 *
 * <p>A lesson is {@value #LESSON} minutes. Start and surroundings are drawn anew for each jar, so that the readings fall
 * anywhere between two marks; each reading gets normal noise, is rounded to the mark, and is missed one time in ten. The surroundings are
 * read once on the same thermometer, without noise; two jars that are compared stand in the same ones.
 *
 * @param readings how many times the class reads the thermometer
 * @param mark its mark in degrees of the scale
 * @param scale the scale
 * @param halfTime the true half-time in minutes
 * @param noise the standard deviation of a reading before rounding, in kelvins
 */
record Coverage(int readings, double mark, Scale scale, double halfTime, double noise) {

    static final double LESSON = 40;
    private static final double SLOWER = 1.5;
    private static final double MISSED = 0.1;
    private static final double CONFIDENCE = 0.95;

    /**
     * How often the limits held.
     *
     * @param asked how often limits were asked for
     * @param answered how often there was an answer
     * @param held how often the truth lay within
     */
    record Count(int asked, int answered, int held) {

        double share() {
            return held / (double) answered;
        }

        Count plus(Count other) {
            return new Count(asked + other.asked, answered + other.answered, held + other.held);
        }
    }

    /** The cooling constant, with the surroundings given. The half-time’s limits are the same, turned round. */
    Count rate(int runs, long seed) {
        return tally(
                runs,
                seed,
                jar -> limits(jar, Surroundings.constant(jar.around)).halfTime().contains(60 * halfTime));
    }

    /** The surroundings, fitted by Newton’s law, which these jars do follow: with no other law beside it. */
    Count surroundings(int runs, long seed) {
        return tally(
                runs,
                seed,
                jar -> new FittedSurroundings()
                        .fit(jar.readings, grain())
                        .intervals(CONFIDENCE)
                        .surroundings()
                        .contains(jar.room.celsius()));
    }

    /** How many times slower a second jar cools that truly cools half as slowly again. */
    Count slower(int runs, long seed) {
        Coverage other = new Coverage(readings, mark, scale, SLOWER * halfTime, noise);
        SplittableRandom more = new SplittableRandom(~seed);
        return tally(runs, seed, jar -> {
            Estimate second = estimate(Jar.of(other, jar.room.celsius(), more.nextDouble(38, 43), more));
            return new Ratio(estimate(jar), second).interval(CONFIDENCE).contains(SLOWER);
        });
    }

    /** How often two equal jars are not claimed to differ. */
    Count noFalseClaim(int runs, long seed) {
        SplittableRandom more = new SplittableRandom(~seed);
        return tally(runs, seed, jar -> {
            Estimate second = estimate(Jar.of(this, jar.room.celsius(), more.nextDouble(38, 43), more));
            return Verdict.of(estimate(jar), second) instanceof Verdict.CannotTell;
        });
    }

    private Estimate estimate(Jar jar) {
        return CoolingFit.of(jar.readings, Surroundings.constant(jar.around), grain())
                .conservativeEstimate();
    }

    private CoolingIntervals limits(Jar jar, Surroundings surroundings) {
        return CoolingFit.of(jar.readings, surroundings, grain()).intervals(CONFIDENCE);
    }

    private Count tally(int runs, long seed, Predicate<Jar> holds) {
        SplittableRandom random = new SplittableRandom(seed);
        int refused = 0;
        int held = 0;
        for (int run = 0; run < runs; run++) {
            Jar jar = Jar.of(this, random);
            try {
                held += holds.test(jar) ? 1 : 0;
            } catch (InvalidInputException refusal) {
                refused++;
            }
        }
        return new Count(runs, runs - refused, held);
    }

    Graduation grain() {
        return Graduation.of(mark, scale);
    }

    /** The same with a thermometer whose marks are so fine that rounding is nothing beside the noise. */
    Coverage withoutRounding() {
        return new Coverage(readings, noise / 1000, Scale.CELSIUS, halfTime, noise);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d readings, mark %s %s, half-time %s min, noise %s K",
                readings,
                number(mark),
                scale.symbol(),
                number(halfTime),
                number(noise));
    }

    private static String number(double number) {
        return new DecimalFormat("0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(number);
    }

    /** The noise beside the standard deviation that rounding leaves. */
    double noiseToRounding() {
        return noise / grain().standardUncertainty();
    }

    /** An invented jar, with the surroundings as they are and as they are read on its thermometer. */
    record Jar(Readings readings, Temperature room, Temperature around) {

        static Jar of(Coverage cell, SplittableRandom random) {
            double room = random.nextDouble(0, 8);
            double start = random.nextDouble(38, 43);
            return of(cell, room, start, random);
        }

        /** With a room and a start in °C that are not drawn. */
        static Jar of(Coverage cell, double room, double start, SplittableRandom random) {
            List<Entry> minutes = new ArrayList<>();
            List<Entry> temperatures = new ArrayList<>();
            for (int i = 0; i < cell.readings; i++) {
                double time = LESSON * i / (cell.readings - 1);
                double truth = room + (start - room) * Math.pow(2, -time / cell.halfTime);
                double seen = new Temperature(truth + cell.noise * random.nextGaussian()).in(cell.scale);
                boolean missed = random.nextDouble() < MISSED && i % 4 == 1;
                minutes.add(Entry.of(time));
                temperatures.add(missed ? Entry.of("-") : Entry.of(cell.mark * Math.rint(seen / cell.mark)));
            }
            double around = cell.mark * Math.rint(new Temperature(room).in(cell.scale) / cell.mark);
            return new Jar(
                    Readings.ofMinutes(minutes, temperatures, cell.scale),
                    new Temperature(room),
                    Temperature.of(around, cell.scale));
        }
    }
}
