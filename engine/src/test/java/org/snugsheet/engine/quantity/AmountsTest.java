package org.snugsheet.engine.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;

/** Volumes, masses and heat capacities. */
class AmountsTest {

    @Test
    void amountsAreSiInside() {
        // NIST SP 811 (2008), Appendix B.8: one US cup is 2.365882 E−04 m³, one ounce 2.834952 E−02 kg.
        assertEquals(2.365882e-4, Volume.of(1, Unit.US_CUP).cubicMeters(), 5e-11);
        assertEquals(2.834952e-2, Mass.of(1, Unit.OUNCE).kilograms(), 5e-9);
        assertEquals(2.5e-4, Volume.of(250, Unit.MILLILITER).cubicMeters(), 1e-18);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1})
    void anAmountOfNothingIsRefused(double value) {
        assertNamed(QuantityName.VOLUME, Problem.NOT_POSITIVE, () -> Volume.of(value, Unit.MILLILITER));
        assertNamed(QuantityName.MASS, Problem.NOT_POSITIVE, () -> Mass.of(value, Unit.GRAM));
    }

    @Test
    void theRefusalSaysTheNumberThatWasTyped() {
        InvalidInputException refusal =
                assertThrows(InvalidInputException.class, () -> Volume.of(-250, Unit.MILLILITER));
        assertEquals(
                "The volume must be more than zero, but it is -250. Check that cell.",
                refusal.finding().sentence());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoNumberIsRefused(double value) {
        assertThrows(InvalidInputException.class, () -> new Volume(value));
        assertThrows(InvalidInputException.class, () -> new Mass(value));
        assertThrows(InvalidInputException.class, () -> new HeatCapacity(value));
    }

    @Test
    void aHeatCapacityMayBeNoneButNotLess() {
        assertEquals(new HeatCapacity(3), new HeatCapacity(3).plus(HeatCapacity.NONE));
        assertNamed(QuantityName.HEAT_CAPACITY, Problem.NEGATIVE, () -> new HeatCapacity(-1));
    }

    @Test
    void anotherDimensionIsRefused() {
        assertEquals(
                Problem.OTHER_DIMENSION,
                assertThrows(InvalidInputException.class, () -> Volume.of(1, Unit.GRAM))
                        .problem());
        assertEquals(
                Problem.OTHER_DIMENSION,
                assertThrows(InvalidInputException.class, () -> Mass.of(1, Unit.LITER))
                        .problem());
    }

    private static void assertNamed(QuantityName what, Problem problem, Runnable question) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, question::run);
        assertEquals(problem, refusal.problem());
        assertEquals(what, refusal.finding().arguments().get(0));
    }
}
