package org.snugsheet.engine.insulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.snugsheet.engine.PublishedTable;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;

/**
 * Walls and pipes of textbooks and handbooks. Answers, tolerances and sources stand in {@code worked-examples.csv} beside this
 * test; the inputs are typed in here from its column of that name.
 */
class WorkedExamplesTest {

    private final Map<String, Double> computed = new HashMap<>();

    @TestFactory
    List<DynamicTest> wallsAndPipesOfTheTextbooks() {
        computeAll();
        List<DynamicTest> tests = new ArrayList<>();
        for (Map<String, String> row : PublishedTable.rows(WorkedExamplesTest.class, "worked-examples.csv")) {
            String name = row.get("id") + ", " + row.get("quantity");
            double answer = Double.parseDouble(row.getOrDefault("answer", ""));
            double tolerance = Double.parseDouble(row.getOrDefault("tolerance", ""));
            tests.add(DynamicTest.dynamicTest(name, () -> {
                Double ours = computed.get(name);
                assertNotNull(ours, "no sum for this row");
                assertEquals(answer, ours, tolerance);
            }));
        }
        assertEquals(computed.size(), tests.size(), "a sum for each row and a row for each sum");
        return tests;
    }

    private void computeAll() {
        kern();
        chudley();
        school();
        theodore();
        cengel();
        geankoplis();
        holman();
        incropera();
        wire();
        fibrePipe();
        theodorePipe();
    }

    private void kern() {
        Layer first = kernLayer(8, 0.68);
        Layer second = kernLayer(4, 0.15);
        Layer third = kernLayer(6, 0.40);
        Layer gap = kernLayer(0.25, 0.0265);
        Temperature warm = Temperature.of(1600, Scale.FAHRENHEIT);
        Temperature cold = Temperature.of(125, Scale.FAHRENHEIT);

        FlatWrap wall = FlatWrap.of(new Layers(List.of(first, second, third)));
        for (int i = 0; i < 3; i++) {
            put("KERN-2.2, R layer " + (i + 1), wall.resistances().get(i).in(Unit.US_R_VALUE));
        }
        put("KERN-2.2, R total", wall.resistance().in(Unit.US_R_VALUE));
        put("KERN-2.2, heat flow", btuPerHourSquareFoot(wall.heatFlux(warm, cold)));
        put("KERN-2.2, interface 1-2", wall.faces(warm, cold).get(1).in(Scale.FAHRENHEIT));
        // The book rounds its heat flow up to 332 before this step, which alone makes two degrees: so does this sum.
        double twoLayers =
                wall.resistances().get(0).plus(wall.resistances().get(1)).in(Unit.US_R_VALUE);
        put("KERN-2.2, interface 2-3", 1600 - 332 * twoLayers);

        FlatWrap withGap = FlatWrap.of(new Layers(List.of(first, gap, second, third)));
        put("KERN-2.3, R air gap", withGap.resistances().get(1).in(Unit.US_R_VALUE));
        put("KERN-2.3, R total", withGap.resistance().in(Unit.US_R_VALUE));
        put("KERN-2.3, heat flow", btuPerHourSquareFoot(withGap.heatFlux(warm, cold)));
    }

    private static Layer kernLayer(double inches, double btuPerHourFootFahrenheit) {
        return new Layer(Length.of(inches, Unit.INCH), Conductivity.of(btuPerHourFootFahrenheit, Unit.BTU_FOOT));
    }

    private static double btuPerHourSquareFoot(double wattsPerSquareMeter) {
        double squareMeters = Unit.SQUARE_METER.from(1, Unit.SQUARE_FOOT);
        return Unit.BTU_PER_HOUR.from(wattsPerSquareMeter * squareMeters, Unit.WATT);
    }

    private void chudley() {
        Layers layers = Layers.NONE.with(13, 0.50).with(215, 0.84);
        FlatWrap wall = new FlatWrap(layers, new ThermalResistance(0.123), new ThermalResistance(0.055));
        put("CHUDLEY-468, R layer 1", wall.resistances().get(1).squareMeterKelvinsPerWatt());
        put("CHUDLEY-468, R layer 2", wall.resistances().get(0).squareMeterKelvinsPerWatt());
        put("CHUDLEY-468, U", wall.transmittance());
    }

    private void school() {
        FlatWrap wall = FlatWrap.of(Layers.NONE.with(220, 0.6));
        put("SCHOOL-BRICK, R", wall.resistance().squareMeterKelvinsPerWatt());
        put("SCHOOL-BRICK, U", wall.transmittance());
    }

    private void theodore() {
        double area = 2.5 * 4;
        ThermalResistance air = new ThermalResistance(1 / 11.0);
        FlatWrap bare = FlatWrap.of(List.of(), ThermalResistance.NONE, air);
        FlatWrap insulated = new FlatWrap(Layers.NONE.with(7.62, 0.04), ThermalResistance.NONE, air);
        Temperature surface = Temperature.of(24, Scale.CELSIUS);
        Temperature winter = Temperature.of(-15, Scale.CELSIUS);
        put("THEODORE-19.1, heat flow bare", area * bare.heatFlux(surface, winter));
        put("THEODORE-19.1, heat flow insulated", area * insulated.heatFlux(surface, winter));
    }

