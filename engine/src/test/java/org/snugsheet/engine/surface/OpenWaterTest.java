package org.snugsheet.engine.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.water.Vapor;

class OpenWaterTest {

    private static final Length POOL = new Length(4);

    /** ASHRAE Handbook Fundamentals, chapter Thermal Comfort (from memory): the Lewis relation of indoor air is 16.5 K/kPa. */
    @Test
    void theLewisRelationIsThatOfTheHandbook() {
        Temperature skin = new Temperature(34);
        Temperature room = new Temperature(23);
        double kilopascals = (Vapor.pressure(skin) - 0.5 * Vapor.pressure(room)) / 1000;
        double ratio = OpenWater.evaporation(4, skin, room, 0.5) / (4 * kilopascals);
        assertEquals(16.5, ratio, 0.06 * 16.5);
    }

    /**
     * Shah, ASHRAE Transactions 120 (2014), part 2 (from memory): {@code E = 35·ρw·(ρr − ρw)^(1/3)·(Ww − Wr)} kg/(m²·h) from
     * still water, with the densities of the dry part of the air and a difference of theirs over 0.02 kg/m³; it fits what was
     * measured on pools with a mean deviation of about a fifth.
     */
    @ParameterizedTest
    @CsvSource({"30, 20, 0.5", "32, 10, 0.5", "36, 24, 0.6", "40, 20, 0.5", "45, 10, 0.6"})
    void stillWaterEvaporatesAsMeasuredOnPools(double water, double room, double humidity) {
        Temperature surface = new Temperature(water);
        Temperature air = new Temperature(room);
        double here = OpenWater.evaporation(OpenWater.convection(POOL, surface, air, humidity), surface, air, humidity)
                / Vapor.heat(surface);
        double above = dryDensity(surface, 1);
        double around = dryDensity(air, humidity);
        double measured = 35 * above * Math.cbrt(around - above) * (ratio(surface, 1) - ratio(air, humidity)) / 3600;
        assertEquals(measured, here, 0.2 * measured);
    }

    private static double dryDensity(Temperature t, double humidity) {
        return (101_325 - humidity * Vapor.pressure(t)) / (287.05 * t.in(Scale.KELVIN));
    }

    private static double ratio(Temperature t, double humidity) {
        double vapor = humidity * Vapor.pressure(t);
        return 0.622 * vapor / (101_325 - vapor);
    }

    @Test
    void vaporSettlesOnWaterColderThanTheDewPoint() {
        assertTrue(OpenWater.evaporation(4, new Temperature(5), new Temperature(25), 0.5) < 0);
    }
}
