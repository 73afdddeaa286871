package org.snugsheet.engine.lesson;

import java.util.List;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Volume;

/**
 * A tub of cold water with jars in it, which warms.
 *
 * <p>With the jars at T₁, the tub at T₂ and the room at T₃: {@code T₁′ = −k·(T₁ − T₂)} and {@code C₂·T₂′ = C₁·k·(T₁ − T₂) +
 * G·(T₃ − T₂)}, heat balances of two lumped bodies (Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, section 5.1).
 * Two linear equations: the answer is a sum of two exponentials, not a march in small steps. All heat of the jars is taken to go
 * to the tub; what a lid above the water gives to the room instead, some tenth, is left in: the tub is told a little too warm.
 *
 * @param tub the water of the tub as it begins
 * @param jars how many jars stand in it
 * @param jar the water of one jar as it begins
 * @param constant the cooling constant of a jar in the tub
 * @param room how warm the air is
 * @param leak what the tub takes up from the room, W/K
 */
public record Bath(WaterBody tub, int jars, WaterBody jar, CoolingConstant constant, Temperature room, double leak) {

    /** R of still air on the tub’s side, its water’s surface, and its bottom; ISO 6946:2017, Table 7, heat flowing inwards. */
    private static final double R_SIDE = 0.13;

    private static final double R_TOP = 0.17;
    private static final double R_BOTTOM = 0.10;

    /**
     * A tub with jars.
     *
     * @throws InvalidInputException if there is no jar, the jars are too hot for pupils, the constant is not above zero, or the leak is
     *     negative
     */
    public Bath {
        SafeStart.require(jar.temperature());
        if (jars < 1) {
            throw InvalidInputException.of(Problem.NOT_POSITIVE, QuantityName.JARS, jars);
        }
        if (!(constant.perSecond() > 0)) {
            throw InvalidInputException.of(Problem.RATE_NOT_POSITIVE);
        }
        if (!(leak >= 0)) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.LEAK_OF_THE_TUB, leak);
        }
    }

    /**
     * What an open tub takes up from still air, guessed from its size: a cylinder as wide as high, with the conventional
     * surface resistances of ISO 6946:2017 on its outside. Dew that settles on it adds to that in a damp room.
     *
     * @param water how much it holds
     * @return W/K
     */
    public static double usualLeak(Volume water) {
        double radius = Math.cbrt(water.cubicMeters() / (2 * Math.PI));
        double end = Math.PI * radius * radius;
        return 4 * end / R_SIDE + end / R_TOP + end / R_BOTTOM;
    }

    /**
     * How warm the tub is after a while, without ice.
     *
     * @param seconds how long the jars have stood in it
     * @return its temperature
     */
    public Temperature after(double seconds) {
        return new Temperature(state(seconds)[1]);
    }

    /**
     * How warm a jar is after a while.
     *
     * @param seconds how long it has stood in the tub
     * @return its temperature
     */
    public Temperature jarAfter(double seconds) {
        return new Temperature(state(seconds)[0]);
    }

    /**
     * A part of the tub’s deviation from the room.
     *
     * @param kelvins how large it is at the start
     * @param perSecond how fast it dies away
     */
    record Part(double kelvins, double perSecond) {}

    /** The two exponentials that the tub’s deviation from the room is the sum of. */
    List<Part> parts() {
        Modes modes = modes();
        return List.of(
                new Part(modes.ofSlow * modes.slowPart, modes.slow),
                new Part(modes.ofFast * modes.fastPart, modes.fast));
    }

    /** The temperatures of jar and tub: both deviations from the room are sums of the same two exponentials. */
    private double[] state(double seconds) {
        Modes modes = modes();
        double slowNow = modes.slowPart * Math.exp(-modes.slow * seconds);
        double fastNow = modes.fastPart * Math.exp(-modes.fast * seconds);
        return new double[] {
            room.celsius() + slowNow + fastNow, room.celsius() + modes.ofSlow * slowNow + modes.ofFast * fastNow
        };
    }

    /** The two rates, how far the tub stands at of the jar in each, and how much of each there is at the start. */
    private record Modes(double slow, double fast, double ofSlow, double ofFast, double slowPart, double fastPart) {}

    private Modes modes() {
        double k = constant.perSecond();
        double ofTub = capacity(tub);
        double share = jars * capacity(jar) / ofTub;
        double loss = leak / ofTub;
        double sum = k + share * k + loss;
        // The two rates are the roots of s² − sum·s + k·loss; the smaller one by the larger, so that no digits are
        // lost.
        double fast = (sum + Math.sqrt(sum * sum - 4 * k * loss)) / 2;
        double slow = k * loss / fast;
        double jarAbove = jar.temperature().minus(room).kelvins();
        double tubAbove = tub.temperature().minus(room).kelvins();
        // Along the eigenvector of a rate s the tub stands at (1 − s/k) of the jar.
        double ofSlow = 1 - slow / k;
        double ofFast = 1 - fast / k;
        double slowPart = (tubAbove - ofFast * jarAbove) / (ofSlow - ofFast);
        return new Modes(slow, fast, ofSlow, ofFast, slowPart, jarAbove - slowPart);
    }

    private static double capacity(WaterBody body) {
        HeatCapacity capacity = body.heatCapacity();
        return capacity.joulesPerKelvin();
    }
}
