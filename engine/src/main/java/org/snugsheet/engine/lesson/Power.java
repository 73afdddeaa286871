package org.snugsheet.engine.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.NamedEstimate;
import org.snugsheet.engine.comparison.Ranking;

/**
 * How often so many jars of two wraps will be told apart, if the wraps truly differ.
 *
 * <p>It plays the lesson many times over: each jar’s true constant scatters about its wrap’s by {@code spread}, its estimate
 * about that by the {@linkplain ReadingPlan#standardError() error of the plan}, all of them are moved by the {@linkplain
 * ReadingPlan#surroundingsError() rounding of the surroundings}, and the error itself is found from the n − 2
 * spare readings, by a χ² (Casella and Berger, Statistical Inference, 2nd edition, theorem 5.3.1), never below the mark’s
 * rounding. Then the same {@link Ranking} judges that will judge the class’s jars. The numbers drawn are the same every time, so
 * the answer is too. Of {@value #PLAYS} plays the share is known to 0.8 in a hundred.
 *
 * @param first the plan for a jar of the one wrap
 * @param second the plan for a jar of the other
 * @param spread how much jars of one wrap truly differ, as a share of their constant
 */
public record Power(ReadingPlan first, ReadingPlan second, double spread) {

    /** How much jars wrapped alike by children differ; common practice, no source. */
    public static final double USUAL_SPREAD = 0.1;

    /** No class has more jars of one wrap. */
    public static final int MOST_JARS = 20;

    private static final int PLAYS = 4000;

    /** After so many lessons, and each time as many more, it is asked whether the rest need not be played. */
    private static final int LOOK_EACH = 200;

    /** So many standard errors from what is wanted: less than one in a million by chance (normal distribution). */
    private static final double CLEAR = 5;

    private static final long SEED = 20_240_229;

    /** The levels of the χ² that are drawn from, so that a draw needs no more than looking it up. */
    private static final int LEVELS = 2000;

    /**
     * A pair of plans.
     *
     * @throws InvalidInputException if the spread does not lie between 0 and 1
     */
    public Power {
        if (!(spread >= 0 && spread < 1)) {
            throw InvalidInputException.of(Problem.NOT_A_SHARE, spread);
        }
    }

    /**
     * How often they are told apart.
     *
     * @param jars how many jars of each wrap
     * @return a share: 0.8 is four lessons in five
     * @throws InvalidInputException if that is no number of jars from 1 to {@link #MOST_JARS}
     */
    public double of(int jars) {
        if (jars < 1 || jars > MOST_JARS) {
            throw InvalidInputException.of(Problem.JARS_OUT_OF_RANGE, MOST_JARS);
        }
        return played(jars, tally -> false).share();
    }

    /** How many lessons were played, and in how many of them the wraps were told apart. */
    record Tally(int apart, int plays) {

        double share() {
            return (double) apart / plays;
        }

        /** Whether it is clear by now on which side of a share the whole lies. */
        boolean isFarFrom(double wanted) {
            return Math.abs(share() - wanted) > CLEAR * Math.sqrt(wanted * (1 - wanted) / plays);
        }
    }

    /** Plays lessons until it is clear whether so many jars are told apart as often as wanted, or all of them. */
    Tally untilClear(int jars, double wanted) {
        return played(jars, tally -> tally.isFarFrom(wanted));
    }

    private Tally played(int jars, Predicate<Tally> enough) {
        Random random = new Random(SEED);
        Draw one = new Draw(first, spread);
        Draw other = new Draw(second, spread);
        int apart = 0;
        for (int play = 1; play <= PLAYS; play++) {
            List<NamedEstimate> lesson = new ArrayList<>();
            // The surroundings are read once for all jars, and rounding may have moved them anywhere within half a
            // mark.
            double moved = Math.sqrt(12) * (random.nextDouble() - 0.5);
            for (int jar = 0; jar < jars; jar++) {
                lesson.add(new NamedEstimate("first", one.estimate(moved, random)));
                lesson.add(new NamedEstimate("second", other.estimate(moved, random)));
            }
            if (Ranking.of(lesson).pair(0, 1).isSeparated()) {
                apart++;
            }
            if (play % LOOK_EACH == 0 && enough.test(new Tally(apart, play))) {
                return new Tally(apart, play);
            }
        }
        return new Tally(apart, PLAYS);
    }

    /**
     * The fewest jars of each wrap that are told apart often enough. Where jars of one wrap differ, two at least: single jars are
     * told apart by what sets those two jars apart, and that speaks of no wrap.
     *
     * @param wanted how often they are to be told apart, such as 0.8
     * @return how many jars of each
     * @throws InvalidInputException if {@link #MOST_JARS} are not enough
     */
    public int jarsFor(double wanted) {
        if (!(wanted > 0 && wanted < 1)) {
            throw InvalidInputException.of(Problem.NOT_A_SHARE, wanted);
        }
        for (int jars = spread > 0 ? 2 : 1; jars <= MOST_JARS; jars++) {
            if (untilClear(jars, wanted).share() >= wanted) {
                return jars;
            }
        }
        throw InvalidInputException.of(Problem.JARS_OUT_OF_REACH, MOST_JARS, of(MOST_JARS));
    }

    private static final class Draw {

        private final double constant;
        private final double apart;
        private final double error;
        private final double common;
        private final double least;
        private final int spare;
        private final double[] levels;

        Draw(ReadingPlan plan, double spread) {
            this.constant = plan.jar().constant().perSecond();
            this.apart = spread * constant;
            this.error = plan.standardError();
            this.common = plan.surroundingsError();
            this.least = plan.mark().standardUncertainty() / plan.readingError();
            this.spare = plan.count() - 2;
            this.levels = levels(spare);
        }

        Estimate estimate(double moved, Random random) {
            double value = constant + apart * random.nextGaussian() + error * random.nextGaussian() + common * moved;
            double found = Math.sqrt(levels[random.nextInt(LEVELS)]);
            return new Estimate(value, error * Math.max(least, found), spare, 0, common);
        }

        private static double[] levels(int spare) {
            ChiSquaredDistribution chiSquared = new ChiSquaredDistribution(null, spare);
            double[] levels = new double[LEVELS];
            for (int i = 0; i < LEVELS; i++) {
                levels[i] = chiSquared.inverseCumulativeProbability((i + 0.5) / LEVELS) / spare;
            }
            return levels;
        }
    }
}
