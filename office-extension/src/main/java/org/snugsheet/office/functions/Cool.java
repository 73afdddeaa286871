package org.snugsheet.office.functions;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.jspecify.annotations.Nullable;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;

/** COOL: cooling curves. */
@Family(service = "snugsheet.Cool", implementation = CoolFunctions.class, title = "Cooling curves")
public interface Cool extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Cool.class);

    /**
     * COOL.RATE.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 0,
            name = "COOL.RATE",
            text =
                    "The cooling constant per minute: the share of the remaining difference to the surroundings that is lost each minute.",
            example = "COOL.RATE({0;5;10;15;20};{40;34;30;26;24};10)",
            answer = "0.03959467",
            refused = "COOL.RATE({0;5};{40;34};10)",
            because = "two readings cannot show how well a curve fits")
    double rate(
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.RATE.ERROR.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 1,
            name = "COOL.RATE.ERROR",
            text = "The standard error of COOL.RATE, per minute.",
            example = "COOL.RATE.ERROR({0;5;10;15;20};{40;34;30;26;24};10)",
            answer = "0.00153867",
            refused = "COOL.RATE.ERROR({0;5};{40;34};10)",
            because = "two readings cannot show how well a curve fits")
    double rateError(
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.HALFTIME.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 2,
            name = "COOL.HALFTIME",
            text = "The half-time in minutes: how long until half of the difference to the surroundings is gone.",
            example = "COOL.HALFTIME({0;5;10;15;20};{40;34;30;26;24};10)",
            answer = "17.50607",
            refused = "COOL.HALFTIME({0;5;10};{40;40;40};10)",
            because = "the temperature does not change")
    double halftime(
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.HALFTIME.ERROR.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 3,
            name = "COOL.HALFTIME.ERROR",
            text = "The standard error of COOL.HALFTIME, in minutes.",
            example = "COOL.HALFTIME.ERROR({0;5;10;15;20};{40;34;30;26;24};10)",
            answer = "0.680295",
            refused = "COOL.HALFTIME.ERROR({0;5;10};{40;40;40};10)",
            because = "the temperature does not change")
    double halftimeError(
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.START.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 4,
            name = "COOL.START",
            text = "The temperature at minute 0 on the fitted curve.",
            example = "COOL.START({0;5;10;15;20};{40;34;30;26;24};10)",
            answer = "39.71301",
            refused = "COOL.START({500;505;510};{40;34;30};10)",
            because = "minute 0 is too far from the readings")
    double start(
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.START.ERROR.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 5,
            name = "COOL.START.ERROR",
            text = "The standard error of COOL.START, in degrees.",
            example = "COOL.START.ERROR({0;5;10;15;20};{40;34;30;26;24};10)",
            answer = "0.410769",
            refused = "COOL.START.ERROR({500;505;510};{40;34;30};10)",
            because = "minute 0 is too far from the readings")
    double startError(
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.MISFIT.
     *
     * @param times {@value Words#TIMES}
     * @param temps {@value Words#TEMPS}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param mark {@value Words#MARK}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 6,
            name = "COOL.MISFIT",
            text =
                    "How far the readings lie from the fitted curve: the root mean square of the differences, in degrees.",
            example = "COOL.MISFIT({0;5;10;15;20};{40;34;30;26;24};10)",
            answer = "0.369078",
            refused = "COOL.MISFIT({0;5};{40;34};10)",
            because = "two readings cannot show how well a curve fits")
    double misfit(
            @Argument(Words.TIMES) Object[][] times,
            @Argument(Words.TEMPS) Object[][] temps,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.MARK) @Nullable Object mark,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.TEMP.
     *
     * @param minutes {@value Words#MINUTES}
     * @param start {@value Words#START}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param rate {@value Words#RATE}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 7,
            name = "COOL.TEMP",
            text = "The temperature of a cooling jar after some minutes.",
            example = "COOL.TEMP(10;40;10;0.0693147180559945)",
            answer = "25",
            refused = "COOL.TEMP(\"ten\";40;10;0.07)",
            because = "the minutes are not a number")
    double temp(
            @Argument(Words.MINUTES) String[][] minutes,
            @Argument(Words.START) String[][] start,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.RATE) String[][] rate,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * COOL.TIME.
     *
     * @param target {@value Words#TARGET}
     * @param start {@value Words#START}
     * @param surroundings {@value Words#SURROUNDINGS}
     * @param rate {@value Words#RATE}
     * @param scale {@value Words#SCALE}
     * @return the answer described by the text below
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException if no curve settles
     */
    @CellFunction(
            order = 8,
            name = "COOL.TIME",
            text = "The minutes until a cooling jar reaches a temperature.",
            example = "COOL.TIME(25;40;10;0.0693147180559945)",
            answer = "10",
            refused = "COOL.TIME(5;40;10;0.07)",
            because = "a jar cannot get colder than its surroundings")
    double time(
            @Argument(Words.TARGET) String[][] target,
            @Argument(Words.START) String[][] start,
            @Argument(Words.SURROUNDINGS) String[][] surroundings,
            @Argument(Words.RATE) String[][] rate,
            @Argument(Words.SCALE) @Nullable Object scale)
            throws IllegalArgumentException, NoConvergenceException;
}
