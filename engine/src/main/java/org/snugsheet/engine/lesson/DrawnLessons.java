package org.snugsheet.engine.lesson;

import java.util.List;
import java.util.SplittableRandom;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Ratio;
import org.snugsheet.engine.comparison.StudentT;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.cooling.CoolingConstant;

/** Lessons put together from {@linkplain DrawnJars drawn jars}, and in how many of them two wraps are told apart: see {@link Power}. */
final class DrawnLessons {

    private static final int LESSONS = 4000;

    private static final long SEED = 20_240_229;

    private final Power power;
    private final DrawnJars first;
    private final DrawnJars second;

    DrawnLessons(Power power) {
        this.power = power;
        this.first = DrawnJars.of(power.first(), power.spread());
        this.second = DrawnJars.of(power.second(), power.spread());
    }

    /** The share of lessons in which they are told apart with so many jars of each. */
    double share(int jars) {
        double normal = normal(jars);
        int more = 0;
        SplittableRandom random = new SplittableRandom(SEED);
        int[] ones = new int[jars];
        int[] others = new int[jars];
        Group group = new Group(jars);
        Numbers[] curved = {Numbers.of(first.fitted()), Numbers.of(second.fitted())};
        Numbers[] straight = {Numbers.of(first.straight()), Numbers.of(second.straight())};
        double byCommon = perMinute(power.first().surroundingsError())
                - perMinute(power.second().surroundingsError());
        for (int lesson = 0; lesson < LESSONS; lesson++) {
            for (int i = 0; i < jars; i++) {
                ones[i] = random.nextInt(first.fitted().size());
                others[i] = random.nextInt(second.fitted().size());
            }
            // The surroundings are read once for all jars, and rounding may have moved them anywhere within half a
            // mark.
            double moved = byCommon * Math.sqrt(12) * (random.nextDouble() - 0.5);
            if (group.isApart(curved[0], ones, curved[1], others, moved)) {
                more++;
            }
            if (group.isApart(straight[0], ones, straight[1], others, moved)) {
                more--;
            }
        }
        return Math.min(1, Math.max(0, normal + (double) more / LESSONS));
    }

    private double normal(int jars) {
        return new NormalPower(source(power.first(), jars), source(power.second(), jars)).share();
    }

    private NormalPower.Source source(ReadingPlan plan, int jars) {
        double value = perMinute(plan.jar().constant().perSecond());
        double error = perMinute(plan.standardError());
        double common = perMinute(plan.surroundingsError());
        double deviation = Math.hypot(error, power.spread() * value) / Math.sqrt(jars);
        return jars == 1
                ? new NormalPower.Source(
                        value,
                        deviation,
                        error,
                        plan.count() - 2.0,
                        plan.mark().standardUncertainty() / plan.readingError(),
                        common)
                : new NormalPower.Source(value, deviation, deviation, jars - 1.0, 0, common);
    }

    private static double perMinute(double perSecond) {
        return new CoolingConstant(perSecond).perMinute();
    }

    /** Estimates with their numbers beside each other: they are looked up a million times in one cell. */
    @SuppressWarnings("ArrayRecordComponent") // never leaves the class and is never compared
    private record Numbers(List<Estimate> all, double[] values, double[] shared, double[] common) {

        static Numbers of(List<Estimate> all) {
            return new Numbers(
                    all,
                    all.stream().mapToDouble(Estimate::value).toArray(),
                    all.stream().mapToDouble(Estimate::sharedError).toArray(),
                    all.stream().mapToDouble(Estimate::commonError).toArray());
        }
    }

    /**
     * What {@link org.snugsheet.engine.comparison.Ranking} says of two wraps, where nothing else of it is wanted; PowerTest holds it against
     * whole lessons that are ranked. Jars that agree in every digit, for which {@link
     * org.snugsheet.engine.comparison.ReplicateGroup} has a rule of its own, are too rare to count.
     */
    private static final class Group {

        private final int jars;
        private final double normal;

        Group(int jars) {
            this.jars = jars;
            this.normal = jars == 1
                    ? 0
                    : StudentT.quantile(Verdict.CONFIDENCE, Double.POSITIVE_INFINITY)
                            / StudentT.quantile(Verdict.CONFIDENCE, jars - 1.0);
        }

        boolean isApart(Numbers ones, int[] which, Numbers others, int[] whichOther, double moved) {
            Estimate one = together(ones, which);
            Estimate other = together(others, whichOther);
            return Math.abs(one.value() - other.value() + moved) >= new Ratio(one, other).leastDifference();
        }

        private Estimate together(Numbers drawn, int[] which) {
            if (jars == 1) {
                return drawn.all.get(which[0]);
            }
            // Squares of differences from one of them, so that no digits are lost in one pass.
            double origin = drawn.values[which[0]];
            double sum = 0;
            double squares = 0;
            double shared = 0;
            double common = 0;
            for (int i : which) {
                double apart = drawn.values[i] - origin;
                sum += apart;
                squares += apart * apart;
                shared += drawn.shared[i];
                common += drawn.common[i];
            }
            double mean = sum / jars;
            shared /= jars;
            double scatter = Math.max(0, squares - sum * mean);
            double variance = scatter / (jars - 1.0) / jars + normal * normal * shared * shared;
            return new Estimate(origin + mean, Math.sqrt(variance), jars - 1.0, shared, common / jars);
        }
    }
}
