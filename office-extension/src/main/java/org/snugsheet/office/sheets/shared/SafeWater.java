package org.snugsheet.office.sheets.shared;

import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;

/**
 * Asks whether water is too warm for pupils. It compares numbers and not the words of PLAN.SAFE, which follow the language of
 * the document.
 */
public final class SafeWater {

    private SafeWater() {}

    /**
     * A formula that is true for water above the limit of the engine’s SafeStart, and false where no temperature is typed.
     *
     * @param water the name of the cell; what is typed there may carry its own scale, such as 110 °F
     * @param scale a formula for the scale, C or F
     * @return the formula, without the equals sign
     */
    public static String tooHot(String water, String scale) {
        return "IFERROR(N(TEMP.READ(" + water + ";" + scale + "))>IF(UPPER(" + scale + ")=\"F\";"
                + SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT) + ";" + SafeStart.SCHOOL_LIMIT.celsius() + ");FALSE())";
    }
}
