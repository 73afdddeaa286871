package org.snugsheet.engine.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;

/** Sources stand at the head of the files {@code water.csv} and {@code saturated-enthalpy.csv} beside this test. */
class WaterTest {

    /** IAPWS SR6-08(2011), Table 8, its values for checking programs; the first and the last state are metastable. */
    @ParameterizedTest
    @CsvSource({"260, 997.068360, 4300.17472", "298.15, 997.047013, 4181.44618", "375, 957.009710, 4217.74697"})
    void theEquationsGiveTheCheckValuesOfTheRelease(double kelvins, BigDecimal density, BigDecimal specificHeat) {
        assertPrinted(density, LiquidWater.density(kelvins));
        assertPrinted(specificHeat, LiquidWater.specificHeat(kelvins));
    }

    /** Source: documentation of the public repository jjgomera/iapws, function _Liquid: h(260 K) in kJ/kg. */
    @Test
    void theEnthalpyIsThatOfAnIndependentProgram() {
        assertEquals(-55.86223174460868, LiquidWater.enthalpy(260) / 1000, 1e-9);
    }

    @TestFactory
    List<DynamicTest> theValuesAreThoseOfTheTableToThePrintedDigits() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(WaterTest.class, "water.csv")) {
            Temperature t = temperature(row);
            tests.add(DynamicTest.dynamicTest(t.celsius() + " °C", () -> {
                assertPrinted(decimal(row, "density_sr6_kg_m3"), Water.density(t));
                assertPrinted(decimal(row, "cp_sr6_J_kgK"), Water.specificHeat(t));
            }));
        }
        assertEquals(11, tests.size(), "rows of the file");
        return tests;
    }

    /** The column k_iapws is the newer release R15-11, from which the equation of SR6 is up to 1 % away. */
    @TestFactory
    List<DynamicTest> theConductivityIsNearThatOfTheNewerRelease() {
        return PublishedTable.rows(WaterTest.class, "water.csv").stream()
                .map(row -> DynamicTest.dynamicTest(temperature(row).celsius() + " °C", () -> {
                    double newer = decimal(row, "k_iapws_W_mK").doubleValue();
                    assertEquals(newer, Water.conductivity(temperature(row)), 0.01 * newer);
                }))
                .toList();
    }

    /** ISO/TR 3666:1998: water at 20 °C has 1.0016 mPa·s; at 25 °C 0.8900 and at 40 °C 0.6527 (IAPWS R12-08); from memory. */
    @ParameterizedTest
    @CsvSource({"20, 1.0016e-3", "25, 0.8900e-3", "40, 0.6527e-3"})
    void theViscosityIsThatOfTheStandard(double celsius, double pascalSeconds) {
        assertEquals(pascalSeconds, Water.viscosity(new Temperature(celsius)), 1e-4 * pascalSeconds);
    }

    /** The other columns come from other equations: at 0.101325 MPa, or by Kell on the older temperature scale. */
    @TestFactory
    List<DynamicTest> theValuesAreNearThoseOfOtherEquations() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(WaterTest.class, "water.csv")) {
            Temperature t = temperature(row);
            tests.add(DynamicTest.dynamicTest(t.celsius() + " °C", () -> {
                assertEquals(decimal(row, "density_iapws95_kg_m3").doubleValue(), Water.density(t), 0.0015);
                assertEquals(decimal(row, "cp_iapws95_J_kgK").doubleValue(), Water.specificHeat(t), 0.15);
                assertEquals(decimal(row, "density_kell1975_kg_m3").doubleValue(), Water.density(t), 0.004);
                if (!row.getOrDefault("density_printed_kg_m3", "").isEmpty()) {
                    // Half of its last digit, and the older temperature scale as in Kell’s column.
                    assertEquals(decimal(row, "density_printed_kg_m3").doubleValue(), Water.density(t), 0.05 + 0.004);
                    double molar = Water.specificHeat(t) * 18.0153e-3;
                    assertEquals(decimal(row, "cp_printed_J_molK").doubleValue(), molar, 0.01);
                }
            }));
        }
        return tests;
    }

    /** The tables stand at the pressure of saturation; {@code ∂h/∂p = v − T·∂v/∂T} leads from there to 0.1 MPa. */
    @TestFactory
    List<DynamicTest> theHeatIsThatOfTheSteamTables() {
        List<DynamicTest> tests = new ArrayList<>();
        List<Map<String, String>> rows = PublishedTable.rows(WaterTest.class, "saturated-enthalpy.csv");
        Map<String, String> triplePoint = rows.get(0);
        for (Map<String, String> row : rows.subList(1, rows.size())) {
            BigDecimal published = decimal(row, "h_kJ_kg");
            tests.add(DynamicTest.dynamicTest(row.get("t_degC") + " °C", () -> {
                double expected = enthalpyAtOneBar(row) - enthalpyAtOneBar(triplePoint);
                double heat = Water.heatGivenOff(temperature(row), temperature(triplePoint)) / 1000;
                assertEquals(expected, heat, Math.max(published.ulp().doubleValue(), 0.002));
            }));
        }
        assertEquals(17, tests.size(), "rows of the file");
        return tests;
    }

    private static double enthalpyAtOneBar(Map<String, String> row) {
        double kelvins = temperature(row).in(Scale.KELVIN);
        double slope = (1 / LiquidWater.density(kelvins + 1) - 1 / LiquidWater.density(kelvins - 1)) / 2;
        double perPascal = 1 / LiquidWater.density(kelvins) - kelvins * slope;
        double pascals = (0.1 - decimal(row, "pressure_MPa").doubleValue()) * 1e6;
        return decimal(row, "h_kJ_kg").doubleValue() + pascals * perPascal / 1000;
    }

    private static Temperature temperature(Map<String, String> row) {
        return new Temperature(decimal(row, "t_degC").doubleValue());
    }

    /** dh/dT = c_p at constant pressure, by Simpson’s rule over small pieces. */
    @Test
    void theHeatIsTheIntegralOfTheSpecificHeat() {
        SplittableRandom random = new SplittableRandom(20261125);
        for (int i = 0; i < 100; i++) {
            double from = random.nextDouble(0, 100);
            double to = random.nextDouble(0, 100);
            int pieces = 200;
            double step = (from - to) / pieces;
            double integral = 0;
            for (int k = 0; k < pieces; k++) {
                double left = to + k * step;
                integral += step
                        / 6
                        * (Water.specificHeat(new Temperature(left))
                                + 4 * Water.specificHeat(new Temperature(left + step / 2))
                                + Water.specificHeat(new Temperature(Math.min(100, left + step))));
            }
            double heat = Water.heatGivenOff(new Temperature(from), new Temperature(to));
            assertEquals(integral, heat, 1e-6 + 1e-10 * Math.abs(heat));
            assertEquals(-heat, Water.heatGivenOff(new Temperature(to), new Temperature(from)), 0);
        }
    }

    /** The thermal expansion (Kell 1975 and others): densest at 3.98 °C. */
    @Test
    void waterIsDensestNearFourDegrees() {
        double densest = 0;
        double at = 0;
        for (int i = 0; i <= 1000; i++) {
            double density = Water.density(new Temperature(i / 100.0));
            if (density > densest) {
                densest = density;
                at = i / 100.0;
            }
        }
        assertEquals(3.98, at, 0.011);
    }

    @Test
    void theMassFollowsFromTheTemperatureAtWhichTheVolumeWasRead() {
        Volume glass = Volume.of(250, Unit.MILLILITER);
        // 992.216 kg/m³ at 40 °C and 999.842 kg/m³ at 0 °C: column density_sr6 of water.csv.
        assertEquals(0.250 * 0.992216, Water.mass(glass, new Temperature(40)).kilograms(), 1e-7);
        assertEquals(0.250 * 0.999842, Water.mass(glass, new Temperature(0)).kilograms(), 1e-7);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, 100})
    void theEndsOfTheRangeBelongToIt(double celsius) {
        assertTrue(Water.density(new Temperature(celsius)) > 950);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, -5, -273.15})
    void iceIsRefused(double celsius) {
        Temperature ice = new Temperature(celsius);
        assertRefused(Problem.WATER_FROZEN, () -> Water.density(ice));
        assertRefused(Problem.WATER_FROZEN, () -> Water.specificHeat(ice));
        assertRefused(Problem.WATER_FROZEN, () -> Water.heatGivenOff(ice, new Temperature(20)));
        assertRefused(Problem.WATER_FROZEN, () -> Water.heatGivenOff(new Temperature(20), ice));
        assertRefused(Problem.WATER_FROZEN, () -> Water.mass(Volume.of(1, Unit.LITER), ice));
    }

    @Test
    void steamIsRefusedWithASentenceInBothScales() {
        Temperature fahrenheitTakenForCelsius = new Temperature(104);
        assertEquals(
                "Water at 104 °C (219.2 °F) is steam; only liquid water, up to 100 °C (212 °F), can be used."
                        + " Check the scale.",
                assertRefused(Problem.WATER_BOILED, () -> Water.density(fahrenheitTakenForCelsius)));
        assertEquals(
                "Water at -10 °C (14 °F) is ice; only liquid water, from 0 °C (32 °F) on, can be used."
                        + " Check that cell.",
                assertRefused(Problem.WATER_FROZEN, () -> Water.density(Temperature.of(14, Scale.FAHRENHEIT))));
    }

    private static String assertRefused(Problem problem, Runnable question) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, question::run);
        assertEquals(problem, refusal.problem());
        return refusal.finding().sentence();
    }

    private static void assertPrinted(BigDecimal printed, double value) {
        assertEquals(printed.doubleValue(), value, printed.ulp().doubleValue() * 0.5000001);
    }

    private static BigDecimal decimal(Map<String, String> row, String column) {
        return new BigDecimal(row.getOrDefault(column, ""));
    }
}
