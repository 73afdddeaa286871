package org.snugsheet.engine.lesson;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * How often so many jars of two wraps will be told apart, if the wraps truly differ.
 *
 * <p>Each jar’s true constant scatters about its wrap’s by {@code spread}, its estimate about that by the {@linkplain
 * ReadingPlan#standardError() error of the plan}, and all of them are moved by the {@linkplain ReadingPlan#surroundingsError()
 * rounding of the surroundings}. If all errors were normal and independent, and the curve straight in its parameters, an integral would
 * say how often ({@link NormalPower}). What rounding that repeats itself, few readings and a curve that bends do to that is drawn
 * ({@link DrawnJars}): of lessons put together from jars that are read, fitted and judged as the class’s will be, it is counted how many more
 * are told apart than of the same lessons with straight curves and normal errors (a control variate: J. M. Hammersley and D. C.
 * Handscomb, Monte Carlo Methods, 1964, section 5.5, from memory). How near that comes to whole lessons is in NOTES.md: in 24 of 25 plans within 0.02.
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
        return new DrawnLessons(this).share(jars);
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
        DrawnLessons lessons = new DrawnLessons(this);
        if (spread == 0 && lessons.share(1) >= wanted) {
            return 1;
        }
        double most = lessons.share(MOST_JARS);
        if (most < wanted) {
            throw InvalidInputException.of(Problem.JARS_OUT_OF_REACH, MOST_JARS, most);
        }
        // More jars tell more, from two on.
        int few = 1;
        int enough = MOST_JARS;
        while (enough - few > 1) {
            int middle = (few + enough) / 2;
            if (lessons.share(middle) >= wanted) {
                enough = middle;
            } else {
                few = middle;
            }
        }
        return enough;
    }
}
