package org.snugsheet.engine.quantity;

import static org.snugsheet.engine.quantity.Dimension.*;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/**
 * The trade's units, each as a factor to the SI unit of its {@link Dimension}.
 *
 * <p>Source: NIST Special Publication 811 (2008), Appendix B.8; factors marked exact there are written as the exact
 * product, so that no digit is lost. The Btu and the calorie are those of the International Table (suffix IT) unless the
 * name says otherwise. Temperature scales are not here: see {@link Scale}.
 */
public enum Unit {
    /** Meter. */
    METER(LENGTH, 1, "m", "metre", "meter"),
    /** Centimeter. */
    CENTIMETER(LENGTH, 1e-2, "cm", "centimetre", "centimeter"),
    /** Millimeter. */
    MILLIMETER(LENGTH, 1e-3, "mm", "millimetre", "millimeter"),
    /** Kilometer. */
    KILOMETER(LENGTH, 1e3, "km", "kilometre", "kilometer"),
    /** Inch, exact. */
    INCH(LENGTH, 0.0254, "in", "inch", "inches", "\"", "″"),
    /** Foot, exact. */
    FOOT(LENGTH, 0.3048, "ft", "foot", "feet", "′"),
    /** Yard, exact. */
    YARD(LENGTH, 0.9144, "yd", "yard"),
    /** Mile, exact. */
    MILE(LENGTH, 1609.344, "mi", "mile"),

    /** Square meter. */
    SQUARE_METER(AREA, 1, "m²", "sq m", "sqm", "square metre", "square meter"),
    /** Square centimeter. */
    SQUARE_CENTIMETER(AREA, 1e-4, "cm²", "sq cm", "square centimetre", "square centimeter"),
    /** Square foot, exact. */
    SQUARE_FOOT(AREA, 0.09290304, "ft²", "sq ft", "square foot", "square feet"),
    /** Square inch, exact. */
    SQUARE_INCH(AREA, 0.00064516, "in²", "sq in", "square inch", "square inches"),

    /** Cubic meter. */
    CUBIC_METER(VOLUME, 1, "m³", "cubic metre", "cubic meter"),
    /** Liter. */
    LITER(VOLUME, 1e-3, "L", "litre", "liter"),
    /** Milliliter. */
    MILLILITER(VOLUME, 1e-6, "mL", "cm³", "cc", "millilitre", "milliliter", "cubic centimetre", "cubic centimeter"),
    /** Centiliter. */
    CENTILITER(VOLUME, 1e-5, "cL", "centilitre", "centiliter"),
    /** US fluid ounce: 1/128 of the gallon of 231 cubic inches. */
    US_FLUID_OUNCE(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254 / 128, "fl oz", "us fl oz", "fluid ounce", "us fluid ounce"),
    /** US cup: 8 US fluid ounces. */
    US_CUP(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254 / 16, "cup", "us cup"),
    /** US gallon: 231 cubic inches. */
    US_GALLON(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254, "gal", "us gal", "gallon", "us gallon"),
    /** US liquid quart: a quarter of the gallon. */
    US_QUART(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254 / 4, "qt", "quart", "us quart"),
    /** US liquid pint: an eighth of the gallon. */
    US_PINT(VOLUME, 231 * 0.0254 * 0.0254 * 0.0254 / 8, "pt", "pint", "us pint"),
    /** Imperial gallon, exact. */
    IMPERIAL_GALLON(VOLUME, 4.54609e-3, "imp gal", "imperial gallon", "uk gal", "uk gallon"),
    /** Imperial fluid ounce: 1/160 of its gallon. */
    IMPERIAL_FLUID_OUNCE(VOLUME, 4.54609e-3 / 160, "imp fl oz", "imperial fluid ounce", "uk fl oz", "uk fluid ounce"),
    /** Metric cup of 250 mL, customary in Australia, New Zealand and Canada; not in SP 811, from memory. */
    METRIC_CUP(VOLUME, 250e-6, "metric cup"),

    /** Kilogram. */
    KILOGRAM(MASS, 1, "kg", "kilogram", "kilo"),
    /** Gram. */
    GRAM(MASS, 1e-3, "g", "gram", "gramme"),
    /** Pound (avoirdupois), exact. */
    POUND(MASS, 0.45359237, "lb", "lbs", "pound"),
    /** Ounce (avoirdupois), exact. */
    OUNCE(MASS, 0.028349523125, "oz", "ounce"),

