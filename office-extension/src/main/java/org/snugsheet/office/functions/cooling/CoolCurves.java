package org.snugsheet.office.functions.cooling;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.snugsheet.engine.cooling.CoolingConstant;
import org.snugsheet.engine.cooling.NewtonCooling;
import org.snugsheet.engine.quantity.Scale;
import org.snugsheet.engine.reading.ClockTimes;
import org.snugsheet.engine.reading.Entry;
import org.snugsheet.office.cells.Answer;
import org.snugsheet.office.cells.Cells;
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

/** COOL: temperatures and times on a curve. */
@Family(
        service = "snugsheet.Cool",
        texts = {Texts.class},
        title = "Temperatures and times on a curve")
public interface CoolCurves extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(CoolCurves.class);

    /** COOL.TEMP. */
    @CellFunction(
            order = 0,
            name = "COOL.TEMP",
            text = "The temperature of a cooling jar after some minutes.",
            formula = "T(t) = Tₛ + (T₀ − Tₛ)·e^(−k·t)",
            source = Sources.NEWTON,
            example = "COOL.TEMP(10;38;3;0.0693147180559945)",
            answer = "20.5",
            refused = "COOL.TEMP(\"ten\";38;3;0.07)",
            because = "the minutes are not a number")
    default double temp(
            @Argument(Texts.MINUTES) String[][] minutes,
            @Argument(Texts.START) String[][] start,
            @Argument(Texts.SURROUNDINGS_NOW) String[][] surroundings,
            @Argument(Texts.RATE) String[][] rate,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return cooling(start, surroundings, rate, s)
                    .after(Minutes.toSeconds(Cells.number(minutes)))
                    .in(s);
        });
    }

    /** COOL.TIME. */
    @CellFunction(
            order = 1,
            name = "COOL.TIME",
            text = "The minutes until a cooling jar reaches a temperature.",
            formula = "t = ln((T₀ − Tₛ)/(T − Tₛ))/k",
            source = Sources.NEWTON,
            example = "COOL.TIME(20.5;38;3;0.0693147180559945)",
            answer = "10",
            refused = "COOL.TIME(2;38;3;0.07)",
            because = "a jar cannot get colder than its surroundings")
    default double time(
            @Argument(Texts.TARGET) String[][] target,
            @Argument(Texts.START) String[][] start,
            @Argument(Texts.SURROUNDINGS_NOW) String[][] surroundings,
            @Argument(Texts.RATE) String[][] rate,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Scale s = Options.scale(scale);
            return Minutes.of(cooling(start, surroundings, rate, s).timeTo(Cells.temperature(target, s)));
        });
    }

    /** COOL.CURVE. */
    @CellFunction(
            order = 2,
            name = "COOL.CURVE",
            text = "A table for a chart: the fitted temperature at each time wanted, and the 95 % band of the curve.",
            formula = "T(t) = Tₛ + A·e^(−k·t)",
            source = Sources.NEWTON + "; " + Sources.LIMITS,
            example = "COOL.CURVE({0;10;20};{0;5;10;15;20};{38;32;26;22;19};3)",
            answer = "fitted",
            refused = "COOL.CURVE({0;10;20};{0;5};{38;32};3)",
            because = "two readings cannot show how well a curve fits")
    default Object[][] curve(
            XPropertySet document,
            @Argument(Texts.AT) Object[][] at,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> CurveTable.of(
                Cells.line(at), JarCells.of(times, temps, surroundings, mark, scale), DocumentLanguage.of(document)));
    }

    /** COOL.MINUTES. */
    @CellFunction(
            order = 3,
            name = "COOL.MINUTES",
            text =
                    "Minutes since the first of a column of clock times, also across noon and midnight; a blank stays blank.",
            example = "COOL.MINUTES({\"9:05\";\"9:10\";\"9:20\"})",
            answer = "0",
            refused = "COOL.MINUTES({\"9:05\";\"soon\"})",
            because = "not a clock time")
    default Object minutes(@Argument(Texts.CLOCK) Object[][] clock)
            throws IllegalArgumentException, NoConvergenceException {
        return Answer.of(() -> {
            Cells.requireFew(clock);
            List<Entry> minutes = ClockTimes.minutes(Cells.line(clock));
            return Cells.each(clock, (row, entry) -> minutes.get(row - 1).asNumber(row));
        });
    }

    private static NewtonCooling cooling(String[][] start, String[][] surroundings, String[][] rate, Scale scale) {
        return new NewtonCooling(
                Cells.temperature(start, scale),
                Cells.temperature(surroundings, scale),
                CoolingConstant.ofPerMinute(Cells.number(rate)));
    }
}
