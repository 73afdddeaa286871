package org.snugsheet.engine.winter;

import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;

/**
 * Wind chill: the temperature at which a bare face would cool as fast without wind as it does in this wind.
 *
 * <p>Source: the index of the US National Weather Service and Environment Canada, 2001, with the wind as weather stations
 * measure it, 10 m above the ground. It is published as two formulas that differ in the last digits, one for each scale; each
 * is computed by its own formula, so that both charts are reproduced as printed.
 *
 * <p>It is defined in air of at most 10 °C (50 °F) and a wind of at least 5 km/h (Canadian chart) or more than 3 mph (US
 * chart), and only there. No chart goes below −50 °C (the Canadian one) or above 60 mph (the US one), where it was not
 * tested.
 */
public final class WindChill {

    private static final double WARMEST_CELSIUS = 10;
    private static final double COLDEST_CELSIUS = -50;
    private static final double CALMEST_KILOMETERS_PER_HOUR = 5;
    private static final double CALMEST_MILES_PER_HOUR = 3;

    private static final double WINDIEST_MILES_PER_HOUR = 60;

    /** The rounding of a speed converted to another unit and back. */
    private static final double SLACK = 1e-9;

    private WindChill() {}

    /**
     * The wind chill.
     *
     * @param air temperature of the air
     * @param wind speed of the wind, 10 m above the ground
     * @param scale the scale wanted, which also chooses the formula: that of the US chart for Fahrenheit, otherwise the
     *     Canadian one
     * @return degrees on that scale, not rounded; both charts print it rounded to a whole number
     * @throws InvalidInputException if the air is too warm, too cold, too calm or too windy for the index
     */
    public static double of(Temperature air, Speed wind, Scale scale) {
        if (air.celsius() > WARMEST_CELSIUS) {
            throw InvalidInputException.of(Problem.WIND_CHILL_TOO_WARM, air.in(scale), scale.symbol());
        }
        if (air.celsius() < COLDEST_CELSIUS - SLACK) {
            throw InvalidInputException.of(Problem.WIND_CHILL_TOO_COLD, air.in(scale), scale.symbol());
        }
        double milesPerHour = wind.in(Unit.MILE_PER_HOUR);
        if (milesPerHour > WINDIEST_MILES_PER_HOUR + SLACK) {
            Unit unit = scale == Scale.FAHRENHEIT ? Unit.MILE_PER_HOUR : Unit.KILOMETER_PER_HOUR;
            throw InvalidInputException.of(Problem.WIND_CHILL_TOO_WINDY, wind.in(unit), unit.symbol());
        }
        if (scale == Scale.FAHRENHEIT) {
            if (milesPerHour <= CALMEST_MILES_PER_HOUR + SLACK) {
                throw InvalidInputException.of(Problem.WIND_CHILL_TOO_CALM, milesPerHour, Unit.MILE_PER_HOUR.symbol());
            }
            return fahrenheit(air.in(Scale.FAHRENHEIT), milesPerHour);
        }
        double kilometersPerHour = wind.in(Unit.KILOMETER_PER_HOUR);
        if (kilometersPerHour < CALMEST_KILOMETERS_PER_HOUR - SLACK) {
            throw InvalidInputException.of(
                    Problem.WIND_CHILL_TOO_CALM, kilometersPerHour, Unit.KILOMETER_PER_HOUR.symbol());
        }
        double celsius = celsius(air.celsius(), kilometersPerHour);
        return scale == Scale.CELSIUS ? celsius : new Temperature(celsius).in(scale);
    }

    /**
     * The index in degrees Celsius in any wind. Below 5 km/h it is linear between the temperature itself and the index at 5
     * km/h: {@code T + (0.1345·T − 1.59)·V/5}, as Environment Canada computes it for forecasts (from memory).
     */
    static double inAnyWind(double celsius, double kilometersPerHour) {
        return kilometersPerHour < CALMEST_KILOMETERS_PER_HOUR
                ? celsius + (0.1345 * celsius - 1.59) * kilometersPerHour / CALMEST_KILOMETERS_PER_HOUR
                : celsius(celsius, kilometersPerHour);
    }

    private static double celsius(double air, double kilometersPerHour) {
        double power = Math.pow(kilometersPerHour, 0.16);
        return 13.12 + 0.6215 * air - 11.37 * power + 0.3965 * air * power;
    }

    private static double fahrenheit(double air, double milesPerHour) {
        double power = Math.pow(milesPerHour, 0.16);
        return 35.74 + 0.6215 * air - 35.75 * power + 0.4275 * air * power;
    }
}
