package org.snugsheet.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

/** Lengths, conductivities and resistances. */
class QuantityTest {

    @Test
    void aLayerResistsByItsThicknessOverItsConductivity() {
        // Source: Building Construction Handbook, p. 468: 102 mm of brick, 0.84 W/(m·K), has R = 0.121 m²·K/W.
        Conductivity brick = Conductivity.of(0.84, Unit.WATT_PER_METER_KELVIN);
        assertEquals(0.121, brick.through(Length.of(102, Unit.MILLIMETER)).squareMeterKelvinsPerWatt(), 0.0005);
    }

    @Test
    void theSameLayerInBritishUnitsResistsTheSame() {
        // Source of the formula in these units: Kern, Process Heat Transfer, 1950, Example 2.2: 4 in, k 0.15, R = 2.22.
        Conductivity brick = Conductivity.of(0.15, Unit.BTU_FOOT);
        assertEquals(2.22, brick.through(Length.of(4, Unit.INCH)).in(Unit.US_R_VALUE), 0.005);
        // A k-factor is for an inch and not for a foot: twelve times the number (NIST SP 811, B.8).
        assertEquals(
                brick.wattsPerMeterKelvin(), Conductivity.of(1.8, Unit.BTU_INCH).wattsPerMeterKelvin(), 1e-15);
    }

    @Test
    void resistancesInSeriesAddUpInAnyOrder() {
        Random random = new Random(20261125);
        for (int i = 0; i < 1000; i++) {
            ThermalResistance a = ThermalResistance.of(random.nextDouble() * 5, Unit.CLO);
            ThermalResistance b = ThermalResistance.of(random.nextDouble() * 5, Unit.TOG);
            assertEquals(a.plus(b), b.plus(a));
            assertEquals(
                    a.in(Unit.US_R_VALUE) + b.in(Unit.US_R_VALUE), a.plus(b).in(Unit.US_R_VALUE), 1e-13);
            assertTrue(a.plus(b).compareTo(a) >= 0);
        }
        assertEquals(0, ThermalResistance.NONE.in(Unit.CLO));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1, -1e-300})
    void whatMustBeMoreThanZeroIsRefusedOtherwise(double value) {
        assertNamed("length", Problem.NOT_POSITIVE, () -> Length.of(value, Unit.MILLIMETER));
        assertNamed("conductivity", Problem.NOT_POSITIVE, () -> new Conductivity(value));
    }

    @Test
    void aResistanceMayBeNoneButNotLess() {
        assertEquals(0, new ThermalResistance(0).squareMeterKelvinsPerWatt());
        assertNamed("thermal resistance", Problem.NEGATIVE, () -> ThermalResistance.of(-0.1, Unit.CLO));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsRefused(double value) {
        assertSame(
                Problem.NOT_A_NUMBER,
                assertThrows(InvalidInputException.class, () -> new Length(value))
                        .problem());
        assertSame(
                Problem.NOT_A_NUMBER,
                assertThrows(InvalidInputException.class, () -> new Conductivity(value))
                        .problem());
        assertSame(
                Problem.NOT_A_NUMBER,
                assertThrows(InvalidInputException.class, () -> new ThermalResistance(value))
                        .problem());
    }

    @Test
    void aNumberTooGreatToHoldIsRefusedAndNotMadeInfinite() {
        assertThrows(InvalidInputException.class, () -> Length.of(1e308, Unit.MILE));
        ThermalResistance huge = new ThermalResistance(1e308);
        assertThrows(InvalidInputException.class, () -> huge.plus(huge));
    }

    @Test
    void aUnitOfSomethingElseIsRefused() {
        assertSame(
                Problem.OTHER_DIMENSION,
                assertThrows(InvalidInputException.class, () -> Length.of(3, Unit.GRAM))
                        .problem());
        assertSame(
                Problem.OTHER_DIMENSION,
                assertThrows(InvalidInputException.class, () -> Conductivity.of(3, Unit.US_U_VALUE))
                        .problem());
        assertSame(
                Problem.OTHER_DIMENSION,
                assertThrows(InvalidInputException.class, () -> ThermalResistance.NONE.in(Unit.US_R_VALUE_PER_INCH))
                        .problem());
    }

    private static void assertNamed(String what, Problem problem, org.junit.jupiter.api.function.Executable making) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, making);
        assertSame(problem, refusal.problem());
        assertTrue(
                refusal.finding().sentence().contains(what), refusal.finding().sentence());
    }
}
