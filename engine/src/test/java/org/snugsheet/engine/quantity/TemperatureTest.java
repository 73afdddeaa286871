package org.snugsheet.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

/** Temperatures and differences. Source of the formulas: NIST SP 811 (2008), Appendix B.8, in {@code units.csv}. */
class TemperatureTest {

    /** The formulas of the file: add, times a fraction, add; each part may be missing. */
    private static final Pattern FORMULA =
            Pattern.compile("\\(?t([+-][\\d.]+(?=\\)))?\\)?(?:\\*(\\d)/(\\d))?([+-][\\d.]+)?");

    private static final long SEED = 20261125;

    @TestFactory
    List<DynamicTest> scalesConvertAsSp811Says() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(TemperatureTest.class, "units.csv")) {
            String kind = row.getOrDefault("kind", "");
            if (kind.startsWith("temperature")) {
                Scale from = Scale.parse(row.getOrDefault("from", "").replace("deg", ""));
                Scale to = Scale.parse(row.getOrDefault("to", "").replace("deg", ""));
                tests.add(DynamicTest.dynamicTest(kind + ", " + from + " to " + to, () -> {
                    if (kind.equals("temperature")) {
                        checkFormula(row.getOrDefault("offset_formula", ""), from, to);
                    } else {
                        checkDifference(row.getOrDefault("factor", ""), from, to);
                    }
                }));
            }
        }
        assertEquals(7, tests.size(), "rows of the file about temperatures");
        return tests;
    }

    private static void checkFormula(String formula, Scale from, Scale to) {
        Matcher parts = FORMULA.matcher(formula);
        assertTrue(parts.matches(), formula);
        double before = number(parts, 1, 0);
        double factor = number(parts, 2, 1) / number(parts, 3, 1);
        double after = number(parts, 4, 0);
        for (double degrees = -40; degrees <= 212; degrees += 0.5) {
            double published = (degrees + before) * factor + after;
            assertEquals(published, Temperature.of(degrees, from).in(to), 1e-12 * 700);
        }
    }

    private static double number(Matcher parts, int group, double ifMissing) {
        String text = parts.group(group);
        return text == null ? ifMissing : Double.parseDouble(text);
    }

    private static void checkDifference(String factor, Scale from, Scale to) {
        String[] fraction = factor.split("/", -1);
        double published =
                Double.parseDouble(fraction[0]) / (fraction.length == 2 ? Double.parseDouble(fraction[1]) : 1);
        for (double degrees = -100; degrees <= 100; degrees += 0.5) {
            assertEquals(
                    degrees * published, TemperatureDifference.of(degrees, from).in(to), 1e-12);
        }
    }

    /** Fixed points that every table of the two scales prints, to the last digit. */
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "98.6, 37", "68, 20", "104, 40", "50, 10", "-4, -20"})
    void wholeDegreesStayWhole(double fahrenheit, double celsius) {
        assertEquals(celsius, Temperature.of(fahrenheit, Scale.FAHRENHEIT).in(Scale.CELSIUS));
        assertEquals(fahrenheit, Temperature.of(celsius, Scale.CELSIUS).in(Scale.FAHRENHEIT), 1e-12);
    }

    @Test
    void thereAndBackIsTheSame() {
        Random random = new Random(SEED);
        for (int i = 0; i < 10_000; i++) {
            double celsius = random.nextDouble() * 400 - 250;
            double fahrenheit = Temperature.of(celsius, Scale.CELSIUS).in(Scale.FAHRENHEIT);
            assertEquals(celsius, Temperature.of(fahrenheit, Scale.FAHRENHEIT).in(Scale.CELSIUS), 1e-12);
            double kelvins = Temperature.of(celsius, Scale.CELSIUS).in(Scale.KELVIN);
            assertEquals(celsius, Temperature.of(kelvins, Scale.KELVIN).in(Scale.CELSIUS), 1e-12);
        }
    }

    @Test
    void aDifferenceIsNeverShifted() {
        Random random = new Random(SEED);
        for (Scale scale : Scale.values()) {
            assertEquals(0, TemperatureDifference.of(0, scale).kelvins());
            for (Scale other : Scale.values()) {
                for (int i = 0; i < 1000; i++) {
                    double a = random.nextDouble() * 100;
                    double b = random.nextDouble() * 100 + 250;
                    Temperature from = Temperature.of(a, scale);
                    Temperature to = Temperature.of(b, scale);
                    // Counted on a scale or taken between two readings on it: the same difference, whatever the zero.
                    assertEquals(
                            TemperatureDifference.of(b - a, scale).in(other),
                            to.minus(from).in(other),
                            1e-11);
                    assertEquals(
                            2 * TemperatureDifference.of(b - a, scale).in(other),
                            TemperatureDifference.of(2 * (b - a), scale).in(other),
                            1e-11);
                    assertEquals(
                            b, from.plus(TemperatureDifference.of(b - a, scale)).in(scale), 1e-11);
                }
            }
        }
    }

    @Test
    void warmerComparesAsMore() {
        assertTrue(Temperature.of(50, Scale.FAHRENHEIT).compareTo(Temperature.of(11, Scale.CELSIUS)) < 0);
        assertTrue(TemperatureDifference.of(9, Scale.FAHRENHEIT).compareTo(TemperatureDifference.of(4.9, Scale.CELSIUS))
                > 0);
    }

    @ParameterizedTest
    @CsvSource({"CELSIUS, -273.15", "FAHRENHEIT, -459.67", "KELVIN, 0"})
    void absoluteZeroItselfIsATemperature(Scale scale, double degrees) {
        // Source: the definition of the scales, NIST SP 811 (2008), 4.2.1.1 and B.8.
        assertEquals(0, Temperature.of(degrees, scale).in(Scale.KELVIN), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"CELSIUS, -273.16", "FAHRENHEIT, -459.68", "KELVIN, -0.01", "CELSIUS, -300", "FAHRENHEIT, -1e300"})
    void colderThanAbsoluteZeroIsRefusedInTheScaleItWasTypedIn(Scale scale, double degrees) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Temperature.of(degrees, scale));
        assertSame(Problem.BELOW_ABSOLUTE_ZERO, refusal.problem());
        assertTrue(
                refusal.finding().sentence().contains(" " + scale.symbol() + " "),
                refusal.finding().sentence());
    }

    @Test
    void coolingBelowAbsoluteZeroIsRefused() {
        Temperature cold = Temperature.of(-200, Scale.CELSIUS);
        TemperatureDifference fall = TemperatureDifference.of(-100, Scale.KELVIN);
        assertSame(
                Problem.BELOW_ABSOLUTE_ZERO,
                assertThrows(InvalidInputException.class, () -> cold.plus(fall)).problem());
    }

    /** Twice as many degrees Fahrenheit would be more than a number can be. */
    @Test
    void whatOneScaleCannotHoldIsNoTemperature() {
        assertSame(
                Problem.ANSWER_TOO_LARGE,
                assertThrows(InvalidInputException.class, () -> Temperature.of(1.7e308, Scale.CELSIUS))
                        .problem());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsNoTemperature(double value) {
        for (Scale scale : Scale.values()) {
            assertSame(
                    Problem.NOT_A_NUMBER,
                    assertThrows(InvalidInputException.class, () -> Temperature.of(value, scale))
                            .problem());
            assertSame(
                    Problem.NOT_A_NUMBER,
                    assertThrows(InvalidInputException.class, () -> TemperatureDifference.of(value, scale))
                            .problem());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "C, CELSIUS",
        "°c, CELSIUS",
        " Celsius , CELSIUS",
        "f, FAHRENHEIT",
        "º F, FAHRENHEIT",
        "degF, FAHRENHEIT",
        "K, KELVIN"
    })
    void scalesAreUnderstoodHoweverTyped(String typed, Scale scale) {
        assertSame(scale, Scale.parse(typed));
    }

    @ParameterizedTest
    @EnumSource(Scale.class)
    void aScaleIsUnderstoodByItsOwnSymbol(Scale scale) {
        assertSame(scale, Scale.parse(scale.symbol()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "R", "Réaumur", "°", "CF", "20"})
    void anyOtherScaleIsRefusedByItsName(String typed) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Scale.parse(typed));
        assertSame(Problem.UNKNOWN_SCALE, refusal.problem());
        assertTrue(
                refusal.finding().sentence().contains("“" + typed + "”"),
                refusal.finding().sentence());
    }
}
