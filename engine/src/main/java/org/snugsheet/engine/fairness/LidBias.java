package org.snugsheet.engine.fairness;

import java.util.List;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.CoolingFit;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.jar.Jar;
import org.snugsheet.engine.jar.Lid;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Time;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;

/**
 * The effect of two lids on the ratio of two rates.
 *
 * <p>Side, lid and base lose heat in parallel (ISO 6946:2017, 6.7.2). The readings show the total {@code k·C·θ}, with k the
 * mean of both rates; the part through a lid is computed at the mean temperatures of the readings. The rest goes through side
 * and base and is the same for both jars if they differ only in their lids: the ratio of their rates is then that of
 * {@code rest + lid}. The better the wrap, the more the lid matters. Jars are assumed to have one shape:
 * {@link #USUAL_RADIUS} wide inside at {@link #USUAL_VOLUME}, filled with the mean of the volumes if they are given (common
 * practice, no source).
 */
final class LidBias {

    /** A common jar, if nobody says how much is in it. */
    static final Volume USUAL_VOLUME = Volume.of(250, Unit.MILLILITER);

    static final Length USUAL_RADIUS = new Length(0.035);

    private final Jar jar;
    private final Temperature water;
    private final Temperature air;
    private final double shown;

    private LidBias(Jar jar, Temperature water, Temperature air, double shown) {
        this.jar = jar;
        this.water = water;
        this.air = air;
        this.shown = shown;
    }

    static LidBias of(CoolingFit first, CoolingFit second, List<Volume> volumes) {
        double liters =
                volumes.stream().mapToDouble(Volume::cubicMeters).average().orElse(USUAL_VOLUME.cubicMeters());
        Volume held = new Volume(liters);
        Length radius = new Length(USUAL_RADIUS.meters() * Math.cbrt(liters / USUAL_VOLUME.cubicMeters()));
        Temperature water = new Temperature((middle(first) + middle(second)) / 2);
        Temperature air = new Temperature(
                (first.surroundings().celsius() + second.surroundings().celsius()) / 2);
        double rate = (first.constant().perMinute() + second.constant().perMinute()) / 2 / Time.SECONDS_PER_MINUTE;
        double capacity = WaterBody.of(held, water).heatCapacity().joulesPerKelvin();
        return new LidBias(
                Jar.holding(held, radius),
                water,
                air,
                rate * capacity * water.minus(air).kelvins());
    }

    /** The heat that goes through a lid, W. */
    double watts(Lid lid) {
        return lid.watts(jar, water, air);
    }

    /**
     * The factor by which the lids alone change the ratio of the rates, first over second.
     *
     * @return empty for cold water in a warm room that evaporates more than it takes up, or where a surface would be ice
     */
    Optional<Double> factor(Lid first, Lid second) {
        double sign = Math.signum(water.minus(air).kelvins());
        double one;
        double two;
        try {
            one = sign * watts(first);
            two = sign * watts(second);
        } catch (InvalidInputException refusal) {
            // The other differences are reported all the same.
            return Optional.empty();
        }
        double rest = Math.max(0, sign * shown - (one + two) / 2);
        return rest + one > 0 && rest + two > 0 ? Optional.of((rest + one) / (rest + two)) : Optional.empty();
    }

    private static double middle(CoolingFit fit) {
        double begin = fit.at(fit.readings().first().seconds()).celsius();
        double end =
                fit.at(fit.readings().first().seconds() + fit.readings().span()).celsius();
        return (begin + end) / 2;
    }
}
