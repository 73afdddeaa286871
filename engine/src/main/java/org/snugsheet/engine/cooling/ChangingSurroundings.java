package org.snugsheet.engine.cooling;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;
import org.snugsheet.engine.reading.Surroundings;

/**
 * {@linkplain NewtonCooling Newton’s law} in changing surroundings that were measured, linear between readings.
 * {@code dT/dt = −k·(T − Tₛ(t))} is solved exactly on each piece, not in small steps: a piece on which Tₛ has the slope b
 * from u to v adds {@code −b·e^(−k·(t−v))·(1 − e^(−k·(v−u)))/k} to the difference {@code θ = T − Tₛ} at a later time t.
 *
 * <p>Source: the first-order linear equation with piecewise linear forcing; for instance W. E. Boyce and R. C. DiPrima,
 * Elementary Differential Equations, section 2.1 (method of integrating factors).
 *
 * @param surroundings the measured surroundings
 */
record ChangingSurroundings(Surroundings.Measured surroundings) implements OneRateModel {

    @Override
    public CoolingLaw law() {
        return CoolingLaw.SURROUNDINGS_MEASURED;
    }

    @Override
    public CoolingFit fit(Readings readings, Graduation mark) {
        List<Reading> around = surroundings.all().all();
        double from = around.get(0).seconds();
        double to = around.get(around.size() - 1).seconds();
        for (Reading reading : readings.all()) {
            if (reading.seconds() < from || reading.seconds() > to) {
                throw InvalidInputException.atRow(reading.row(), Problem.SURROUNDINGS_MISSING);
            }
        }
        return OneRateModel.super.fit(readings, mark);
    }

    /**
     * Equal readings are rounded alike, different ones independently. If different marks were read with the shares w, the
     * mean has the standard uncertainty {@code u·√Σw²} (JCGM 100:2008, 5.1.2 and 5.2.2), or {@code u/√m} for m marks read
     * equally often.
     */
    @Override
    public double surroundingsUncertainty(Graduation mark) {
        Map<Temperature, Integer> marks = new HashMap<>();
        surroundings.all().all().forEach(reading -> marks.merge(reading.temperature(), 1, Integer::sum));
        double squares = 0;
        for (int times : marks.values()) {
            squares += (double) times * times;
        }
        return mark.standardUncertainty()
                * Math.sqrt(squares)
                / surroundings.all().size();
    }

    @Override
    public At at(double origin, double seconds, double rate) {
        double now = origin + seconds;
        double left = Math.exp(-rate * seconds);
        double offset = around(now);
        double offsetSlope = 0;
        List<Reading> around = surroundings.all().all();
        for (int i = 1; i < around.size(); i++) {
            double start = around.get(i - 1).seconds();
            double end = around.get(i).seconds();
            double slope = (around.get(i).temperature().celsius()
                            - around.get(i - 1).temperature().celsius())
                    / (end - start);
            double u = Math.max(start, origin);
            double v = Math.min(end, now);
            if (v > u && slope != 0) {
                double since = now - v;
                double fade = Math.exp(-rate * since);
                double piece = piece(rate, v - u);
                offset -= slope * fade * piece;
                offsetSlope -= slope * fade * (pieceSlope(rate, v - u) - since * piece);
            }
        }
        return new At(left, -seconds * left, offset, offsetSlope);
    }

    /** Before the first reading and after the last one the surroundings are constant. */
    @Override
    public double around(double time) {
        List<Reading> around = surroundings.all().all();
        if (time <= around.get(0).seconds()) {
            return around.get(0).temperature().celsius();
        }
        for (int i = 1; i < around.size(); i++) {
            Reading before = around.get(i - 1);
            Reading after = around.get(i);
            if (time <= after.seconds()) {
                double share = (time - before.seconds()) / (after.seconds() - before.seconds());
                double rise = after.temperature().minus(before.temperature()).kelvins();
                return before.temperature().celsius() + share * rise;
            }
        }
        return around.get(around.size() - 1).temperature().celsius();
    }

    /** {@code (1 − e^(−k·d))/k}, which is d for k = 0. */
    private static double piece(double rate, double duration) {
        return rate == 0 ? duration : -Math.expm1(-rate * duration) / rate;
    }

    /** The slope of {@link #piece} by k; near zero by its series, where the closed form would cancel. */
    private static double pieceSlope(double rate, double duration) {
        double x = rate * duration;
        if (Math.abs(x) < 1e-3) {
            return duration * duration * (-1.0 / 2 + x * (1.0 / 3 + x * (-1.0 / 8 + x / 30)));
        }
        return (x * Math.exp(-x) + Math.expm1(-x)) / (rate * rate);
    }
}
