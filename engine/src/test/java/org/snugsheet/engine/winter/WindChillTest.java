package org.snugsheet.engine.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;

/** Sources: the charts of the US National Weather Service and of Environment Canada, 2001, in {@code wind-chill.csv}. */
class WindChillTest {

    private static final Map<String, Unit> WIND = Map.of("mph", Unit.MILE_PER_HOUR, "km/h", Unit.KILOMETER_PER_HOUR);

    @TestFactory
    List<DynamicTest> everyCellOfTheChartsComesOutAsPrinted() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(WindChillTest.class, "wind-chill.csv")) {
            String printed = cell(row, "wind_chill_chart");
            if (cell(row, "kind").equals("chart") || (cell(row, "kind").equals("frostbite") && !printed.isEmpty())) {
                String name = cell(row, "chart") + ": " + cell(row, "air_temp") + " at " + cell(row, "wind_speed");
                tests.add(DynamicTest.dynamicTest(
                        name, () -> assertEquals(Long.parseLong(printed), Math.round(windChill(row)))));
            }
        }
        assertEquals(29, tests.size(), "cells in the file");
        return tests;
    }

    private static double windChill(Map<String, String> row) {
        Scale scale = Scale.parse(cell(row, "temp_unit"));
        Temperature air = Temperature.of(Double.parseDouble(cell(row, "air_temp")), scale);
        Unit unit = WIND.getOrDefault(cell(row, "wind_unit"), Unit.METER);
        return WindChill.of(air, Speed.of(Double.parseDouble(cell(row, "wind_speed")), unit), scale);
    }

    @Test
    void colderAirOrMoreWindNeverMakesItFeelWarmer() {
        Random random = new Random(20011101);
        for (int i = 0; i < 5000; i++) {
            Scale scale = random.nextBoolean() ? Scale.CELSIUS : Scale.FAHRENHEIT;
            Unit unit = scale == Scale.CELSIUS ? Unit.KILOMETER_PER_HOUR : Unit.MILE_PER_HOUR;
            // Within the charts, which end at −50 °C and 60 mph.
            double celsius = 10 - 55 * random.nextDouble();
            double speed = 5 + (scale == Scale.CELSIUS ? 70 : 35) * random.nextDouble();
            Temperature air = new Temperature(celsius);
            double chill = WindChill.of(air, Speed.of(speed, unit), scale);

            Temperature colder = new Temperature(celsius - random.nextDouble() * 5);
            Speed windier = Speed.of(speed + random.nextDouble() * 20, unit);
            assertTrue(WindChill.of(colder, Speed.of(speed, unit), scale) <= chill);
            assertTrue(WindChill.of(air, windier, scale) <= chill);
        }
    }

    @Test
    void theTwoFormulasAgreeToLessThanADegreeFahrenheit() {
        // They are one index, published with rounded coefficients for each scale.
        for (double celsius = 10; celsius >= -45; celsius -= 2.5) {
            for (double kilometersPerHour = 5; kilometersPerHour <= 90; kilometersPerHour += 5) {
                Temperature air = new Temperature(celsius);
                Speed wind = Speed.of(kilometersPerHour, Unit.KILOMETER_PER_HOUR);
                double canadian = new Temperature(WindChill.of(air, wind, Scale.CELSIUS)).in(Scale.FAHRENHEIT);
                assertEquals(canadian, WindChill.of(air, wind, Scale.FAHRENHEIT), 1, celsius + " " + wind);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "10.1, 30, CELSIUS, km/h, WIND_CHILL_TOO_WARM",
        "20, 30, CELSIUS, km/h, WIND_CHILL_TOO_WARM",
        "50.1, 30, FAHRENHEIT, mph, WIND_CHILL_TOO_WARM",
        "-20, 4.9, CELSIUS, km/h, WIND_CHILL_TOO_CALM",
        "-20, 0, CELSIUS, km/h, WIND_CHILL_TOO_CALM",
        "0, 3, FAHRENHEIT, mph, WIND_CHILL_TOO_CALM"
    })
    void outsideItsLimitsThereIsNoWindChill(double degrees, double speed, Scale scale, String unit, Problem problem) {
        Temperature air = Temperature.of(degrees, scale);
        Speed wind = Speed.of(speed, Unit.parse(unit));
        assertSame(
                problem,
                assertThrows(InvalidInputException.class, () -> WindChill.of(air, wind, scale))
                        .problem());
    }

    @ParameterizedTest
    @CsvSource({"10, 5, CELSIUS, km/h", "50, 3.1, FAHRENHEIT, mph", "-40, 5, CELSIUS, km/h"})
    void atItsLimitsThereIsOne(double degrees, double speed, Scale scale, String unit) {
        assertTrue(Double.isFinite(
                WindChill.of(Temperature.of(degrees, scale), Speed.of(speed, Unit.parse(unit)), scale)));
    }

    @Test
    void inKelvinItIsTheCanadianIndex() {
        Temperature air = new Temperature(-10);
        Speed wind = Speed.of(30, Unit.KILOMETER_PER_HOUR);
        assertEquals(WindChill.of(air, wind, Scale.CELSIUS) + 273.15, WindChill.of(air, wind, Scale.KELVIN), 1e-9);
    }

    @Test
    void aWindBelowZeroIsRefused() {
        assertThrows(InvalidInputException.class, () -> Speed.of(-1, Unit.KILOMETER_PER_HOUR));
    }

    private static String cell(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }
}
