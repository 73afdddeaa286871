package org.snugsheet.engine.lesson;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.Mass;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.water.Water;

/**
 * How much ice brings a tub to 0 °C and holds it there for a lesson.
 *
 * <p>Three heats melt it: the tub’s own on its way to 0 °C; the jars’, each {@code C·(T − 0 °C)·(1 − e^(−k·t))}; and the
 * room’s through the tub, {@code G·(Tᵣ − 0 °C)·t}. Each kilogram of ice takes {@value #MELTING} J: IAPWS R10-06(2009), enthalpy
 * of melting at one atmosphere (from memory; the handbooks print 333.6 kJ/kg or 334 kJ/kg). Ice from the freezer, a few kelvins
 * colder, takes 2 % to 12 % more. Stir, and add half as much again: common practice, no source.
 *
 * @param forTheTub what melts while the tub comes to 0 °C
 * @param forTheJars what the jars melt
 * @param forTheRoom what the room melts
 */
public record Ice(double forTheTub, double forTheJars, double forTheRoom) {

    /** J/kg. */
    public static final double MELTING = 333_427;

    private static final Temperature FREEZING = new Temperature(0);

    /**
     * The ice for a tub with jars.
     *
     * @param bath the tub and the jars as they begin
     * @param seconds how long the lesson lasts
     * @return how much melts, and why
     * @throws InvalidInputException if the lesson does not last
     */
    public static Ice holding(Bath bath, double seconds) {
        LessonTime.require(seconds);
        WaterBody tub = bath.tub();
        double tubHeat = tub.heatGivenOff(Water.FREEZES);
        double warm = bath.jar().temperature().celsius();
        double jarHeat = bath.jars() * bath.jar().heatGivenOff(afterAt(warm, bath.constant(), seconds));
        double roomHeat = bath.leak() * bath.room().minus(FREEZING).kelvins() * seconds;
        return new Ice(tubHeat / MELTING, jarHeat / MELTING, Math.max(0, roomHeat) / MELTING);
    }

    /**
     * All of it.
     *
     * @return the ice that melts
     */
    public Mass mass() {
        return new Mass(forTheTub + forTheJars + forTheRoom);
    }

    private static Temperature afterAt(double warm, CoolingConstant constant, double seconds) {
        return new Temperature(warm * Math.exp(-constant.perSecond() * seconds));
    }
}
