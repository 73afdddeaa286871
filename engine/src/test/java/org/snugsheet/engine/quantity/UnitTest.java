package org.snugsheet.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;

/** Source: NIST Special Publication 811 (2008), Appendix B.8, in the file {@code units.csv} beside this test. */
class UnitTest {

    /** What the file calls a unit, where that is no name people would type in a cell. */
    private static final Map<String, Unit> IN_FULL = Map.ofEntries(
            Map.entry("square foot", Unit.SQUARE_FOOT),
            Map.entry("square inch", Unit.SQUARE_INCH),
            Map.entry("fluid ounce (US)", Unit.US_FLUID_OUNCE),
            Map.entry("cup (US)", Unit.US_CUP),
            Map.entry("gallon (US)", Unit.US_GALLON),
            Map.entry("gallon (imperial)", Unit.IMPERIAL_GALLON),
            Map.entry("fluid ounce (imperial)", Unit.IMPERIAL_FLUID_OUNCE),
            Map.entry("cup (metric)", Unit.METRIC_CUP),
            Map.entry("pound (avoirdupois)", Unit.POUND),
            Map.entry("ounce (avoirdupois)", Unit.OUNCE),
            Map.entry("Btu_IT", Unit.BTU),
            Map.entry("Btu_th", Unit.BTU_THERMOCHEMICAL),
            Map.entry("calorie_th", Unit.CALORIE_THERMOCHEMICAL),
            Map.entry("calorie_IT", Unit.CALORIE),
            Map.entry("kilocalorie_th (food)", Unit.KILOCALORIE),
            Map.entry("kilowatt hour", Unit.KILOWATT_HOUR),
            Map.entry("Btu_IT per hour", Unit.BTU_PER_HOUR),
            Map.entry("Btu_IT/(lb degF)", Unit.BTU_PER_POUND_FAHRENHEIT),
            Map.entry("ft2 h degF/Btu_IT", Unit.US_R_VALUE),
            Map.entry("Btu_IT/(h ft2 degF)", Unit.US_U_VALUE),
            Map.entry("Btu_IT in/(h ft2 degF)", Unit.BTU_INCH),
            Map.entry("Btu_IT ft/(h ft2 degF)", Unit.BTU_FOOT),
            Map.entry("ft2 h degF/(Btu_IT in)", Unit.US_R_VALUE_PER_INCH),
            Map.entry("mile per hour", Unit.MILE_PER_HOUR));

