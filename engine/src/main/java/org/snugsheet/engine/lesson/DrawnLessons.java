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
            if (group.isApart(first.fitted(), ones, second.fitted(), others, moved)) {
                more++;
            }
            if (group.isApart(first.straight(), ones, second.straight(), others, moved)) {
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

        boolean isApart(List<Estimate> ones, int[] which, List<Estimate> others, int[] whichOther, double moved) {
            Estimate one = together(ones, which);
            Estimate other = together(others, whichOther);
            return Math.abs(one.value() - other.value() + moved) >= new Ratio(one, other).leastDifference();
        }

        private Estimate together(List<Estimate> all, int[] which) {
            if (jars == 1) {
                return all.get(which[0]);
            }
            double mean = 0;
            double shared = 0;
            double common = 0;
            for (int i : which) {
                Estimate jar = all.get(i);
                mean += jar.value();
                shared += jar.sharedError();
                common += jar.commonError();
            }
            mean /= jars;
            shared /= jars;
            double squares = 0;
            for (int i : which) {
                double apart = all.get(i).value() - mean;
                squares += apart * apart;
            }
            double variance = squares / (jars - 1.0) / jars + normal * normal * shared * shared;
            return new Estimate(mean, Math.sqrt(variance), jars - 1.0, shared, common / jars);
        }
    }
}
