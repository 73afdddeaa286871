package org.snugsheet.engine.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.insulation.Condition;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.surface.Ambient;
import org.snugsheet.engine.surface.StillAir;
import org.snugsheet.engine.surface.StirredWater;

/** A jar that stands in a tub of water up to its neck, under the air of a room. */
class JarInATubTest {

    private static final Volume VOLUME = Volume.of(250, Unit.MILLILITER);
    private static final Jar JAR = Jar.holding(VOLUME, Length.of(35, Unit.MILLIMETER));
    private static final Temperature WARM = new Temperature(40);
    private static final Temperature TUB = new Temperature(5);
    private static final Temperature ROOM = new Temperature(21);
    private static final Layers DRY =
            Layers.NONE.with(3, "glass").with(10, "wool").with(0.05, "plastic bag");

    /**
     * A worked example of the theorem: 28 V behind 4 Ω, nothing behind 2 Ω and 7 V behind 1 Ω, side by side, make 8 V (T. R.
     * Kuphaldt, Lessons in Electric Circuits, volume I, chapter 10, “Millman’s theorem”).
     */
    @Test
    void itEndsWhereTheTextbookOfSourcesSideBySideSays() {
        HeatFlow flow =
                new HeatFlow(JAR, path(JAR.sideArea() * 4, 28), path(JAR.endArea() * 2, 0), path(JAR.endArea() * 1, 7));
        assertEquals(8, flow.end().celsius(), 1e-12);
        assertEquals(1 / 4.0 + 1 / 2.0 + 1, flow.conductance(), 1e-12);
        assertEquals(1 / 2.0 + 1, flow.ofEnds(), 1e-12);
        // All but the lid’s half siemens leads to the place, 1.25 of 1.75.
        assertEquals(1.25 / 1.75, flow.shareToThePlace(), 1e-12);
    }

    /** The three heat balances, solved by Dormand and Prince’s method (Apache Commons Math), against Newton’s law toward the end. */
    @ParameterizedTest
    @CsvSource({"40, 5, 21, 30", "40, 0, 25, 120", "20, 5, 21, 60", "8, 5, 21, 90"})
    void itCoolsByNewtonsLawTowardThatEnd(double warm, double tub, double room, double minutes) {
        HeatFlow flow = design(DRY, room).between(new Temperature((warm + 2 * tub) / 3 + 1), new Temperature(tub));
        double capacity =
                WaterBody.of(VOLUME, new Temperature(warm)).heatCapacity().joulesPerKelvin();
        double[] state = {warm};
        new DormandPrince853Integrator(1e-6, 60, 1e-11, 1e-11)
                .integrate(
                        new FirstOrderDifferentialEquations() {
                            @Override
                            public int getDimension() {
                                return 1;
                            }

                            @Override
                            public void computeDerivatives(double t, double[] now, double[] slope) {
                                slope[0] = -(leaves(now[0] - tub, JAR.sideArea(), flow.side())
                                                + leaves(now[0] - tub, JAR.endArea(), flow.base())
                                                + leaves(now[0] - room, JAR.endArea(), flow.lid()))
                                        / capacity;
                            }
                        },
                        0,
                        state,
                        minutes * 60,
                        state);
        NewtonCooling law = new NewtonCooling(
                new Temperature(warm), flow.end(), new CoolingConstant(flow.conductance() / capacity));
        assertEquals(state[0], law.after(minutes * 60).celsius(), 1e-7);
    }

    private static double leaves(double kelvins, double area, HeatPath path) {
        return kelvins * area / path.resistance().squareMeterKelvinsPerWatt();
    }

    /**
     * A disc on a medium, two ways (Incropera and DeWitt, Table 4.1): as a shape factor, case 10, {@code 2·D}, and as half of a thin
     * disc deep inside, case 13, {@code q* = 2·√2/π} over {@code √(A/4π)} with both faces in A.
     */
    @Test
    void itsBaseIsADiscOnWhatTheTubStandsOn() {
        double diameter = 0.07;
        double bothFaces = Math.PI * diameter * diameter / 2;
        double deepInside = 2 * Math.sqrt(2) / Math.PI * bothFaces / Math.sqrt(bothFaces / (4 * Math.PI));
        assertEquals(2 * diameter, deepInside / 2, 1e-12);
        HeatPath base = design(DRY, 21).between(WARM, TUB).base();
        double outside = base.resistances().get(2).squareMeterKelvinsPerWatt();
        // 0.13 W/(m·K): ISO 10456, softwood of 500 kg/m³, a row of conductivity.csv.
        assertEquals(0.13 * deepInside / 2, JAR.endArea() / outside, 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"still water", "stirred water"})
    void itsLidIsUnderTheRoomAndNotUnderWater(String place) {
        Design tub = new Design(JAR, DRY, ThermalResistance.NONE, ThermalResistance.NONE, Ambient.parse(place), ROOM);
        Design room = new Design(JAR, DRY, ThermalResistance.NONE, ThermalResistance.NONE, new StillAir());
        assertEquals(
                room.between(WARM, ROOM).lid().flux(),
                tub.between(WARM, TUB).lid().flux(),
                1e-9);
        HeatFlow flow = tub.between(WARM, TUB);
        assertTrue(flow.side().flux() * JAR.sideArea() > flow.watts() / 2, "most goes through the wrap");
        assertTrue(flow.end().compareTo(TUB) > 0 && flow.end().compareTo(ROOM) < 0);
        // Where the room is as warm as the water, nothing goes through the lid, and nothing is refused.
        assertEquals(
                0,
                new Design(JAR, DRY, tub.lid(), tub.base(), tub.place(), WARM)
                        .between(WARM, TUB)
                        .lid()
                        .flux(),
                0);
    }

