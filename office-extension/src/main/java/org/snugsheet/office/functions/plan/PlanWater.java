package org.snugsheet.office.functions.plan;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.lesson.Bath;
import org.snugsheet.engine.lesson.Ice;
import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Unit;
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
import org.snugsheet.office.words.Language;

/** PLAN: water and ice for the lesson. */
@Family(
        service = "snugsheet.Plan",
        texts = {PlanTexts.class, Texts.class},
        title = "Water and ice for the lesson")
public interface PlanWater extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(PlanWater.class);

    /** PLAN.SAFE. */
    @CellFunction(
            order = 0,
            name = "PLAN.SAFE",
            text =
                    "A caution in words for water of a temperature: whether small hands may touch it, and how soon hotter water burns.",
            source = Sources.SCHOOL_LIMIT + "; " + "US CPSC, document 5098" + "; "
                    + "Moritz & Henriques, Am. J. Pathol. 23 (1947) 695 (from memory)",
            example = "PLAN.SAFE(40)",
            answer =
                    "This water is warmer than a child’s bath, but within the 43 °C (109 °F) that schools are advised. Test it with your wrist first. Your school’s policy and local rules come first.",
            refused = "PLAN.SAFE(\"warm\")",
            because = "that is not a temperature")
    default String safe(
            XPropertySet document,
            @Argument(PlanTexts.TEMP) String[][] temp,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        Language language = DocumentLanguage.of(document);
        return Answer.of(() -> SafeStart.cautions(Cells.temperature(temp, Options.scale(scale))).stream()
                .map(language::words)
                .collect(Collectors.joining(" ")));
    }

    /** PLAN.MIX. */
    @CellFunction(
            order = 1,
            name = "PLAN.MIX",
            text = "A table of how many milliliters of hot and of cold tap water make the start temperature.",
            formula = "m₁·(h(T₁) − h(T)) = m₂·(h(T) − h(T₂))",
            source = Sources.HEAT,
            example = "PLAN.MIX(55;12;40;1000)",
            answer = "water",
            refused = "PLAN.MIX(60;12;50;1000)",
            because = "a start of 50 °C is too hot for pupils")
    default Object[][] mix(
            XPropertySet document,
            @Argument(PlanTexts.HOT) String[][] hot,
            @Argument(PlanTexts.COLD) String[][] cold,
            @Argument(PlanTexts.TARGET) String[][] target,
            @Argument(PlanTexts.VOLUME) String[][] volume,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> MixTable.of(
                PlanCells.taps(hot, cold, target, volume, scale),
                Cells.temperature(hot, Options.scale(scale)),
                DocumentLanguage.of(document)));
    }

    /** PLAN.MIX.HOT. */
    @CellFunction(
            order = 2,
            name = "PLAN.MIX.HOT",
            text = "How many milliliters of hot tap water make the start temperature, with PLAN.MIX.COLD of cold.",
            formula = "m₁·(h(T₁) − h(T)) = m₂·(h(T) − h(T₂))",
            source = Sources.HEAT,
            example = "PLAN.MIX.HOT(55;12;40;1000)",
            answer = "655.57215",
            refused = "PLAN.MIX.HOT(38;12;40;1000)",
            because = "40 °C does not lie between the two taps")
    default double mixHot(
            @Argument(PlanTexts.HOT) String[][] hot,
            @Argument(PlanTexts.COLD) String[][] cold,
            @Argument(PlanTexts.TARGET) String[][] target,
            @Argument(PlanTexts.VOLUME) String[][] volume,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> PlanCells.milliliters(
                PlanCells.taps(hot, cold, target, volume, scale).hot()));
    }

    /** PLAN.MIX.COLD. */
    @CellFunction(
            order = 3,
            name = "PLAN.MIX.COLD",
            text = "How many milliliters of cold tap water make the start temperature, with PLAN.MIX.HOT of hot.",
            formula = "m₁·(h(T₁) − h(T)) = m₂·(h(T) − h(T₂))",
            source = Sources.HEAT,
            example = "PLAN.MIX.COLD(55;12;40;1000)",
            answer = "346.2",
            refused = "PLAN.MIX.COLD(38;12;40;1000)",
            because = "40 °C does not lie between the two taps")
    default double mixCold(
            @Argument(PlanTexts.HOT) String[][] hot,
            @Argument(PlanTexts.COLD) String[][] cold,
            @Argument(PlanTexts.TARGET) String[][] target,
            @Argument(PlanTexts.VOLUME) String[][] volume,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> PlanCells.milliliters(
                PlanCells.taps(hot, cold, target, volume, scale).cold()));
    }

    /** PLAN.BATH. */
    @CellFunction(
            order = 4,
            name = "PLAN.BATH",
            text =
                    "How warm an open tub of cold water is at the end of the lesson, without ice, from the heat of the jars and of the room.",
            formula = "T₁′ = −k·(T₁ − T₂); C₂·T₂′ = C₁·k·(T₁ − T₂) + G·(T₃ − T₂)",
            source = Sources.LUMPED,
            example = "PLAN.BATH(4000;5;6;250;40;0.05;30;21)",
            answer = "14.199876",
            refused = "PLAN.BATH(4000;5;6;250;60;0.05;30;21)",
            because = "jars of 60 °C are too hot for pupils")
    default double bath(
            @Argument(PlanTexts.BATH_VOLUME) String[][] bathVolume,
            @Argument(PlanTexts.BATH_TEMP) String[][] bathTemp,
            @Argument(PlanTexts.JARS) String[][] jars,
            @Argument(PlanTexts.JAR_VOLUME) String[][] volume,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.ROOM) String[][] room,
            @Argument(PlanTexts.LEAK) @Nullable Object leak,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> PlanCells.tub(bathVolume, bathTemp, jars, volume, start, rate, room, leak, scale)
                .after(PlanCells.seconds(minutes))
                .in(Options.scale(scale)));
    }

    /** PLAN.ICE. */
    @CellFunction(
            order = 5,
            name = "PLAN.ICE",
            text =
                    "How many grams of ice melt while a tub comes to 0 °C and stays there for the lesson. Take half as much again.",
            formula = "m·L = Q₂ + n·C·T·(1 − e^(−k·t)) + G·Tᵣ·t; L = 333.427 kJ/kg",
            source = "IAPWS R10-06(2009) (from memory)" + "; " + Sources.LUMPED,
            example = "PLAN.ICE(4000;5;6;250;40;0.05;30;21)",
            answer = "955.90388",
            refused = "PLAN.ICE(4000;5;6;250;40;0.05;0;21)",
            because = "the lesson lasts no time")
    default double ice(
            @Argument(PlanTexts.BATH_VOLUME) String[][] bathVolume,
            @Argument(PlanTexts.BATH_TEMP) String[][] bathTemp,
            @Argument(PlanTexts.JARS) String[][] jars,
            @Argument(PlanTexts.JAR_VOLUME) String[][] volume,
            @Argument(PlanTexts.START) String[][] start,
            @Argument(PlanTexts.RATE) String[][] rate,
            @Argument(PlanTexts.MINUTES) String[][] minutes,
            @Argument(PlanTexts.ROOM) String[][] room,
            @Argument(PlanTexts.LEAK) @Nullable Object leak,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Bath tub = PlanCells.tub(bathVolume, bathTemp, jars, volume, start, rate, room, leak, scale);
            return Unit.GRAM.from(
                    Ice.holding(tub, PlanCells.seconds(minutes)).mass().kilograms(), Unit.KILOGRAM);
        });
    }
}
