package org.snugsheet.engine.quantity;

import java.util.Locale;
import java.util.Optional;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * A temperature scale.
 *
 * <p>Source of the formulas: NIST SP 811 (2008), section 4.2.1.1 and Appendix B.8.
 */
public enum Scale {
    /** Degrees Celsius. */
    CELSIUS("°C", 0.0),
    /** Degrees Fahrenheit: {@code t/°C = (t/°F − 32) · 5/9}. */
    FAHRENHEIT("°F", 32.0),
    /** Kelvin: {@code t/°C = T/K − 273.15}. */
    KELVIN("K", -Temperature.ABSOLUTE_ZERO);

    private final String symbol;
    private final double freezingPoint;

    Scale(String symbol, double freezingPoint) {
        this.symbol = symbol;
        this.freezingPoint = freezingPoint;
    }

    /**
     * Finds a scale by its usual notations: {@code C}, {@code °F}, {@code Celsius}, {@code k}, ….
     *
     * @param text the name or sign; case, blanks and the degree sign do not matter
     * @return the scale
     * @throws InvalidInputException if it is not one of the three
     */
    public static Scale parse(String text) {
        return find(text).orElseThrow(() -> InvalidInputException.of(Problem.UNKNOWN_SCALE, text));
    }

    /**
     * Finds a scale as {@link #parse} does, without an exception.
     *
     * @param text the name or sign
     * @return the scale, or empty if it is not one of the three
     */
    public static Optional<Scale> find(String text) {
        String name = text.toUpperCase(Locale.ROOT).replace("°", "").replace("º", "");
        return switch (name.strip()) {
            case "C", "CELSIUS", "DEGC" -> Optional.of(CELSIUS);
            case "F", "FAHRENHEIT", "DEGF" -> Optional.of(FAHRENHEIT);
            case "K", "KELVIN" -> Optional.of(KELVIN);
            default -> Optional.empty();
        };
    }

    /**
     * The sign written after a reading.
     *
     * @return {@code °C}, {@code °F} or {@code K}
     */
    public String symbol() {
        return symbol;
    }

    double toCelsius(double degrees) {
        return toKelvins(degrees - freezingPoint);
    }

    double fromCelsius(double celsius) {
        return fromKelvins(celsius) + freezingPoint;
    }

    // Times 5, then divided by 9, never times 5/9: so 98.6 °F is 37 °C to the last digit.
    double toKelvins(double degrees) {
        return this == FAHRENHEIT ? degrees * 5.0 / 9.0 : degrees;
    }

    double fromKelvins(double kelvins) {
        return this == FAHRENHEIT ? kelvins * 9.0 / 5.0 : kelvins;
    }
}
