package org.snugsheet.engine.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.ConstantSurroundings;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.cooling.FittedSurroundings;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.TemperatureDifference;
import org.snugsheet.engine.quantity.Time;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.engine.reading.Reading;
import org.snugsheet.engine.reading.Readings;

/**
 * An error that no reading shows, and its effect on the cooling constants of two jars as this class read them.
 *
 * <p>Each jar’s fitted curve is assumed to be the truth. What the class would have read at the same times with the error is
 * fitted like the class’s readings, and the two constants are compared: the measurement model is evaluated again with one
 * input shifted (JCGM 100:2008, GUM, 5.1.3, note 2). How far the input shifts a reading is known for each:
 *
 * <ul>
 *   <li>surroundings that warm evenly, by b a second: {@code θ′ = −k·θ} there adds {@code b·(t − (1 − e^(−k·t))/k)} to the curve
 *       (own derivation: both sides of {@code T′ = −k·(T − Tₛ − b·t)}, which is linear; the tests step it by Runge–Kutta);
 *   <li>a thermometer that reads high adds that to each reading, and not to the surroundings, which were read on another;
 *   <li>a first reading before the thermometer settled lies on the side of the surroundings;
 *   <li>readings down to the mark are half a mark too low on average, while the surroundings are read to the nearest mark.
 * </ul>
 *
 * @param cause what went wrong
 * @param first the error of the first jar’s constant in percent
 * @param second the error of the second jar’s constant in percent
 */
public record UnseenError(Cause cause, double first, double second) {

    private static final Graduation FINE = Graduation.of(1e-6, Scale.CELSIUS);

    /** What can go wrong without a trace. */
    public enum Cause {
        /** The surroundings warmed by one degree from the first reading to the last, and were typed as they were at first. */
        SURROUNDINGS_WARM,
        /** The jar’s thermometer reads one degree higher than that of the surroundings. */
        THERMOMETER_HIGH,
        /** The first reading is one degree nearer to the surroundings: the thermometer had not settled. */
        FIRST_TOO_SOON,
        /** The jar is read down to the mark, the surroundings to the nearest one. */
        READ_DOWN
    }

    /**
     * The effect of each cause on the constants of two jars.
     *
     * @param first the fit of the first jar
     * @param second the fit of the second jar
     * @param mark the mark of the thermometers
     * @param scale the scale whose degree is meant
     * @return the possible causes, with the figures of both jars: melting ice does not warm, and surroundings that were read
     *     over time or fitted were not typed as they were at first
     */
    public static List<UnseenError> of(CoolingFit first, CoolingFit second, Graduation mark, Scale scale) {
        double degree = TemperatureDifference.of(1, scale).kelvins();
        List<UnseenError> found = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            Optional<Double> one = percent(cause, first, mark, degree);
            Optional<Double> two = percent(cause, second, mark, degree);
            if (one.isPresent() && two.isPresent()) {
                found.add(new UnseenError(cause, one.get(), two.get()));
            }
        }
        return List.copyOf(found);
    }

    /**
     * The error of the ratio of the constants, first over second, if both jars had the error.
     *
     * @return percent
     */
    public double ofRatioIfBoth() {
        return 100 * ((1 + first / 100) / (1 + second / 100) - 1);
    }

    /** The error of the constant in percent; empty if it cannot happen or is unknown. */
    private static Optional<Double> percent(Cause cause, CoolingFit fit, Graduation mark, double degree) {
        double k = fit.constant().perSecond();
        boolean warms = fit.model() instanceof ConstantSurroundings constant && !constant.isExact();
        boolean compared = !(fit.model() instanceof FittedSurroundings);
        boolean happens = switch (cause) {
            case SURROUNDINGS_WARM -> warms;
            case THERMOMETER_HIGH, READ_DOWN -> compared;
            case FIRST_TOO_SOON -> true;
        };
        if (!happens || !(k > 0)) {
            return Optional.empty();
        }
        double begin = fit.readings().first().seconds();
        double slope = degree / fit.readings().span();
        double side = Math.signum(
                fit.at(begin).minus(fit.at(begin + fit.readings().span())).kelvins());
        List<Entry> minutes = new ArrayList<>();
        List<Entry> seen = new ArrayList<>();
        for (Reading reading : fit.readings().all()) {
            double t = reading.seconds() - begin;
            double shift = switch (cause) {
                case SURROUNDINGS_WARM -> slope * (t + Math.expm1(-k * t) / k);
                case THERMOMETER_HIGH -> degree;
                case FIRST_TOO_SOON -> t == 0 ? -side * degree : 0;
                case READ_DOWN -> -mark.graduation().kelvins() / 2;
            };
            minutes.add(Entry.of(reading.seconds() / Time.SECONDS_PER_MINUTE));
            seen.add(Entry.of(fit.at(reading.seconds()).celsius() + shift));
        }
        try {
            double found = fit.model()
                    .fit(Readings.ofMinutes(minutes, seen, Scale.CELSIUS), FINE)
                    .constant()
                    .perSecond();
            return Optional.of(100 * (found / k - 1));
        } catch (InvalidInputException refusal) {
            // So close to the surroundings that the error would make the readings unusable, which would be noticed.
            return Optional.empty();
        }
    }
}
