package org.snugsheet.engine.cooling;

import org.snugsheet.engine.comparison.Interval;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.solver.Minimum;

/**
 * Vessels in unknown surroundings whose rate falls with their difference θ to them: {@code dθ/dt = −k·θ·(θ/A)^m}, so {@code θ(t) =
 * A·(1 + m·k·t)^(−1/m)}. With {@code m = 0} that is {@linkplain NewtonCooling Newton’s law}, with ¼ {@linkplain FreeConvection free
 * convection}, with ⅓ that of large or hot bodies (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 9.6: {@code Nu ∝
 * Ra^⅓}); radiation adds a little, and evaporation from open water more.
 */
final class FallingRate {

    /** The rates to try, as multiples of Newton’s. A slower one means a useless level. */
    private static final double SLOWEST = 0.02;

    private static final double FASTEST = 8;

    private static final int STEPS = 48;
    private static final int HALVINGS = 30;

    private final double[] times;
    private final double[] temperatures;
    private final double newton;
    private final double mean;

    /**
     * Readings to be fitted.
     *
     * @param readings at least four
     * @param newton the rate of Newton’s law in 1/s, above zero
     */
    FallingRate(Readings readings, double newton) {
        int n = readings.size();
        this.newton = newton;
        times = new double[n];
        temperatures = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            Reading reading = readings.all().get(i);
            times[i] = reading.seconds() - readings.first().seconds();
            temperatures[i] = reading.temperature().celsius();
            sum += temperatures[i];
        }
        mean = sum / n;
    }

    /**
     * The best curve of one exponent and one rate.
     *
     * @param sumOfSquares SSR in K²
     * @param level Tₛ in °C
     * @param factor the variance of the level at this rate, in variances of a reading
     */
    private record Curve(double sumOfSquares, double level, double factor) {}

    private Curve at(double exponent, double rate) {
        int n = times.length;
        double[] shape = new double[n];
        double shapes = 0;
        for (int i = 0; i < n; i++) {
            shape[i] = exponent == 0
                    ? Math.exp(-rate * times[i])
                    : Math.pow(1 + exponent * rate * times[i], -1 / exponent);
            shapes += shape[i];
        }
        double middle = shapes / n;
        double squares = 0;
        double together = 0;
        for (int i = 0; i < n; i++) {
            squares += (shape[i] - middle) * (shape[i] - middle);
            together += (shape[i] - middle) * (temperatures[i] - mean);
        }
        double amplitude = together / squares;
        double ssr = 0;
        for (int i = 0; i < n; i++) {
            double residual = temperatures[i] - mean - amplitude * (shape[i] - middle);
            ssr += residual * residual;
        }
        return new Curve(ssr, mean - amplitude * middle, 1.0 / n + middle * middle / squares);
    }

    /** The smallest sum of squares for one exponent m, in K². */
    double sumOfSquares(double exponent) {
        return best(exponent).value();
    }

    /** The logarithm of the best rate, and its sum of squares. */
    private Minimum best(double exponent) {
        return Minimum.of(
                log -> at(exponent, Math.exp(log)).sumOfSquares(),
                Math.log(SLOWEST * newton),
                Math.log(newton),
                Math.log(FASTEST * newton));
    }

    /**
     * The limits of the surroundings if this exponent is right: the levels of all curves whose sum of squares exceeds the
     * minimum by no more than is allowed (Bates and Watts, 1988, section 6.1). At each rate they are known exactly, so only
     * the rate is searched.
     *
     * @param exponent m
     * @param allowance K²
     * @return °C; infinite on both sides if the rate may be so slow that the level is anywhere
     */
    Interval levels(double exponent, double allowance) {
        Minimum best = best(exponent);
        double allowed = best.value() + allowance;
        double slowest = Math.log(SLOWEST * newton);
        if (at(exponent, Math.exp(slowest)).sumOfSquares() <= allowed) {
            return new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double from = edge(exponent, allowed, best.at(), slowest);
        double to = edge(exponent, allowed, best.at(), Math.log(FASTEST * newton));
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= STEPS; i++) {
            Curve curve = at(exponent, Math.exp(from + (to - from) * i / STEPS));
            double reach = Math.sqrt(Math.max(allowed - curve.sumOfSquares(), 0) * curve.factor());
            low = Math.min(low, curve.level() - reach);
            high = Math.max(high, curve.level() + reach);
        }
        return new Interval(low, high);
    }

    /** Where the sum of squares exceeds what is allowed, or the end if it does not. */
    private double edge(double exponent, double allowed, double inside, double end) {
        if (at(exponent, Math.exp(end)).sumOfSquares() <= allowed) {
            return end;
        }
        double within = inside;
        double beyond = end;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (within + beyond) / 2;
            if (at(exponent, Math.exp(middle)).sumOfSquares() <= allowed) {
                within = middle;
            } else {
                beyond = middle;
            }
        }
        return within;
    }
}
