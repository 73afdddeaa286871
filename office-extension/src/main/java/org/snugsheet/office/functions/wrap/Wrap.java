package org.snugsheet.office.functions.wrap;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
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
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.LayerCells;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;
import org.snugsheet.office.words.DocumentLanguage;

/** WRAP: layers and R-values. */
@Family(
        service = "snugsheet.Wrap",
        texts = {Texts.class, WrapTexts.class},
        title = "Layers and R-values")
public interface Wrap extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Wrap.class);

    /** WRAP.LAYER. */
    @CellFunction(
            order = 0,
            name = "WRAP.LAYER",
            text = "The R-value of one flat layer: thickness divided by conductivity, in m²·K/W or the unit wanted.",
            formula = "R = d/λ",
            source = Sources.FLAT,
            example = "WRAP.LAYER(20;0.04)",
            answer = "0.5",
            refused = "WRAP.LAYER(-20;0.04)",
            because = "a thickness is more than zero")
    default double layer(
            @Argument(Texts.THICKNESS) String[][] thickness,
            @Argument(Texts.MATERIAL) String[][] material,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit wanted = Options.resistanceUnit(unit);
            return FlatWrap.of(LayerCells.layers(List.of(Cells.single(thickness)), List.of(Cells.single(material))))
                    .resistance()
                    .in(wanted);
        });
    }

    /** WRAP.FLAT. */
    @CellFunction(
            order = 1,
            name = "WRAP.FLAT",
            text =
                    "The R-value of flat layers one behind the other, with their surfaces if given, in m²·K/W or the unit wanted.",
            formula = "R = Rᵢ + Σ dⱼ/λⱼ + Rₒ",
            source = Sources.FLAT,
            example = "WRAP.FLAT({20;10};{0.04;0.05};0.13;0.04)",
            answer = "0.87",
            refused = "WRAP.FLAT({20;10};{0.04})",
            because = "a layer without its material")
    default double flat(
            @Argument(Texts.THICKNESSES) Object[][] thicknesses,
            @Argument(Texts.MATERIALS) Object[][] materials,
            @Argument(Texts.INSIDE) @Nullable Object inside,
            @Argument(Texts.OUTSIDE) @Nullable Object outside,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> LayerCells.flat(thicknesses, materials, inside, outside, unit)
                .resistance()
                .in(Options.resistanceUnit(unit)));
    }

    /** WRAP.ROUND. */
    @CellFunction(
            order = 2,
            name = "WRAP.ROUND",
            text =
                    "The R-value of layers round a cylinder, for each square meter of its innermost surface: less than the same layers lying flat, for the outside is larger.",
            formula = "R = Rᵢ + Σ r₀·ln(rⱼ/rⱼ₋₁)/λⱼ + Rₒ·r₀/rₙ",
            source = Sources.ROUND,
            example = "WRAP.ROUND(10;20;0.05)",
            answer = "0.219722458",
            refused = "WRAP.ROUND(0;20;0.05)",
            because = "a cylinder has a radius")
    default double round(
            @Argument(WrapTexts.RADIUS) String[][] radius,
            @Argument(Texts.THICKNESSES) Object[][] thicknesses,
            @Argument(Texts.MATERIALS) Object[][] materials,
            @Argument(Texts.INSIDE) @Nullable Object inside,
            @Argument(Texts.OUTSIDE) @Nullable Object outside,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Unit wanted = Options.resistanceUnit(unit);
            return new RoundWrap(
                            millimeters(Cells.number(radius)),
                            LayerCells.layers(thicknesses, materials),
                            Options.resistance(inside, wanted),
                            Options.resistance(outside, wanted))
                    .resistance()
                    .in(wanted);
        });
    }

    /** WRAP.CONDUCTIVITY. */
    @CellFunction(
            order = 3,
            name = "WRAP.CONDUCTIVITY",
            text =
                    "How easily heat goes through a material, in W/(m·K): the middle of what published tables say, or the lowest or highest of them.",
            formula = "λ = median(λ₁, …, λₘ)",
            source = "see WRAP.MATERIALS",
            example = "WRAP.CONDUCTIVITY(\"fleece\")",
            answer = "0.0543",
            refused = "WRAP.CONDUCTIVITY(\"fleese\")",
            because = "no such material is known: did you mean fleece?")
    default double conductivity(
            @Argument(WrapTexts.ONE_MATERIAL) String[][] material,
            @Argument(WrapTexts.CONDITION) @Nullable Object condition,
            @Argument(WrapTexts.WHICH) @Nullable Object which,
            @Argument(WrapTexts.TWICE) @Nullable Object unit)
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
                    .orElse(Unit.WATT_PER_METER_KELVIN);
            return wanted.from(chosen.wattsPerMeterKelvin(), Unit.WATT_PER_METER_KELVIN);
        });
    }

    /** WRAP.MATERIALS. */
    @CellFunction(
            order = 4,
            name = "WRAP.MATERIALS",
            text =
                    "A table of all materials known here, with lowest, typical and highest conductivity in W/(m·K), the usual thickness of a layer in millimeters, and the source. Glass wool, rock wool and loft insulation are for an adult, sealed in; old vermiculite for nobody.",
            formula = "min λᵢ ≤ median λᵢ ≤ max λᵢ",
            example = "WRAP.MATERIALS()",
            answer = "material")
    default Object[][] materials(XPropertySet document) {
        return MaterialsTable.all(DocumentLanguage.of(document));
    }

    /** WRAP.USUAL. */
    @CellFunction(
            order = 5,
            name = "WRAP.USUAL",
            text =
                    "The usual thickness of one layer of a material in millimeters, such as one sock or one sheet of newspaper. Measure yours where you can.",
            source = "common practice, no source",
            example = "WRAP.USUAL(\"wool\")",
            answer = "3",
            refused = "WRAP.USUAL(\"sand\")",
            because = "sand has no usual thickness")
    default double usual(@Argument(WrapTexts.ONE_MATERIAL) String[][] material)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Material found = Materials.find(Cells.text(material));
            Length layer =
                    found.layer().orElseThrow(() -> InvalidInputException.of(Problem.NO_USUAL_LAYER, found.name()));
            return Unit.MILLIMETER.from(layer.meters(), Unit.METER);
        });
    }

    /** WRAP.THICKNESS. */
    @CellFunction(
            order = 6,
            name = "WRAP.THICKNESS",
            text =
                    "How thick a layer must be for an R-value, in millimeters: flat, or round a cylinder if its radius is given.",
            formula = "d = R·λ; d = r·(e^(R·λ/r) − 1)",
            source = Sources.FLAT + "; " + Sources.ROUND,
            example = "WRAP.THICKNESS(0.5;0.04)",
            answer = "20",
            refused = "WRAP.THICKNESS(0;0.04)",
            because = "an R-value of nothing needs no layer")
    default double thickness(
            @Argument(WrapTexts.TARGET_R) String[][] target,
            @Argument(WrapTexts.ANY_MATERIAL) String[][] material,
            @Argument(WrapTexts.RADIUS_OPTION) @Nullable Object radius,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            ThermalResistance wanted = ThermalResistance.of(Cells.number(target), Options.resistanceUnit(unit));
            Conductivity conductivity = conductivityOf(material);
            Optional<Double> round = Options.number(radius);
            Length thickness = round.isPresent()
                    ? Thickness.round(wanted, conductivity, millimeters(round.get()))
                    : Thickness.flat(wanted, conductivity);
            return Unit.MILLIMETER.from(thickness.meters(), Unit.METER);
        });
    }

    /** WRAP.TURNING. */
    @CellFunction(
            order = 7,
            name = "WRAP.TURNING",
            text =
                    "The critical radius in millimeters: a cylinder thinner than this loses more heat when it is wrapped, until the wrap reaches this radius.",
            formula = "r = λ/h",
            source = Sources.TURNING,
            example = "WRAP.TURNING(0.17;3)",
            answer = "56.6666667",
            refused = "WRAP.TURNING(0.17;0)",
            because = "a surface that lets nothing out has no critical radius")
    default double turning(
            @Argument(WrapTexts.ANY_MATERIAL) String[][] conductivity,
            @Argument(WrapTexts.COEFFICIENT) String[][] coefficient)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> Unit.MILLIMETER.from(
                Thickness.criticalRadius(conductivityOf(conductivity), Cells.number(coefficient))
                        .meters(),
                Unit.METER));
    }

    /** WRAP.SURFACE. */
    @CellFunction(
            order = 8,
            name = "WRAP.SURFACE",
            text =
                    "The R-value of the film of air or water on a surface, from the temperatures on both of its sides: convection, and in air radiation too.",
            formula = "R = 1/(h + 4·ε·σ·T³); h = Nu·λ/L",
            source = Sources.SURFACE,
            example = "WRAP.SURFACE(\"still air\";35;5;100)",
            answer = "0.08916674",
            refused = "WRAP.SURFACE(\"treacle\";35;5;100)",
            because = "only air, wind, water and contact are known")
    default double surface(
            @Argument(WrapTexts.PLACE) String[][] place,
            @Argument(WrapTexts.SURFACE) String[][] surface,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.SIZE) @Nullable Object height,
            @Argument(WrapTexts.FACING) @Nullable Object facing,
            @Argument(WrapTexts.EMISSIVITY) @Nullable Object emissivity,
            @Argument(Texts.UNIT) @Nullable Object unit,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            Length size = Options.numberNotZero(height).map(Wrap::millimeters).orElseGet(() -> millimeters(100));
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

    private static Conductivity conductivityOf(String[][] material) {
        Entry entry = Cells.single(material);
        return entry instanceof Entry.Text text
                ? Materials.conductivityOf(text.text())
                : new Conductivity(entry.asNumber(1));
    }

    private static Length millimeters(double value) {
        return Length.of(value, Unit.MILLIMETER);
    }
}
