package org.snugsheet.office.sheets.designawrap;

import java.util.List;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.heat.VesselMaterial;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.insulation.FlatWrap;
import org.snugsheet.engine.insulation.Layers;
import org.snugsheet.engine.jar.Design;
import org.snugsheet.engine.jar.ExpectedCooling;
import org.snugsheet.engine.jar.Jar;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Mass;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.surface.Ambient;
import org.snugsheet.office.sheets.shared.ExampleThermometer;

/** The readings in {@link DesignAWrap}, which nobody took: the jars cool as their layers let them, see InventedReadings. */
final class ReadingsOfTheClass {

    private static final long SEED = 20_261_211;

    private static final double SECONDS_PER_MINUTE = 60;

    private ReadingsOfTheClass() {}

    static double[] bare(ExampleThermometer thermometer) {
        return of("bare jar", LayersTable.LAYERS.subList(0, 1), thermometer);
    }

    static double[] wrapped(ExampleThermometer thermometer) {
        return of("wrapped jar", LayersTable.LAYERS, thermometer);
    }

    private static double[] of(String name, List<LayersTable.Chosen> side, ExampleThermometer thermometer) {
        Temperature start = new Temperature(DesignAWrap.START);
        Temperature cold = new Temperature(DesignAWrap.COLD);
        Volume volume = Volume.of(DesignAWrap.VOLUME, Unit.MILLILITER);
        Design design = new Design(
                Jar.holding(volume, Length.of(DesignAWrap.RADIUS, Unit.MILLIMETER)),
                layers(side),
                flat(LayersTable.LID),
                flat(LayersTable.BASE),
                Ambient.parse(DesignAWrap.PLACE));
        WaterBody water = WaterBody.of(volume, start)
                .withVessel(VesselMaterial.GLASS.heatCapacity(Mass.of(DesignAWrap.GLASS, Unit.GRAM)));
        CoolingConstant first = ExpectedCooling.of(design, water, cold);
        Temperature halfway = new NewtonCooling(start, cold, first).after(DesignAWrap.LESSON / 2 * SECONDS_PER_MINUTE);
        WaterBody later = WaterBody.of(volume, halfway).withVessel(water.vessel());
        return thermometer.shown(thermometer
                .readings(DesignAWrap.COLD, DesignAWrap.START, SEED)
                .of(name, ExpectedCooling.of(design, later, cold), DesignAWrap.MINUTES));
    }

    private static Layers layers(List<LayersTable.Chosen> chosen) {
        Layers layers = Layers.NONE;
        for (LayersTable.Chosen each : chosen) {
            layers = layers.with(each.millimeters(), each.material());
        }
        return layers;
    }

    private static ThermalResistance flat(LayersTable.Chosen cover) {
        return FlatWrap.of(layers(List.of(cover))).resistance();
    }
}
