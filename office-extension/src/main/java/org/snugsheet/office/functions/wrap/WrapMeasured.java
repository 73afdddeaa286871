package org.snugsheet.office.functions.wrap;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.comparison.Estimate;
import org.snugsheet.engine.comparison.Verdict;
import org.snugsheet.engine.jar.Agreement;
import org.snugsheet.engine.jar.MeasuredResistance;
import org.snugsheet.engine.quantity.ThermalResistance;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;
import org.snugsheet.office.words.DocumentLanguage;

/** WRAP: what the readings show of a wrap. */
@Family(
        service = "snugsheet.Wrap",
        texts = {Texts.class, WrapTexts.class},
        title = "R-values from readings")
public interface WrapMeasured extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(WrapMeasured.class);

    /** WRAP.MEASURED. */
    @CellFunction(
            order = 0,
            name = "WRAP.MEASURED",
            text =
                    "The R-value of a wrap that the readings show, from the cooling constants of a bare and a wrapped jar that are otherwise alike.",
            formula = "R = A/(k₂·C − L) − A/(k₁·C − L)",
            source = Sources.LUMPED,
            example = "WRAP.MEASURED(0.04;0.02;250;220)",
            answer = "0.0317",
            refused = "WRAP.MEASURED(0.04;0;250;220)",
            because = "a jar that does not cool shows no R-value")
    default double measured(
            @Argument(WrapTexts.BARE_RATE) String[][] bareRate,
            @Argument(WrapTexts.WRAPPED_RATE) String[][] wrappedRate,
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(WrapTexts.AREA) String[][] area,
            @Argument(WrapTexts.BARE_ERROR) @Nullable Object bareError,
            @Argument(WrapTexts.WRAPPED_ERROR) @Nullable Object wrappedError,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(WrapTexts.LEAK) @Nullable Object leak,
            @Argument(Texts.UNIT) @Nullable Object unit,
            @Argument(WrapTexts.MEAN_WARM) @Nullable Object warm,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate bare =
                    MeasuredCells.rate(bareRate, Options.number(bareError).orElse(0.0));
            Estimate wrapped =
                    MeasuredCells.rate(wrappedRate, Options.number(wrappedError).orElse(0.0));
            Estimate wrap = MeasuredResistance.ofTheWrap(
                    bare,
                    wrapped,
                    MeasuredCells.capacity(volume, vessel, warm, scale),
                    MeasuredCells.squareMetres(area),
                    MeasuredCells.wattsPerKelvin(leak));
            return MeasuredCells.in(unit, wrap.value());
        });
    }

    /** WRAP.MEASURED.ERROR. */
    @CellFunction(
            order = 1,
            name = "WRAP.MEASURED.ERROR",
            text = "The standard error of WRAP.MEASURED, from the errors of both cooling constants.",
            formula = "s(R) = A·C·√((s₁/(k₁·C − L)²)² + (s₂/(k₂·C − L)²)²)",
            source = Sources.ERRORS,
            example = "WRAP.MEASURED.ERROR(0.04;0.02;250;220;0.002;0.001)",
            answer = "0.0035",
            refused = "WRAP.MEASURED.ERROR(0.04;0.02;250;220)",
            because = "the errors of the cooling constants are not given")
    default double measuredError(
            @Argument(WrapTexts.BARE_RATE) String[][] bareRate,
            @Argument(WrapTexts.WRAPPED_RATE) String[][] wrappedRate,
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(WrapTexts.AREA) String[][] area,
            @Argument(WrapTexts.BARE_ERROR) @Nullable Object bareError,
            @Argument(WrapTexts.WRAPPED_ERROR) @Nullable Object wrappedError,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(WrapTexts.LEAK) @Nullable Object leak,
            @Argument(Texts.UNIT) @Nullable Object unit,
            @Argument(WrapTexts.MEAN_WARM) @Nullable Object warm,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate bare = MeasuredCells.rate(bareRate, MeasuredCells.needed(bareError));
            Estimate wrapped = MeasuredCells.rate(wrappedRate, MeasuredCells.needed(wrappedError));
            Estimate wrap = MeasuredResistance.ofTheWrap(
                    bare,
                    wrapped,
                    MeasuredCells.capacity(volume, vessel, warm, scale),
                    MeasuredCells.squareMetres(area),
                    MeasuredCells.wattsPerKelvin(leak));
            return MeasuredCells.in(unit, wrap.standardError());
        });
    }

    /** WRAP.ONEJAR. */
    @CellFunction(
            order = 2,
            name = "WRAP.ONEJAR",
            text =
                    "The R-value that one jar’s cooling constant shows: everything between the water and its surroundings, less what is known not to be the wrap.",
            formula = "R = A/(k·C − L) − R₀",
            source = Sources.LUMPED,
            example = "WRAP.ONEJAR(0.02;250;220)",
            answer = "0.0634",
            refused = "WRAP.ONEJAR(0;250;220)",
            because = "a jar that does not cool shows no R-value")
    default double oneJar(
            @Argument(WrapTexts.WRAPPED_RATE) String[][] rate,
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(WrapTexts.AREA) String[][] area,
            @Argument(WrapTexts.REST) @Nullable Object rest,
            @Argument(WrapTexts.ERROR) @Nullable Object error,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(WrapTexts.LEAK) @Nullable Object leak,
            @Argument(Texts.UNIT) @Nullable Object unit,
            @Argument(WrapTexts.MEAN_WARM) @Nullable Object warm,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate k = MeasuredCells.rate(rate, Options.number(error).orElse(0.0));
            Estimate all = MeasuredResistance.ofOneJar(
                    k,
                    MeasuredCells.capacity(volume, vessel, warm, scale),
                    MeasuredCells.squareMetres(area),
                    MeasuredCells.wattsPerKelvin(leak));
            ThermalResistance known = Options.resistance(rest, Options.resistanceUnit(unit));
            return MeasuredCells.in(unit, all.value() - known.squareMeterKelvinsPerWatt());
        });
    }

    /** WRAP.ONEJAR.ERROR. */
    @CellFunction(
            order = 3,
            name = "WRAP.ONEJAR.ERROR",
            text = "The standard error of WRAP.ONEJAR, from the error of the cooling constant.",
            formula = "s(R) = A·C·s(k)/(k·C − L)²",
            source = Sources.ERRORS,
            example = "WRAP.ONEJAR.ERROR(0.02;250;220;0;0.001)",
            answer = "0.00317",
            refused = "WRAP.ONEJAR.ERROR(0.02;250;220)",
            because = "the error of the cooling constant is not given")
    default double oneJarError(
            @Argument(WrapTexts.WRAPPED_RATE) String[][] rate,
            @Argument(Texts.VOLUME) String[][] volume,
            @Argument(WrapTexts.AREA) String[][] area,
            @Argument(WrapTexts.REST) @Nullable Object rest,
            @Argument(WrapTexts.ERROR) @Nullable Object error,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(WrapTexts.LEAK) @Nullable Object leak,
            @Argument(Texts.UNIT) @Nullable Object unit,
            @Argument(WrapTexts.MEAN_WARM) @Nullable Object warm,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Estimate k = MeasuredCells.rate(rate, MeasuredCells.needed(error));
            return MeasuredCells.in(
                    unit,
                    MeasuredResistance.ofOneJar(
                                    k,
                                    MeasuredCells.capacity(volume, vessel, warm, scale),
                                    MeasuredCells.squareMetres(area),
                                    MeasuredCells.wattsPerKelvin(leak))
                            .standardError());
        });
    }

    /** WRAP.VERDICT. */
    @CellFunction(
            order = 4,
            name = "WRAP.VERDICT",
            text =
                    "In one or two sentences whether a jar cooled as its layers should let it, and if not, which of the usual reasons could be the cause.",
            formula = "R = A/(k·C)",
            source = Sources.LUMPED + "; " + Sources.ROUND + "; " + "see WRAP.MATERIALS",
            example = "WRAP.VERDICT(0.01;0.0005;250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            answer =
                    "The readings show R 0.127 m²·K/W, less than the 0.143 to 0.168 that the layers should give. Could be a wet wrap: soaked through, it would give 0.084. Could be a squashed wrap: at half its thickness it would give 0.121. Could be surroundings 4.4 °C colder than typed.",
            refused = "WRAP.VERDICT(0.01;0;250;35;{3;10};{\"glass\";\"wool\"};40;5)",
            because = "the error of the cooling constant is not given")
    default String verdict(
            XPropertySet document,
            @Argument(WrapTexts.WRAPPED_RATE) String[][] rate,
            @Argument(WrapTexts.RATE_ERROR) String[][] error,
            @Argument(WrapTexts.VOLUME_HELD) String[][] volume,
            @Argument(WrapTexts.JAR_RADIUS) String[][] radius,
            @Argument(WrapTexts.LIST_THICKNESSES) String[][] thicknesses,
            @Argument(WrapTexts.LIST_MATERIALS) String[][] materials,
            @Argument(WrapTexts.WARM) String[][] warm,
            @Argument(WrapTexts.COLD) String[][] cold,
            @Argument(WrapTexts.WHERE) @Nullable Object where,
            @Argument(WrapTexts.LID) @Nullable Object lid,
            @Argument(WrapTexts.BASE) @Nullable Object base,
            @Argument(WrapTexts.ROOM) @Nullable Object room,
            @Argument(Texts.VESSEL) @Nullable Object vessel,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            DesignCells cells = DesignCells.of(
                    volume, radius, thicknesses, materials, warm, cold, where, lid, base, room, vessel, scale);
            Estimate measured = MeasuredResistance.ofOneJar(
                    MeasuredCells.rate(rate, MeasuredCells.positive(Cells.number(error))),
                    cells.water().heatCapacity(),
                    cells.design().jar().area());
            Agreement agreement = Agreement.of(
                    measured, Verdict.CONFIDENCE, cells.design(), cells.water().temperature(), cells.surroundings());
            return AgreementWords.of(agreement, cells, DocumentLanguage.of(document));
        });
    }
}
