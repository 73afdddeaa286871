package org.snugsheet.engine.lesson;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Mass;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.water.Water;

/**
 * How much hot and how much cold tap water make a start temperature.
 *
 * <p>Heat balance without loss, {@code m₁·(h(T₁) − h(T)) = m₂·(h(T) − h(T₂))}, with the enthalpy of water (Çengel and Boles,
 * Thermodynamics: An Engineering Approach, section 4-5, from memory). Jugs take some of the heat: mix, stir, read, and correct with
 * a little of either.
 *
 * @param hot how much hot water, as measured at its own temperature
 * @param cold how much cold water, as measured at its own temperature
 */
public record Taps(Volume hot, Volume cold) {

    /**
     * The two amounts.
     *
     * @param hotTap how warm the hot water is
     * @param coldTap how warm the cold water is
     * @param start the temperature wanted, between the two
     * @param volume how much is wanted, at that temperature
     * @return how much of each
     * @throws InvalidInputException if the start is above {@link SafeStart#SCHOOL_LIMIT}, or does not lie between the taps, or one of them is a
     *     kettle’s
     */
    public static Taps mixing(Temperature hotTap, Temperature coldTap, Temperature start, Volume volume) {
        SafeStart.require(start);
        SafeStart.requireTap(hotTap);
        SafeStart.requireTap(coldTap);
        if (!(coldTap.compareTo(start) < 0 && start.compareTo(hotTap) < 0)) {
            throw InvalidInputException.of(
                    Problem.NOT_BETWEEN_THE_TAPS, start.celsius(), coldTap.celsius(), hotTap.celsius());
        }
        Mass all = Water.mass(volume, start);
        double ofHot = Water.heatGivenOff(start, coldTap) / Water.heatGivenOff(hotTap, coldTap);
        double hotKilograms = all.kilograms() * ofHot;
        double coldKilograms = all.kilograms() * (1 - ofHot);
        return new Taps(
                new Volume(hotKilograms / Water.density(hotTap)), new Volume(coldKilograms / Water.density(coldTap)));
    }
}
