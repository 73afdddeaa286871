package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.sheet.NoConvergenceException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.InvalidInputException;
import org.snugsheet.engine.Problem;
import org.snugsheet.engine.insulation.Condition;
import org.snugsheet.engine.insulation.Figure;
import org.snugsheet.engine.insulation.FlatWrap;
import org.snugsheet.engine.insulation.Material;
import org.snugsheet.engine.insulation.Materials;
import org.snugsheet.engine.insulation.RoundWrap;
import org.snugsheet.engine.insulation.Thickness;
import org.snugsheet.engine.quantity.Conductivity;
import org.snugsheet.engine.quantity.Length;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Temperature;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.engine.surface.Ambient;
import org.snugsheet.engine.surface.Face;
import org.snugsheet.engine.surface.Orientation;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.words.DocumentLanguage;

/** The WRAP functions: those on layers and materials, and with them the whole service. */
public final class WrapFunctions extends WrapJars implements Wrap {

    private static final Length USUAL_HEIGHT = new Length(0.1);

    /** For the office, which makes one for a session. */
    public WrapFunctions() {}

    @Override
    public double layer(String[][] thickness, String[][] material, @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit wanted = Options.resistanceUnit(unit);
            return FlatWrap.of(DesignCells.layers(List.of(Cells.single(thickness)), List.of(Cells.single(material))))
                    .resistance()
                    .in(wanted);
        });
    }

    @Override
    public double flat(
            Object[][] thicknesses,
            Object[][] materials,
            @Nullable Object inside,
            @Nullable Object outside,
            @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> flatWrap(thicknesses, materials, inside, outside, unit)
                .resistance()
                .in(Options.resistanceUnit(unit)));
    }

    @Override
    public double round(
            String[][] radius,
            Object[][] thicknesses,
            Object[][] materials,
            @Nullable Object inside,
            @Nullable Object outside,
            @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit wanted = Options.resistanceUnit(unit);
            return new RoundWrap(
                            millimetres(Cells.number(radius)),
                            DesignCells.layers(Cells.line(thicknesses), Cells.line(materials)),
                            Options.resistance(inside, wanted),
                            Options.resistance(outside, wanted))
                    .resistance()
                    .in(wanted);
        });
    }

    @Override
    public double conductivity(
            String[][] material, @Nullable Object condition, @Nullable Object which, @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            String name = Cells.text(material);
            Material found = Options.words(condition)
                    .map(word -> Materials.find(name, Condition.parse(word)))
                    .orElseGet(() -> Materials.find(name));
            Conductivity chosen =
                    found.conductivity(Options.words(which).map(Figure::parse).orElse(Figure.TYPICAL));
            Unit wanted = Options.words(unit)
                    .filter(word -> !word.strip().equalsIgnoreCase("SI"))
                    .map(Unit::parse)
                    .orElse(Unit.WATT_PER_METRE_KELVIN);
            return wanted.from(chosen.wattsPerMetreKelvin(), Unit.WATT_PER_METRE_KELVIN);
        });
    }

    @Override
    public Object[][] materials(XPropertySet document) {
        return MaterialsTable.all(DocumentLanguage.of(document));
    }

    @Override
    public double usual(String[][] material) throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Material found = Materials.find(Cells.text(material));
            Length layer =
                    found.layer().orElseThrow(() -> InvalidInputException.of(Problem.NO_USUAL_LAYER, found.name()));
            return Unit.MILLIMETRE.from(layer.metres(), Unit.METRE);
        });
    }

    @Override
    public double thickness(String[][] target, String[][] material, @Nullable Object radius, @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            ThermalResistance wanted = ThermalResistance.of(Cells.number(target), Options.resistanceUnit(unit));
            Conductivity conductivity = conductivityOf(material);
            Optional<Double> round = Options.number(radius);
            Length thickness = round.isPresent()
                    ? Thickness.round(wanted, conductivity, millimetres(round.get()))
                    : Thickness.flat(wanted, conductivity);
            return Unit.MILLIMETRE.from(thickness.metres(), Unit.METRE);
        });
    }

    @Override
    public double turning(String[][] conductivity, String[][] coefficient)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> Unit.MILLIMETRE.from(
                Thickness.criticalRadius(conductivityOf(conductivity), Cells.number(coefficient))
                        .metres(),
                Unit.METRE));
    }

    @Override
    public double surface(
            String[][] place,
            String[][] surface,
            String[][] cold,
            @Nullable Object height,
            @Nullable Object facing,
            @Nullable Object emissivity,
            @Nullable Object unit,
            @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            Length size = Options.numberNotZero(height)
                    .map(WrapFunctions::millimetres)
                    .orElse(USUAL_HEIGHT);
            Face face = new Face(
                    Options.words(facing).map(Orientation::parse).orElse(Orientation.SIDE),
                    size,
                    size,
                    Options.numberNotZero(emissivity).orElse(Face.USUAL_EMISSIVITY));
            Temperature warm = Cells.temperature(surface, s);
            Temperature around = Cells.temperature(cold, s);
            return Ambient.parse(Cells.text(place))
                    .resistance(face, warm, around)
                    .in(Options.resistanceUnit(unit));
        });
    }

    static FlatWrap flatWrap(
            Object[][] thicknesses,
            Object[][] materials,
            @Nullable Object inside,
            @Nullable Object outside,
            @Nullable Object unit) {
        Unit wanted = Options.resistanceUnit(unit);
        return new FlatWrap(
                DesignCells.layers(Cells.line(thicknesses), Cells.line(materials)),
                Options.resistance(inside, wanted),
                Options.resistance(outside, wanted));
    }

    private static Conductivity conductivityOf(String[][] material) {
        Entry entry = Cells.single(material);
        return entry instanceof Entry.Text text
                ? Materials.conductivityOf(text.text())
                : new Conductivity(entry.asNumber(1));
    }

    private static Length millimetres(double value) {
        return Length.of(value, Unit.MILLIMETRE);
    }
}
