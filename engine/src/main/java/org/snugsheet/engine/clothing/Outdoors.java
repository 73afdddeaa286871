package org.snugsheet.engine.clothing;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;

/**
 * The cold around a person, within the limits of ISO 11079:2007: air up to 10 °C and wind up to 18 m/s.
 *
 * @param air temperature of the air
 * @param radiant mean temperature of what can be seen around: sky, snow, walls
 * @param wind speed of the air past the person; below 0.4 m/s it counts as 0.4, because outdoor air is never quite still
 * @param humidity relative humidity, from 0 to 1
 */
public record Outdoors(Temperature air, Temperature radiant, Speed wind, double humidity) {

    private static final double WARMEST = 10;

    /** The lowest temperature in the figures of the standard (ISO 11079:2007; from memory). */
    private static final double COLDEST = -50;

    private static final Speed CALMEST = new Speed(0.4);
    private static final Speed WINDIEST = new Speed(18);

    /** Usual in winter, and not important: cold air holds hardly any water. */
    private static final double USUAL_HUMIDITY = 0.85;

    /**
     * The cold around a person.
     *
     * @throws InvalidInputException if the air is warmer than 10 °C, colder than −50 °C, or the wind stronger than 18 m/s
     */
    public Outdoors {
        if (air.celsius() > WARMEST) {
            throw InvalidInputException.of(Problem.CLOTHING_TOO_WARM, air.celsius(), Scale.CELSIUS.symbol());
        }
        if (air.celsius() < COLDEST) {
            throw InvalidInputException.of(Problem.CLOTHING_TOO_COLD, air.celsius(), Scale.CELSIUS.symbol());
        }
        if (wind.compareTo(WINDIEST) > 0) {
            throw InvalidInputException.of(
                    Problem.CLOTHING_TOO_WINDY, wind.metersPerSecond(), Unit.METER_PER_SECOND.symbol());
        }
        if (!(humidity >= 0 && humidity <= 1)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(humidity));
        }
        wind = wind.compareTo(CALMEST) < 0 ? CALMEST : wind;
    }

    /**
     * Air and surroundings equally cold, and 85 % relative humidity.
     *
     * @param air temperature of the air and of all around
     * @param wind speed of the air past the person
     * @return the cold
     * @throws InvalidInputException if the air is warmer than 10 °C, colder than −50 °C, or the wind stronger than 18 m/s
     */
    public static Outdoors of(Temperature air, Speed wind) {
        return new Outdoors(air, air, wind, USUAL_HUMIDITY);
    }
}
