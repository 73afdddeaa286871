package org.snugsheet.office.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.NumberFormat;

/**
 * A number written as far as it is known: the error to one digit, the number to the place of that digit.
 *
 * <p>So the rule of J. R. Taylor, An Introduction to Error Analysis (1997), section 2.2 (from memory).
 *
 * @param value the number
 * @param error its standard error
 */
public record Rounded(double value, double error) {

    /**
     * The number.
     *
     * @param language how numbers are written
     * @return such as {@code 17.5} for 17.506 with an error of 0.68
     */
    public String number(Language language) {
        return isExact() ? about(value, MathContext.DECIMAL32, language) : written(place(), value, language);
    }

    /**
     * Its error.
     *
     * @param language how numbers are written
     * @return such as {@code 0.7}
     */
    public String giveOrTake(Language language) {
        return isExact() ? about(error, MathContext.DECIMAL32, language) : written(place(), error, language);
    }

    /**
     * A number of which nobody says how well it is known.
     *
     * @param value the number
     * @param digits how many of its digits to write
     * @param language how numbers are written
     * @return such as {@code 0.49} for two digits of 0.4944
     */
    public static String about(double value, int digits, Language language) {
        return about(value, new MathContext(digits, RoundingMode.HALF_UP), language);
    }

    private static String about(double value, MathContext digits, Language language) {
        BigDecimal rounded = new BigDecimal(value).round(digits).stripTrailingZeros();
        return written(Math.max(0, rounded.scale()), rounded.doubleValue(), language);
    }

    private boolean isExact() {
        return !(error > 0) || !Double.isFinite(error);
    }

    /** How many digits follow the decimal sign; below zero where tens or hundreds are rounded. */
    private int place() {
        return new BigDecimal(error)
                .round(new MathContext(1, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .scale();
    }

    private static String written(int decimals, double value, Language language) {
        NumberFormat format = NumberFormat.getNumberInstance(language.locale());
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(Math.max(0, decimals));
        format.setMaximumFractionDigits(Math.max(0, decimals));
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        // No “-0” for a little below zero.
        return format.format(rounded.signum() == 0 ? BigDecimal.ZERO : rounded);
    }
}