    /** Joule. */
    JOULE(ENERGY, 1, "J", "joule"),
    /** Kilojoule. */
    KILOJOULE(ENERGY, 1e3, "kJ", "kilojoule"),
    /** British thermal unit (International Table), exact by 1 Btu/(lb·°F) = 4186.8 J/(kg·K). */
    BTU(ENERGY, 1055.05585262, "Btu", "btu_it"),
    /** British thermal unit (thermochemical). */
    BTU_THERMOCHEMICAL(ENERGY, 4184 * 0.45359237 * 5 / 9, "Btu_th"),
    /** Calorie (International Table), exact. */
    CALORIE(ENERGY, 4.1868, "cal_IT"),
    /** Calorie (thermochemical), exact; a thousand of them are the kilocalorie below. */
    CALORIE_THERMOCHEMICAL(ENERGY, 4.184, "cal", "cal_th", "calorie"),
    /** The kilocalorie of food labels (thermochemical), exact. */
    KILOCALORIE(ENERGY, 4184, "kcal", "kilocalorie", "food calorie"),
    /** Kilowatt hour, exact. */
    KILOWATT_HOUR(ENERGY, 3.6e6, "kWh", "kilowatt hour"),
    /** Watt hour, exact. */
    WATT_HOUR(ENERGY, 3600, "Wh", "watt hour"),

    /** Watt. */
    WATT(POWER, 1, "W", "watt"),
    /** Kilowatt. */
    KILOWATT(POWER, 1e3, "kW", "kilowatt"),
    /** Btu (IT) per hour. */
    BTU_PER_HOUR(POWER, 1055.05585262 / 3600, "Btu/h", "btu/hr", "btuh", "btu per hour"),

    /** Meter per second. */
    METER_PER_SECOND(SPEED, 1, "m/s", "metres per second", "meters per second"),
    /** Kilometer per hour. */
    KILOMETER_PER_HOUR(
            SPEED, 1 / 3.6, "km/h", "km/hr", "kmh", "kph", "kmph", "kilometres per hour", "kilometers per hour"),
    /** Mile per hour, exact. */
    MILE_PER_HOUR(SPEED, 0.44704, "mph", "mi/h", "mile per hour", "miles per hour"),
    /** Knot: a nautical mile of 1852 m per hour, exact. */
    KNOT(SPEED, 1852.0 / 3600, "kn", "knot", "kt"),

    /** J/(kg·K). */
    JOULE_PER_KILOGRAM_KELVIN(SPECIFIC_HEAT, 1, "J/(kg·K)", "j/kgc", "j/kg/k"),
    /** J/(g·K), the same number as kJ/(kg·K). */
    JOULE_PER_GRAM_KELVIN(SPECIFIC_HEAT, 1e3, "J/(g·K)", "j/gc", "kj/kgk", "kj/kgc"),
    /** Btu (IT) per pound and degree Fahrenheit, exact. */
    BTU_PER_POUND_FAHRENHEIT(SPECIFIC_HEAT, 4186.8, "Btu/(lb·°F)", "btu/lb/f"),

    /** m²·K/W, in the trade also RSI. */
    SQUARE_METER_KELVIN_PER_WATT(THERMAL_RESISTANCE, 1, "m²·K/W", "si", "rsi", "m2c/w", "k m2/w"),
    /** ft²·°F·h/Btu, in the trade the US R-value. */
    US_R_VALUE(
            THERMAL_RESISTANCE,
            0.09290304 * 3600 * 5 / 9 / 1055.05585262,
            "ft²·°F·h/Btu",
            "us",
            "r",
            "r-value",
            "us r",
            "us r-value",
            "h ft2 f/btu",
            "hr ft2 f/btu",
            "ft2 h f/btu"),
    /** Clo, of clothing; SP 811, ISO 9920 and ASHRAE 55. */
    CLO(THERMAL_RESISTANCE, 0.155, "clo"),
    /** Tog, of textiles; Peirce and Rees 1946, BS 5335. */
    TOG(THERMAL_RESISTANCE, 0.1, "tog"),

