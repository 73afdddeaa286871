package org.snugsheet.engine.cooling;

import java.util.Optional;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;

/**
 * Rounding treated as a bounded error rather than a random one: each reading is a bar that reaches half a mark up and half a
 * mark down, and without other errors the true curve goes through all bars.
 *
 * <p>If some curve of Newton’s law does, rounding alone explains the readings, and the cooling constant of no such curve can
 * be ruled out. That matters where a jar cools by about one mark from one reading to the next: then the rounding errors drift
 * slowly, the curve follows them, and the residuals do not show it. Source of the method: M. Milanese and G. Belforte,
 * Estimation theory and uncertainty intervals evaluation in presence of unknown but bounded errors, IEEE Transactions on
 * Automatic Control 27 (1982), 408–414.
 *
 * <p>In the logarithms, {@code ln θ = ln A − k·t}, the curves are straight lines, and two bars are enough to exclude a slope:
 * from the bar {@code [l, u]} to a later one {@code [l′, u′]} the line falls by at most {@code ln(u/l′)} and at least
 * {@code ln(l/u′)}. The slopes that no two bars exclude are exactly those for which a line goes through all bars, since
 * intervals that intersect pairwise have a common point (E. Helly 1923).
 */
final class BoundedRoundingLimits {

    /** Tolerance for readings that lie on the edge of a bar. */
    private static final double ROUNDING_OF_DOUBLES = 1e-9;

    private BoundedRoundingLimits() {}

    /**
     * The cooling constants of all curves through the bars.
     *
     * @param celsius the constant surroundings
     * @param side positive for a jar warmer than its surroundings, otherwise negative
     * @return from k to k in 1/s, the upper limit infinite if the later readings may be those of the surroundings; empty if
     *     no curve goes through all bars
     */
    static Optional<Interval> rates(Readings readings, double celsius, double side, Graduation mark) {
        int n = readings.size();
        double half = mark.graduation().kelvins() / 2 * (1 + ROUNDING_OF_DOUBLES);
        double[] lower = new double[n];
        double[] upper = new double[n];
        for (int i = 0; i < n; i++) {
            Reading reading = readings.all().get(i);
            double difference = Math.signum(side) * (reading.temperature().celsius() - celsius);
            if (difference + half <= 0) {
                return Optional.empty();
            }
            lower[i] = difference > half ? Math.log(difference - half) : Double.NEGATIVE_INFINITY;
            upper[i] = Math.log(difference + half);
        }
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int j = 1; j < n; j++) {
            for (int i = 0; i < j; i++) {
                double apart =
                        readings.all().get(j).seconds() - readings.all().get(i).seconds();
                low = Math.max(low, (lower[i] - upper[j]) / apart);
                high = Math.min(high, (upper[i] - lower[j]) / apart);
            }
        }
        return low <= high ? Optional.of(new Interval(low, high)) : Optional.empty();
    }
}
