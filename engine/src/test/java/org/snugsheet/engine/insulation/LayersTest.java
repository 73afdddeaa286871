package org.snugsheet.engine.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;

class LayersTest {

    private static final Layers TWO = Layers.NONE.with(3, "wool").with(0.5, 0.05);

    @Test
    void aLayerMayBeGivenByMaterialOrByConductivity() {
        // Source: R = d/λ, ISO 6946:2017, 6.7.1.1.
        assertEquals(0.01, TWO.fromInside().get(1).resistance().squareMeterKelvinsPerWatt(), 1e-15);
        assertEquals(
                0.003 / Materials.find("wool").typical().wattsPerMeterKelvin(),
                TWO.fromInside().get(0).resistance().squareMeterKelvinsPerWatt(),
                1e-15);
    }

    @Test
    void aWetLayerIsFoundByItsCondition() {
        Layers wet = Layers.NONE.with(50, "damp sand");
        assertEquals(
                Materials.find("sand", Condition.DAMP).typical(),
                wet.fromInside().get(0).conductivity());
    }

    @Test
    void moreLayersLieOutsideAndLeaveTheOthersAlone() {
        Layers three = TWO.with(2, "felt");
        assertEquals(2, TWO.fromInside().size());
        assertEquals(TWO.fromInside(), three.fromInside().subList(0, 2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1, -1e-9})
    void aThicknessOrConductivityThatIsNotPositiveIsRefusedByItsLayer(double value) {
        assertThirdLayer(Problem.LAYER_NOT_POSITIVE, "thickness", () -> TWO.with(value, 0.04));
        assertThirdLayer(Problem.LAYER_NOT_POSITIVE, "thickness", () -> TWO.with(value, "wool"));
        assertThirdLayer(Problem.LAYER_NOT_POSITIVE, "conductivity", () -> TWO.with(3, value));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNoNumberIsRefusedByItsLayer(double value) {
        assertThirdLayer(Problem.LAYER_NOT_A_NUMBER, "thickness", () -> TWO.with(value, 0.04));
        assertThirdLayer(Problem.LAYER_NOT_A_NUMBER, "thickness", () -> TWO.with(value, "wool"));
        assertThirdLayer(Problem.LAYER_NOT_A_NUMBER, "conductivity", () -> TWO.with(3, value));
    }

    @Test
    void aNumberTooSmallOrTooGreatForAComputerIsRefusedToo() {
        assertThrows(InvalidInputException.class, () -> TWO.with(Double.MIN_VALUE, 0.04));
        assertThrows(
                InvalidInputException.class,
                () -> FlatWrap.of(TWO.with(1e300, 1e-300)).resistance());
    }

    @Test
    void anUnknownMaterialIsRefusedByItsLayer() {
        assertThirdLayer(Problem.LAYER_UNKNOWN_MATERIAL, "“kryptonite”", () -> TWO.with(3, "kryptonite"));
        assertThirdLayer(Problem.LAYER_UNKNOWN_MATERIAL_NEAR, "“fleece”", () -> TWO.with(3, "fleese"));
        assertThirdLayer(Problem.LAYER_NO_SUCH_CONDITION, "soaked cork", () -> TWO.with(3, "wet cork"));
    }

    private static void assertThirdLayer(Problem problem, String word, Executable adding) {
        InvalidInputException refusal = assertThrows(InvalidInputException.class, adding);
        assertSame(problem, refusal.problem());
        assertEquals(OptionalInt.of(3), refusal.row());
        String sentence = refusal.finding().sentence();
        assertTrue(sentence.startsWith("Layer 3: "), sentence);
        assertTrue(sentence.contains(word), sentence);
    }
}
