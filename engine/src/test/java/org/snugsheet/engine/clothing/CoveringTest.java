package org.snugsheet.engine.clothing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.insulation.Figure;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Unit;

class CoveringTest {

    @Test
    void anInchOfFurIsTheCloThatWasMeasuredOnNorthernMammals() {
        // Source: Hammel, Am. J. Physiol. 182 (1955), 369-376: 4.2 clo for each inch, ±10 %; rounded to three digits of
        // conductivity here.
        Covering fur = Covering.find("fur");
        Length inch = Length.of(1, Unit.INCH);
        assertEquals(4.2, fur.resistance(inch, Figure.TYPICAL).in(Unit.CLO), 0.01);
        // Musk deer, 0.057 W/(m·K): Blix and others, Rangifer 35 (2015), 53-60, abstract; 1 clo is 0.155 m²·K/W.
        assertEquals(0.0254 / 0.057 / 0.155, fur.resistance(inch, Figure.LOW).in(Unit.CLO), 0.02);
        assertEquals(4.2 * 1.1, fur.resistance(inch, Figure.HIGH).in(Unit.CLO), 0.02);
    }

    @Test
    void blubberConductsAsWasMeasuredOnDolphins() {
        // Source: Dunkin, McLellan, Blum and Pabst, J. Exp. Biol. 208 (2005): 0.11 to 0.24, healthy adults 0.18
        // W/(m·K).
        Covering blubber = Covering.find("blubber");
        Length thickness = Length.of(18, Unit.MILLIMETER);
        assertEquals(0.1, blubber.resistance(thickness, Figure.TYPICAL).squareMeterKelvinsPerWatt(), 1e-12);
        assertEquals(0.018 / 0.24, blubber.resistance(thickness, Figure.LOW).squareMeterKelvinsPerWatt(), 1e-12);
        assertEquals(0.018 / 0.11, blubber.resistance(thickness, Figure.HIGH).squareMeterKelvinsPerWatt(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"Fur, fur", "goose down, down", "sheep wool, wool", "feather, feathers", "whale blubber, blubber"})
    void usualNamesAreUnderstood(String typed, String name) {
        assertEquals(name, Covering.find(typed).material().name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"newspaper", "scales", "", "fleece"})
    void whatCoversNoAnimalIsRefused(String typed) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, () -> Covering.find(typed));
        assertSame(Problem.NO_COVERING, refusal.problem());
        assertTrue(refusal.finding().sentence().contains("blubber"));
    }

    /** Fur that has lost all its air to water is no better than that water, 0.6 W/(m·K) at 10 °C (EN 12524). */
    @Test
    void soakedFurKeepsNobodyWarm() {
        double resistance = Covering.find("soaked fur")
                .resistance(new Length(0.03), Figure.TYPICAL)
                .squareMeterKelvinsPerWatt();
        assertEquals(0.03 / 0.6, resistance, 1e-12);
    }

    @Test
    void aCoveringNobodyMeasuredWetIsRefusedAsSuch() {
        assertSame(
                Problem.NO_SUCH_CONDITION,
                assertThrows(InvalidInputException.class, () -> Covering.find("damp fur"))
                        .problem());
    }

    @Test
    void thickerIsNeverLessAndTheRangeHoldsTheTypical() {
        Random random = new Random(1955);
        for (Covering covering : Covering.all()) {
            for (int i = 0; i < 50; i++) {
                double millimeters = 0.5 + 100 * random.nextDouble();
                Length thin = Length.of(millimeters, Unit.MILLIMETER);
                Length thick = Length.of(millimeters * 1.5, Unit.MILLIMETER);
                assertTrue(
                        covering.resistance(thin, Figure.TYPICAL).compareTo(covering.resistance(thick, Figure.TYPICAL))
                                < 0);
                assertTrue(covering.resistance(thin, Figure.LOW).compareTo(covering.resistance(thin, Figure.TYPICAL))
                        <= 0);
                assertTrue(covering.resistance(thin, Figure.TYPICAL).compareTo(covering.resistance(thin, Figure.HIGH))
                        <= 0);
            }
        }
    }
}
