package org.snugsheet.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.Refusal;
import org.snugsheet.engine.Trouble;

/** Volumes, masses and heat capacities. */
class AmountsTest {

    @Test
    void amountsAreSiInside() {
        // NIST SP 811 (2008), Appendix B.8: one US cup is 2.365882 E−04 m³, one ounce 2.834952 E−02 kg.
        assertEquals(2.365882e-4, Volume.of(1, Unit.US_CUP).cubicMetres(), 5e-11);
        assertEquals(2.834952e-2, Mass.of(1, Unit.OUNCE).kilograms(), 5e-9);
        assertEquals(2.5e-4, Volume.of(250, Unit.MILLILITRE).cubicMetres(), 1e-18);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1})
    void anAmountOfNothingIsRefused(double value) {
        assertNamed(QuantityName.VOLUME, Trouble.NOT_POSITIVE, () -> Volume.of(value, Unit.MILLILITRE));
        assertNamed(QuantityName.MASS, Trouble.NOT_POSITIVE, () -> Mass.of(value, Unit.GRAM));
    }

    @Test
    void theRefusalSaysTheNumberThatWasTyped() {
        Refusal refusal = assertThrows(Refusal.class, () -> Volume.of(-250, Unit.MILLILITRE));
        assertEquals(
                "The volume must be more than zero, but it is -250. Check that cell.",
                refusal.finding().sentence());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoNumberIsRefused(double value) {
        assertThrows(Refusal.class, () -> new Volume(value));
        assertThrows(Refusal.class, () -> new Mass(value));
        assertThrows(Refusal.class, () -> new HeatCapacity(value));
    }

    @Test
    void aHeatCapacityMayBeNoneButNotLess() {
        assertEquals(new HeatCapacity(3), new HeatCapacity(3).plus(HeatCapacity.NONE));
        assertNamed(QuantityName.HEAT_CAPACITY, Trouble.NEGATIVE, () -> new HeatCapacity(-1));
    }

    @Test
    void anotherDimensionIsRefused() {
        assertEquals(
                Trouble.OTHER_DIMENSION,
                assertThrows(Refusal.class, () -> Volume.of(1, Unit.GRAM)).trouble());
        assertEquals(
                Trouble.OTHER_DIMENSION,
                assertThrows(Refusal.class, () -> Mass.of(1, Unit.LITRE)).trouble());
    }

    private static void assertNamed(QuantityName what, Trouble trouble, Runnable question) {
        Refusal refusal = assertThrows(Refusal.class, question::run);
        assertEquals(trouble, refusal.trouble());
        assertEquals(what, refusal.finding().arguments().get(0));
    }
}
