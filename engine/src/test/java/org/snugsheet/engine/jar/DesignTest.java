package org.snugsheet.engine.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.surface.Ambient;
import org.snugsheet.engine.surface.Face;
import org.snugsheet.engine.surface.KnownSurface;
import org.snugsheet.engine.surface.Orientation;
import org.snugsheet.engine.surface.StillAir;
import org.snugsheet.engine.surface.StillWater;
import org.snugsheet.engine.surface.StirredWater;
import org.snugsheet.engine.surface.Wind;

class DesignTest {

    private static final Temperature WARM = new Temperature(40);
    private static final Temperature COLD = new Temperature(5);
    private static final Volume VOLUME = Volume.of(250, Unit.MILLILITER);
    private static final Jar JAR = Jar.holding(VOLUME, Length.of(35, Unit.MILLIMETER));

    static Stream<Ambient> places() {
        return Stream.of(
                new StillAir(),
                new Wind(0.3),
                new Wind(6),
                new StillWater(),
                new StirredWater(),
                KnownSurface.CONTACT,
                new KnownSurface(new ThermalResistance(0.13)));
    }

    @Test
    void aJarIsAsHighAsItIsFull() {
        assertEquals(0.06496, JAR.height().meters(), 5e-6);
        assertEquals(JAR.sideArea() + 2 * JAR.endArea(), JAR.area(), 1e-15);
    }

    @ParameterizedTest
    @MethodSource("places")
    void heatInIsHeatOutAtEveryFace(Ambient place) {
        Layers layers =
                Layers.NONE.with(2, "glass").with(3, "wool").with(5, "air gap").with(0.02, "foil");
        Design design = new Design(JAR, layers, new ThermalResistance(0.02), new ThermalResistance(0.1), place);
        HeatFlow flow = design.between(WARM, COLD);
        for (HeatPath path : List.of(flow.side(), flow.lid(), flow.base())) {
            for (int i = 0; i < path.resistances().size(); i++) {
                double resistance = path.resistances().get(i).squareMeterKelvinsPerWatt();
                double fall = path.faces().get(i).minus(path.faces().get(i + 1)).kelvins();
                assertEquals(path.flux() * resistance, fall, 1e-9);
            }
        }
        assertFilmsSuit(flow.side(), place, new Face(Orientation.SIDE, JAR.height(), new Length(0.09004), 0.05));
        assertEquals(
                flow.watts(),
                WARM.minus(flow.end()).kelvins()
                        * JAR.area()
                        / flow.resistance().squareMeterKelvinsPerWatt(),
                1e-9);
    }

    private static void assertFilmsSuit(HeatPath side, Ambient place, Face face) {
        int last = side.faces().size() - 1;
        double outside =
                place.resistance(face, side.faces().get(last - 1), COLD).squareMeterKelvinsPerWatt();
        double widening = face.diameter().meters() / (2 * JAR.radius().meters());
        double fall = side.faces().get(last - 1).minus(COLD).kelvins();
        assertEquals(side.flux() * outside / widening, fall, 1e-9);
        Face within = new Face(
                Orientation.SIDE, JAR.height(), new Length(2 * JAR.radius().meters()), 0.9);
        double inside =
                new StillWater().resistance(within, side.faces().get(1), WARM).squareMeterKelvinsPerWatt();
        assertEquals(side.flux() * inside, WARM.minus(side.faces().get(1)).kelvins(), 1e-9);
    }

    @RepeatedTest(100)
    void itSettlesWhateverTheJar(RepetitionInfo seed) {
        Random random = new Random(seed.getCurrentRepetition());
        Layers layers = Layers.NONE;
        for (int i = random.nextInt(4); i > 0; i--) {
            layers = layers.with(Math.exp(3 * random.nextGaussian()), Math.exp(random.nextGaussian() - 2));
        }
        List<Ambient> places = places().toList();
        // As large as the correlations of the films reach in hot water: 300 mm high and 200 mm wide.
        Jar jar = new Jar(new Length(0.01 + 0.09 * random.nextDouble()), new Length(0.01 + 0.29 * random.nextDouble()));
        Design design = new Design(
                jar,
                layers,
                new ThermalResistance(random.nextDouble()),
                ThermalResistance.NONE,
                places.get(random.nextInt(places.size())));
        double water = 1 + 98 * random.nextDouble();
        double around = 1 + 40 * random.nextDouble();
        HeatFlow flow = design.between(new Temperature(water), new Temperature(around));
        assertEquals(Math.signum(water - flow.end().celsius()), Math.signum(flow.watts()));
    }

