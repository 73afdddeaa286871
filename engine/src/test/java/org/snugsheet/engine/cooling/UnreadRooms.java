package org.snugsheet.engine.cooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;

/**
 * Lessons in surroundings that nobody read, of jars that lose heat as jars do: by Runge–Kutta steps, {@code java.util.Random} and {@code
 * floor}, with nothing of the laws that are tested. Rates at first of 0.03 to 0.08 per minute, starts of 38 to 43 °C, 2 to 8 °C around.
 *
 * @param readings how many readings of a jar
 * @param minutes the time of the last
 * @param mark the mark of the thermometer in °C
 * @param noise the standard deviation of one reading, K
 * @param way how the jar loses heat
 */
record UnreadRooms(int readings, double minutes, double mark, double noise, Way way) {

    /** How a jar loses heat, as a share of what it loses at first. */
    enum Way {
        /** In proportion. */
        NEWTON {
            @Override
            double loss(double celsius, double start, double room) {
                return (celsius - room) / (start - room);
            }
        },
        /** Free convection, laminar: the power 5/4 (Incropera and DeWitt, section 9.6). */
        STILL_AIR {
            @Override
            double loss(double celsius, double start, double room) {
                return power((celsius - room) / (start - room), 1.25);
            }
        },
        /** Free convection, turbulent: the power 4/3 (the same section). */
        ROUGH_AIR {
            @Override
            double loss(double celsius, double start, double room) {
                return power((celsius - room) / (start - room), 4.0 / 3);
            }
        },
        /** Half by the fourth powers of Stefan and Boltzmann, half by laminar free convection. */
        RADIATION {
            @Override
            double loss(double celsius, double start, double room) {
                double glow = fourth(celsius) - fourth(room);
                return (glow / (fourth(start) - fourth(room)) + STILL_AIR.loss(celsius, start, room)) / 2;
            }
        },
        /** The same without a lid, in air as damp as can be: a fifth of the surface is open water. */
        OPEN_IN_DAMP_AIR {
            @Override
            double loss(double celsius, double start, double room) {
                return open(celsius, start, room, 1);
            }
        },
        /** The same in dry air of a relative humidity of 50 %: such water settles below the room. */
        OPEN_IN_DRY_AIR {
            @Override
            double loss(double celsius, double start, double room) {
                return open(celsius, start, room, 0.5);
            }
        };

        abstract double loss(double celsius, double start, double room);

        /** I. S. Bowen, Phys. Rev. 27, 779–787 (1926): vapor takes {@code Δp/(0.066 kPa/K)} where air takes a kelvin. */
        private static double open(double celsius, double start, double room, double humidity) {
            double now = (pressure(celsius) - humidity * pressure(room)) / BOWEN;
            double first = (pressure(start) - humidity * pressure(room)) / BOWEN;
            double dry = RADIATION.loss(celsius, start, room) * (start - room);
            return (dry + OPEN * now) / (start - room + OPEN * first);
        }

        private static double power(double share, double power) {
            return Math.signum(share) * Math.pow(Math.abs(share), power);
        }

        private static double fourth(double celsius) {
            return Math.pow(celsius + 273.15, 4);
        }

        /** Of saturated vapor in kPa: O. A. Alduchov and R. E. Eskridge, J. Appl. Meteor. 35, 601–609 (1996), from memory. */
        private static double pressure(double celsius) {
            return 0.61094 * Math.exp(17.625 * celsius / (celsius + 243.04));
        }
    }

    private static final double BOWEN = 0.066;
    private static final double OPEN = 0.2;
    private static final double STEP = 0.5;

    /**
     * One lesson.
     *
     * @param seen what was read
     * @param room how warm it was around, °C
     * @param rate the rate by which Newton’s law comes nearest to the jar without noise and rounding if the room is typed, 1/min: what
     *     {@code COOL.RATE} is asked for
     */
    record Lesson(Readings seen, double room, double rate) {}

    Lesson lesson(Random random) {
        double rate = 0.03 + 0.05 * random.nextDouble();
        double room = 2 + 6 * random.nextDouble();
        double start = 38 + 5 * random.nextDouble();
        double[] truth = new double[readings];
        List<Entry> times = new ArrayList<>();
        List<Entry> seen = new ArrayList<>();
        double temperature = start;
        for (int i = 0; i < readings; i++) {
            if (i > 0) {
                temperature = later(temperature, rate, start, room, minutes / (readings - 1));
            }
            truth[i] = temperature;
            times.add(Entry.of(minutes * i / (readings - 1)));
            seen.add(Entry.of(mark * Math.floor((temperature + noise * random.nextGaussian()) / mark + 0.5)));
        }
        return new Lesson(Readings.ofMinutes(times, seen, Scale.CELSIUS), room, nearest(truth, room));
    }

    private double later(double celsius, double rate, double start, double room, double duration) {
        int steps = (int) Math.ceil(duration / STEP);
        double h = duration / steps;
        double scale = -rate * (start - room);
        double now = celsius;
        for (int i = 0; i < steps; i++) {
            double a = scale * way.loss(now, start, room);
            double b = scale * way.loss(now + h / 2 * a, start, room);
            double c = scale * way.loss(now + h / 2 * b, start, room);
            double d = scale * way.loss(now + h * c, start, room);
            now += h / 6 * (a + 2 * b + 2 * c + d);
        }
        return now;
    }

    /** By dividing the bracket in three, again and again. */
    private double nearest(double[] truth, double room) {
        double low = 0.001;
        double high = 0.3;
        for (int i = 0; i < 60; i++) {
            double third = (high - low) / 3;
            if (misfit(truth, room, low + third) < misfit(truth, room, high - third)) {
                high -= third;
            } else {
                low += third;
            }
        }
        return (low + high) / 2;
    }

    private double misfit(double[] truth, double room, double rate) {
        double squares = 0;
        double together = 0;
        double all = 0;
        for (int i = 0; i < readings; i++) {
            double left = Math.exp(-rate * minutes * i / (readings - 1));
            squares += left * left;
            together += left * (truth[i] - room);
            all += (truth[i] - room) * (truth[i] - room);
        }
        return all - together * together / squares;
    }

    Graduation grain() {
        return Graduation.of(mark, Scale.CELSIUS);
    }
}
