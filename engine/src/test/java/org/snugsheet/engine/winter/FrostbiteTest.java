package org.snugsheet.engine.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Speed;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.winter.Frostbite.Band;

/** Source: Environment Canada’s table of wind chill hazards, in {@code wind-chill.csv}. */
class FrostbiteTest {

    private static final Pattern FROM_TO = Pattern.compile("(-\\d+) (?:to (-\\d+)|and colder)");

    @TestFactory
    List<DynamicTest> bandsAreThoseOfTheTable() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(WindChillTest.class, "wind-chill.csv")) {
            if (row.getOrDefault("kind", "").equals("frostbite_band")) {
                String limits = row.getOrDefault("wind_chill_chart", "");
                tests.add(DynamicTest.dynamicTest(limits, () -> checkBand(limits, row)));
            }
        }
        assertEquals(5, tests.size(), "bands in the file");
        return tests;
    }

    private static void checkBand(String limits, Map<String, String> row) {
        Matcher matcher = FROM_TO.matcher(limits);
        assertTrue(matcher.matches(), limits);
        int mildest = Integer.parseInt(matcher.group(1));
        int coldest = matcher.group(2) == null ? mildest - 30 : Integer.parseInt(matcher.group(2));
        for (int windChill = mildest; windChill >= coldest; windChill--) {
            Band band = Band.of(windChill);
            boolean faster = row.getOrDefault("note", "").contains("faster in winds over 50 km/h");
            assertEquals(faster, new Frostbite(windChill, band, true).fasterInThisWind(), "at " + windChill);
            assertFalse(new Frostbite(windChill, band, false).fasterInThisWind());
            assertEquals(minutes(row, "minutes_high"), band.latest(), "at " + windChill);
            if (band != Band.TWO_MINUTES) {
                assertEquals(minutes(row, "minutes_low"), band.soonest(), "at " + windChill);
            }
        }
    }

    private static OptionalInt minutes(Map<String, String> row, String column) {
        String cell = row.getOrDefault(column, "");
        return cell.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(cell));
    }

    @Test
    void theExampleOnTheUsChartFallsIntoABandWithItsThirtyMinutes() {
        // Source: at 0 °F and 15 mph exposed skin can freeze in 30 minutes (text of the NWS chart, row of the file).
        Frostbite risk = Frostbite.of(Temperature.of(0, Scale.FAHRENHEIT), Speed.of(15, Unit.MILE_PER_HOUR));
        assertEquals(OptionalInt.of(30), risk.band().latest());
    }

    @Test
    void calmAirCountsAsColdAsItIs() {
        Frostbite calm = Frostbite.of(new Temperature(-42), new Speed(0));
        assertEquals(-42, calm.windChill());
        assertSame(Band.TEN_MINUTES, calm.band());
    }

    @Test
    void lightWindJoinsOntoTheIndex() {
        for (double celsius = 0; celsius >= -50; celsius -= 5) {
            assertEquals(WindChill.inAnyWind(celsius, 5), WindChill.inAnyWind(celsius, 4.999_999), 0.15);
        }
    }

    @Test
    void colderOrWindierIsNeverAMilderBand() {
        for (double celsius = 20; celsius >= -55; celsius -= 0.5) {
            for (double kilometersPerHour = 0; kilometersPerHour <= 100; kilometersPerHour += 2.5) {
                Band band = band(celsius, kilometersPerHour);
                assertTrue(band(celsius - 0.5, kilometersPerHour).compareTo(band) >= 0);
                if (celsius <= 0) {
                    assertTrue(band(celsius, kilometersPerHour + 2.5).compareTo(band) >= 0);
                }
            }
        }
    }

    private static Band band(double celsius, double kilometersPerHour) {
        return Frostbite.of(new Temperature(celsius), Speed.of(kilometersPerHour, Unit.KILOMETER_PER_HOUR))
                .band();
    }

    @Test
    void aboveFreezingTheRiskIsLowInAnyStorm() {
        assertTrue(band(0.5, 100).latest().isEmpty());
        assertSame(Band.MILD, band(15, 100));
    }

    @Test
    void aStrongWindIsSaid() {
        Temperature air = new Temperature(-30);
        assertTrue(Frostbite.of(air, Speed.of(51, Unit.KILOMETER_PER_HOUR)).strongWind());
        assertFalse(Frostbite.of(air, Speed.of(49, Unit.KILOMETER_PER_HOUR)).strongWind());
    }

    /**
     * Sources: Child Care Weather Watch (Healthy Child Care Iowa): very cold to 15 °F, significant risk of frostbite from 0 °F;
     * Canadian Paediatric Society: indoors at −27 °C (−16 °F) or lower.
     */
    @ParameterizedTest
    @CsvSource({
        "1e300, NO_FROST",
        "1e14, NO_FROST",
        "25, NO_FROST",
        "11, NO_FROST",
        "10, COLD",
        "-8, COLD",
        "-9, VERY_COLD",
        "-17, VERY_COLD",
        "-18, RISK",
        "-26, RISK",
        "-27, INDOORS",
        "-60, INDOORS"
    })
    void childrenAreToldSooner(double celsius, Frostbite.ForChildren expected) {
        Frostbite risk = Frostbite.of(new Temperature(celsius), new Speed(0));
        assertSame(expected, risk.forChildren());
        // Where the table for adults names minutes, children are indoors already.
        assertTrue(risk.band().latest().isEmpty() || expected == Frostbite.ForChildren.INDOORS);
    }

    @Test
    void theLimitsAreThoseOfTheChartsOnBothScales() {
        assertEquals(-9, Math.round(Temperature.of(15, Scale.FAHRENHEIT).celsius()));
        assertEquals(-18, Math.round(Temperature.of(0, Scale.FAHRENHEIT).celsius()));
        assertEquals(-27, Math.round(Temperature.of(-16, Scale.FAHRENHEIT).celsius()));
    }
}
