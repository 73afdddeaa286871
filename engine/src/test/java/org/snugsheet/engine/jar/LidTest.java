package org.snugsheet.engine.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;

class LidTest {

    private static final Jar JAR = Jar.holding(Volume.of(250, Unit.MILLILITER), new Length(0.035));

    /**
     * Worked out apart from this code, in Python, from the tables of Incropera and DeWitt in place of formulas: A.4 for air, A.6
     * for water, A.8 for vapor in air (0.26·10⁻⁴ m²/s at 298 K, with T^1.5), 9.31 for a warm face that looks up, 9.26 at
     * the water’s side; pressures of vapor from steam tables, air half saturated. Their properties of air are 1 % and their
     * diffusivity 4 % from those used here.
     */
    @ParameterizedTest
    @CsvSource({
        "250, 35, 32, 10, 1.0927, 0.2874, 2.9952",
        "250, 35, 40, 20, 1.0127, 0.2635, 3.7683",
        "400, 40.937, 35, 5, 2.0867, 0.5377, 5.3838"
    })
    void theHeatThroughALidIsThatOfASumFromTables(
            double volume, double radius, double water, double air, double bare, double covered, double open) {
        Jar jar = Jar.holding(Volume.of(volume, Unit.MILLILITER), Length.of(radius, Unit.MILLIMETER));
        Temperature warm = new Temperature(water);
        Temperature room = new Temperature(air);
        assertEquals(bare, Lid.BARE.watts(jar, warm, room), 0.01 * bare);
        assertEquals(covered, new Lid.Closed(new ThermalResistance(0.2)).watts(jar, warm, room), 0.01 * covered);
        assertEquals(open, Lid.OPEN.watts(jar, warm, room), 0.02 * open);
    }

    @Test
    void anOpenJarLosesMoreThanOneUnderALidAndThatMoreThanOneUnderACover() {
        Lid cover = new Lid.Closed(new ThermalResistance(0.1));
        for (double air = -15; air < 25; air += 2.5) {
            for (double water = air + 1; water < 60; water += 3) {
                // About 4 °C, where water is densest, a colder surface may hold still and lose less.
                if (water > 12) {
                    Temperature warm = new Temperature(water);
                    Temperature room = new Temperature(air);
                    double bare = Lid.BARE.watts(JAR, warm, room);
                    assertTrue(Lid.OPEN.watts(JAR, warm, room) > bare, water + " in " + air);
                    assertTrue(bare > cover.watts(JAR, warm, room), water + " in " + air);
                }
            }
        }
    }

    @Test
    void heatComesInThroughTheLidOfAColdJar() {
        assertTrue(Lid.BARE.watts(JAR, new Temperature(5), new Temperature(20)) < 0);
    }

    @Test
    void lidsAreFoundByTheirWords() {
        assertEquals(Lid.OPEN, Lid.parse(" Open"));
        assertEquals(Lid.OPEN, Lid.parse("no lid"));
        assertEquals(Lid.BARE, Lid.parse("THIN"));
        assertEquals(Lid.OPEN, Lid.parse("offen"));
        assertSame(
                Problem.UNKNOWN_LID,
                assertThrows(InvalidInputException.class, () -> Lid.parse("cork"))
                        .problem());
    }

    @Test
    void equalTemperaturesAreRefused() {
        Temperature same = new Temperature(20);
        for (Lid lid : new Lid[] {Lid.OPEN, Lid.BARE}) {
            assertSame(
                    Problem.NO_DIFFERENCE,
                    assertThrows(InvalidInputException.class, () -> lid.watts(JAR, same, same))
                            .problem());
        }
    }
}
