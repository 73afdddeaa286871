package org.snugsheet.office.functions;

import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.sheet.NoConvergenceException;
import com.sun.star.uno.XInterface;
import org.snugsheet.office.declare.Argument;
import org.snugsheet.office.declare.CellFunction;
import org.snugsheet.office.declare.Family;
import org.snugsheet.office.declare.UnoTypes;

/** TEMP: scales and units. */
@Family(service = "snugsheet.Temp", implementation = TempFunctions.class, title = "Scales and units")
public interface Temp extends XInterface {

    /** For the office’s bridge. */
    TypeInfo[] UNOTYPEINFO = UnoTypes.of(Temp.class);

    /**
     * TEMP.CONVERT.
     *
     * @param value {@value Words#VALUE}
     * @param from {@value Words#FROM_SCALE}
     * @param to {@value Words#TO_SCALE}
     * @return the temperature, or a column of them
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException never
     */
    @CellFunction(
            order = 0,
            name = "TEMP.CONVERT",
            text = "Changes a temperature from one scale to another.",
            example = "TEMP.CONVERT(68;\"F\";\"C\")",
            answer = "20",
            refused = "TEMP.CONVERT(-300;\"C\";\"F\")",
            because = "colder than absolute zero")
    Object convert(
            @Argument(Words.VALUE) String[][] value,
            @Argument(Words.FROM_SCALE) String[][] from,
            @Argument(Words.TO_SCALE) String[][] to)
            throws IllegalArgumentException, NoConvergenceException;

    /**
     * TEMP.CHANGE.
     *
     * @param value {@value Words#CHANGE}
     * @param from {@value Words#FROM_SCALE}
     * @param to {@value Words#TO_SCALE}
     * @return the difference, or a column of them
     * @throws IllegalArgumentException if refused
     * @throws NoConvergenceException never
     */
    @CellFunction(
            order = 1,
            name = "TEMP.CHANGE",
            text = "Changes a difference of temperatures from one scale to another; it is never shifted by 32.",
            example = "TEMP.CHANGE(5;\"C\";\"F\")",
            answer = "9",
            refused = "TEMP.CHANGE(5;\"C\";\"R\")",
            because = "not a temperature scale")
    Object change(
            @Argument(Words.CHANGE) String[][] value,
            @Argument(Words.FROM_SCALE) String[][] from,
            @Argument(Words.TO_SCALE) String[][] to)
            throws IllegalArgumentException, NoConvergenceException;
}
