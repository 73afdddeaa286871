package org.snugsheet.engine.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * Jars as a class reads them by a plan: each one’s constant and start drawn, its readings rounded to the mark, fitted and judged by the fit
 * that the class will use; and beside each what a fit would say whose errors were normal and whose curve were straight in its
 * parameters, of the same errors. The latter’s distribution is known, so that only the difference has to be drawn ({@link Power}).
 *
 * <p>Every error takes a value out of each of as many equally likely slices as there are jars (M. D. McKay, R. J. Beckman and W. J.
 * Conover, Technometrics 21 (1979), 239–245), and the numbers drawn are the same every time.
 *
 * @param fitted the estimates of the fits, 1/min
 * @param straight those of the straight curves
 */
record DrawnJars(List<Estimate> fitted, List<Estimate> straight) {

    /** Twice as many change the power by less than what is promised. */
    private static final int MOST = 256;

    /** Many readings leave little but normal errors, and cost more. */
    private static final int FEWEST = 32;

    private static final int MOST_READINGS = 10_000;

    /** No jar warms itself, however wide the spread. */
    private static final double LEAST_SHARE = 0.01;

    private static final long SEED = 20_240_229;

    /** Readings that no fit takes are read anew, as a class would; so often at most. */
    private static final int TRIES = 3;

    private static final double SECONDS_PER_MINUTE = 60;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    DrawnJars {
        fitted = List.copyOf(fitted);
        straight = List.copyOf(straight);
    }

    static DrawnJars of(ReadingPlan plan, double spread) {
        return new Drawing(plan, spread).jars();
    }

    private static final class Drawing {

        private final Random numbers = new Random(SEED);
        private final ReadingPlan plan;
        private final double spread;
        private final StraightFit line;
        private final double[] times;
        private final double mark;
        /** How much of the rounding noise makes random: the first harmonic of a saw-tooth is what is left (Widrow and Kollár 2008). */
        private final double scattered;
        /** The rest. */
        private final double regular;

        private final int jars;
        private final List<Entry> minutes = new ArrayList<>();
        private final Surroundings surroundings;

        Drawing(ReadingPlan plan, double spread) {
            this.plan = plan;
            this.spread = spread;
            this.line = plan.straightFit();
            this.jars = Math.min(MOST, Math.max(FEWEST, MOST_READINGS / plan.count()));
            this.times = plan.times().stream().mapToDouble(time -> time).toArray();
            this.mark = plan.mark().graduation().kelvins();
            double noise = plan.scatter() / mark;
            this.scattered = -Math.expm1(-2 * Math.PI * Math.PI * noise * noise);
            this.regular = Math.sqrt(1 - scattered * scattered);
            List<Entry> around = new ArrayList<>();
            for (double time : plan.times()) {
                minutes.add(Entry.of(time / SECONDS_PER_MINUTE));
                around.add(Entry.of(plan.jar().surroundingsAfter(time).celsius()));
            }
            this.surroundings = plan.jar() instanceof Steady
                    ? Surroundings.constant(plan.jar().surroundingsAfter(0))
                    : new Surroundings.Measured(Readings.ofMinutes(minutes, around, Scale.CELSIUS));
        }

        DrawnJars jars() {
            double[][] levels = new double[plan.count() + 2][];
            for (int i = 0; i < levels.length; i++) {
                levels[i] = slices();
            }
            List<Estimate> fitted = new ArrayList<>();
            List<Estimate> straight = new ArrayList<>();
            for (int i = 0; i < jars; i++) {
                double[] noise = new double[plan.count()];
                for (int reading = 0; reading < noise.length; reading++) {
                    noise[reading] = NORMAL.inverseCumulativeProbability(levels[reading + 2][i]);
                }
                Jar jar = new Jar(levels[0][i], spread * NORMAL.inverseCumulativeProbability(levels[1][i]), noise);
                Estimate known = straight(jar, noise);
                straight.add(known);
                fitted.add(fitted(jar, known));
            }
            return new DrawnJars(fitted, straight);
        }

        /** One level in each slice, in any order. */
        private double[] slices() {
            double[] levels = new double[jars];
            for (int i = 0; i < jars; i++) {
                int j = numbers.nextInt(i + 1);
                levels[i] = levels[j];
                levels[j] = (i + numbers.nextDouble()) / jars;
            }
            return levels;
        }

        /** One jar’s temperatures without noise and rounding, and its readings. */
        private final class Jar {

            private final double apart;
            private final double[] seen = new double[times.length];
            private final double[] read = new double[times.length];

            /**
             * A jar that is read.
             *
             * @param lower by how much of a mark it begins below the plan: nobody meets that to the tenth of a degree, and else all jars
             *     would round alike
             * @param apart by which share its constant is off
             * @param noise of each reading, in standard deviations
             */
            Jar(double lower, double apart, double[] noise) {
                this.apart = apart;
                CoolingConstant constant =
                        new CoolingConstant(plan.jar().constant().perSecond() * Math.max(LEAST_SHARE, 1 + apart));
                Forecast jar = plan.jar().with(constant);
                for (int i = 0; i < times.length; i++) {
                    double cooler = mark * lower * Math.exp(-constant.perSecond() * times[i]);
                    seen[i] = jar.after(times[i]).celsius() - cooler + plan.scatter() * noise[i];
                    double rounded = mark * Math.rint(seen[i] / mark);
                    // A mark of nothing rounds nothing.
                    read[i] = Double.isFinite(rounded) ? rounded : seen[i];
                }
            }
        }

        /** The estimate of a straight curve, of as much of the rounding as noise makes random, and of the rest as normal as theory has it. */
        private Estimate straight(Jar jar, double[] noise) {
            double[] errors = new double[times.length];
            double rounding = plan.mark().standardUncertainty();
            for (int i = 0; i < errors.length; i++) {
                errors[i] = plan.scatter() * noise[i]
                        + scattered * (jar.read[i] - jar.seen[i])
                        + regular * rounding * numbers.nextGaussian();
            }
            double value = plan.jar().constant().perSecond() * (1 + jar.apart) + line.movedBy(errors);
            double found = Math.sqrt(line.left(errors) / (errors.length - 2));
            return new Estimate(
                    perMinute(value),
                    perMinute(plan.standardError()) * Math.max(rounding, found) / plan.readingError(),
                    errors.length - 2.0,
                    0,
                    perMinute(plan.surroundingsError()));
        }

        private Estimate fitted(Jar jar, Estimate otherwise) {
            Jar again = jar;
            for (int i = 0; i < TRIES; i++) {
                try {
                    List<Entry> temperatures = new ArrayList<>();
                    for (double read : again.read) {
                        temperatures.add(Entry.of(read));
                    }
                    Readings readings = Readings.ofMinutes(minutes, temperatures, Scale.CELSIUS);
                    return CoolingFit.of(readings, surroundings, plan.mark()).conservativeEstimate();
                } catch (InvalidInputException unreadable) {
                    again = new Jar(numbers.nextDouble(), jar.apart, noise());
                }
            }
            return otherwise;
        }

        private double[] noise() {
            double[] noise = new double[times.length];
            for (int i = 0; i < noise.length; i++) {
                noise[i] = numbers.nextGaussian();
            }
            return noise;
        }

        private static double perMinute(double perSecond) {
            return new CoolingConstant(perSecond).perMinute();
        }
    }
}
