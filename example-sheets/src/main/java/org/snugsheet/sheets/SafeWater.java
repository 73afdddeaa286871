package org.snugsheet.sheets;

import org.snugsheet.engine.lesson.SafeStart;
import org.snugsheet.engine.quantity.Scale;

/** Asks whether the water named {@code warm}, in the scale named {@code scale}, is too warm for pupils. */
final class SafeWater {

    /**
     * A formula that is true for water above the limit of the engine’s SafeStart. It compares numbers and not the words of
     * PLAN.SAFE, which follow the language of the document.
     */
    static final String TOO_HOT = "AND(ISNUMBER(warm);warm>IF(scale=\"F\";"
            + SafeStart.SCHOOL_LIMIT.in(Scale.FAHRENHEIT) + ";" + SafeStart.SCHOOL_LIMIT.celsius() + "))";

    private SafeWater() {}
}
