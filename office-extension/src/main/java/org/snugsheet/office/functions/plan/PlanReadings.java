package org.snugsheet.office.functions.plan;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.lesson.Power;
import org.snugsheet.engine.lesson.ReadingPlan;
import org.snugsheet.engine.lesson.TimeToDistinguish;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.quantity.Unit;
import org.snugsheet.engine.quantity.Volume;
import org.snugsheet.engine.reading.Graduation;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
import org.snugsheet.office.cells.Options;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;
import org.snugsheet.office.functions.shared.Minutes;
import org.snugsheet.office.functions.shared.Sources;
import org.snugsheet.office.functions.shared.Texts;
import org.snugsheet.office.words.DocumentLanguage;

/** PLAN: when to read, how often and how many jars. */
@Family(
        service = "snugsheet.Plan",
        texts = {PlanTexts.class, Texts.class},
        title = "Readings for the lesson")
public interface PlanReadings extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(PlanReadings.class);

    /** PLAN.TELLAPART. */
    @CellFunction(
            order = 0,
            name = "PLAN.TELLAPART",
            text = "Minutes until two jars that began alike differ by one mark of the thermometer.",
            formula = "(T₀ − Tₛ)·(e^(−k₁·t) − e^(−k₂·t)) = δ",
            source = "Bateman, Proc. Cambridge Phil. Soc. 15 (1910) 423",
            example = "PLAN.TELLAPART(0.04;0.02;40;5;2)",
            answer = "3.13873546",
            refused = "PLAN.TELLAPART(0.04;0.02;40;5;9)",
            because = "they never differ by 9 °C")
    default double tellApart(
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.OTHER_RATE) String[][] otherRate,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            TimeToDistinguish jars = new TimeToDistinguish(
                    Cells.temperature(start, s),
                    Cells.temperature(surroundings, s),
                    PlanCells.constant(rate),
                    PlanCells.constant(otherRate));
            return Minutes.of(jars.by(Options.mark(mark, s)));
        });
    }

    /** PLAN.LONGEST. */
    @CellFunction(
            order = 1,
            name = "PLAN.LONGEST",
            text = "Minutes for which a jar can be read: until it is within a mark of its surroundings.",
            formula = "t = ln(|T₀ − Tₛ|/δ)/k",
            source = Sources.NEWTON,
            example = "PLAN.LONGEST(0.04;40;5)",
            answer = "88.9",
            refused = "PLAN.LONGEST(0;40;5)",
            because = "a jar that does not cool has no end")
    default double longest(
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> Minutes.of(ReadingPlan.longestLesson(
                PlanCells.jar(rate, start, surroundings, scale), Options.mark(mark, Options.scale(scale)))));
    }

    /** PLAN.INTERVAL. */
    @CellFunction(
            order = 2,
            name = "PLAN.INTERVAL",
            text =
                    "Minutes between readings, as many as may pass while the cooling constant is still known as well as wanted.",
            formula = "s(k)/k; s² = σ²·(JᵀJ)⁻¹ + (∂k/∂Tₛ)²·δ²/12; σ² = δ²/12 + s₀²",
            source = Sources.PLAN + "; " + Sources.ROUNDING,
            example = "PLAN.INTERVAL(0.04;40;5;40;0.03)",
            answer = "5",
            refused = "PLAN.INTERVAL(0.001;40;5;10;0.01)",
            because = "even a reading every minute would not do")
    default double interval(
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.CERTAINTY) @Nullable Object certainty,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(PlanTexts.SCATTER) @Nullable Object scatter,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                Minutes.of(PlanCells.forCertainty(rate, start, surroundings, minutes, certainty, mark, scatter, scale)
                        .intervalSeconds()));
    }

    /** PLAN.READINGS. */
    @CellFunction(
            order = 3,
            name = "PLAN.READINGS",
            text = "How many readings PLAN.INTERVAL makes in the lesson, the first at minute 0.",
            formula = "n = ⌊t/Δt⌋ + 1",
            source = Sources.PLAN + "; " + Sources.ROUNDING,
            example = "PLAN.READINGS(0.04;40;5;40;0.03)",
            answer = "9",
            refused = "PLAN.READINGS(0.001;40;5;10;0.01)",
            because = "even a reading every minute would not do")
    default double readings(
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.CERTAINTY) @Nullable Object certainty,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(PlanTexts.SCATTER) @Nullable Object scatter,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() ->
                (double) PlanCells.forCertainty(rate, start, surroundings, minutes, certainty, mark, scatter, scale)
                        .count());
    }

    /** PLAN.CERTAINTY. */
    @CellFunction(
            order = 4,
            name = "PLAN.CERTAINTY",
            text = "How well the cooling constant will be known: its standard error as a share of it, 0.05 for 5 %.",
            formula = "s(k)/k; s² = σ²·(JᵀJ)⁻¹ + (∂k/∂Tₛ)²·δ²/12; σ² = δ²/12 + s₀²",
            source = Sources.PLAN + "; " + Sources.ROUNDING,
            example = "PLAN.CERTAINTY(0.04;40;5;40;5)",
            answer = "0.0293",
            refused = "PLAN.CERTAINTY(0.04;40;5;40;30)",
            because = "two readings are too few")
    default double certainty(
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.INTERVAL) String[][] interval,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(PlanTexts.SCATTER) @Nullable Object scatter,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> PlanCells.filling(rate, start, surroundings, minutes, interval, mark, scatter, scale)
                .relativeError());
    }

    /** PLAN.REPEATS. */
    @CellFunction(
            order = 5,
            name = "PLAN.REPEATS",
            text =
                    "How many jars of each wrap tell two wraps apart as often as wanted, though jars of one wrap differ.",
            formula = "k ~ N(k₀, (v·k₀)²); s² ~ σ²·χ²₍ₙ₋₂₎/(n − 2); p ≤ 0.05",
            source = Sources.POWER + "; " + Sources.HOLM + "; " + Sources.WELCH,
            example = "PLAN.REPEATS(0.05;0.04;40;5;30;3)",
            answer = "5",
            refused = "PLAN.REPEATS(0.05;0.0499;40;5;30;3)",
            because = "not even 20 jars of each would do")
    default double repeats(
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.OTHER_RATE) String[][] otherRate,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.INTERVAL) String[][] interval,
            @Argument(PlanTexts.OFTEN) @Nullable Object often,
            @Argument(PlanTexts.SPREAD) @Nullable Object spread,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(PlanTexts.SCATTER) @Nullable Object scatter,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> (double) PowerAnswers.jarsFor(
                new Power(
                        PlanCells.filling(rate, start, surroundings, minutes, interval, mark, scatter, scale),
                        PlanCells.filling(otherRate, start, surroundings, minutes, interval, mark, scatter, scale),
                        Options.numberNotZero(spread).orElse(Power.USUAL_SPREAD)),
                Options.numberNotZero(often).orElse(PlanCells.USUAL_POWER)));
    }

    /** PLAN.POWER. */
    @CellFunction(
            order = 6,
            name = "PLAN.POWER",
            text = "How often so many jars of each wrap tell two wraps apart: 0.8 for four lessons in five.",
            formula = "k ~ N(k₀, (v·k₀)²); s² ~ σ²·χ²₍ₙ₋₂₎/(n − 2); p ≤ 0.05",
            source = Sources.POWER + "; " + Sources.HOLM + "; " + Sources.WELCH,
            example = "PLAN.POWER(4;0.05;0.04;40;5;30;3)",
            answer = "0.62",
            refused = "PLAN.POWER(0;0.05;0.04;40;5;30;3)",
            because = "no jar tells nothing")
    default double power(
            @Argument(PlanTexts.JARS_EACH) String[][] jars,
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.OTHER_RATE) String[][] otherRate,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.INTERVAL) String[][] interval,
            @Argument(PlanTexts.SPREAD) @Nullable Object spread,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(PlanTexts.SCATTER) @Nullable Object scatter,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> PowerAnswers.share(
                new Power(
                        PlanCells.filling(rate, start, surroundings, minutes, interval, mark, scatter, scale),
                        PlanCells.filling(otherRate, start, surroundings, minutes, interval, mark, scatter, scale),
                        Options.numberNotZero(spread).orElse(Power.USUAL_SPREAD)),
                Cells.whole(jars)));
    }

    /** PLAN.LESSON. */
    @CellFunction(
            order = 7,
            name = "PLAN.LESSON",
            text =
                    "A table that lays out the whole lesson: water, ice, when to read, what to expect of a bare and a wrapped jar, when the difference shows, and cautions.",
            source = "see PLAN.MIX, PLAN.ICE, PLAN.INTERVAL, PLAN.TELLAPART, PLAN.SAFE",
            example = "PLAN.LESSON(30;250;40;5;0.05;0.03)",
            answer = "what",
            refused = "PLAN.LESSON(30;250;50;5;0.05;0.03)",
            because = "a start of 50 °C is too hot for pupils")
    default Object[][] lesson(
            XPropertySet document,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.JAR_VOLUME) String[][] volume,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.SURROUNDINGS) String[][] surroundings,
            @Argument(PlanTexts.BARE_RATE) String[][] bareRate,
            @Argument(PlanTexts.WRAPPED_RATE) String[][] wrappedRate,
            @Argument(PlanTexts.HOT_OPTION) @Nullable Object hotTap,
            @Argument(PlanTexts.COLD_OPTION) @Nullable Object coldTap,
            @Argument(PlanTexts.BATH_OPTION) @Nullable Object bathVolume,
            @Argument(PlanTexts.JARS_OPTION) @Nullable Object jars,
            @Argument(PlanTexts.ROOM_OPTION) @Nullable Object room,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            Graduation graduation = Options.mark(mark, s);
            return new LessonTable(
                            PlanCells.seconds(minutes),
                            Volume.of(Cells.number(volume), Unit.MILLILITER),
                            PlanCells.jar(bareRate, start, surroundings, scale),
                            PlanCells.jar(wrappedRate, start, surroundings, scale),
                            graduation,
                            s,
                            DocumentLanguage.of(document))
                    .withTaps(Options.temperature(hotTap, s), Options.temperature(coldTap, s))
                    .withTub(
                            Options.number(bathVolume).map(value -> Volume.of(value, Unit.MILLILITER)),
                            Options.number(jars).map(Cells::whole).orElse(1),
                            Options.temperature(room, s))
                    .rows();
        });
    }
}
