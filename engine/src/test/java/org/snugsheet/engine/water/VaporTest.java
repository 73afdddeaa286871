package org.snugsheet.engine.water;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Temperature;

class VaporTest {

    /** The column of pressures in {@code saturated-enthalpy.csv}, which names its source; to half of the last digit and the 0.025 % that the
     * release states for its equation. */
    @TestFactory
    List<DynamicTest> pressuresAreThoseOfTheSteamTables() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(VaporTest.class, "saturated-enthalpy.csv")) {
            String printed = row.getOrDefault("pressure_MPa", "");
            Temperature t = new Temperature(Double.parseDouble(row.getOrDefault("t_degC", "")));
            int decimals = printed.length() - printed.indexOf('.') - 1;
            tests.add(DynamicTest.dynamicTest(
                    t.celsius() + " °C",
                    () -> assertEquals(
                            Double.parseDouble(printed),
                            Vapor.pressure(t) / 1e6,
                            0.5 * Math.pow(10, -decimals) + 0.00025 * Double.parseDouble(printed))));
        }
        assertEquals(18, tests.size());
        return tests;
    }

    /** IAPWS SR1-86(1992): its own table gives 611.657 Pa at the triple point and 0.101325 MPa at 373.1243 K. */
    @Test
    void theTriplePointAndTheBoilingPoint() {
        assertEquals(611.657, Vapor.pressure(new Temperature(0.01)), 0.05);
        assertEquals(101_325, Vapor.pressure(new Temperature(373.1243 - 273.15)), 15);
    }

    /** Heat of evaporation in kJ/kg; Incropera and DeWitt, Table A.6, from memory. The straight line bends 0.2 % away. */
    @ParameterizedTest
    @CsvSource({"290, 2461", "300, 2438", "310, 2414", "320, 2390"})
    void theHeatIsThatOfTheTextbook(double kelvins, double kilojoules) {
        assertEquals(kilojoules, Vapor.heat(new Temperature(kelvins - 273.15)) / 1000, 0.002 * kilojoules);
    }
}
