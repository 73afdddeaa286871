package org.snugsheet.engine.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;

/** Properties, which must hold for every wrap; the published examples are in {@link WorkedExamplesTest}. */
class RoundWrapTest {

    private static final Length JAR = Length.of(40, Unit.MILLIMETER);

    @RepeatedTest(50)
    void anotherLayerNeverLowersAFlatResistance(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Layers layers = randomLayers(random, 1 + random.nextInt(5));
        double before = FlatWrap.of(layers).resistance().squareMeterKelvinsPerWatt();
        double after =
                FlatWrap.of(layers.with(randomLayer(random))).resistance().squareMeterKelvinsPerWatt();
        assertTrue(after > before);
    }

    @RepeatedTest(50)
    void theOrderOfLayersMattersOnACylinderAndNotOnAWall(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Layers layers = Layers.NONE.with(5, 0.03).with(5 + random.nextInt(20), 0.5);
        List<Layer> turned = new ArrayList<>(layers.fromInside());
        Collections.reverse(turned);
        Layers otherWay = new Layers(turned);
        assertEquals(
                FlatWrap.of(layers).resistance().squareMeterKelvinsPerWatt(),
                FlatWrap.of(otherWay).resistance().squareMeterKelvinsPerWatt(),
                1e-12);
        double bestInside = RoundWrap.of(JAR, layers).resistance().squareMeterKelvinsPerWatt();
        double bestOutside = RoundWrap.of(JAR, otherWay).resistance().squareMeterKelvinsPerWatt();
        assertNotEquals(bestInside, bestOutside, 1e-6);
        assertTrue(bestInside > bestOutside, "the better material belongs inside, where the surface is small");
    }

    @RepeatedTest(50)
    void twoLayersOfOneMaterialAreOneOfDoubleThickness(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Layer single = randomLayer(random);
        Layer twice = single.withThickness(new Length(2 * single.thickness().meters()));
        Layers two = Layers.NONE.with(single).with(single);
        Layers one = Layers.NONE.with(twice);
        assertEquals(
                FlatWrap.of(one).resistance().squareMeterKelvinsPerWatt(),
                FlatWrap.of(two).resistance().squareMeterKelvinsPerWatt(),
                1e-12);
        assertEquals(
                RoundWrap.of(JAR, one).resistance().squareMeterKelvinsPerWatt(),
                RoundWrap.of(JAR, two).resistance().squareMeterKelvinsPerWatt(),
                1e-12);
    }

    @RepeatedTest(50)
    void atTheCriticalRadiusTheLossIsGreatest(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Conductivity conductivity = new Conductivity(0.02 + random.nextDouble());
        double coefficient = 2 + 10 * random.nextDouble();
        double critical = Thickness.criticalRadius(conductivity, coefficient).meters();
        double radius = critical * (0.1 + 0.8 * random.nextDouble());
        double most = loss(radius, critical, conductivity, coefficient);
        for (double other : List.of(0.9 * critical + 0.1 * radius, 1.1 * critical, 3 * critical)) {
            assertTrue(loss(radius, other, conductivity, coefficient) < most, "at " + other);
        }
    }

    @Test
    void onAWideCylinderALayerIsAsGoodAsLyingFlat() {
        Layers layers = Layers.NONE.with(3, "wool").with(5, 0.035);
        double flat = FlatWrap.of(layers).resistance().squareMeterKelvinsPerWatt();
        double round = RoundWrap.of(new Length(1000), layers).resistance().squareMeterKelvinsPerWatt();
        assertEquals(flat, round, 1e-5 * flat);
    }

    @RepeatedTest(50)
    void aThicknessForAResistanceGivesThatResistance(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        ThermalResistance target = new ThermalResistance(0.01 + 0.5 * random.nextDouble());
        Conductivity conductivity = new Conductivity(0.02 + 0.1 * random.nextDouble());
        Layer flat = new Layer(Thickness.flat(target, conductivity), conductivity);
        Layer round = new Layer(Thickness.round(target, conductivity, JAR), conductivity);
        double wanted = target.squareMeterKelvinsPerWatt();
        assertEquals(wanted, flat.resistance().squareMeterKelvinsPerWatt(), 1e-12);
        assertEquals(
                wanted, RoundWrap.of(JAR, Layers.NONE.with(round)).resistance().squareMeterKelvinsPerWatt(), 1e-12);
    }

    @Test
    void aWrapOfNothingAndAThicknessBeyondReasonAreRefused() {
        assertEquals(
                Problem.NO_LAYERS,
                assertThrows(InvalidInputException.class, () -> RoundWrap.of(JAR, Layers.NONE))
                        .problem());
        assertEquals(
                Problem.ROUND_TARGET_TOO_HIGH,
                assertThrows(
                                InvalidInputException.class,
                                () -> Thickness.round(new ThermalResistance(10), new Conductivity(1), JAR))
                        .problem());
        assertEquals(
                Problem.NOT_POSITIVE,
                assertThrows(InvalidInputException.class, () -> Thickness.criticalRadius(new Conductivity(0.04), 0))
                        .problem());
        assertThrows(InvalidInputException.class, () -> Thickness.flat(ThermalResistance.NONE, new Conductivity(0.04)));
    }

    private static double loss(double radius, double outer, Conductivity conductivity, double coefficient) {
        Layers layers = Layers.NONE.with(new Layer(new Length(outer - radius), conductivity));
        return new RoundWrap(new Length(radius), layers, ThermalResistance.NONE, new ThermalResistance(1 / coefficient))
                .heatFlowPerMeter(20);
    }

    private static Layers randomLayers(Random random, int count) {
        Layers layers = Layers.NONE;
        for (int i = 0; i < count; i++) {
            layers = layers.with(randomLayer(random));
        }
        return layers;
    }

    private static Layer randomLayer(Random random) {
        return new Layer(
                Length.of(0.1 + 30 * random.nextDouble(), Unit.MILLIMETER),
                new Conductivity(0.02 + random.nextDouble()));
    }
}
