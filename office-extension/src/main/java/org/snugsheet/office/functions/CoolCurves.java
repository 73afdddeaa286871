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

/** COOL: temperatures and times on a curve. */
@Family(
        service = "snugsheet.Cool",
        implementation = CoolFunctions.class,
        texts = {Texts.class},
        title = "Temperatures and times on a curve")
public interface CoolCurves extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(CoolCurves.class);

    /** COOL.TEMP: see its declaration. */
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
    double temp(
            @Argument(Texts.MINUTES) String[][] minutes,
            @Argument(Texts.START) String[][] start,
            @Argument(Texts.SURROUNDINGS_NOW) String[][] surroundings,
            @Argument(Texts.RATE) String[][] rate,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /** COOL.TIME: see its declaration. */
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
    double time(
            @Argument(Texts.TARGET) String[][] target,
            @Argument(Texts.START) String[][] start,
            @Argument(Texts.SURROUNDINGS_NOW) String[][] surroundings,
            @Argument(Texts.RATE) String[][] rate,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /** COOL.CURVE: see its declaration. */
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
    Object[][] curve(
            XPropertySet document,
            @Argument(Texts.AT) Object[][] at,
            @Argument(Texts.TIMES) Object[][] times,
            @Argument(Texts.TEMPS) Object[][] temps,
            @Argument(Texts.SURROUNDINGS) String[][] surroundings,
            @Argument(Texts.MARK) @Nullable Object mark,
            @Argument(Texts.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /** COOL.MINUTES: see its declaration. */
    @CellFunction(
            order = 3,
            name = "COOL.MINUTES",
            text =
                    "Minutes since the first of a column of clock times, also across noon and midnight; a blank stays blank.",
            example = "COOL.MINUTES({\"9:05\";\"9:10\";\"9:20\"})",
            answer = "0",
            refused = "COOL.MINUTES({\"9:05\";\"soon\"})",
            because = "not a clock time")
    Object minutes(@Argument(Texts.CLOCK) Object[][] clock) throws IllegalArgumentException, NoConvergenceException;
}
