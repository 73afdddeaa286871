package org.snugsheet.engine.lesson;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;

/**
 * When to read a jar, and how well its cooling constant will be known then.
 *
 * <p>The jar follows Newton’s law in surroundings that are read on the same thermometer, be it that they change; a reading errs by the rounding to the mark, {@code δ/√12}
 * (JCGM 100:2008, F.2.2.1), and by {@code scatter} beside it. The error of the constant is that of the least-squares fit of
 * start and constant together, from the curvature of the sum of squares at the truth, {@code s² = σ²·(JᵀJ)⁻¹} (Seber and Wild,
 * Nonlinear Regression, 1989, section 2.1): the same that the fit will find.
 *
 * @param jar how it will cool
 * @param intervalSeconds between one reading and the next
 * @param count how many readings, the first at the start
 * @param mark the smallest mark of the thermometer
 * @param scatter the standard deviation of a reading beside rounding, K; {@link #usualScatter}
 */
public record ReadingPlan(Forecast jar, double intervalSeconds, int count, Graduation mark, double scatter) {

    private static final int FEWEST = 3;

    /** More than a class takes; common practice, no source. */
    private static final int MOST = 500;

    /** Fewer points do not look like a curve to a class; common practice, no source. */
    private static final int FEWEST_FOR_A_CURVE = 5;

    private static final double SHORTEST_INTERVAL = 60;

    private static final int SEARCHED = 200;