    @Test
    void aBetterLidLowersTheLossAndSoDoesALayer() {
        Design bare = new Design(JAR, Layers.NONE, ThermalResistance.NONE, ThermalResistance.NONE, new StillAir());
        Design wrapped = bare.withSide(Layers.NONE.with(5, "fleece"));
        Design covered = new Design(JAR, wrapped.side(), new ThermalResistance(0.1), wrapped.base(), wrapped.place());
        assertTrue(
                wrapped.between(WARM, COLD).watts() < bare.between(WARM, COLD).watts());
        assertTrue(covered.between(WARM, COLD).watts()
                < wrapped.between(WARM, COLD).watts());
        assertEquals(
                wrapped.between(WARM, COLD).watts(),
                covered.withBareLid().between(WARM, COLD).watts(),
                1e-12);
    }

    /**
     * With a film known beforehand and the film inside left out of account, the sum is the one of the handbooks: {@code U·A}
     * of a cylinder and two discs. The film inside is at most 3 % of it here.
     */
    @Test
    void withKnownFilmsItIsTheSumOfTheHandbooks() {
        double film = 0.13;
        Design design = new Design(
                JAR,
                Layers.NONE.with(10, 0.04),
                new ThermalResistance(0.25),
                new ThermalResistance(0.25),
                new KnownSurface(new ThermalResistance(film)));
        double round = 0.035 * Math.log(45.0 / 35) / 0.04 + film * 35 / 45;
        double byHand = 35 * (JAR.sideArea() / round + 2 * JAR.endArea() / (0.25 + film));
        double watts = design.between(WARM, COLD).watts();
        assertTrue(watts < byHand && watts > 0.97 * byHand, watts + " and " + byHand);
    }

    @Test
    void theExpectedConstantIsLossOverWhatTheWaterHolds() {
        Design design = new Design(
                JAR, Layers.NONE.with(5, "fleece"), ThermalResistance.NONE, ThermalResistance.NONE, new StillAir());
        WaterBody water = WaterBody.of(VOLUME, WARM);
        double perSecond = ExpectedCooling.of(design, water, COLD).perSecond();
        double watts = design.between(WARM, COLD).watts();
        assertEquals(watts / (water.heatCapacity().joulesPerKelvin() * 35), perSecond, 1e-15);
    }

    /** 300 ml of water in a bare mug cool with 0.03 per minute or so in a room: common practice, no source. */
    @Test
    void aBareJarCoolsAsFastAsOneDoes() {
        Design mug = new Design(
                Jar.holding(Volume.of(300, Unit.MILLILITER), Length.of(40, Unit.MILLIMETER)),
                Layers.NONE.with(4, "porcelain"),
                ThermalResistance.NONE,
                ThermalResistance.NONE,
                new StillAir());
        WaterBody water = WaterBody.of(Volume.of(300, Unit.MILLILITER), new Temperature(50));
        double perMinute = ExpectedCooling.of(mug, water, new Temperature(20)).perMinute();
        assertTrue(perMinute > 0.01 && perMinute < 0.05, "" + perMinute);
    }

    /** What a film lets through suits the difference across it, however small: the heat of a bare lid is never less than of a covered. */
    @Test
    void aLidLosesLessTheMoreIsOnItAtAnyDifference() {
        for (double warmer = 0.25; warmer < 20; warmer *= 1.3) {
            double last = Double.POSITIVE_INFINITY;
            for (double cover = 0; cover < 0.2; cover += 0.02) {
                HeatPath lid = new Design(
                                JAR, Layers.NONE, new ThermalResistance(cover), ThermalResistance.NONE, new StillAir())
                        .between(new Temperature(12.5 + warmer), new Temperature(12.5))
                        .lid();
                assertTrue(lid.flux() < last, warmer + " K and " + cover);
                last = lid.flux();
            }
        }
    }

    /** On the way to the balance the inside seems colder than ice; in the end the glass is at 8 °C. */
    @Test
    void warmWaterInABareJarInFrostIsNoIce() {
        HeatPath side = new Design(JAR, Layers.NONE, ThermalResistance.NONE, ThermalResistance.NONE, new StillAir())
                .between(new Temperature(9), new Temperature(-15))
                .side();
        assertTrue(side.faces().get(1).celsius() > 5, side.toString());
    }

    @Test
    void equalTemperaturesAndFrozenWaterAreRefused() {
        Design design = new Design(JAR, Layers.NONE, ThermalResistance.NONE, ThermalResistance.NONE, new StillWater());
        assertEquals(
                Problem.NO_DIFFERENCE,
                assertThrows(InvalidInputException.class, () -> design.between(WARM, WARM))
                        .problem());
        assertEquals(
                Problem.WATER_FROZEN,
                assertThrows(InvalidInputException.class, () -> design.between(WARM, new Temperature(-5)))
                        .problem());
    }
}
