package org.snugsheet.engine.cooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * Lessons as a class reads them, in °C and minutes, invented by closed formulas and a plain random number generator: nothing of the
 * laws that are tested. The surroundings are read on the same thermometer as the jars and rounded to the same mark.
 *
 * @param readings how many readings of a jar
 * @param minutes the time of the last
 * @param mark the mark of the thermometer in °C
 * @param noise the standard deviation of one reading, K
 * @param together how much of the noise of one reading is left in the next, from 0 to 1
 * @param around what is typed for the surroundings
 */
record RealLessons(int readings, double minutes, double mark, double noise, double together, Around around) {

    /** What is typed for the surroundings. */
    enum Around {
        /** One reading on the jars’ thermometer. */
        ONCE,
        /** A column of them, in a bath that warms by three degrees. */
        COLUMN,
        /** A column of them, in a tub that stays as it is; the readings err as those of the jars do. */
        STILL_COLUMN,
        /** Nothing had to be read: ice melts in the water, and somebody types the word. */
        ICE,
        /** The truth, as if it were known to every digit. */
        EXACT,
        /** Nobody read it. */
        FIT
    }

    /** What is wrong with a thermometer or with who reads it. */
    interface Fault {

        /** What stands there before noise and rounding, of a reading counted from 0. */
        double seen(int reading, double truth);
    }

    private static final double WARMS_BY = 3;
    private static final int STEPS = 40;

    /**
     * What the jars of one lesson stand in.
     *
     * @param first how warm it truly is at first
     * @param rise by how much it truly warms in a minute
     * @param typed what is typed for it
     */
    record Tub(double first, double rise, Surroundings typed) {}

    Tub tub(Random random) {
        double truth = around == Around.ICE ? 0 : 2 + 6 * random.nextDouble();
        double rise = around == Around.COLUMN ? WARMS_BY / minutes : 0;
        List<Entry> typed = new ArrayList<>();
        switch (around) {
            case ONCE -> typed.add(Entry.of(rounded(truth)));
            case EXACT -> typed.add(Entry.of(truth));
            case ICE -> typed.add(Entry.of("melting ice"));
            case FIT -> typed.add(Entry.of("fit"));
            case COLUMN, STILL_COLUMN -> {
                for (Entry minute : times()) {
                    double now = truth + rise * ((Entry.Value) minute).value();
                    typed.add(Entry.of(rounded(now + noise * random.nextGaussian())));
                }
            }
        }
        return new Tub(truth, rise, Surroundings.of(typed, times(), Scale.CELSIUS));
    }

    /** A jar filled at a temperature of its own. */
    CoolingFit jar(Tub tub, double rate, Random random) {
        return jar(tub, rate, 38 + 5 * random.nextDouble(), random, (reading, truth) -> truth);
    }

    /** The same, read on a thermometer with a fault of its own. */
    CoolingFit jar(Tub tub, double rate, double start, Random random, Fault fault) {
        List<Entry> seen = new ArrayList<>();
        double wander = random.nextGaussian();
        for (Entry minute : times()) {
            int reading = seen.size();
            double t = ((Entry.Value) minute).value();
            double truth = tub.rise() == 0
                    ? tub.first() + (start - tub.first()) * Math.exp(-rate * t)
                    : warming(tub, rate, start, t);
            seen.add(Entry.of(rounded(fault.seen(reading, truth) + noise * wander)));
            wander = together * wander + Math.sqrt(1 - together * together) * random.nextGaussian();
        }
        return CoolingFit.of(Readings.ofMinutes(times(), seen, Scale.CELSIUS), tub.typed(), grain());
    }

    /** By the classical Runge–Kutta steps, so that no formula of ours is used twice. */
    private static double warming(Tub tub, double rate, double start, double until) {
        double h = until / STEPS;
        double temperature = start;
        for (int i = 0; i < STEPS; i++) {
            double t = i * h;
            double a = slope(tub, rate, t, temperature);
            double b = slope(tub, rate, t + h / 2, temperature + h / 2 * a);
            double c = slope(tub, rate, t + h / 2, temperature + h / 2 * b);
            double d = slope(tub, rate, t + h, temperature + h * c);
            temperature += h / 6 * (a + 2 * b + 2 * c + d);
        }
        return temperature;
    }

    private static double slope(Tub tub, double rate, double t, double temperature) {
        return -rate * (temperature - tub.first() - tub.rise() * t);
    }

    private List<Entry> times() {
        List<Entry> times = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            times.add(Entry.of(minutes * i / (readings - 1)));
        }
        return times;
    }

    private double rounded(double celsius) {
        return mark * Math.floor(celsius / mark + 0.5);
    }

    Graduation grain() {
        return Graduation.of(mark, Scale.CELSIUS);
    }
}
