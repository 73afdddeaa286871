package org.snugsheet.engine.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;

/** What must hold for any flat wrap: consequences of adding resistances in series (ISO 6946:2017, 6.7.1.2). */
class FlatWrapTest {

    private static final long SEED = 20261125;
    private static final int TRIALS = 1000;

    @Test
    void theOrderOfLayersDoesNotMatter() {
        Random random = new Random(SEED);
        for (int i = 0; i < TRIALS; i++) {
            FlatWrap wrap = wrap(random);
            List<Layer> shuffled = new ArrayList<>(wrap.layers().fromInside());
            Collections.shuffle(shuffled, random);
            FlatWrap other = FlatWrap.of(shuffled, wrap.inside(), wrap.outside());
            assertEquals(r(wrap), r(other), 1e-13 * r(wrap));
        }
    }

    @Test
    void oneMoreLayerNeverLetsMoreHeatThrough() {
        Random random = new Random(SEED);
        for (int i = 0; i < TRIALS; i++) {
            FlatWrap wrap = wrap(random);
            FlatWrap thicker = wrap.withLayer(layer(random));
            assertTrue(r(thicker) > r(wrap));
            assertTrue(thicker.transmittance() < wrap.transmittance());
        }
    }

    @Test
    void twoLayersOfOneMaterialAreOneOfDoubleThickness() {
        Random random = new Random(SEED);
        for (int i = 0; i < TRIALS; i++) {
            Layer once = layer(random);
            Layer twice = new Layer(new Length(2 * once.thickness().meters()), once.conductivity());
            FlatWrap rest = wrap(random);
            assertEquals(
                    r(rest.withLayer(twice)),
                    r(rest.withLayer(once).withLayer(once)),
                    1e-13 * r(rest.withLayer(twice)));
        }
    }

    @Test
    void thePartsMakeUpTheWhole() {
        Random random = new Random(SEED);
        for (int i = 0; i < TRIALS; i++) {
            FlatWrap wrap = wrap(random);
            double sum =
                    wrap.inside().squareMeterKelvinsPerWatt() + wrap.outside().squareMeterKelvinsPerWatt();
            for (ThermalResistance each : wrap.resistances()) {
                sum += each.squareMeterKelvinsPerWatt();
            }
            assertEquals(sum, r(wrap), 1e-13 * sum);
            assertEquals(1, wrap.transmittance() * r(wrap), 1e-15);
        }
    }

    @Test
    void theSameHeatGoesThroughEveryLayer() {
        Random random = new Random(SEED);
        for (int i = 0; i < TRIALS; i++) {
            FlatWrap wrap = wrap(random);
            Temperature warm = Temperature.of(random.nextDouble() * 60, Scale.CELSIUS);
            Temperature cold = Temperature.of(random.nextDouble() * 60 - 30, Scale.CELSIUS);
            double flux = wrap.heatFlux(warm, cold);
            List<Temperature> faces = wrap.faces(warm, cold);
            List<ThermalResistance> resistances = wrap.resistances();
            assertEquals(resistances.size() + 1, faces.size());
            for (int k = 0; k < resistances.size(); k++) {
                double fall = faces.get(k).minus(faces.get(k + 1)).kelvins();
                assertEquals(flux * resistances.get(k).squareMeterKelvinsPerWatt(), fall, 1e-9);
            }
            assertEquals(
                    flux * wrap.inside().squareMeterKelvinsPerWatt(),
                    warm.minus(faces.get(0)).kelvins(),
                    1e-9);
            assertEquals(
                    flux * wrap.outside().squareMeterKelvinsPerWatt(),
                    faces.get(faces.size() - 1).minus(cold).kelvins(),
                    1e-9);
        }
    }

    @Test
    void noHeatGoesBetweenEqualsAndItTurnsRoundWithTheSides() {
        FlatWrap wrap = FlatWrap.of(Layers.NONE.with(5, "wool"));
        Temperature warm = Temperature.of(40, Scale.CELSIUS);
        Temperature cold = Temperature.of(0, Scale.CELSIUS);
        assertEquals(0, wrap.heatFlux(warm, warm));
        assertEquals(wrap.heatFlux(warm, cold), -wrap.heatFlux(cold, warm));
        assertTrue(wrap.heatFlux(warm, cold) > 0);
    }

    @Test
    void nothingAtAllIsNoWrap() {
        assertSame(
                Problem.NO_LAYERS,
                assertThrows(InvalidInputException.class, () -> FlatWrap.of(Layers.NONE))
                        .problem());
        assertSame(
                Problem.NO_LAYERS,
                assertThrows(
                                InvalidInputException.class,
                                () -> FlatWrap.of(List.of(), ThermalResistance.NONE, ThermalResistance.NONE))
                        .problem());
        // A bare surface keeps some heat in.
        assertEquals(0.13, r(FlatWrap.of(List.of(), new ThermalResistance(0.13), ThermalResistance.NONE)));
    }

    @Test
    void nobodyCanChangeAWrapFromOutside() {
        List<Layer> layers = new ArrayList<>(Layers.NONE.with(5, 0.04).fromInside());
        FlatWrap wrap = FlatWrap.of(layers, ThermalResistance.NONE, ThermalResistance.NONE);
        double before = r(wrap);
        layers.clear();
        assertEquals(before, r(wrap));
        assertThrows(
                UnsupportedOperationException.class,
                () -> wrap.layers().fromInside().remove(0));
    }

    private static double r(FlatWrap wrap) {
        return wrap.resistance().squareMeterKelvinsPerWatt();
    }

    /** From one to six layers, as thin as foil or as thick as a wall, between two surfaces. */
    private static FlatWrap wrap(Random random) {
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(6); i++) {
            layers.add(layer(random));
        }
        return FlatWrap.of(
                layers,
                new ThermalResistance(random.nextDouble() * 0.2),
                new ThermalResistance(random.nextDouble() * 0.2));
    }

    private static Layer layer(Random random) {
        return new Layer(
                new Length(Math.pow(10, -5 + 4.5 * random.nextDouble())),
                new Conductivity(Math.pow(10, -2 + 4.5 * random.nextDouble())));
    }
}