    private void cengel() {
        double wallArea = 3 * 5;
        FlatWrap wall = FlatWrap.of(Layers.NONE.with(300, 0.9));
        put("CENGEL-3.1, R", wall.resistance().squareMeterKelvinsPerWatt() / wallArea);
        put(
                "CENGEL-3.1, heat flow",
                wallArea * wall.heatFlux(Temperature.of(16, Scale.CELSIUS), Temperature.of(2, Scale.CELSIUS)));

        double paneArea = 0.8 * 1.5;
        FlatWrap pane = new FlatWrap(
                Layers.NONE.with(8, 0.78), new ThermalResistance(1 / 10.0), new ThermalResistance(1 / 40.0));
        Temperature room = Temperature.of(20, Scale.CELSIUS);
        Temperature winter = Temperature.of(-10, Scale.CELSIUS);
        put("CENGEL-3.2, R total", pane.resistance().squareMeterKelvinsPerWatt() / paneArea);
        put("CENGEL-3.2, heat flow", paneArea * pane.heatFlux(room, winter));
        put("CENGEL-3.2, inner glass surface", pane.faces(room, winter).get(0).in(Scale.CELSIUS));
    }

    private void geankoplis() {
        FlatWrap board = FlatWrap.of(Layers.NONE.with(25.4, 0.048));
        put(
                "GEANKOPLIS-4.1-1, heat flux",
                board.heatFlux(Temperature.of(352.7, Scale.KELVIN), Temperature.of(297.1, Scale.KELVIN)));
    }

    private void holman() {
        Length radius = Length.of(2.5, Unit.CENTIMETER);
        Conductivity insulation = new Conductivity(0.17);
        Length critical = Thickness.criticalRadius(insulation, 3.0);
        put("HOLMAN-2.6, critical radius", Unit.CENTIMETER.from(critical.meters(), Unit.METER));
        put("HOLMAN-2.6, heat flow at critical radius", lossPerMeter(radius, insulation, critical, 3.0, 180));
        put("HOLMAN-2.6, heat flow bare", lossPerMeter(radius, insulation, radius, 3.0, 180));
    }

    private void incropera() {
        Length critical = Thickness.criticalRadius(new Conductivity(0.055), 5);
        put("INCROPERA-3.5, critical radius", critical.meters());
        put("INCROPERA-3.5, thickness at critical radius", 1000 * critical.meters() - 5);
    }

    private void wire() {
        Length radius = Length.of(5, Unit.MILLIMETER);
        Conductivity rubber = new Conductivity(0.155);
        Length critical = Thickness.criticalRadius(rubber, 8.5);
        put("RUBBER-WIRE, critical radius", 1000 * critical.meters());
        put("RUBBER-WIRE, thickness to critical radius", 1000 * critical.meters() - 5);
        put("RUBBER-WIRE, heat flow at critical radius", lossPerMeter(radius, rubber, critical, 8.5, 45));
    }

    private void fibrePipe() {
        double nearlyNoResistance = 1e9;
        RoundWrap pipe = new RoundWrap(
                Length.of(10, Unit.MILLIMETER),
                Layers.NONE.with(2, nearlyNoResistance).with(20, 0.05),
                new ThermalResistance(1 / 10.0),
                new ThermalResistance(1 / 5.0));
        put("FIBRE-PIPE, U on inside diameter", 1 / pipe.resistance().squareMeterKelvinsPerWatt());
    }

    private void theodorePipe() {
        RoundWrap pipe = RoundWrap.of(
                Length.of(1.5, Unit.INCH),
                new Layers(List.of(
                        new Layer(Length.of(0.5, Unit.INCH), Conductivity.of(0.120, Unit.BTU_FOOT)),
                        new Layer(Length.of(2, Unit.INCH), Conductivity.of(0.0317, Unit.BTU_FOOT)))));
        double wattsPerMeter = pipe.heatFlowPerMeter(400 / 1.8);
        put(
                "THEODORE-7.6, heat flow",
                Unit.BTU_PER_HOUR.from(wattsPerMeter * Unit.METER.from(1, Unit.FOOT), Unit.WATT));
    }

    private static double lossPerMeter(
            Length radius, Conductivity insulation, Length outer, double coefficient, double kelvins) {
        double thickness = outer.meters() - radius.meters();
        Layers layers = thickness > 0 ? Layers.NONE.with(new Layer(new Length(thickness), insulation)) : Layers.NONE;
        return new RoundWrap(radius, layers, ThermalResistance.NONE, new ThermalResistance(1 / coefficient))
                .heatFlowPerMeter(kelvins);
    }

    private void put(String name, double value) {
        computed.put(name, value);
    }
}
