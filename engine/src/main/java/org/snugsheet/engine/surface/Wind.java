package org.snugsheet.engine.surface;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.table.Keywords;

/**
 * Moving air: around the side by {@linkplain Convection#acrossCylinder the correlation of Churchill and Bernstein}, over lid
 * and base by {@code 4 + 4·v} of ISO 6946:2017, annex C; and radiation in parallel. No wind cools less than still air.
 *
 * @param metersPerSecond the speed of the air at the jar, m/s, zero or more
 */
public record Wind(double metersPerSecond) implements Ambient {

    /** The limit of the data of Churchill and Bernstein, 10⁷ (Incropera and DeWitt, section 7.4, from memory). */
    private static final double MOST_REYNOLDS = 1e7;

    /**
     * Stronger than any wind measured near the ground: 113.2 m/s, Barrow Island 1996 (World Meteorological Organization, from
     * memory).
     */
    private static final double WINDIEST = 114;

    private static final Pattern FIRST_WORD = Pattern.compile("(\\p{L}+)( .*)");
    private static final Pattern WORDS = Pattern.compile("wind (\\d+(?:[.,]\\d+)?) ?(km/h|kmh|kph|mph|m/s)?");

    /**
     * Moving air.
     *
     * @throws InvalidInputException if the speed is negative, not a finite number, or more than any wind on Earth has
     */
    public Wind {
        if (!Double.isFinite(metersPerSecond)) {
            throw InvalidInputException.of(Problem.NOT_A_NUMBER, String.valueOf(metersPerSecond));
        }
        if (metersPerSecond < 0) {
            throw InvalidInputException.of(Problem.NEGATIVE, QuantityName.WIND, metersPerSecond);
        }
        if (metersPerSecond > WINDIEST) {
            throw InvalidInputException.of(Problem.NO_SUCH_WIND, metersPerSecond);
        }
    }

    /** A wind such as {@code wind 20 km/h}; without a unit it is in km/h. */
    static Optional<Wind> inWords(String words) {
        Matcher first = FIRST_WORD.matcher(words);
        Matcher wind = WORDS.matcher(first.matches() ? Keywords.PLACE.english(first.group(1)) + first.group(2) : words);
        if (!wind.matches()) {
            return Optional.empty();
        }
        double speed = Double.parseDouble(wind.group(1).replace(',', '.'));
        return Optional.of(new Wind(speed * metersPerSecond(wind.group(2) == null ? "km/h" : wind.group(2))));
    }

    /** The speed of one unit in m/s: exact factors of NIST SP 811, appendix B.8. */
    private static double metersPerSecond(String unit) {
        return switch (unit) {
            case "mph" -> 0.44704;
            case "m/s" -> 1;
            default -> 1 / 3.6;
        };
    }

    @Override
    public ThermalResistance resistance(Face face, Temperature surface, Temperature place) {
        double convection = Math.max(forced(face, surface, place), StillAir.convection(face, surface, place));
        return new ThermalResistance(1 / (convection + Radiation.coefficient(surface, place, face.emissivity())));
    }

    private double forced(Face face, Temperature surface, Temperature place) {
        if (face.facing() != Orientation.SIDE) {
            return 4 + 4 * metersPerSecond;
        }
        Fluid air = Fluid.airBetween(surface, place);
        double diameter = face.diameter().meters();
        double reynolds = metersPerSecond * diameter / air.kinematicViscosity();
        if (reynolds > MOST_REYNOLDS) {
            throw InvalidInputException.of(Problem.SURFACE_TOO_LARGE);
        }
        return Convection.acrossCylinder(reynolds, air.prandtl()) * air.conductivity() / diameter;
    }
}
