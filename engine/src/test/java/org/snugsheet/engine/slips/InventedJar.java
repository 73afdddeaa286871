package org.snugsheet.engine.slips;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;

/**
 * A jar whose truth is known, invented from the laws of the engine: times, true temperatures in °C, surroundings, and how it is read.
 *
 * @param law which law it follows
 * @param minutes when it is read, by the true clock
 * @param truth its true temperature then, in °C
 * @param around the true surroundings then, in °C
 * @param noise the standard deviation of a reading before rounding, in kelvins
 * @param mark the mark of the thermometer in degrees of its scale
 * @param scale its scale
 * @param missed which readings were missed
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record InventedJar(
        Law law,
        double[] minutes,
        double[] truth,
        double[] around,
        double noise,
        double mark,
        Scale scale,
        boolean[] missed) {

    /** The laws that jars are invented by. */
    enum Law {
        NEWTON,
        STILL_AIR,
        WARMING_BATH,
        TWO_STAGES
    }

    private static final double[] STEPS = {1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20};

    /** A lesson drawn anew: 8 to 20 readings, half-times of 5 to 120 minutes, a drop from a fifth to all but a sixteenth. */
    static InventedJar of(double mark, SplittableRandom random) {
        int n = random.nextInt(8, 21);
        double halfTime = 5 * Math.pow(24, random.nextDouble());
        double spans = 0.3 * Math.pow(4 / 0.3, random.nextDouble());
        double step = nearest(spans * halfTime / (n - 1));
        double start = random.nextDouble(33, 60);
        double room = random.nextDouble() < 0.3 ? random.nextDouble(16, 23) : random.nextDouble(-8, 12);
        Scale scale = random.nextDouble() < 0.3 ? Scale.FAHRENHEIT : Scale.CELSIUS;
        double markKelvins = scale == Scale.FAHRENHEIT ? mark * 5 / 9 : mark;
        double noise = random.nextDouble() < 0.2 ? 0 : random.nextDouble(0.05, 0.1 + 0.4 * Math.min(markKelvins, 1));
        Law law = random.nextDouble() < 0.55 ? Law.NEWTON : Law.values()[random.nextInt(1, 4)];
        double[] minutes = new double[n];
        double begin = random.nextDouble() < 0.2 ? random.nextInt(1, 90) : 0;
        for (int i = 1; i < n; i++) {
            // Now and then nobody came to read, and that row was never written.
            minutes[i] = minutes[i - 1] + step * (random.nextDouble() < 0.04 ? 2 : 1);
        }
        double warming = law == Law.WARMING_BATH ? random.nextDouble(0.5, 6) : 0;
        double[] truth = new double[n];
        double[] around = new double[n];
        double share = random.nextDouble(0.05, 0.25);
        double faster = random.nextDouble(3, 10);
        for (int i = 0; i < n; i++) {
            around[i] = room + warming * minutes[i] / minutes[n - 1];
            truth[i] = truth(
                    law, minutes[i], start, room, Math.log(2) / halfTime, warming / minutes[n - 1], share, faster);
        }
        boolean[] missed = new boolean[n];
        for (int i = 1; i < n - 1; i++) {
            missed[i] = random.nextDouble() < 0.05;
            minutes[i] += begin;
        }
        minutes[0] += begin;
        minutes[n - 1] += begin;
        return new InventedJar(law, minutes, truth, around, noise, mark, scale, missed);
    }

    private static double nearest(double step) {
        double best = STEPS[0];
        for (double usual : STEPS) {
            best = Math.abs(Math.log(usual / step)) < Math.abs(Math.log(best / step)) ? usual : best;
        }
        return best;
    }

    private static double truth(
            Law law, double t, double start, double room, double k, double slope, double share, double faster) {
        double theta = start - room;
        return switch (law) {
            case NEWTON -> room + theta * Math.exp(-k * t);
            case STILL_AIR -> room + theta * Math.pow(1 + 1.3 * k * t / 4, -4);
            // dT/dt = −k(T − Tₛ − bt): T − Tₛ = bt − b/k + (θ + b/k)e^(−kt)
            case WARMING_BATH -> room + slope * t - slope / k + (theta + slope / k) * Math.exp(-k * t);
            case TWO_STAGES -> room + theta * ((1 - share) * Math.exp(-k * t) + share * Math.exp(-faster * k * t));
        };
    }

    int size() {
        return minutes.length;
    }

    Graduation grain() {
        return Graduation.of(mark, scale);
    }

    /** The standard deviation of a reading, rounding and noise together, in kelvins. */
    double deviation() {
        double rounding = grain().standardUncertainty();
        return Math.sqrt(noise * noise + rounding * rounding);
    }

    /** What is read of true temperatures, on the scale of the thermometer and rounded to its mark. */
    double[] read(double[] celsius, SplittableRandom random) {
        double[] read = new double[celsius.length];
        for (int i = 0; i < read.length; i++) {
            double seen = new Temperature(celsius[i] + noise * random.nextGaussian()).in(scale);
            read[i] = clean(mark * Math.rint(seen / mark));
        }
        return read;
    }

    static double clean(double number) {
        return Math.rint(number * 1e6) / 1e6;
    }

    /** The surroundings as typed: one number, or a column for a bath that warms. */
    List<Entry> surroundings() {
        if (law != Law.WARMING_BATH) {
            return List.of(Entry.of(clean(new Temperature(around[0]).in(scale))));
        }
        List<Entry> column = new ArrayList<>();
        for (double celsius : around) {
            column.add(Entry.of(clean(new Temperature(celsius).in(scale))));
        }
        return column;
    }
}
