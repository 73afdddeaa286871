package org.snugsheet.engine.quantity;

import static org.snugsheet.engine.quantity.Dimension.*;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

/**
 * The trade's units, each as a factor to the SI unit of its {@link Dimension}.
 *
 * <p>Source: NIST Special Publication 811 (2008), Appendix B.8; factors marked exact there are written as the exact
 * product, so that no digit is lost. The Btu and the calorie are those of the International Table (suffix IT) unless the
 * name says otherwise. Temperature scales are not here: see {@link Scale}.
 */
public enum Unit {
    /** Metre. */
    METRE(LENGTH, 1, "m"),
    /** Centimetre. */
    CENTIMETRE(LENGTH, 1e-2, "cm"),
    /** Millimetre. */
    MILLIMETRE(LENGTH, 1e-3, "mm"),
    /** Inch, exact. */
    INCH(LENGTH, 0.0254, "in", "inch", "inches", "\""),
    /** Foot, exact. */
    FOOT(LENGTH, 0.3048, "ft", "foot", "feet"),
    /** Yard, exact. */
    YARD(LENGTH, 0.9144, "yd", "yard"),
    /** Mile, exact. */
    MILE(LENGTH, 1609.344, "mi", "mile"),

    /** Square metre. */
    SQUARE_METRE(AREA, 1, "m²"),
    /** Square centimetre. */
    SQUARE_CENTIMETRE(AREA, 1e-4, "cm²"),
    /** Square foot, exact. */
    SQUARE_FOOT(AREA, 0.09290304, "ft²", "sq ft"),
    /** Square inch, exact. */
    SQUARE_INCH(AREA, 0.00064516, "in²", "sq in"),

    /** Cubic metre. */
    CUBIC_METRE(VOLUME, 1, "m³"),
    /** Litre. */
    LITRE(VOLUME, 1e-3, "L", "litre", "liter"),
    /** Millilitre. */
    MILLILITRE(VOLUME, 1e-6, "mL", "cm³"),
    /** US fluid ounce: 1/128 of the gallon of 231 cubic inches. */
    US_FLUID_OUNCE(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254 / 128, "fl oz", "us fl oz"),
    /** US cup: 8 US fluid ounces. */
    US_CUP(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254 / 16, "cup", "us cup"),
    /** US gallon: 231 cubic inches. */
    US_GALLON(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254, "gal", "us gal"),
    /** Imperial gallon, exact. */
    IMPERIAL_GALLON(VOLUME, 4.54609e-3, "imp gal"),
    /** Imperial fluid ounce: 1/160 of its gallon. */
    IMPERIAL_FLUID_OUNCE(VOLUME, 4.54609e-3 / 160, "imp fl oz"),
    /** Metric cup of 250 mL, customary in Australia, New Zealand and Canada; not in SP 811, from memory. */
    METRIC_CUP(VOLUME, 250e-6, "metric cup"),

    /** Kilogram. */
    KILOGRAM(MASS, 1, "kg"),
    /** Gram. */
    GRAM(MASS, 1e-3, "g"),
    /** Pound (avoirdupois), exact. */
    POUND(MASS, 0.45359237, "lb", "pound"),
    /** Ounce (avoirdupois), exact. */
    OUNCE(MASS, 0.028349523125, "oz", "ounce"),

    /** Joule. */
    JOULE(ENERGY, 1, "J"),
    /** Kilojoule. */
    KILOJOULE(ENERGY, 1e3, "kJ"),
    /** British thermal unit (International Table), exact by 1 Btu/(lb·°F) = 4186.8 J/(kg·K). */
    BTU(ENERGY, 1055.05585262, "Btu", "btu_it"),
    /** British thermal unit (thermochemical). */
    BTU_THERMOCHEMICAL(ENERGY, 4184 * 0.45359237 * 5 / 9, "Btu_th"),
    /** Calorie (International Table), exact. */
    CALORIE(ENERGY, 4.1868, "cal", "cal_it"),
    /** Calorie (thermochemical), exact. */
    CALORIE_THERMOCHEMICAL(ENERGY, 4.184, "cal_th"),
    /** The kilocalorie of food labels (thermochemical), exact. */
    KILOCALORIE(ENERGY, 4184, "kcal"),
    /** Kilowatt hour, exact. */
    KILOWATT_HOUR(ENERGY, 3.6e6, "kWh"),

    /** Watt. */
    WATT(POWER, 1, "W"),
    /** Btu (IT) per hour. */
    BTU_PER_HOUR(POWER, 1055.05585262 / 3600, "Btu/h"),

    /** Metre per second. */
    METRE_PER_SECOND(SPEED, 1, "m/s"),
    /** Kilometre per hour. */
    KILOMETRE_PER_HOUR(SPEED, 1 / 3.6, "km/h"),
    /** Mile per hour, exact. */
    MILE_PER_HOUR(SPEED, 0.44704, "mph", "mi/h"),