    /** W/(m²·K), in the trade also USI. */
    WATT_PER_SQUARE_METER_KELVIN(THERMAL_TRANSMITTANCE, 1, "W/(m²·K)", "w/m2/k", "w/m2c", "usi"),
    /** Btu/(h·ft²·°F), the US U-value. A plain U means this unit, as a plain R means the US R-value; for SI write USI. */
    US_U_VALUE(
            THERMAL_TRANSMITTANCE,
            1055.05585262 / 3600 / 0.09290304 * 9 / 5,
            "Btu/(h·ft²·°F)",
            "u",
            "u-value",
            "us u",
            "us u-value",
            "btu/hr ft2 f"),

    /** W/(m·K). */
    WATT_PER_METER_KELVIN(CONDUCTIVITY, 1, "W/(m·K)", "w/m/k", "w/mc"),
    /** Btu·in/(h·ft²·°F), in the trade the k-factor. */
    BTU_INCH(
            CONDUCTIVITY,
            1055.05585262 / 3600 / 0.09290304 * 9 / 5 * 0.0254,
            "Btu·in/(h·ft²·°F)",
            "k-factor",
            "btu in/hr ft2 f"),
    /** Btu·ft/(h·ft²·°F). */
    BTU_FOOT(
            CONDUCTIVITY,
            1055.05585262 / 3600 / 0.09290304 * 9 / 5 * 0.3048,
            "Btu·ft/(h·ft²·°F)",
            "Btu/(h·ft·°F)",
            "btu/hr ft f",
            "btu ft/hr ft2 f"),

    /** m·K/W. */
    METER_KELVIN_PER_WATT(RESISTIVITY, 1, "m·K/W", "mc/w"),
    /** US R-value for each inch of thickness. */
    US_R_VALUE_PER_INCH(
            RESISTIVITY,
            0.09290304 * 3600 * 5 / 9 / 1055.05585262 / 0.0254,
            "ft²·°F·h/(Btu·in)",
            "r/in",
            "r per inch",
            "us r per inch");

    private static final Map<String, Unit> BY_NAME = byName();

    /** So that “ms”, a millisecond, does not mean meters. */
    private static final int SHORTEST_PLURAL = 3;

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
     * Finds a unit by its symbol or a usual name. Case, blanks, dots, hyphens, brackets and degree signs do not matter,
     * nor does the plural, and {@code m2} is {@code m²}.
     *
     * @param text such as {@code clo}, {@code US}, {@code m2 K/W}, {@code W/mK}
     * @return the unit
     * @throws InvalidInputException if there is no such unit, or it is a temperature scale
     */
    public static Unit parse(String text) {
        String name = plain(text);
        Unit unit = BY_NAME.get(name);
        if (unit == null && name.endsWith("s") && name.length() > SHORTEST_PLURAL) {
            unit = BY_NAME.get(name.substring(0, name.length() - 1));
        }
        if (unit == null) {
            throw InvalidInputException.of(
                    Scale.find(text).isPresent() ? Problem.SCALE_IS_NO_UNIT : Problem.UNKNOWN_UNIT, text);
        }
        return unit;
    }

    /**
     * Converts a value in another unit into this one.
     *
     * @param value how many of the other unit
     * @param other the other unit
     * @return how many of this unit
     * @throws InvalidInputException if the two units measure different things
     */
    public double from(double value, Unit other) {
        if (dimension != other.dimension) {
            throw InvalidInputException.of(Problem.OTHER_DIMENSION, other.symbol, other.dimension, symbol, dimension);
        }
        return this == other ? value : value * other.factor / factor;
    }

    /**
     * The dimension of this unit.
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
            put(names, unit.symbol, unit);
            for (String name : unit.otherNames) {
                put(names, name, unit);
            }
        }
        return names;
    }

    private static void put(Map<String, Unit> names, String name, Unit unit) {
        Unit other = names.putIfAbsent(plain(name), unit);
        if (other != null && other != unit) {
            throw new IllegalStateException("“" + name + "” stands for two units");
        }
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replace('²', '2').replace('³', '3').replaceAll("[\\s·⋅.*()°º^_-]", "");
    }
}
