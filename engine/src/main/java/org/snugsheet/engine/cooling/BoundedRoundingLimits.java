package org.snugsheet.engine.cooling;

import java.util.Optional;
import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;

/**
 * Rounding taken for what it is, an error with a bound and not by chance: each reading is a bar of one mark, half of it above
 * and half below, and the true curve goes through all bars if there is no other error.
 *
 * <p>If some curve of Newton’s law does, rounding alone explains the readings, and no cooling constant of such a curve can be
 * called unlikely. That matters where a jar cools by just about a mark from one reading to the next: the errors of rounding
 * then drift slowly, the curve follows them, and the residuals say nothing of it. Source of the method: M. Milanese and G.
 * Belforte, Estimation theory and uncertainty intervals evaluation in presence of unknown but bounded errors, IEEE
 * Transactions on Automatic Control 27 (1982), 408–414.
 *
 * <p>In the logarithms, {@code ln θ = ln A − k·t}, the curves are straight lines, and two bars are enough to forbid a slope:
 * from the bar {@code [l, u]} to a later one {@code [l′, u′]} the line may fall by {@code ln(u/l′)} at most, and by
 * {@code ln(l/u′)} at least. The slopes that no two bars forbid are just those for which a line goes through all bars, since
 * intervals on a line that meet two by two have a point in common (E. Helly 1923).
 */
final class BoundedRoundingLimits {

    /** Room for the last digits of readings that lie on the edge of a bar. */
    private static final double ROUNDING_OF_DOUBLES = 1e-9;

    private BoundedRoundingLimits() {}

    /**
     * The cooling constants of all curves through the bars.
     *
     * @param celsius the constant surroundings
     * @param side above zero for a jar warmer than they are, else below
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
