package org.snugsheet.engine.fairness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.fairness.UnseenError.Cause;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * The sizes foretold against readings stepped by Runge–Kutta and fitted by a search of the constant alone: neither the formula nor
 * the fit is ours.
 */
class UnseenErrorTest {

    private static final Graduation HALF = Graduation.of(0.5, Scale.CELSIUS);

    @ParameterizedTest
    @CsvSource({"42, 5, 0.05, 40, 9", "38, 20, 0.02, 60, 7", "40, 2, 0.08, 30, 16", "4, 21, 0.03, 40, 9"})
    void eachSizeIsTheOneThatSteppedReadingsShow(double start, double around, double rate, double minutes, int count) {
        double[] times = IntStream.range(0, count)
                .mapToDouble(i -> minutes * i / (count - 1))
                .toArray();
        double side = Math.signum(start - around);
        CoolingFit fit =
                fit(times, stepped(times, start, around, rate, 0), Surroundings.constant(new Temperature(around)));
        List<UnseenError> found = UnseenError.of(fit, fit, HALF, Scale.CELSIUS);

        assertEquals(
                List.of(Cause.values()), found.stream().map(UnseenError::cause).toList());
        double[] warmed = stepped(times, start, around, rate, 1 / minutes);
        same(warmed, times, around, rate, found.get(0));
        double[] still = stepped(times, start, around, rate, 0);
        same(shifted(still, 1), times, around, rate, found.get(1));
        double[] soon = still.clone();
        soon[0] -= side;
        same(soon, times, around, rate, found.get(2));
        same(shifted(still, -0.25), times, around, rate, found.get(3));
    }

    private static void same(double[] seen, double[] times, double around, double rate, UnseenError found) {
        double percent = 100 * (searched(times, seen, around) / rate - 1);
        assertTrue(Math.abs(percent) > 0.3, "there is something to see: " + percent);
        assertEquals(percent, found.first(), 1e-4, found.toString());
        assertEquals(0, found.ofRatioIfBoth(), 1e-12);
    }

    /**
     * Lessons as a class reads them (RealLessonsReport, 3000 of them, rates of 0.03 to 0.08): −5.6 % for a room that warms by 2 K, −6.1 %
     * for a thermometer 1 K high, −4.4 % for a first reading 2 K low, +1.7 % for reading down to half a degree. By the rate in their
     * middle.
     */
    @Test
    void theSizesAreThoseOfWholeLessons() {
        double[] times = IntStream.range(0, 9).mapToDouble(i -> 5.0 * i).toArray();
        CoolingFit fit = fit(times, stepped(times, 40.5, 5, 0.055, 0), Surroundings.constant(new Temperature(5)));
        List<UnseenError> found = UnseenError.of(fit, fit, HALF, Scale.CELSIUS);

        assertEquals(-5.6, 2 * found.get(0).first(), 0.5);
        assertEquals(-6.1, found.get(1).first(), 0.5);
        assertEquals(-4.4, 2 * found.get(2).first(), 0.5);
        assertEquals(1.7, found.get(3).first(), 0.3);
    }

    /** A degree of Fahrenheit is five ninths of one of Celsius, and these errors are small enough to go in proportion. */
    @Test
    void aDegreeIsOneOfTheScale() {
        double[] times = {0, 5, 10, 15, 20};
        CoolingFit fit = fit(times, stepped(times, 40, 5, 0.05, 0), Surroundings.constant(new Temperature(5)));
        double celsius = UnseenError.of(fit, fit, HALF, Scale.CELSIUS).get(0).first();
        double fahrenheit =
                UnseenError.of(fit, fit, HALF, Scale.FAHRENHEIT).get(0).first();
        assertEquals(5.0 / 9, fahrenheit / celsius, 0.01);
    }

