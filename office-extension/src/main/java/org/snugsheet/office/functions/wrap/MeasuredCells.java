package org.snugsheet.office.functions.wrap;

import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.functions.shared.Minutes;

/** The cells that WRAP functions on measured jars share. */
final class MeasuredCells {

    private static final double SQUARE_METRES_PER_SQUARE_CENTIMETRE = 1e-4;

    /** A typical jar in a lesson; from 15 °C to 45 °C its heat capacity changes by 0.6 % at most. */
    private static final Temperature MIDDLING = new Temperature(30);

    private MeasuredCells() {}

    static Estimate rate(String[][] perMinute, double error) {
        return new Estimate(
                Minutes.perSecond(Cells.number(perMinute)), Minutes.perSecond(error), Double.POSITIVE_INFINITY);
    }

    static double needed(@Nullable Object error) {
        return positive(Options.number(error).orElse(0.0));
    }

    static double positive(double error) {
        if (!(error > 0)) {
            throw InvalidInputException.of(Problem.ERRORS_NEEDED);
        }
        return error;
    }

    static HeatCapacity capacity(
            String[][] volume, @Nullable Object vessel, @Nullable Object warm, @Nullable Object scale) {
        Temperature mean = Options.temperature(warm, Options.scale(scale)).orElse(MIDDLING);
        return WaterBody.of(Volume.of(Cells.number(volume), Unit.MILLILITER), mean)
                .withVessel(Options.heatCapacity(vessel))
                .heatCapacity();
    }

    static double squareMetres(String[][] area) {
        double squareCentimeters = Cells.number(area);
        if (!(squareCentimeters > 0)) {
            throw InvalidInputException.of(Problem.NOT_POSITIVE, QuantityName.AREA, squareCentimeters);
        }
        return squareCentimeters * SQUARE_METRES_PER_SQUARE_CENTIMETRE;
    }

    static double wattsPerKelvin(@Nullable Object leak) {
        return Options.number(leak).orElse(0.0);
    }

    static double in(@Nullable Object unit, double squareMetreKelvinsPerWatt) {
        return Options.resistanceUnit(unit).from(squareMetreKelvinsPerWatt, Unit.SQUARE_METER_KELVIN_PER_WATT);
    }
}
