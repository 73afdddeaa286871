package org.snugsheet.engine.heat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.water.Water;

/**
 * Bodies that exchange heat only with each other, poured together or wall to wall.
 *
 * <p>At their final temperature the heat given off by some equals the heat taken up by the others: {@code Σ Qᵢ(T) = 0}, the
 * first law for a closed system (Halliday, Resnick and Walker, Fundamentals of Physics, section 18-4).
 *
 * <pre>{@code
 * WaterBody jar = WaterBody.of(Volume.of(250, Unit.MILLILITER), new Temperature(40));
 * WaterBody tub = WaterBody.of(Volume.of(2, Unit.LITER), new Temperature(5));
 * Mixing.endTemperature(jar, tub);    // 8.85 °C
 * }</pre>
 */
public final class Mixing {

    /** Newton’s steps need four or five; halving alone, from 100 K down to the last digit, would need fewer than this. */
    private static final int MOST_STEPS = 80;

    private static final double CLOSE_ENOUGH = 1e-12;

    private Mixing() {}

    /**
     * The temperature that all of them reach.
     *
     * @param first a body
     * @param others the others
     * @return the common temperature, from the coldest of them to the warmest
     * @throws InvalidInputException if there is water among them and it would freeze or boil
     */
    public static Temperature endTemperature(Body first, Body... others) {
        List<Body> bodies = new ArrayList<>(List.of(others));
        bodies.add(first);
        List<Temperature> temperatures = bodies.stream().map(Body::temperature).toList();
        double low = Collections.min(temperatures).celsius();
        double high = Collections.max(temperatures).celsius();
        if (bodies.stream().anyMatch(WaterBody.class::isInstance)) {
            low = Math.max(low, Water.FREEZES.celsius());
            high = Math.min(high, Water.BOILS.celsius());
            if (heatLeft(bodies, new Temperature(low)) < 0) {
                throw InvalidInputException.of(Problem.MIXTURE_FREEZES);
            }
            if (heatLeft(bodies, new Temperature(high)) > 0) {
                throw InvalidInputException.of(Problem.MIXTURE_BOILS);
            }
        }
        return balance(bodies, low, high);
    }

    /** Newton’s method between two bounds; a step that leaves them is replaced by halving. */
    private static Temperature balance(List<Body> bodies, double coldest, double warmest) {
        double low = coldest;
        double high = warmest;
        double guess = Math.min(Math.max(weightedMean(bodies), low), high);
        for (int i = 0; i < MOST_STEPS; i++) {
            Temperature now = new Temperature(guess);
            double left = heatLeft(bodies, now);
            if (left > 0) {
                low = guess;
            } else {
                high = guess;
            }
            double next = guess + left / heatCapacity(bodies, now);
            if (next < low || next > high) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - guess) <= CLOSE_ENOUGH) {
                return new Temperature(next);
            }
            guess = next;
        }
        return new Temperature(guess);
    }

    /** The heat that all of them together would have given off at that temperature; it decreases with temperature. */
    private static double heatLeft(List<Body> bodies, Temperature end) {
        return bodies.stream().mapToDouble(body -> body.heatGivenOff(end)).sum();
    }

    private static double heatCapacity(List<Body> bodies, Temperature now) {
        return bodies.stream()
                .mapToDouble(body -> body.heatCapacityAt(now).joulesPerKelvin())
                .sum();
    }

    /** The final temperature if no heat capacity changed with temperature. */
    private static double weightedMean(List<Body> bodies) {
        Temperature base = bodies.get(0).temperature();
        double excess = 0;
        double sum = 0;
        for (Body body : bodies) {
            double capacity = body.heatCapacity().joulesPerKelvin();
            excess += capacity * body.temperature().minus(base).kelvins();
            sum += capacity;
        }
        return base.plus(new TemperatureDifference(excess / sum)).celsius();
    }
}