    /** J/(kg·K). */
    JOULE_PER_KILOGRAM_KELVIN(SPECIFIC_HEAT, 1, "J/(kg·K)"),
    /** Btu (IT) per pound and degree Fahrenheit, exact. */
    BTU_PER_POUND_FAHRENHEIT(SPECIFIC_HEAT, 4186.8, "Btu/(lb·°F)"),

    /** m²·K/W, in the trade also RSI. */
    SQUARE_METRE_KELVIN_PER_WATT(THERMAL_RESISTANCE, 1, "m²·K/W", "si", "rsi"),
    /** ft²·°F·h/Btu, in the trade the US R-value. */
    US_R_VALUE(THERMAL_RESISTANCE, 0.09290304 * 3600 * 5 / 9 / 1055.05585262, "ft²·°F·h/Btu", "us", "r"),
    /** Clo, of clothing; SP 811, ISO 9920 and ASHRAE 55. */
    CLO(THERMAL_RESISTANCE, 0.155, "clo"),
    /** Tog, of textiles; Peirce and Rees 1946, BS 5335. */
    TOG(THERMAL_RESISTANCE, 0.1, "tog"),

    /** W/(m²·K). */
    WATT_PER_SQUARE_METRE_KELVIN(THERMAL_TRANSMITTANCE, 1, "W/(m²·K)"),
    /** Btu/(h·ft²·°F), the US U-value. */
    US_U_VALUE(THERMAL_TRANSMITTANCE, 1055.05585262 / 3600 / 0.09290304 * 9 / 5, "Btu/(h·ft²·°F)"),

    /** W/(m·K). */
    WATT_PER_METRE_KELVIN(CONDUCTIVITY, 1, "W/(m·K)"),
    /** Btu·in/(h·ft²·°F), in the trade the k-factor. */
    BTU_INCH(CONDUCTIVITY, 1055.05585262 / 3600 / 0.09290304 * 9 / 5 * 0.0254, "Btu·in/(h·ft²·°F)", "k-factor"),
    /** Btu·ft/(h·ft²·°F). */
    BTU_FOOT(CONDUCTIVITY, 1055.05585262 / 3600 / 0.09290304 * 9 / 5 * 0.3048, "Btu·ft/(h·ft²·°F)", "Btu/(h·ft·°F)"),

    /** m·K/W. */
    METRE_KELVIN_PER_WATT(RESISTIVITY, 1, "m·K/W"),
    /** US R-value for each inch of thickness. */
    US_R_VALUE_PER_INCH(RESISTIVITY, 0.09290304 * 3600 * 5 / 9 / 1055.05585262 / 0.0254, "ft²·°F·h/(Btu·in)", "r/in");

    private static final Map<String, Unit> BY_NAME = byName();

    private final Dimension dimension;
    private final double factor;
    private final String symbol;

    @SuppressWarnings("ImmutableEnumChecker") // never leaves this class
    private final String[] otherNames;

    Unit(Dimension dimension, double factor, String symbol, String... otherNames) {
        this.dimension = dimension;
        this.factor = factor;
        this.symbol = symbol;
        this.otherNames = otherNames;
    }

    /**
     * Finds a unit by its symbol or a usual name. Case, blanks, dots, brackets and degree signs do not matter, and
     * {@code m2} is {@code m²}.
     *
     * @param text such as {@code clo}, {@code US}, {@code m2 K/W}, {@code W/mK}
     * @return the unit
     * @throws Refusal if there is no such unit
     */
    public static Unit parse(String text) {
        Unit unit = BY_NAME.get(plain(text));
        if (unit == null) {
            throw Refusal.of(Trouble.UNKNOWN_UNIT, text);
        }
        return unit;
    }

    /**
     * Turns a value of another unit into this one.
     *
     * @param value how many of the other unit
     * @param other the other unit
     * @return how many of this unit
     * @throws Refusal if the two units measure different things
     */
    public double from(double value, Unit other) {
        if (dimension != other.dimension) {
            throw Refusal.of(
                    Trouble.OTHER_DIMENSION, other.symbol, other.dimension.english(), symbol, dimension.english());
        }
        return this == other ? value : value * other.factor / factor;
    }

    /**
     * What this unit measures.
     *
     * @return its dimension
     */
    public Dimension dimension() {
        return dimension;
    }

    /**
     * The sign of this unit.
     *
     * @return such as {@code m²·K/W}
     */
    public String symbol() {
        return symbol;
    }

    private static Map<String, Unit> byName() {
        Map<String, Unit> names = new TreeMap<>();
        for (Unit unit : values()) {
            names.put(plain(unit.symbol), unit);
            for (String name : unit.otherNames) {
                names.put(plain(name), unit);
            }
        }
        return names;
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replace('²', '2').replace('³', '3').replaceAll("[\\s·.*()°]", "");
    }
}
