package org.snugsheet.office.functions.cooling;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.JarCells;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;
import org.snugsheet.office.words.DocumentLanguage;

/** COOL: what the readings of one jar tell. */
@Family(
        service = "snugsheet.Cool",
        texts = {Texts.class},
        title = "Cooling curves")
public interface Cool extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Cool.class);

    /** COOL.RATE. */
    @CellFunction(
            order = 0,
            name = "COOL.RATE",
            text =
                    "The cooling constant per minute: the share of the remaining difference to the surroundings that is lost each minute.",
            formula = "T(t) = Tₛ + A·e^(−k·t); Σ(Tᵢ − T(tᵢ))² → min",
            source = Sources.NEWTON + "; " + Sources.FIT,
            example = "COOL.RATE({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "0.04021942",
            refused = "COOL.RATE({0;5};{38;32};3)",
            because = "two readings cannot show how well a curve fits")
    default double rate(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                JarCells.fit(times, temps, surroundings, mark, scale).constant().perMinute());
    }

    /** COOL.RATE.ERROR. */
    @CellFunction(
            order = 1,
            name = "COOL.RATE.ERROR",
            text = "The standard error of COOL.RATE, per minute.",
            formula = "s² = σ²·(JᵀJ)⁻¹ + (∂k/∂Tₛ)²·δ²/12; σ² = SSR/(n − p) ≥ δ²/12",
            source = Sources.FIT + "; " + Sources.ROUNDING,
            example = "COOL.RATE.ERROR({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "0.00116267",
            refused = "COOL.RATE.ERROR({0;5};{38;32};3)",
            because = "two readings cannot show how well a curve fits")
    default double rateError(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> JarCells.fit(times, temps, surroundings, mark, scale)
                .constantError()
                .perMinute());
    }

    /** COOL.HALFTIME. */
    @CellFunction(
            order = 2,
            name = "COOL.HALFTIME",
            text = "The half-time in minutes: how long until half of the difference to the surroundings is gone.",
            formula = "t½ = ln 2/k",
            source = Sources.NEWTON,
            example = "COOL.HALFTIME({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "17.23414",
            refused = "COOL.HALFTIME({0;5;10};{38;38;38};3)",
            because = "the temperature does not change")
    default double halftime(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                Minutes.of(JarCells.fit(times, temps, surroundings, mark, scale).halfTime()));
    }

    /** COOL.HALFTIME.ERROR. */
    @CellFunction(
            order = 3,
            name = "COOL.HALFTIME.ERROR",
            text = "The standard error of COOL.HALFTIME, in minutes.",
            formula = "s(t½) = t½·s(k)/k",
            source = Sources.ERRORS,
            example = "COOL.HALFTIME.ERROR({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "0.498207",
            refused = "COOL.HALFTIME.ERROR({0;5;10};{38;38;38};3)",
            because = "the temperature does not change")
    default double halftimeError(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                Minutes.of(JarCells.fit(times, temps, surroundings, mark, scale).halfTimeError()));
    }

    /** COOL.START. */
    @CellFunction(
            order = 4,
            name = "COOL.START",
            text = "The temperature at minute 0 on the fitted curve.",
            formula = "T(t) = Tₛ + A·e^(−k·(t − t₁)); T₀ = Tₛ + A·e^(k·t₁)",
            source = Sources.NEWTON + "; " + Sources.FIT,
            example = "COOL.START({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "38.04090",
            refused = "COOL.START({500;505;510};{38;32;26};3)",
            because = "minute 0 is too far from the readings")
    default double start(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                JarCells.fit(times, temps, surroundings, mark, scale).start().in(Options.scale(scale)));
    }

    /** COOL.START.ERROR. */
    @CellFunction(
            order = 5,
            name = "COOL.START.ERROR",
            text = "The standard error of COOL.START, in degrees.",
            formula = "s² = gᵀ·σ²·(JᵀJ)⁻¹·g + (∂T₀/∂Tₛ)²·δ²/12; g = ∂T₀/∂(A, k)",
            source = Sources.FIT + "; " + Sources.ERRORS,
            example = "COOL.START.ERROR({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "0.331889",
            refused = "COOL.START.ERROR({500;505;510};{38;32;26};3)",
            because = "minute 0 is too far from the readings")
    default double startError(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> JarCells.fit(times, temps, surroundings, mark, scale)
                .startError()
                .in(Options.scale(scale)));
    }

    /** COOL.SURROUNDINGS. */
    @CellFunction(
            order = 6,
            name = "COOL.SURROUNDINGS",
            text =
                    "The temperature of the surroundings: as given, at the first reading if they were read over time, or fitted if the readings tell them whatever law the jar follows.",
            formula = "Σ(Tᵢ − Tₛ − A·e^(−k·tᵢ))² → min",
            source = Sources.NEWTON + "; " + Sources.FIT,
            example = "COOL.SURROUNDINGS({0;10;20;30;40;50;60;70;80;90};{40;27;20;15;12;11;10;9;9;8};\"fit\")",
            answer = "8.170289",
            refused = "COOL.SURROUNDINGS({0;5;10;15;20;25;30};{40;31;24;19;16;14;12};\"fit\")",
            because = "the readings cannot tell warm surroundings from a heat loss that slows down")
    default double surroundings(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> JarCells.fit(times, temps, surroundings, mark, scale)
                .surroundings()
                .in(Options.scale(scale)));
    }

    /** COOL.SURROUNDINGS.ERROR. */
    @CellFunction(
            order = 7,
            name = "COOL.SURROUNDINGS.ERROR",
            text =
                    "The standard error of COOL.SURROUNDINGS, in degrees: what the fit leaves or, if they were read, rounding to the mark; for melting ice 0.",
            formula = "s² = σ²·(JᵀJ)⁻¹; σ² = SSR/(n − p) ≥ δ²/12",
            source = Sources.FIT + "; " + Sources.ROUNDING,
            example = "COOL.SURROUNDINGS.ERROR({0;10;20;30;40;50;60;70;80;90};{40;27;20;15;12;11;10;9;9;8};\"fit\")",
            answer = "1.480129",
            refused = "COOL.SURROUNDINGS.ERROR({0;5;10;15};{40;38;36;34};\"fit\")",
            because = "the readings do not show where they settle")
    default double surroundingsError(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> JarCells.fit(times, temps, surroundings, mark, scale)
                .surroundingsError()
                .in(Options.scale(scale)));
    }

    /** COOL.MISFIT. */
    @CellFunction(
            order = 8,
            name = "COOL.MISFIT",
            text =
                    "How far the readings lie from the fitted curve: the root mean square of the differences, in degrees.",
            formula = "√(SSR/n)",
            source = Sources.FIT,
            example = "COOL.MISFIT({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "0.297696",
            refused = "COOL.MISFIT({0;5};{38;32};3)",
            because = "two readings cannot show how well a curve fits")
    default double misfit(
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                JarCells.fit(times, temps, surroundings, mark, scale).misfit().in(Options.scale(scale)));
    }

    /** COOL.MODEL. */
    @CellFunction(
            order = 9,
            name = "COOL.MODEL",
            text =
                    "The name of the law the readings support: Newton’s law, unless another one fits better beyond doubt.",
            formula = "AICc = −2·ln L + 2K + 2K·(K + 1)/(n − K − 1)",
            source = Sources.LAWS,
            example = "COOL.MODEL({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "Newton’s law, surroundings given",
            refused = "COOL.MODEL({0;5};{38;32};3)",
            because = "two readings cannot show how well a curve fits")
    default String model(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale,
            @Argument(Texts.JAR_VOLUME) @Nullable Object volume,
            @Argument(Texts.BATH_VOLUME) @Nullable Object bath)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> DocumentLanguage.of(document)
                .words(JarCells.of(times, temps, surroundings, mark, scale)
                        .law(volume, bath)
                        .chosen()
                        .fit()
                        .model()
                        .law()));
    }

    /** COOL.REPORT. */
    @CellFunction(
            order = 10,
            name = "COOL.REPORT",
            text =
                    "A table of everything the readings tell, with 95 % limits, the laws compared, and readings that stand out.",
            formula = "SSR(θ) ≤ SSR + σ²·t²; AICc = −2·ln L + 2K + 2K·(K + 1)/(n − K − 1); tᵢ = rᵢ/(s₍ᵢ₎·√(1 − hᵢ))",
            source = Sources.LIMITS + "; " + Sources.LAWS + "; " + Sources.OUTLIERS,
            example = "COOL.REPORT({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "Quantity",
            refused = "COOL.REPORT({0;5};{38;32};3)",
            because = "two readings cannot show how well a curve fits")
    default Object[][] report(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale,
            @Argument(Texts.JAR_VOLUME) @Nullable Object volume,
            @Argument(Texts.BATH_VOLUME) @Nullable Object bath)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            JarCells jar = JarCells.of(times, temps, surroundings, mark, scale);
            return ReportTable.of(jar.summary(), jar.law(volume, bath), DocumentLanguage.of(document));
        });
    }

    /** COOL.SENTENCE. */
    @CellFunction(
            order = 11,
            name = "COOL.SENTENCE",
            text =
                    "One sentence a class can read: in how many minutes the jar loses half its extra warmth, that is, half of its difference to the surroundings.",
            formula = "t½ = ln 2/k; s(t½) = t½·s(k)/k",
            source = Sources.NEWTON + "; " + Sources.ERRORS + "; " + Sources.LAWS,
            example = "COOL.SENTENCE({0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "The jar loses half its extra warmth every 17.2 minutes, give or take 0.5.",
            refused = "COOL.SENTENCE({0;5;10};{38;38;38};3)",
            because = "the temperature does not change")
    default String sentence(
            XPropertySet document,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                SentenceWords.of(JarCells.of(times, temps, surroundings, mark, scale), DocumentLanguage.of(document)));
    }
}
