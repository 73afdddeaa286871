package org.snugsheet.engine.comparison;

import java.util.Arrays;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.solver.Crossing;

/**
 * The ratios that two estimates allow.
 *
 * <p>E. C. Fieller, Some problems in interval estimation, Journal of the Royal Statistical Society B 16 (1954), 175–185: a
 * ratio ρ is allowed if {@code first − ρ·second} does not differ from zero by more than its error,
 * {@code |a − ρ·b| ≤ t·√(s_a² + ρ²·s_b²)}. Here the degrees of freedom of t are those of the ratio ρ under test, by
 * {@link Welch}, so that ρ = 1 is allowed exactly when Welch’s test does not separate the two (as in A. C. Tamhane and B. R.
 * Logan, Journal of Biopharmaceutical Statistics 14 (2004), 843–856).
 *
 * <p>A ratio is treated as a direction, ρ = tan φ in suitable units, from 0 (the first does not cool) to a right angle (the
 * second does not). So there are no special cases: if the second may be zero, the right angle is allowed, and there is no
 * upper limit.
 *
 * <p>With one or two degrees of freedom the allowed ratios can lie in two pieces, since t grows toward both ends; the
 * interval then covers both. So it is searched in steps from both ends inward, and the last step is refined.
 */
final class Fieller {

    private static final int STEPS = 64;

    /** How near a limit is near enough, as a share of a step: as near as 48 halvings would come. */
    private static final double CLOSE = Math.scalb(1.0, -48);

    /** Farther than this from a bound, as a share of it, rounding decides nothing. */
    private static final double CLEAR = 1e-9;

    private static final double RIGHT_ANGLE = Math.PI / 2;

    private final Estimate first;
    private final Estimate second;
    private final double level;
    private final double beta;
    private final double surelyIn;
    private final double surelyOut;
    private final double unitOfFirst;
    private final double unitOfSecond;
    private final double estimated;

    private Fieller(Estimate first, Estimate second, double confidence) {
        this.first = first;
        this.second = second;
        this.level = 1 - confidence;
        this.beta = Welch.beta(level);
        double fewest = Math.min(first.degreesOfFreedom(), second.degreesOfFreedom());
        this.surelyIn = (1 - CLEAR) * StudentT.criticalValue(level, Double.POSITIVE_INFINITY);
        this.surelyOut = (1 + CLEAR) * StudentT.criticalValue(level, fewest);
        this.unitOfFirst = size(first);
        this.unitOfSecond = size(second);
        this.estimated = Math.atan2(first.value() / unitOfFirst, second.value() / unitOfSecond);
    }

    private static double size(Estimate estimate) {
        double size = Math.max(Math.abs(estimate.value()), estimate.standardError());
        return size > 0 ? size : 1;
    }

    /**
     * The allowed ratios of the first to the second, none below zero.
     *
     * @throws InvalidInputException if one of the two is below zero by more than its error
     */
    static Interval interval(Estimate first, Estimate second, double confidence) {
        return new Fieller(first, second, confidence).allowed();
    }

    private Interval allowed() {
        if ((first.value() < 0 && !allows(0)) || (second.value() < 0 && !allows(RIGHT_ANGLE))) {
            throw InvalidInputException.of(Problem.NO_RATIO);
        }
        double[] angles = angles();
        int end = angles.length - 1;
        int low = 0;
        while (!allows(angles[low])) {
            low++;
        }
        int high = end;
        while (!allows(angles[high])) {
            high--;
        }
        double lowest = ratio(low == 0 ? 0 : limit(angles[low - 1], angles[low]));
        double highest = ratio(high == end ? RIGHT_ANGLE : limit(angles[high + 1], angles[high]));
        if (isWithin()) {
            // Rounding must not exclude the estimate where there is hardly any error.
            double ratio = first.value() / second.value();
            return new Interval(Math.min(lowest, ratio), Math.max(highest, ratio));
        }
        return new Interval(lowest, highest);
    }

    private boolean isWithin() {
        return 0 < estimated && estimated < RIGHT_ANGLE;
    }

    /** The directions to try, in rising order. One of them is allowed: the estimate, or an end if an estimate is negative. */
    private double[] angles() {
        double[] angles = new double[STEPS + 2];
        for (int i = 0; i <= STEPS; i++) {
            angles[i] = RIGHT_ANGLE * i / STEPS;
        }
        angles[STEPS + 1] = isWithin() ? estimated : RIGHT_ANGLE;
        Arrays.sort(angles);
        return angles;
    }

    /** Most directions are so near or so far that neither p nor its degrees of freedom matter. */
    private boolean allows(double angle) {
        double t = Math.abs(test(angle).t());
        return angle == estimated || (t <= surelyOut && (t < surelyIn || excess(angle) <= 0));
    }

    /** Above zero where a ratio is not allowed: the logarithm of how many times the level is as large as p. */
    private double excess(double angle) {
        // With hardly any error, rounding alone would reject the estimate itself.
        if (angle == estimated) {
            return Double.NEGATIVE_INFINITY;
        }
        return Math.log(level / test(angle).p(level, beta));
    }

    private Welch test(double angle) {
        double cosine = angle == RIGHT_ANGLE ? 0 : Math.cos(angle);
        return Welch.of(cosine / unitOfFirst, first, Math.sin(angle) / unitOfSecond, second);
    }

    private double limit(double rejected, double allowed) {
        return Crossing.of(this::excess, allowed, rejected, CLOSE * Math.abs(rejected - allowed));
    }

    private double ratio(double angle) {
        return angle == RIGHT_ANGLE ? Double.POSITIVE_INFINITY : unitOfFirst / unitOfSecond * Math.tan(angle);
    }
}
