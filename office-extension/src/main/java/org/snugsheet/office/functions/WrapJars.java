package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.QuantityName;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.heat.WaterBody;
import org.snugsheet.engine.jar.Agreement;
import org.snugsheet.engine.jar.ExpectedCooling;
import org.snugsheet.engine.jar.MeasuredResistance;
import org.snugsheet.engine.quantity.HeatCapacity;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;

/** The WRAP functions on whole jars, designed or measured. */
abstract class WrapJars extends FamilyService implements WrapJar, WrapMeasured {

    private static final double SECONDS_PER_MINUTE = 60;

    private static final double SQUARE_METRES_PER_SQUARE_CENTIMETRE = 1e-4;

    /** A jar in a lesson is about this warm; from 15 °C to 45 °C its water holds the same to 0.6 %. */
    private static final Temperature MIDDLING = new Temperature(30);

    WrapJars() {
        super(WrapJar.class);
    }

    @Override
    public double vessel(
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object unit,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DesignCells.of(
                        volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale)
                .flow()
                .resistance()
                .in(Options.resistanceUnit(unit)));
    }

    @Override
    public double flow(
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DesignCells.of(
                        volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale)
                .flow()
                .watts());
    }

    @Override
    public Object[][] between(
            XPropertySet document,
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> BetweenTable.of(
                DesignCells.of(volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale),
                DocumentLanguage.of(document)));
    }

    @Override
    public double face(
            String[][] number,
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale);
            // The first of the faces is the water itself, the last the place.
            List<Temperature> faces = cells.flow().side().faces();
            double wanted = Cells.number(number);
            int layers = faces.size() - 3;
            if (wanted != Math.rint(wanted) || wanted < 0 || wanted > layers) {
                throw InvalidInputException.of(Problem.NO_SUCH_LAYER, wanted, layers);
            }
            return faces.get((int) wanted + 1).in(cells.scale());
        });
    }

    @Override
    public double expect(
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object vessel,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, vessel, scale);
            return ExpectedCooling.of(cells.design(), cells.water(), cells.surroundings())
                    .perMinute();
        });
    }

    @Override
    public double end(
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale);
            return cells.flow().end().in(cells.scale());
        });
    }

    @Override
    public double leak(
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DesignCells.of(
                        volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, null, scale)
                .flow()
                .ofEnds());
    }

    @Override
    public double measured(
            String[][] bareRate,
            String[][] wrappedRate,
            String[][] volume,
            String[][] area,
            @Nullable Object bareError,
            @Nullable Object wrappedError,
            @Nullable Object vessel,
            @Nullable Object leak,
            @Nullable Object unit,
            @Nullable Object warm,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate bare = rate(bareRate, Options.number(bareError).orElse(0.0));
            Estimate wrapped = rate(wrappedRate, Options.number(wrappedError).orElse(0.0));
            Estimate wrap = MeasuredResistance.ofTheWrap(
                    bare, wrapped, capacity(volume, vessel, warm, scale), squareMetres(area), wattsPerKelvin(leak));
            return in(unit, wrap.value());
        });
    }

    @Override
    public double measuredError(
            String[][] bareRate,
            String[][] wrappedRate,
            String[][] volume,
            String[][] area,
            @Nullable Object bareError,
            @Nullable Object wrappedError,
            @Nullable Object vessel,
            @Nullable Object leak,
            @Nullable Object unit,
            @Nullable Object warm,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate bare = rate(bareRate, needed(bareError));
            Estimate wrapped = rate(wrappedRate, needed(wrappedError));
            Estimate wrap = MeasuredResistance.ofTheWrap(
                    bare, wrapped, capacity(volume, vessel, warm, scale), squareMetres(area), wattsPerKelvin(leak));
            return in(unit, wrap.standardError());
        });
    }

    @Override
    public double oneJar(
            String[][] rate,
            String[][] volume,
            String[][] area,
            @Nullable Object rest,
            @Nullable Object error,
            @Nullable Object vessel,
            @Nullable Object leak,
            @Nullable Object unit,
            @Nullable Object warm,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate k = rate(rate, Options.number(error).orElse(0.0));
            Estimate all = MeasuredResistance.ofOneJar(
                    k, capacity(volume, vessel, warm, scale), squareMetres(area), wattsPerKelvin(leak));
            ThermalResistance known = Options.resistance(rest, Options.resistanceUnit(unit));
            return in(unit, all.value() - known.squareMetreKelvinsPerWatt());
        });
    }

    @Override
    public double oneJarError(
            String[][] rate,
            String[][] volume,
            String[][] area,
            @Nullable Object rest,
            @Nullable Object error,
            @Nullable Object vessel,
            @Nullable Object leak,
            @Nullable Object unit,
            @Nullable Object warm,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate k = rate(rate, needed(error));
            return in(
                    unit,
                    MeasuredResistance.ofOneJar(
                                    k, capacity(volume, vessel, warm, scale), squareMetres(area), wattsPerKelvin(leak))
                            .standardError());
        });
    }

    @Override
    public String verdict(
            XPropertySet document,
            String[][] rate,
            String[][] error,
            String[][] volume,
            String[][] radius,
            String[][] thicknesses,
            String[][] materials,
            String[][] warm,
            String[][] cold,
            @Nullable Object where,
            @Nullable Object lid,
            @Nullable Object base,
            @Nullable Object room,
            @Nullable Object vessel,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, vessel, scale);
            Estimate measured = MeasuredResistance.ofOneJar(
                    rate(rate, positive(Cells.number(error))),
                    cells.water().heatCapacity(),
                    cells.design().jar().area());
            Agreement agreement = Agreement.of(
                    measured,
                    ReportTable.CONFIDENCE,
                    cells.design(),
                    cells.water().temperature(),
                    cells.surroundings());
            return AgreementWords.of(agreement, cells, DocumentLanguage.of(document));
        });
    }

    private static Estimate rate(String[][] perMinute, double error) {
        return new Estimate(
                Cells.number(perMinute) / SECONDS_PER_MINUTE, error / SECONDS_PER_MINUTE, Double.POSITIVE_INFINITY);
    }

    private static double needed(@Nullable Object error) {
        return positive(Options.number(error).orElse(0.0));
    }

    private static double positive(double error) {
        if (!(error > 0)) {
            throw InvalidInputException.of(Problem.ERRORS_NEEDED);
        }
        return error;
    }

    private static HeatCapacity capacity(
            String[][] volume, @Nullable Object vessel, @Nullable Object warm, @Nullable Object scale) {
        Temperature mean = Options.temperature(warm, Options.scale(scale)).orElse(MIDDLING);
        return WaterBody.of(Volume.of(Cells.number(volume), Unit.MILLILITRE), mean)
                .withVessel(Options.heatCapacity(vessel))
                .heatCapacity();
    }

    private static double squareMetres(String[][] area) {
        double squareCentimetres = Cells.number(area);
        if (!(squareCentimetres > 0)) {
            throw InvalidInputException.of(Problem.NOT_POSITIVE, QuantityName.AREA, squareCentimetres);
        }
        return squareCentimetres * SQUARE_METRES_PER_SQUARE_CENTIMETRE;
    }

    private static double wattsPerKelvin(@Nullable Object leak) {
        return Options.number(leak).orElse(0.0);
    }

    private static double in(@Nullable Object unit, double squareMetreKelvinsPerWatt) {
        return Options.resistanceUnit(unit).from(squareMetreKelvinsPerWatt, Unit.SQUARE_METRE_KELVIN_PER_WATT);
    }
}
