package org.snugsheet.office.functions;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;

/** WRAP: layers and R-values. */
@Family(
        service = "snugsheet.Wrap",
        implementation = WrapFunctions.class,
        texts = {Texts.class, WrapTexts.class},
        title = "Layers and R-values")
public interface Wrap extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Wrap.class);

    /** WRAP.LAYER: see its declaration. */
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
    double layer(
            @Argument(Texts.THICKNESS) String[][] thickness,
            @Argument(Texts.MATERIAL) String[][] material,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException;

    /** WRAP.FLAT: see its declaration. */
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
    double flat(
            @Argument(Texts.THICKNESSES) Object[][] thicknesses,
            @Argument(Texts.MATERIALS) Object[][] materials,
            @Argument(Texts.INSIDE) @Nullable Object inside,
            @Argument(Texts.OUTSIDE) @Nullable Object outside,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException;

    /** WRAP.ROUND: see its declaration. */
    @CellFunction(
            order = 2,
            name = "WRAP.ROUND",
            text =
                    "The R-value of layers round a cylinder, for each square metre of its innermost surface: less than the same layers lying flat, for the outside is larger.",
            formula = "R = Rᵢ + Σ r₀·ln(rⱼ/rⱼ₋₁)/λⱼ + Rₒ·r₀/rₙ",
            source = Sources.ROUND,
            example = "WRAP.ROUND(10;20;0.05)",
            answer = "0.219722458",
            refused = "WRAP.ROUND(0;20;0.05)",
            because = "a cylinder has a radius")
    double round(
            @Argument(WrapTexts.RADIUS) String[][] radius,
            @Argument(Texts.THICKNESSES) Object[][] thicknesses,
            @Argument(Texts.MATERIALS) Object[][] materials,
            @Argument(Texts.INSIDE) @Nullable Object inside,
            @Argument(Texts.OUTSIDE) @Nullable Object outside,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException;

    /** WRAP.CONDUCTIVITY: see its declaration. */
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
    double conductivity(
            @Argument(WrapTexts.ONE_MATERIAL) String[][] material,
            @Argument(WrapTexts.CONDITION) @Nullable Object condition,
            @Argument(WrapTexts.WHICH) @Nullable Object which,
            @Argument(WrapTexts.TWICE) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException;

    /** WRAP.MATERIALS: see its declaration. */
    @CellFunction(
            order = 4,
            name = "WRAP.MATERIALS",
            text =
                    "A table of all materials known here, with lowest, typical and highest conductivity in W/(m·K), the usual thickness of a layer in millimetres, and the source. Glass wool, rock wool and loft insulation are for an adult, sealed in; old vermiculite for nobody.",
            formula = "min λᵢ ≤ median λᵢ ≤ max λᵢ",
            example = "WRAP.MATERIALS()",
            answer = "material")
    Object[][] materials(XPropertySet document);

    /** WRAP.USUAL: see its declaration. */
    @CellFunction(
            order = 5,
            name = "WRAP.USUAL",
            text =
                    "The usual thickness of one layer of a material in millimetres, such as one sock or one sheet of newspaper. Measure yours where you can.",
            source = "common practice, no source",
            example = "WRAP.USUAL(\"wool\")",
            answer = "3",
            refused = "WRAP.USUAL(\"sand\")",
            because = "sand has no usual thickness")
    double usual(@Argument(WrapTexts.ONE_MATERIAL) String[][] material)
            throws IllegalArgumentException, NoConvergenceException;

    /** WRAP.THICKNESS: see its declaration. */
    @CellFunction(
            order = 6,
            name = "WRAP.THICKNESS",
            text =
                    "How thick a layer must be for an R-value, in millimetres: flat, or round a cylinder if its radius is given.",
            formula = "d = R·λ; d = r·(e^(R·λ/r) − 1)",
            source = Sources.FLAT + "; " + Sources.ROUND,
            example = "WRAP.THICKNESS(0.5;0.04)",
            answer = "20",
            refused = "WRAP.THICKNESS(0;0.04)",
            because = "an R-value of nothing needs no layer")
    double thickness(
            @Argument(WrapTexts.TARGET_R) String[][] target,
            @Argument(WrapTexts.ANY_MATERIAL) String[][] material,
            @Argument(WrapTexts.RADIUS_OPTION) @Nullable Object radius,
            @Argument(Texts.UNIT) @Nullable Object unit)
            throws IllegalArgumentException, NoConvergenceException;

    /** WRAP.TURNING: see its declaration. */
    @CellFunction(
            order = 7,
            name = "WRAP.TURNING",
            text =
                    "The critical radius in millimetres: a cylinder thinner than this loses more heat when it is wrapped, until the wrap reaches this radius.",
            formula = "r = λ/h",
            source = Sources.TURNING,
            example = "WRAP.TURNING(0.17;3)",
            answer = "56.6666667",
            refused = "WRAP.TURNING(0.17;0)",
            because = "a surface that lets nothing out has no critical radius")
    double turning(
            @Argument(WrapTexts.ANY_MATERIAL) String[][] conductivity,
            @Argument(WrapTexts.COEFFICIENT) String[][] coefficient)
            throws IllegalArgumentException, NoConvergenceException;

    /** WRAP.SURFACE: see its declaration. */
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
    double surface(
            @Argument(WrapTexts.PLACE) String[][] place,
            @Argument(WrapTexts.SURFACE) String[][] surface,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.SIZE) @Nullable Object height,
            @Argument(WrapTexts.FACING) @Nullable Object facing,
            @Argument(WrapTexts.EMISSIVITY) @Nullable Object emissivity,
            @Argument(Texts.UNIT) @Nullable Object unit,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;
}