    @Test
    void inAirEverythingLeadsToOneTemperature() {
        HeatFlow flow = new Design(JAR, DRY, ThermalResistance.NONE, ThermalResistance.NONE, new StillAir(), ROOM)
                .between(WARM, TUB);
        assertEquals(TUB, flow.end());
        assertEquals(flow.watts(), flow.conductance() * 35, 1e-9);
    }

    @Test
    void whatWaterCanEnterIsSoaked() {
        assertEquals(
                List.of(Condition.DRY, Condition.SOAKED),
                conditions(Layers.NONE.with(3, "glass").with(10, "wool")));
        assertEquals(List.of(Condition.DRY, Condition.DRY, Condition.DRY), conditions(DRY));
        assertEquals(
                List.of(Condition.DRY, Condition.DRY, Condition.SOAKED),
                conditions(
                        Layers.NONE.with(3, "fleece").with(0.05, "plastic bag").with(3, "felt")));
        Design bagged = design(DRY, 21);
        Design wool = design(Layers.NONE.with(3, "glass").with(10, "wool"), 21);
        assertFalse(bagged.isSoakedThere());
        assertTrue(wool.isSoakedThere());
        assertFalse(new Design(JAR, wool.side(), wool.lid(), wool.base(), new StillAir()).isSoakedThere());
        assertTrue(
                wool.between(WARM, TUB).watts() > 3 * bagged.between(WARM, TUB).watts());
        // The layers as they stand are wet already: nothing more happens to them.
        assertEquals(
                wool.between(WARM, TUB), wool.withSide(wool.sideWhereItStands()).between(WARM, TUB));
    }

    private static List<Condition> conditions(Layers layers) {
        return layers.inWater().fromInside().stream()
                .map(layer -> layer.material().map(Material::condition).orElseThrow())
                .toList();
    }

    /** The readings of such a jar, fitted toward its end, agree with its layers; the heat that passes the wrap is taken off. */
    @Test
    void whatItShowsIsWhatItsLayersGive() {
        Design bare = design(Layers.NONE.with(3, "glass"), 21);
        Design wrapped = design(DRY, 21);
        WaterBody water = WaterBody.of(VOLUME, WARM);
        Estimate of = new Estimate(ExpectedCooling.of(wrapped, water, TUB).perSecond(), 1e-7, 10);
        Estimate ofBare = new Estimate(ExpectedCooling.of(bare, water, TUB).perSecond(), 1e-7, 10);
        Agreement agreement = Agreement.of(
                MeasuredResistance.ofOneJar(of, water.heatCapacity(), JAR.area()), 0.95, wrapped, WARM, TUB);
        assertTrue(agreement.agrees(), agreement.toString());
        assertEquals(agreement.typical(), agreement.measured().value(), 1e-12);

        double ends = wrapped.between(WARM, TUB).ofEnds();
        double shown = MeasuredResistance.ofTheWrap(ofBare, of, water.heatCapacity(), JAR.sideArea(), ends)
                .value();
        double side = wrapped.between(WARM, TUB).side().resistance().squareMeterKelvinsPerWatt()
                - bare.between(WARM, TUB).side().resistance().squareMeterKelvinsPerWatt();
        // Lid and base of the two differ by a thousandth: the film inside is thinner where less is lost.
        assertEquals(side, shown, 0.01 * side);
    }

    /** A tub 2 K colder than typed: what the readings seem to show is exactly that, told in kelvins of the tub. */
    @Test
    void aColderTubIsToldByHowMuch() {
        Layers known = Layers.NONE.with(3, 1.0).with(10, 0.05);
        Design design = design(known, 21);
        HeatFlow flow = design.between(WARM, TUB);
        double share = flow.shareToThePlace();
        double watts = flow.conductance() * (WARM.minus(flow.end()).kelvins() + 2 * share);
        double seems = JAR.area() * WARM.minus(flow.end()).kelvins() / watts;
        Agreement agreement = Agreement.of(new Estimate(seems, 1e-5, 10), 0.95, design, WARM, TUB);
        assertEquals(2, agreement.reasons().getOrDefault(Reason.COLDER_SURROUNDINGS, Double.NaN), 1e-9);
    }

    private static Design design(Layers side, double room) {
        return new Design(
                JAR, side, ThermalResistance.NONE, ThermalResistance.NONE, new StirredWater(), new Temperature(room));
    }

    private static HeatPath path(double resistance, double outside) {
        return new HeatPath(
                0, List.of(new ThermalResistance(resistance)), List.of(new Temperature(10), new Temperature(outside)));
    }
}