    /**
     * A plan.
     *
     * @throws InvalidInputException if the start is too hot for pupils or within a mark of the surroundings, nothing cools, there are too
     *     few or too many readings, or the scatter is negative
     */
    public ReadingPlan {
        SafeStart.require(jar.start());
        if (!(jar.constant().perSecond() > 0)) {
            throw InvalidInputException.of(Problem.RATE_NOT_POSITIVE);
        }
        if (Math.abs(jar.difference(0)) <= mark.graduation().kelvins()) {
            throw InvalidInputException.of(Problem.TOO_NEAR_TO_READ);
        }
        if (!(intervalSeconds > 0) || Double.isInfinite(intervalSeconds)) {
            throw InvalidInputException.of(
                    Problem.NOT_POSITIVE, QuantityName.TIME_BETWEEN_READINGS, intervalSeconds / SHORTEST_INTERVAL);
        }
        if (count < FEWEST) {
            throw InvalidInputException.of(Problem.TOO_FEW_READINGS, FEWEST, count);
        }
        if (count > MOST) {
            throw InvalidInputException.of(Problem.TOO_MANY_READINGS, count, MOST);
        }
        if (!(scatter >= 0)) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.SCATTER, scatter);
        }
    }

    /**
     * The plan that fills a lesson.
     *
     * @param jar how it will cool
     * @param lessonSeconds how long it is read
     * @param intervalSeconds between one reading and the next
     * @param mark the smallest mark of the thermometer
     * @param scatter the standard deviation of a reading beside rounding, K
     * @return the plan
     * @throws InvalidInputException as the constructor does
     */
    public static ReadingPlan filling(
            Forecast jar, double lessonSeconds, double intervalSeconds, Graduation mark, double scatter) {
        LessonTime.require(lessonSeconds);
        double between = Math.floor(lessonSeconds / intervalSeconds + 1e-9);
        return new ReadingPlan(jar, intervalSeconds, (int) Math.min(between + 1, MOST + 1.0), mark, scatter);
    }

    /**
     * The plan with the fewest readings, but five at least, a whole number of minutes apart, that knows the constant well
     * enough.
     *
     * @param jar how it will cool
     * @param lessonSeconds how long it is read
     * @param wanted the standard error wanted, as a share of the constant
     * @param mark the smallest mark of the thermometer
     * @param scatter the standard deviation of a reading beside rounding, K
     * @return the plan
     * @throws InvalidInputException if a reading every minute is not enough, or as the constructor refuses
     */
    public static ReadingPlan forCertainty(
            Forecast jar, double lessonSeconds, double wanted, Graduation mark, double scatter) {
        if (!(wanted > 0 && wanted < 1)) {
            throw InvalidInputException.of(Problem.NOT_A_SHARE, wanted);
        }
        LessonTime.require(lessonSeconds);
        int longest = (int) (lessonSeconds / SHORTEST_INTERVAL / (FEWEST_FOR_A_CURVE - 1));
        for (int minutes = longest; minutes > 1; minutes--) {
            ReadingPlan plan = filling(jar, lessonSeconds, minutes * SHORTEST_INTERVAL, mark, scatter);
            if (plan.relativeError() <= wanted) {
                return plan;
            }
        }
        ReadingPlan everyMinute = filling(jar, lessonSeconds, SHORTEST_INTERVAL, mark, scatter);
        if (everyMinute.relativeError() > wanted) {
            throw InvalidInputException.of(Problem.CERTAINTY_OUT_OF_REACH, everyMinute.relativeError());
        }
        return everyMinute;
    }

    /**
     * How much a child’s reading scatters beside rounding: half a mark; common practice, no source.
     *
     * @param mark the smallest mark of the thermometer
     * @return K
     */
    public static double usualScatter(Graduation mark) {
        return mark.graduation().kelvins() / 2;
    }

    /**
     * The times to read at.
     *
     * @return seconds from the start
     */
    public List<Double> times() {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            times.add(i * intervalSeconds);
        }
        return List.copyOf(times);
    }

    /**
     * The temperatures to expect at those times.
     *
     * @return one for each time
     */
    public List<Temperature> temperatures() {
        return times().stream().map(jar::after).toList();
    }

    /**
     * The standard deviation of one reading.
     *
     * @return K
     */
    public double readingError() {
        return Math.hypot(mark.standardUncertainty(), scatter);
    }

    /**
     * The standard error that the constant will have from the jar’s own readings.
     *
     * @return 1/s
     */
    public double standardError() {
        Slopes slopes = slopes();
        return readingError() * Math.sqrt(slopes.starts / slopes.determinant());
    }

    /**
     * What one standard uncertainty of the surroundings adds to the constant, if they are read once on the same thermometer: the same
     * for all jars that stand there, {@code ∂k/∂Tₛ·δ/√12}. Surroundings that are warmer are to the fit as readings that are
     * colder ({@link org.snugsheet.engine.cooling.CoolingFit}).
     *
     * @return 1/s, with its sign
     */
    public double surroundingsError() {
        Slopes slopes = slopes();
        double moved = slopes.start * slopes.both - slopes.constant * slopes.starts;
        return mark.standardUncertainty() * moved / slopes.determinant();
    }

    /** The sums that the curvature is made of: of both slopes and of their products. */
    private static final class Slopes {
        private double start;
        private double constant;
        private double starts;
        private double both;
        private double constants;

        private double determinant() {
            return starts * constants - both * both;
        }
    }

    private Slopes slopes() {
        double k = jar.constant().perSecond();
        Slopes slopes = new Slopes();
        for (double time : times()) {
            double byStart = Math.exp(-k * time);
            double byConstant = jar.slope(time);
            slopes.start += byStart;
            slopes.constant += byConstant;
            slopes.starts += byStart * byStart;
            slopes.both += byStart * byConstant;
            slopes.constants += byConstant * byConstant;
        }
        return slopes;
    }

    /** What a fit makes of errors in the readings. */
    StraightFit straightFit() {
        double k = jar.constant().perSecond();
        double[] byStart =
                times().stream().mapToDouble(time -> Math.exp(-k * time)).toArray();
        double[] byConstant = times().stream().mapToDouble(jar::slope).toArray();
        return new StraightFit(byStart, byConstant);
    }

    /**
     * The standard error of the constant, with that of the surroundings, beside the constant itself.
     *
     * @return a share: 0.05 is 5 %
     */
    public double relativeError() {
        return Math.hypot(standardError(), surroundingsError()) / jar.constant().perSecond();
    }

    /**
     * How long such a jar can be read: until it is within a mark of its surroundings, where readings say nothing new. In
     * surroundings that stay that is {@code t = ln(|T₀ − Tₛ|/δ)/k}; in a tub that warms it is searched for.
     *
     * @param jar how it will cool
     * @param mark the smallest mark of the thermometer
     * @return seconds
     * @throws InvalidInputException if the start is too hot for pupils or within a mark of the surroundings, or nothing cools
     */
    public static double longestLesson(Forecast jar, Graduation mark) {
        new ReadingPlan(jar, SHORTEST_INTERVAL, FEWEST, mark, 0);
        double graduation = mark.graduation().kelvins();
        double ifTheyStay = Math.log(Math.abs(jar.difference(0)) / graduation)
                / jar.constant().perSecond();
        if (jar instanceof Steady) {
            return ifTheyStay;
        }
        // A tub that the jar warms comes to meet it, so that it is no later than that. A sum of exponentials may swing
        // to the far side, hence the first time, by steps.
        UnivariateFunction left = seconds -> Math.abs(jar.difference(seconds)) - graduation;
        double step = ifTheyStay / SEARCHED;
        double from = 0;
        while (left.value(from + step) > 0) {
            from += step;
        }
        return new BrentSolver(1e-12, 1e-9).solve(MOST, left, from, from + step);
    }
}