    @Test
    void twoJarsShareAnErrorAsFarAsTheirOwnGoAlike() {
        double[] times = {0, 10, 20, 30, 40};
        Surroundings room = Surroundings.constant(new Temperature(5));
        CoolingFit bare = fit(times, stepped(times, 40, 5, 0.06, 0), room);
        CoolingFit wool = fit(times, stepped(times, 40, 5, 0.03, 0), room);
        UnseenError high = UnseenError.of(bare, wool, HALF, Scale.CELSIUS).get(1);
        assertEquals(100 * ((1 + high.first() / 100) / (1 + high.second() / 100) - 1), high.ofRatioIfBoth(), 1e-12);
        assertTrue(Math.abs(high.ofRatioIfBoth()) < Math.abs(high.first()));
    }

    @Test
    void iceDoesNotWarmAndWhatWasReadOrFittedWasNotTypedOnce() {
        double[] times = {0, 5, 10, 15, 20, 25, 30};
        assertEquals(
                List.of(Cause.THERMOMETER_HIGH, Cause.FIRST_TOO_SOON, Cause.READ_DOWN),
                causes(fit(times, stepped(times, 40, 0, 0.05, 0), Surroundings.meltingIce())));
        Surroundings read = new Surroundings.Measured(readings(times, shifted(new double[times.length], 5)));
        assertEquals(
                List.of(Cause.THERMOMETER_HIGH, Cause.FIRST_TOO_SOON, Cause.READ_DOWN),
                causes(fit(times, stepped(times, 40, 5, 0.05, 0), read)));
    }

    private static List<Cause> causes(CoolingFit fit) {
        return UnseenError.of(fit, fit, HALF, Scale.CELSIUS).stream()
                .map(UnseenError::cause)
                .toList();
    }

    private static CoolingFit fit(double[] times, double[] celsius, Surroundings around) {
        return CoolingFit.of(readings(times, celsius), around, HALF);
    }

    private static Readings readings(double[] times, double[] celsius) {
        List<Entry> minutes = new ArrayList<>();
        List<Entry> seen = new ArrayList<>();
        for (int i = 0; i < times.length; i++) {
            minutes.add(Entry.of(times[i]));
            seen.add(Entry.of(celsius[i]));
        }
        return Readings.ofMinutes(minutes, seen, Scale.CELSIUS);
    }

    private static double[] shifted(double[] values, double by) {
        double[] result = values.clone();
        for (int i = 0; i < result.length; i++) {
            result[i] += by;
        }
        return result;
    }

    /** {@code T′ = −k·(T − Tₛ − b·t)} by the classical Runge–Kutta steps, 500 to the minute. */
    private static double[] stepped(double[] times, double start, double around, double rate, double warming) {
        double[] seen = new double[times.length];
        double t = 0;
        double now = start;
        for (int i = 0; i < times.length; i++) {
            int steps = (int) Math.round(500 * (times[i] - t));
            double h = steps == 0 ? 0 : (times[i] - t) / steps;
            for (int step = 0; step < steps; step++) {
                double at = t + step * h;
                double a = -rate * (now - around - warming * at);
                double b = -rate * (now + h / 2 * a - around - warming * (at + h / 2));
                double c = -rate * (now + h / 2 * b - around - warming * (at + h / 2));
                double d = -rate * (now + h * c - around - warming * (at + h));
                now += h / 6 * (a + 2 * b + 2 * c + d);
            }
            t = times[i];
            seen[i] = now;
        }
        return seen;
    }

    /** The constant with the least squares, by golden section; the best amplitude of each constant is a quotient of sums. */
    private static double searched(double[] times, double[] seen, double around) {
        DoubleUnaryOperator squares = rate -> {
            double up = 0;
            double down = 0;
            for (int i = 0; i < times.length; i++) {
                double left = Math.exp(-rate * times[i]);
                up += left * (seen[i] - around);
                down += left * left;
            }
            double sum = 0;
            for (int i = 0; i < times.length; i++) {
                double off = seen[i] - around - up / down * Math.exp(-rate * times[i]);
                sum += off * off;
            }
            return sum;
        };
        double golden = (Math.sqrt(5) - 1) / 2;
        double low = 0.001;
        double high = 0.2;
        for (int i = 0; i < 80; i++) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (squares.applyAsDouble(left) < squares.applyAsDouble(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return (low + high) / 2;
    }
}