    @TestFactory
    List<DynamicTest> factorsAreThoseOfSp811() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(UnitTest.class, "units.csv")) {
            String kind = row.getOrDefault("kind", "");
            // Temperatures are checked in TemperatureTest.
            if (!kind.startsWith("temperature")) {
                tests.add(DynamicTest.dynamicTest(row.get("from") + " in " + row.get("to"), () -> checkRow(row)));
            }
        }
        assertEquals(31, tests.size(), "rows of the file that are no temperatures");
        return tests;
    }

    private static void checkRow(Map<String, String> row) {
        Unit from = unit(row.getOrDefault("from", ""));
        Unit to = unit(row.getOrDefault("to", ""));
        double factor = to.from(1, from);
        BigDecimal published = new BigDecimal(row.getOrDefault("factor", ""));

        boolean exact = row.getOrDefault("exact", "").equals("yes");
        // The derived factors of the file are cut off after their last digit, not rounded.
        double lastDigit = published.ulp().doubleValue();
        assertEquals(published.doubleValue(), factor, exact ? 1e-11 * factor : lastDigit);

        String printed = row.getOrDefault("sp811_printed", "").replace(" ", "");
        if (!printed.isEmpty()) {
            BigDecimal digits = new BigDecimal(printed);
            assertEquals(digits.doubleValue(), factor, halfLastDigit(digits), "printed in SP 811");
        }
    }

    private static Unit unit(String name) {
        Unit inFull = IN_FULL.get(name);
        return inFull == null ? Unit.parse(name) : inFull;
    }

    private static double halfLastDigit(BigDecimal printed) {
        return printed.ulp().doubleValue() * 0.5000001;
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyUnitIsFoundByItsSymbolHoweverTyped(Unit unit) {
        assertSame(unit, Unit.parse(unit.symbol()));
        assertSame(unit, Unit.parse(" " + unit.symbol().toUpperCase(Locale.ROOT).replace("·", " * ") + " "));
        assertSame(
                unit,
                Unit.parse(unit.symbol().replace("²", "2").replace("³", "3").replaceAll("[()·°]", "")));
    }

    @ParameterizedTest
    @CsvSource({
        "US, US_R_VALUE",
        "r, US_R_VALUE",
        "RSI, SQUARE_METER_KELVIN_PER_WATT",
        "m2 K/W, SQUARE_METER_KELVIN_PER_WATT",
        "TOG, TOG",
        "W/mK, WATT_PER_METER_KELVIN",
        "k-factor, BTU_INCH",
        "inches, INCH",
        "ml, MILLILITER",
        "BTU, BTU",
        "mph, MILE_PER_HOUR",
        "Miles per hour, MILE_PER_HOUR",
        "km/h, KILOMETER_PER_HOUR",
        "m^2 K/W, SQUARE_METER_KELVIN_PER_WATT",
        "m²·°C/W, SQUARE_METER_KELVIN_PER_WATT",
        "R-value, US_R_VALUE",
        "h·ft²·°F/Btu, US_R_VALUE",
        "hr·ft²·°F/BTU, US_R_VALUE",
        "clo, CLO",
        "W/m²K, WATT_PER_SQUARE_METER_KELVIN",
        "USI, WATT_PER_SQUARE_METER_KELVIN",
        "U, US_U_VALUE",
        "U-value, US_U_VALUE",
        "W/m·°C, WATT_PER_METER_KELVIN",
        "K factor, BTU_INCH",
        "BTU·in/hr·ft²·°F, BTU_INCH",
        "BTU/(hr·ft·°F), BTU_FOOT",
        "R per inch, US_R_VALUE_PER_INCH",
        "in, INCH",
        "foot, FOOT",
        "feet, FOOT",
        "yards, YARD",
        "centimeters, CENTIMETER",
        "square feet, SQUARE_FOOT",
        "sq. in., SQUARE_INCH",
        "cups, US_CUP",
        "fl. oz., US_FLUID_OUNCE",
        "gallons, US_GALLON",
        "pint, US_PINT",
        "Imperial gallon, IMPERIAL_GALLON",
        "cc, MILLILITER",
        "liters, LITER",
        "grams, GRAM",
        "lbs, POUND",
        "ounces, OUNCE",
        "kcal, KILOCALORIE",
        "calories, CALORIE_THERMOCHEMICAL",
        "kWh, KILOWATT_HOUR",
        "watts, WATT",
        "BTU/hr, BTU_PER_HOUR",
        "J/(g·°C), JOULE_PER_GRAM_KELVIN",
        "J/kg°C, JOULE_PER_KILOGRAM_KELVIN",
        "knots, KNOT"
    })
    void usualNamesAreUnderstood(String typed, Unit unit) {
        assertSame(unit, Unit.parse(typed));
    }

    @Test
    void conversionsInvertAndCompose() {
        Random random = new Random(20261125);
        for (Unit a : Unit.values()) {
            for (Unit b : Unit.values()) {
                for (Unit c : Unit.values()) {
                    if (a.dimension() == b.dimension() && b.dimension() == c.dimension()) {
                        double value = random.nextDouble() * 1000 - 500;
                        double there = b.from(value, a);
                        assertEquals(value, a.from(there, b), 1e-13 * Math.abs(value));
                        assertEquals(c.from(value, a), c.from(there, b), 1e-13 * Math.abs(c.from(value, a)));
                    }
                }
            }
        }
    }

    @Test
    void aUnitTurnedIntoItselfStaysTheSameToTheLastDigit() {
        for (Unit unit : Unit.values()) {
            assertEquals(0.1, unit.from(0.1, unit));
        }
    }

    @Test
    void oneCloIsOneAndAHalfTogsAndABit() {
        // Source: 1 clo = 0.155 m²·K/W (NIST SP 811) and 1 tog = 0.1 m²·K/W (Peirce and Rees 1946).
        assertEquals(1.55, Unit.TOG.from(1, Unit.CLO), 1e-15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "furlong", "mm mm", "°", "ms"})
    void anUnknownUnitIsRefusedByItsName(String typed) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Unit.parse(typed));
        assertSame(Problem.UNKNOWN_UNIT, refusal.problem());
        assertTrue(
                refusal.finding().sentence().contains("“" + typed + "”"),
                refusal.finding().sentence());
    }

    @ParameterizedTest
    @ValueSource(strings = {"C", "°F", "kelvin"})
    void aTemperatureScaleIsRefusedWithTheFunctionForIt(String typed) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Unit.parse(typed));
        assertSame(Problem.SCALE_IS_NO_UNIT, refusal.problem());
        assertTrue(refusal.finding().sentence().contains("TEMP.CONVERT"));
    }

    @Test
    void pintsQuartsAndKnotsAreThoseOfSp811() {
        // Source: NIST SP 811 (2008), Appendix B.8, from memory: the digits printed there.
        assertEquals(4.731765e-4, Unit.CUBIC_METER.from(1, Unit.US_PINT), 0.5e-10);
        assertEquals(9.463529e-4, Unit.CUBIC_METER.from(1, Unit.US_QUART), 0.5e-10);
        assertEquals(5.144444e-1, Unit.METER_PER_SECOND.from(1, Unit.KNOT), 0.5e-7);
    }

    @Test
    void unitsOfOtherThingsAreRefusedByWhatTheyMeasure() {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Unit.CLO.from(3, Unit.INCH));
        assertSame(Problem.OTHER_DIMENSION, refusal.problem());
        assertTrue(
                refusal.finding().sentence().contains("length"),
                refusal.finding().sentence());
        assertTrue(
                refusal.finding().sentence().contains("thermal resistance"),
                refusal.finding().sentence());
        for (Unit a : Unit.values()) {
            for (Unit b : Unit.values()) {
                if (a.dimension() != b.dimension()) {
                    assertThrows(InvalidInputException.class, () -> a.from(1, b));
                }
            }
        }
    }

    /** Kilo means a thousand, so both are of one kind: thermochemical, as on food labels. */
    @Test
    void aKilocalorieIsAThousandCalories() {
        assertEquals(1000, Unit.parse("cal").from(1, Unit.parse("kcal")), 1e-9);
    }
}
